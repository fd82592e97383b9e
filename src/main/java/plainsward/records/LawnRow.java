package plainsward.records;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;
import plainsward.trade.MeasureWords;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;

/** One row of a table of lawns. */
record LawnRow(LawnColumns columns, CSVRecord row) {
  private static final Pattern AREA =
      Pattern.compile(
          "((?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]{1,12})(?:\\.[0-9]{1,12})?)\\s*((?:[^0-9.,].*)?)");

  /** The line of the file on which the row starts, the heading being line 1. */
  long line() {
    return row.getRecordNumber();
  }

  /** The lawn's name. */
  String name() {
    return new Node("name", columns.cell(row, "name").orElse(null)).name();
  }

  /** What the lawn is known by, if the row has a name. */
  Optional<String> key() {
    return columns.cell(row, "name").map(Names::key);
  }

  /** The lawn with what the row tells; {@code before} is null for the first row of a lawn. */
  Lawn addedTo(Lawn before) {
    Lawn lawn = before == null ? Lawn.named(name()) : before;
    Quantity area = area();
    Optional<String> piece = columns.cell(row, "piece");
    if (before == null && piece.isEmpty()) {
      return described(lawn.withArea(area));
    }
    if (before != null && before.pieces().isEmpty()) {
      lawn = lawn.withPiece("piece 1", before.area().orElseThrow());
    }
    String its = piece.orElse("piece " + (lawn.pieces().size() + 1));
    return described(lawn.withPiece(new Node("piece", its).name(), area));
  }

  private Lawn described(Lawn lawn) {
    Lawn told = columns.cell(row, "grass").map(lawn::withGrass).orElse(lawn);
    told = columns.cell(row, "notes").map(told::withNotes).orElse(told);
    told = flag("trees").map(told::withTrees).orElse(told);
    told = flag("water near").map(told::withWaterNear).orElse(told);
    return flag("vegetables near").map(told::withVegetablesNear).orElse(told);
  }

  private Optional<Boolean> flag(String column) {
    return columns
        .cell(row, column)
        .map(
            said ->
                switch (said.toLowerCase(Locale.ROOT)) {
                  case "yes", "y", "true", "1" -> true;
                  case "no", "n", "false", "0" -> false;
                  default -> throw FieldFault.at(column, "yes or no", said);
                });
  }

  private Quantity area() {
    String said = columns.cell(row, "area").orElse("");
    Matcher parts = AREA.matcher(said);
    if (!parts.matches()) {
      throw FieldFault.at("area", "a number", said.isEmpty() ? null : said);
    }
    Ratio value = Ratio.of(parts.group(1).replace(",", ""));
    if (value.signum() == 0) {
      throw FieldFault.at("area", "a number above 0", said);
    }
    String unit = parts.group(2).strip();
    return new Quantity(value, unit(unit.isEmpty() ? unitElsewhere() : unit));
  }

  private String unitElsewhere() {
    return columns.cell(row, "unit").or(columns::areaUnit).orElse("");
  }

  private static Unit unit(String said) {
    Optional<Unit> known =
        Unit.isKnown(said)
            ? Optional.of(Unit.of(said))
            : MeasureWords.shipped()
                .find(
                    Names.key(said.replace(".", " ").replace("²", "2"))
                        .replaceAll("(?<=\\p{L})(?=[0-9])", " "))
                .map(word -> word.us());
    return known
        .filter(u -> u.dimension().equals(Dimension.AREA))
        .orElseThrow(
            () ->
                FieldFault.at(
                    "unit", "a unit of area such as sq ft", said.isEmpty() ? null : said));
  }
}
