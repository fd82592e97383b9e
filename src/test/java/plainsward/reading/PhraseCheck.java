package plainsward.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;

/**
 * Reads one line of the phrases and tells what is wrong with the reading. A line says what must be
 * read ({@code reads}; "area|test_area" where the talk settles which), roles that must not be
 * ({@code not}), topics that are asked or not ({@code asks}, {@code notAsks}) and signs likewise
 * ({@code signs}, {@code notSigns}).
 */
final class PhraseCheck {
  static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private final JsonLines.Line line;
  private final Facts facts;
  private final List<String> faults = new ArrayList<>();

  private PhraseCheck(JsonLines.Line line) {
    this.line = line;
    UnitSystem system = UnitSystem.valueOf(line.text("units").toUpperCase(Locale.ROOT));
    this.facts = new Reader(system, TODAY).read(line.text("say"), Vocabulary.NONE);
  }

  /** The faults of a line's reading; none where it is read as wanted. */
  static List<String> faults(JsonLines.Line line) {
    PhraseCheck check = new PhraseCheck(line);
    check.run();
    return check.faults;
  }

  private void run() {
    for (Map<String, Object> wanted : line.objects("reads")) {
      List<String> names = List.of(((String) wanted.get("name")).split("\\|"));
      if (facts.all().stream().noneMatch(f -> names.contains(f.name()) && isRead(f, wanted))) {
        faults.add("not read: " + wanted);
      }
    }
    each("not", facts::has, "read, but must not be: ");
    each("asks", topic -> !facts.asks(topic), "not asked: ");
    each("notAsks", facts::asks, "asked, but must not be: ");
    each("signs", sign -> !facts.says(sign), "no sign of: ");
    each("notSigns", facts::says, "sign, but must not be: ");
    if (!faults.isEmpty()) {
      faults.add("was read as " + told());
    }
  }

  private void each(String field, java.util.function.Predicate<String> wrong, String fault) {
    line.texts(field).stream().filter(wrong).forEach(x -> faults.add(fault + x));
  }

  private String told() {
    List<String> all = new ArrayList<>();
    for (Fact f : facts.all()) {
      all.add(
          f.name()
              + f.value().map(v -> " " + v).orElse("")
              + f.high().map(v -> ".." + v).orElse("")
              + f.word().map(w -> " =" + w).orElse("")
              + f.date().map(d -> " " + d).orElse("")
              + (f.sides().isEmpty() ? "" : " " + f.sides())
              + (f.owner().isEmpty() ? "" : " of " + f.owner()));
    }
    return all + " asks " + facts.asks() + " signs " + facts.signs();
  }

  private static boolean isRead(Fact fact, Map<String, Object> wanted) {
    String unit = (String) wanted.get("unit");
    return same(fact.value(), wanted.get("value"), unit)
        && (wanted.get("value") == null || same(fact.high(), wanted.get("high"), unit))
        && sameSides(fact.sides(), (List<?>) wanted.get("sides"), unit)
        && sameText(fact.word().orElse(""), wanted.get("word"))
        && sameText(fact.date().map(LocalDate::toString).orElse(""), wanted.get("date"))
        && sameText(fact.owner(), wanted.get("owner"));
  }

  /** A value that is wanted must be the same amount; a high end must not be there unasked. */
  private static boolean same(Optional<Quantity> read, Object wanted, String unit) {
    if (wanted == null) {
      return read.isEmpty() || unit == null;
    }
    return read.isPresent() && isSame(read.get(), quantity((String) wanted, unit));
  }

  private static boolean isSame(Quantity one, Quantity other) {
    return one.dimension().equals(other.dimension()) && one.isSameAmount(other);
  }

  private static boolean sameSides(List<Quantity> read, List<?> wanted, String unit) {
    if (wanted == null) {
      return true;
    }
    boolean same = read.size() == wanted.size();
    for (int i = 0; same && i < read.size(); i++) {
      same = isSame(read.get(i), quantity((String) wanted.get(i), unit));
    }
    return same;
  }

  private static boolean sameText(String read, Object wanted) {
    return wanted == null || read.equals(wanted);
  }

  /** A decimal or a fraction with a unit. */
  static Quantity quantity(String number, String unit) {
    int slash = number.indexOf('/');
    if (slash < 0) {
      return Quantity.of(number, unit);
    }
    Ratio top = Ratio.of(Long.parseLong(number.substring(0, slash)));
    Ratio below = Ratio.of(Long.parseLong(number.substring(slash + 1)));
    return new Quantity(top.dividedBy(below), Unit.of(unit));
  }
}
