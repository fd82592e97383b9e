package plainsward.topics;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/**
 * Walking, mowing and watering after a spraying: what the label in hand says of it, and the
 * handbook for the rest.
 */
public final class KeepOffTopic extends NoteTopic {

  /** How sure a note must be for water to need no more words (0 to 1). */
  private static final double PLAIN = 0.8;

  private static final Set<String> MOWING = Set.of("mow", "mowing", "mowed", "cut", "cutting");
  private static final Set<String> WATERING =
      Set.of("water", "watering", "watered", "sprinkler", "sprinklers");

  /** The topic. */
  public KeepOffTopic() {
    super("keep-off");
  }

  @Override
  Reply reply(Request request, String words, double another) {
    boolean own = request.turn().hasWord(MOWING) || saysWater(request) || saysRain(request);
    String told = own ? request.turn().text() : words;
    return ofLabel(request)
        .orElseGet(() -> super.reply(request, told + wetted(request, told), another));
  }

  /**
   * Water is the sprinkler's, unless a note plainly knows what else it is; for a preventer that was
   * spoken of before, rain and water wet it in.
   */
  private static String wetted(Request request, String told) {
    boolean water = saysWater(request);
    if ((water || saysRain(request)) && ProductKind.of(request) == ProductKind.PRE) {
      return " watering in a preventer";
    }
    boolean open = water && Notes.best(request, told, Set.of(), PLAIN).isEmpty();
    return open ? " sprinklers, irrigation after spraying" : "";
  }

  private static Optional<Reply> ofLabel(Request request) {
    if (request.turn().hasWord(MOWING)) {
      return waited(request, "mow_wait", "mowing", "mowing");
    }
    if (saysWater(request)) {
      return wateredIn(request).or(() -> waited(request, "water_wait", "watering", "rain"));
    }
    if (saysRain(request)) {
      return ProductKind.of(request) == ProductKind.PRE
          ? wateredIn(request)
          : LabelLimit.named(request, "rain-free").map(hours -> rain(request, hours));
    }
    return reentry(request);
  }

  private static boolean saysWater(Request request) {
    return request.turn().hasWord(WATERING) || hasBeginning(request, "irrigat");
  }

  private static boolean saysRain(Request request) {
    return hasBeginning(request, "rain")
        || hasBeginning(request, "shower")
        || hasBeginning(request, "storm");
  }

  /** Whether a word of the turn begins so. */
  private static boolean hasBeginning(Request request, String beginning) {
    for (Token token : request.turn().tokens()) {
      if (token.norm().startsWith(beginning)) {
        return true;
      }
    }
    return false;
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
                      + from(request, sheet, wait.amount(), "until")
                      + ".");
            });
  }

  /** What is watered in by its label must not be kept dry. */
  private static Optional<Reply> wateredIn(Request request) {
    Optional<Known> depth = request.get("water_in");
    Optional<Known> within = request.get("water_in_within");
    if (depth.isEmpty() && within.isEmpty()) {
      return Optional.empty();
    }
    Sheet sheet = new Sheet(request, "keep-off").caution("leach", "read-label");
    String much = depth.isPresent() ? " with " + Shown.of(depth.get().amount()) : "";
    String soon =
        within.isPresent()
            ? " within "
                + Shown.of(within.get().amount())
                + from(request, sheet, within.get().amount(), "by")
            : "";
    return Optional.of(sheet.answer("Your label wants it watered in" + much + soon + "."));
  }

  private static Reply rain(Request request, Quantity hours) {
    Sheet sheet = new Sheet(request, "keep-off").caution("rain", "read-label");
    Optional<Quantity> gap =
        request.turn().has("rain_gap") ? request.amount("rain_gap") : Optional.empty();
    boolean soon = gap.isPresent() && gap.get().compareTo(hours) < 0;
    return sheet.answer(
        "Your label wants "
            + Shown.of(hours)
            + " without rain after spraying"
            + (soon ? ": rain in " + Shown.of(gap.get()) + " is too soon." : "."));
  }

  private static Optional<Reply> reentry(Request request) {
    Optional<Quantity> time = LabelLimit.named(request, "re-entry");
    boolean dry = LabelLimit.isUntilDry(request);
    if (time.isEmpty() && !dry) {
      return Optional.empty();
    }
    Sheet sheet = new Sheet(request, "keep-off");
    List<String> waits = new ArrayList<>();
    time.ifPresent(t -> waits.add(Shown.of(t) + from(request, sheet, t, "until")));
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
  private static String from(Request request, Sheet sheet, Quantity wait, String to) {
    Optional<LocalDate> sprayed = RepeatTopic.last(request);
    if (sprayed.isEmpty() || wait.compareTo(Quantity.of(1, Units.DAY)) < 0) {
      return "";
    }
    LocalDate over = sprayed.get().plusDays(wait.in(Units.DAY).value().ceiling().longValueExact());
    sheet.date("earliest", over);
    return ", so " + to + " " + Dates.shown(over);
  }
}
