package plainsward.topics;

import java.time.LocalDate;
import java.util.Optional;
import plainsward.reply.Reply;

/** Seeding and spraying: dates from the label's wait, and the handbook for the rest. */
public final class SeedTopic implements Topic {
  private final Topic notes = new NoteTopic("seed");

  @Override
  public String code() {
    return "seed";
  }

  @Override
  public Reply reply(Request request) {
    Optional<LocalDate> sprayed = RepeatTopic.last(request);
    Optional<Known> wait = request.get("interval");
    boolean seeding =
        request.turn().has("interval")
            || request.turn().has("last_applied")
            || request.turn().has("day");
    if (sprayed.isEmpty() || wait.isEmpty() || !seeding) {
      return notes.reply(request);
    }
    Sheet sheet = new Sheet(request, "seed");
    LocalDate earliest = RepeatTopic.after(sprayed.get(), wait.get());
    sheet.sketch(DaySketch.after(sprayed.get(), earliest, "you may seed", request.today()));
    sheet.date("earliest", earliest).caution("new-seed", "read-label");
    sheet.work(
        Dates.shown(sprayed.get())
            + " + "
            + wait.get().fact().said()
            + " = "
            + Dates.shown(earliest));
    sheet.say("The label's own seeding wait decides; look for \"seeding\" or \"reseeding\" on it.");
    return sheet.answer("Seed from " + Dates.shown(earliest) + " on, by the wait that you gave.");
  }
}
