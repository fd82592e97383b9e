package plainsward.records;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** The log as a table for other programs and for people. */
public final class LogTable {
  private static final int PLACES = 6;

  private LogTable() {}

  /** CSV by RFC 4180, with a heading; units are UCUM codes, each in a column of its own. */
  public static String csv(List<LogEntry> entries) {
    StringBuilder out = new StringBuilder();
    try (CSVPrinter printer = new CSVPrinter(out, CSVFormat.RFC4180)) {
      printer.printRecord(
          "date",
          "lawn",
          "label",
          "product",
          "product unit",
          "area",
          "area unit",
          "sprayer",
          "weather",
          "who",
          "remark",
          "id");
      for (LogEntry entry : entries) {
        printer.printRecord(
            entry.date(),
            entry.lawn().orElse(""),
            entry.label(),
            number(entry.product()),
            unit(entry.product()),
            number(entry.area()),
            unit(entry.area()),
            entry.sprayer().orElse(""),
            entry.weather().orElse(""),
            entry.who().orElse(""),
            entry.remark().orElse(""),
            entry.id());
      }
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
    return out.toString();
  }

  private static String number(Optional<Quantity> quantity) {
    return quantity
        .map(q -> q.value().toDecimal(PLACES, RoundingMode.HALF_UP).stripTrailingZeros())
        .map(BigDecimal::toPlainString)
        .orElse("");
  }

  private static String unit(Optional<Quantity> quantity) {
    return quantity.map(q -> q.unit().code()).orElse("");
  }

  /** A Markdown table, with amounts as people read them. */
  public static String markdown(List<LogEntry> entries) {
    StringBuilder out = new StringBuilder("# Applications\n\n");
    out.append("| Date | Lawn | Label | Product | Area | Sprayer | Weather | Who | Remark |\n");
    out.append("|---|---|---|---|---|---|---|---|---|\n");
    entries.forEach(entry -> row(out, entry));
    return out.toString();
  }

  private static void row(StringBuilder out, LogEntry entry) {
    List<String> cells =
        List.of(
            entry.date().toString(),
            entry.lawn().orElse(""),
            entry.label(),
            entry.product().map(Shown::of).orElse(""),
            entry.area().map(Shown::of).orElse(""),
            entry.sprayer().orElse(""),
            entry.weather().orElse(""),
            entry.who().orElse(""),
            entry.remark().orElse(""));
    cells.forEach(cell -> out.append("| ").append(escaped(cell)).append(' '));
    out.append("|\n");
  }

  /** A text that a table cell shows as it is. */
  private static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.codePoints()
        .map(c -> Names.isHidden(c) ? ' ' : c)
        .forEach(
            c -> {
              if ("\\|`*_[]<>#~&".indexOf(c) >= 0) {
                out.append('\\');
              }
              out.appendCodePoint(c);
            });
    return out.toString().strip();
  }
}
