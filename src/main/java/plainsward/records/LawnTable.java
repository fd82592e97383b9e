package plainsward.records;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Lawns of a CSV table (RFC 4180) with a heading. Columns: name, area, unit, piece, grass, notes,
 * trees, water near, vegetables near; only name and area must be there. Rows of one name are pieces
 * of one lawn; where one of them can't be read the lawn is left out, because its area would be too
 * small.
 */
final class LawnTable {
  private static final int MOST_ROWS = 10_000;

  private final String source;
  private final Map<String, Lawn> lawns = new LinkedHashMap<>();
  private final Set<String> spoilt = new LinkedHashSet<>();
  private final List<String> problems = new ArrayList<>();

  private LawnTable(String source) {
    this.source = source;
  }

  /** Reads a table; {@code source} is what sentences call it. */
  static Imported read(String source, String text) {
    LawnTable table = new LawnTable(source);
    List<CSVRecord> rows = rows(text);
    if (rows.isEmpty()) {
      throw FieldFault.saying("", "it is empty");
    }
    LawnColumns columns = LawnColumns.of(rows.get(0));
    columns.unknown().forEach(table::passedOver);
    for (CSVRecord row : rows.subList(1, rows.size())) {
      table.take(new LawnRow(columns, row));
    }
    table.spoilt.forEach(table.lawns::remove);
    return new Imported(List.copyOf(table.lawns.values()), table.problems);
  }

  private static List<CSVRecord> rows(String text) {
    String heading = text.lines().findFirst().orElse("");
    char comma = heading.indexOf(',') < 0 && heading.indexOf(';') >= 0 ? ';' : ',';
    CSVFormat format =
        CSVFormat.RFC4180
            .builder()
            .setDelimiter(comma)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();
    try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
      List<CSVRecord> rows = new ArrayList<>();
      for (CSVRecord row : parser) {
        rows.add(row);
        if (rows.size() > MOST_ROWS) {
          throw FieldFault.saying("", "it has more than " + MOST_ROWS + " rows");
        }
      }
      return rows;
    } catch (IOException | UncheckedIOException | IllegalStateException broken) {
      throw FieldFault.saying("", "a quoted cell has no proper end, so this is no CSV");
    }
  }

  private void passedOver(String column) {
    problems.add(
        source
            + ": the column "
            + FieldFault.shown(column)
            + " is not one of a lawn's and was passed over.");
  }

  private void take(LawnRow row) {
    try {
      String key = Names.key(row.name());
      lawns.put(key, row.addedTo(lawns.get(key)));
    } catch (FieldFault fault) {
      row.key().ifPresent(spoilt::add);
      problems.add(
          String.format(
              "%s, line %d: %s; the lawn was left out.", source, row.line(), fault.getMessage()));
    }
  }
}
