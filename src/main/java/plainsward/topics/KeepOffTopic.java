package plainsward.topics;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/**
 * Walking, mowing and watering after a spraying: what the label in hand says of it, and the
 * handbook for the rest.
 */
public final class KeepOffTopic extends NoteTopic {

  /** The topic. */
  public KeepOffTopic() {
    super("keep-off");
  }

  @Override
  public Reply reply(Request request, String words) {
    return ofLabel(request).orElseGet(() -> super.reply(request, words));
  }

  private static Optional<Reply> ofLabel(Request request) {
    if (says(request, "mow(ing|ed)?|cut(ting)?")) {
      return waited(request, "mow_wait", "mowing", "mowing");
    }
    if (says(request, "water(ing|ed)?|irrigat.*|sprinklers?")) {
      return waited(request, "water_wait", "watering", "rain");
    }
    if (says(request, "rain.*|shower.*|storm.*")) {
      return LabelLimit.named(request, "rain-free").map(hours -> rain(request, hours));
    }
    return reentry(request);
  }

  private static boolean says(Request request, String words) {
    return request.turn().tokens().stream().anyMatch(t -> t.norm().matches(words));
  }

  private static Optional<Reply> waited(
      Request request, String role, String doing, String caution) {
    return request
        .get(role)
        .map(
            wait -> {
              Sheet sheet = new Sheet(request, "keep-off").caution(caution, "read-label");
              return sheet.answer(
                  "Your label wants no "
                      + doing
                      + " for "
                      + wait.fact().said()
                      + " after spraying"
                      + from(request, sheet, wait.amount())
                      + ".");
            });
  }

  private static Reply rain(Request request, Quantity hours) {
    Sheet sheet = new Sheet(request, "keep-off").caution("rain", "read-label");
    return sheet.answer("Your label wants " + Shown.of(hours) + " without rain after spraying.");
  }

  private static Optional<Reply> reentry(Request request) {
    Optional<Quantity> time = LabelLimit.named(request, "re-entry");
    boolean dry = LabelLimit.isUntilDry(request);
    if (time.isEmpty() && !dry) {
      return Optional.empty();
    }
    Sheet sheet = new Sheet(request, "keep-off");
    List<String> waits = new ArrayList<>();
    time.ifPresent(t -> waits.add(Shown.of(t) + from(request, sheet, t)));
    if (dry) {
      waits.add("the spray has dried on every leaf");
    }
    sheet.caution("keep-off-until-dry", "pets", "read-label");
    String line =
        time.isEmpty()
            ? "Keep people and pets off until " + waits.get(0)
            : "Keep people and pets off for " + String.join(", and until ", waits);
    return Optional.of(sheet.answer(line + ": so your label says."));
  }

  /** The day on which a wait of a day or more is over, where the spraying is known. */
  private static String from(Request request, Sheet sheet, Quantity wait) {
    Optional<LocalDate> sprayed = RepeatTopic.last(request);
    if (sprayed.isEmpty() || wait.compareTo(Quantity.of(1, Units.DAY)) < 0) {
      return "";
    }
    LocalDate over = sprayed.get().plusDays(wait.in(Units.DAY).value().ceiling().longValueExact());
    sheet.date("earliest", over);
    return ", so until " + Dates.shown(over);
  }
}
