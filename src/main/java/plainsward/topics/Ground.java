package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.dosing.CrookedArea;
import plainsward.dosing.LawnArea;
import plainsward.dosing.NotDosable;
import plainsward.dosing.Step;
import plainsward.reading.Fact;
import plainsward.reply.Piece;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** The ground spoken of: its pieces added, what is left out taken off. */
public final class Ground {
  private static final Ratio HALF = Ratio.of(1, 2);

  private Ground() {}

  /**
   * The area of pieces as they were told, what is left out taken off.
   *
   * @throws NotDosable where they make no area
   */
  public static Optional<Quantity> together(List<Fact> pieces) {
    return sum(pieces).map(LawnArea::area);
  }

  /** The area, or nothing where none is known. */
  static Optional<Quantity> of(Request request) {
    return worked(request, "area").map(LawnArea::area);
  }

  /** The working of the area. */
  static List<Step> steps(Request request) {
    return worked(request, "area").map(LawnArea::steps).orElse(List.of());
  }

  /** The ground that a test was sprayed on. */
  static Optional<LawnArea> test(Request request) {
    if (request.has("test_area")) {
      return request.amount("test_area").map(LawnArea::of);
    }
    if (request.has("swath") && request.has("distance")) {
      Quantity width = request.amount("swath").orElseThrow();
      return request.amount("distance").map(length -> LawnArea.rectangle(length, width));
    }
    return worked(request, "area");
  }

  /** The pieces of a role as one area. */
  static Optional<LawnArea> worked(Request request, String role) {
    Optional<LawnArea> sum = sum(request.all(role).stream().map(Known::fact).toList());
    if (sum.isEmpty() || !request.has("lawn_part")) {
      return sum;
    }
    Ratio part = request.amount("lawn_part").orElseThrow().value();
    return sum.map(whole -> LawnArea.partOf(part, whole.area()));
  }

  private static Optional<LawnArea> sum(List<Fact> pieces) {
    LawnArea sum = null;
    List<LawnArea> off = new ArrayList<>();
    for (Fact fact : pieces) {
      LawnArea piece = piece(fact);
      if (fact.name().startsWith("minus")) {
        off.add(piece);
      } else {
        sum = sum == null ? piece : sum.plus(piece);
      }
    }
    for (LawnArea piece : off) {
      sum = sum == null ? null : sum.minus(piece);
    }
    return Optional.ofNullable(sum);
  }

  /** The pieces, to be drawn; none where only an area was told. */
  static List<Piece> pieces(Request request) {
    List<Fact> facts = request.all("area").stream().map(Known::fact).toList();
    boolean shaped = facts.stream().anyMatch(f -> f.value().isEmpty());
    return shaped ? facts.stream().map(Ground::drawn).toList() : List.of();
  }

  private static Piece drawn(Fact fact) {
    String shape = fact.value().isPresent() ? "area" : fact.word().orElse("rectangle");
    boolean leftOut = fact.name().startsWith("minus");
    return new Piece(shape, fact.sides(), fact.value(), leftOut, fact.said());
  }

  private static LawnArea piece(Fact fact) {
    if (fact.value().isPresent()) {
      return LawnArea.of(fact.amount());
    }
    List<Quantity> sides = fact.sides();
    return switch (fact.word().orElse("rectangle")) {
      case "circle" -> LawnArea.circleAcross(sides.get(0));
      case "semicircle" -> LawnArea.partOf(HALF, LawnArea.circleAcross(sides.get(0)).area());
      case "radius" -> LawnArea.circle(sides.get(0));
      case "ellipse" -> LawnArea.ellipse(sides.get(0), sides.get(1));
      case "triangle" ->
          sides.size() == 3
              ? LawnArea.triangle(sides.get(0), sides.get(1), sides.get(2))
              : LawnArea.triangle(sides.get(0), sides.get(1));
      case "trapezoid" -> LawnArea.trapezoid(sides.get(0), sides.get(1), sides.get(2));
      case "offsets" -> CrookedArea.strips(sides.subList(1, sides.size()), sides.get(0));
      default -> rectangle(sides);
    };
  }

  private static LawnArea rectangle(List<Quantity> sides) {
    if (sides.size() != 2) {
      throw new NotDosable("shape", NotDosable.Why.NO_SHAPE);
    }
    return LawnArea.rectangle(sides.get(0), sides.get(1));
  }

  /** Whether something was taken off. */
  static boolean hasMinus(Request request) {
    return request.all("area").stream().anyMatch(k -> k.fact().name().startsWith("minus"));
  }
}
