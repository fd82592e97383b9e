package plainsward.topics;

import java.util.Optional;
import plainsward.dosing.LawnArea;
import plainsward.reply.Reply;
import plainsward.reply.Sketches;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/** The area of a lawn from its sides and pieces. */
public final class MeasureTopic implements Topic {

  @Override
  public String code() {
    return "measure";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "measure");
    Optional<LawnArea> ground = ground(request);
    if (ground.isEmpty()) {
      return request.has("side") || request.has("distance") || request.has("swath")
          ? sheet.ask(Asking.question("shape"), "shape")
          : sheet.ask(
              "Give me the sides of each piece, such as 40 by 60 ft, and what to leave out.",
              "area",
              "shape");
    }
    Quantity area = ground.get().area();
    String shown = sheet.figure("area", area);
    if (request.get("area").map(k -> k.leavesOpen("square-metre")).orElse(false)) {
      sheet.suggest("Are those square metres? Ask for the two sides to be sure.");
      return sheet.answer(
          "Taken as "
              + shown
              + ", square metres: about "
              + Shown.of(area.in(Units.SQUARE_FOOT))
              + ". Ask for the two sides in metres to be sure.");
    }
    sheet.steps(ground.get().steps());
    sheet.sketch(Sketches.ofPieces(Ground.pieces(request)));
    sheet.suggest("How much for my lawn? Tell me the label's rate.");
    return sheet.answer("That is " + shown + acres(area) + " of ground.");
  }

  private static String acres(Quantity area) {
    boolean feet = area.unit().equals(Units.SQUARE_FOOT);
    return feet && area.compareTo(Quantity.of(10_000, Units.SQUARE_FOOT)) >= 0
        ? " (" + Shown.of(area.in(Units.ACRE)) + ")"
        : "";
  }

  private static Optional<LawnArea> ground(Request request) {
    Optional<LawnArea> ground = Ground.worked(request, "area");
    if (ground.isPresent()) {
      return ground;
    }
    if (request.all("side").size() >= 2) {
      Quantity first = request.all("side").get(0).amount();
      return Optional.of(LawnArea.rectangle(first, request.all("side").get(1).amount()));
    }
    Optional<Quantity> length = request.amount("distance").or(() -> request.amount("length"));
    Optional<Quantity> width = request.amount("swath").or(() -> request.amount("side"));
    return length.isPresent() && width.isPresent()
        ? Optional.of(LawnArea.rectangle(length.get(), width.get()))
        : Optional.empty();
  }
}
