package plainsward.topics;

import java.util.List;
import plainsward.dosing.Step;
import plainsward.dosing.Strength;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/** A mix that is asked to be right where the label's own figure is not known yet. */
final class HandCheck {
  private final Request request;
  private final Sheet sheet;

  HandCheck(Request request, Sheet sheet) {
    this.request = request;
    this.sheet = sheet;
  }

  /** "8 oz per 100 gal, is he right": nobody knows without the label's own figure. */
  static boolean isOfStrength(Request request) {
    return request.says("check")
        && request.turn().of("strength").size() == 1
        && !request.says("label-says")
        && !request.turn().has("in_hand")
        && !request.has("label_rate")
        && !request.has("tank")
        && !request.has("spray_volume");
  }

  Reply ofStrength() {
    Quantity mixed = request.amount("strength").orElseThrow();
    boolean poured = mixed.dimension().equals(Dimension.NONE);
    Quantity each = poured ? mixed.in(Units.FL_OZ_PER_GALLON) : mixed;
    return asked(each.unit().equals(mixed.unit()) ? "" : Shown.of(mixed) + is(each));
  }

  /** "he put 8 oz in 100 gal, right?": how strong that is, to be held against the label. */
  Reply ofTank() {
    Quantity hand = request.amount("in_hand").orElseThrow();
    Quantity tank = request.amount("tank").orElseThrow();
    Step made = Strength.of(hand, tank, hand.unit().per(tank.unit()));
    sheet.steps(List.of(made));
    return asked(Shown.of(hand) + " in " + Shown.of(tank) + is(made.result()));
  }

  private static String is(Quantity strength) {
    return " is " + Shown.of(strength) + ". ";
  }

  private Reply asked(String known) {
    sheet.caution("read-label");
    return sheet.ask(
        known + "Only the label tells whether that is right. " + Asking.question("label_rate"),
        "label_rate");
  }
}
