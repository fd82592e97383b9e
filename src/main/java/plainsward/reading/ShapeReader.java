package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * Reads pieces of ground told by sides: "40x60", "50' by 60'", "20 foot square", "28 ft across".
 */
final class ShapeReader extends TokenWalk {
  private static final Set<String> TIMES = Set.of("x", "by", "*", "times");
  private static final Set<String> SIDE_WORDS =
      Set.of("long", "wide", "deep", "across", "length", "width", "foot", "ft", "feet");
  private final NumeralReader numerals;
  private final MeasuredReader measured;
  private final Unit usual;

  ShapeReader(
      List<Token> tokens, NumeralReader numerals, MeasuredReader measured, UnitSystem system) {
    super(tokens);
    this.numerals = numerals;
    this.measured = measured;
    this.usual = system == UnitSystem.METRIC ? Units.METRE : Units.FOOT;
  }

  private record Side(int to, Quantity length, boolean unitSaid) {}

  /** The piece that begins at this token. */
  Optional<Mention.Piece> at(int i) {
    Optional<Side> first = side(i);
    if (first.isEmpty()) {
      return Optional.empty();
    }
    return square(i, first.get()).or(() -> round(i, first.get())).or(() -> sides(i, first.get()));
  }

  private Optional<Side> side(int i) {
    Optional<Measured> said = measured.at(i).filter(m -> !m.implied() && m.high().isEmpty());
    if (said.isPresent() && said.get().is(Dimension.LENGTH)) {
      return Optional.of(withInches(said.get()));
    }
    if (said.isPresent() && !said.get().low().unit().code().equals("1000.[sft_i]")) {
      return Optional.empty();
    }
    return numerals
        .at(i)
        .filter(n -> n.high().isEmpty() && !n.part())
        .map(n -> new Side(n.to(), new Quantity(n.low(), usual), false));
  }

  /** "12 foot 6 by 20" and "12'6\" x 20'": feet and inches are one side. */
  private Side withInches(Measured feet) {
    Side side = new Side(feet.to(), feet.low(), true);
    if (!feet.low().unit().equals(Units.FOOT)) {
      return side;
    }
    Optional<Numeral> inches =
        numerals
            .at(feet.to())
            .filter(n -> n.high().isEmpty() && n.low().compareTo(Ratio.of(12)) < 0);
    if (inches.isEmpty()) {
      return side;
    }
    int to = inches.get().to();
    boolean marked = word(to).equals("\"") || word(to).startsWith("inch") || word(to).equals("in");
    to = marked ? to + 1 : to;
    boolean goesOn = marked || TIMES.contains(word(to));
    return goesOn
        ? new Side(to, feet.low().plus(new Quantity(inches.get().low(), Units.INCH)), true)
        : side;
  }

  /** "a 20 foot square" is 20 by 20; "20 square feet" is not read here. */
  private Optional<Mention.Piece> square(int i, Side side) {
    boolean square = side.unitSaid && word(side.to).equals("square");
    if (!square || Set.of("feet", "foot", "ft", "metres", "meters").contains(word(side.to + 1))) {
      return Optional.empty();
    }
    return Optional.of(
        new Mention.Piece(i, side.to + 1, "square", List.of(side.length, side.length), true));
  }

  private Optional<Mention.Piece> round(int i, Side side) {
    String next = word(side.to);
    String before = word(i - 1);
    if (next.equals("radius") || before.equals("radius")) {
      return Optional.of(
          new Mention.Piece(
              i,
              next.equals("radius") ? side.to + 1 : side.to,
              "radius",
              List.of(side.length),
              side.unitSaid));
    }
    boolean across =
        next.equals("across") && !word(side.to + 1).equals("the")
            || next.equals("diameter")
            || next.equals("round")
            || next.equals("circle")
            || (next.equals("in") && word(side.to + 1).equals("diameter"))
            || before.equals("diameter");
    if (!across) {
      return Optional.empty();
    }
    int to = next.equals("in") ? side.to + 2 : before.equals("diameter") ? side.to : side.to + 1;
    return Optional.of(new Mention.Piece(i, to, "circle", List.of(side.length), side.unitSaid));
  }

  private Optional<Mention.Piece> sides(int i, Side first) {
    List<Side> all = new ArrayList<>(List.of(first));
    int at = first.to;
    while (all.size() < 4) {
      int sign = skipSideWord(at);
      if (!TIMES.contains(word(sign)) && !isWideAndLong(at)) {
        break;
      }
      Optional<Side> next = side(sign + 1);
      if (next.isEmpty()) {
        break;
      }
      all.add(next.get());
      at = next.get().to;
    }
    if (all.size() < 2) {
      return Optional.empty();
    }
    int to = skipSideWord(at);
    if (word(to).equals("square") && all.size() == 2) {
      to++;
    }
    return Optional.of(piece(i, to, all));
  }

  /** "4 ft wide and 60 long": the sides are joined by a plain "and". */
  private boolean isWideAndLong(int at) {
    Set<String> names = Set.of("wide", "long", "deep");
    if (!names.contains(word(at)) || !Set.of("and", ",").contains(word(at + 1))) {
      return false;
    }
    return side(at + 2).map(next -> names.contains(word(next.to))).orElse(false);
  }

  private int skipSideWord(int at) {
    return SIDE_WORDS.contains(word(at)) ? at + 1 : at;
  }

  private Mention.Piece piece(int from, int to, List<Side> all) {
    boolean said = all.stream().anyMatch(Side::unitSaid);
    Unit unit =
        all.stream().filter(Side::unitSaid).map(s -> s.length.unit()).findFirst().orElse(usual);
    List<Quantity> lengths =
        all.stream()
            .map(s -> s.unitSaid ? s.length : new Quantity(s.length.value(), unit))
            .toList();
    return new Mention.Piece(from, to, all.size() == 2 ? "rectangle" : "sides", lengths, said);
  }
}
