package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Units;

/** How many packets or tablets a mix or a lawn takes, where one makes or treats so much. */
final class Pieces {
  private final Request request;
  private final Sheet sheet;

  Pieces(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
  }

  Reply reply() {
    Known piece = request.get("piece_makes").orElseThrow();
    Quantity each = piece.amount();
    boolean ground = each.dimension().equals(Dimension.AREA);
    Optional<Quantity> need =
        ground
            ? Ground.of(request)
            : request.amount("spray_volume").or(() -> request.amount("tank"));
    if (need.isEmpty()) {
      String role = ground ? "area" : "tank";
      return sheet.ask(Asking.question(role), role);
    }
    Step count = Working.of("containers", need.get()).over(each).as(Units.ONE);
    String shown = sheet.steps(List.of(count)).figure("containers", count.result());
    String word = piece.fact().word().orElse("packets");
    String noun = word.endsWith("s") ? word : word + (word.endsWith("ch") ? "es" : "s");
    sheet.caution("read-label", "wear-gear");
    return sheet.answer(
        "That is "
            + shown
            + " "
            + noun
            + " for "
            + Shown.of(need.get())
            + "."
            + whole(count, each));
  }

  /** A piece is not split: what the whole ones on either side make. */
  private String whole(Step count, Quantity each) {
    Ratio value = count.result().value();
    if (value.isWhole()) {
      return "";
    }
    Ratio up = Ratio.of(value.ceiling().longValueExact());
    Ratio down = up.minus(Ratio.ONE);
    String more =
        Shown.number(up)
            + (up.equals(Ratio.ONE) ? " is for " : " are for ")
            + Shown.of(each.times(up))
            + ".";
    return down.signum() == 0
        ? " Don't split one unless the label allows it: " + more
        : " Don't split one unless the label allows it: "
            + Shown.number(down)
            + (down.equals(Ratio.ONE) ? " is for " : " are for ")
            + Shown.of(each.times(down))
            + ", "
            + more;
  }
}
