package plainsward.topics;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reading.Token;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;

/**
 * A mix so many times too strong that is still in the tank: so many times less one the water that
 * is in it brings it down, whatever the rate is.
 */
final class UnsprayedMix {
  private static final Map<String, Integer> TIMES =
      Map.ofEntries(
          Map.entry("double", 2),
          Map.entry("doubled", 2),
          Map.entry("twice", 2),
          Map.entry("triple", 3),
          Map.entry("tripled", 3),
          Map.entry("thrice", 3),
          Map.entry("quadruple", 4),
          Map.entry("2x", 2),
          Map.entry("3x", 3),
          Map.entry("4x", 4));
  private static final Set<String> COUNTED = Set.of("times", "x");
  private static final Ratio MOST = Ratio.of(50);

  private UnsprayedMix() {}

  /** The reply to one who has not sprayed, where such a mix is told of and no amounts. */
  static Optional<Reply> reply(Request request, Sheet sheet) {
    boolean amounts = request.turn().has("in_hand") || request.turn().has("label_rate");
    if (!request.says("mixed-it") || amounts) {
      return Optional.empty();
    }
    return times(request).map(times -> thinned(request, sheet, times));
  }

  private static Optional<Ratio> times(Request request) {
    List<Token> words = request.turn().tokens();
    for (int i = 0; i < words.size(); i++) {
      Integer many = TIMES.get(words.get(i).norm());
      if (many != null) {
        return Optional.of(Ratio.of(many));
      }
      boolean counted = words.get(i).isNumber() && request.turn().isWord(i + 1, COUNTED);
      if (counted) {
        Ratio told = Ratio.of(words.get(i).norm());
        return Optional.of(told).filter(t -> t.compareTo(Ratio.ONE) > 0 && t.compareTo(MOST) < 0);
      }
    }
    return Optional.empty();
  }

  private static Reply thinned(Request request, Sheet sheet, Ratio times) {
    sheet.caution("above-label", "read-label").alsoTopic("progress");
    Optional<Quantity> mixed = request.amount("spray_volume").or(() -> request.amount("tank"));
    String amount = mixed.map(mix -> " " + inAll(sheet, mix, times)).orElse("");
    boolean twice = times.equals(Ratio.of(2));
    String water = twice ? "as much water again as there is mix" : parts(times);
    return sheet.answer(
        "Don't spray it so. Add "
            + water
            + ", part of it in a clean bucket if the tank is too small; then it is at the rate that "
            + "you meant."
            + amount);
  }

  private static String parts(Ratio times) {
    return "water, " + Shown.number(times.minus(Ratio.ONE)) + " times as much as there is mix";
  }

  private static String inAll(Sheet sheet, Quantity mix, Ratio times) {
    Step all = Working.of("spray_total", mix).times(Quantity.number(times)).as(mix.unit());
    Step water = Working.of("water", all.result()).minus(mix).as(mix.unit());
    sheet.steps(List.of(all, water)).figure("spray_total", all.result());
    return "For "
        + Shown.of(mix)
        + " that is "
        + Shown.of(water.result())
        + " of water, and it makes "
        + Shown.of(all.result())
        + ".";
  }
}
