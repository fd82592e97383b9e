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
    boolean ofLabel =
        request.turn().has("seed_wait")
            || !request.turn().has("interval") && request.has("seed_wait");
    Optional<Known> wait = request.get(ofLabel ? "seed_wait" : "interval");
    boolean seeding =
        ofLabel
            || request.turn().has("interval")
            || request.turn().has("last_applied")
            || request.turn().has("day");
    if (wait.isEmpty() || !seeding || sprayed.isEmpty() && !ofLabel) {
      return notes.reply(request);
    }
    Sheet sheet = new Sheet(request, "seed").caution("new-seed", "read-label");
    if (sprayed.isEmpty()) {
      sheet.suggest("When can I seed? Tell me the day it was sprayed.");
      return sheet.answer(
          "Your label wants " + wait.get().fact().said() + " between spraying and seeding.");
    }
    LocalDate earliest = RepeatTopic.after(sprayed.get(), wait.get());
    sheet.sketch(DaySketch.after(request, sprayed.get(), earliest, "seed"));
    sheet.date("earliest", earliest);
    sheet.work(
        Dates.shown(sprayed.get())
            + " + "
            + wait.get().fact().said()
            + " = "
            + Dates.shown(earliest));
    if (!ofLabel) {
      sheet.say(
          "The label's own seeding wait decides; look for \"seeding\" or \"reseeding\" on it.");
    }
    return sheet.answer(
        "Seed from "
            + Dates.shown(earliest)
            + " on, by the wait that "
            + (ofLabel ? "your label gives." : "you gave."));
  }
}
