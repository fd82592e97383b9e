package plainsward.packing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import plainsward.reading.NameRows;
import plainsward.trade.JsonRows;
import plainsward.trade.PackedRows;
import plainsward.trade.Row;

/**
 * Packs the trade tables into one file that is quick to read, and beside them a table of all names
 * as phrases, whose making takes longer than a sum. Run by the build with two arguments: the folder
 * of the tables and the folder of the compiled classes.
 */
public final class TablePacker {
  private static final String ENDING = ".json";

  private TablePacker() {}

  /** Packs the tables; see the class. */
  public static void main(String[] args) throws IOException {
    if (args.length != 2) {
      throw new IllegalArgumentException("TABLES-FOLDER CLASSES-FOLDER were expected");
    }
    Map<String, List<Map<String, Object>>> tables = new TreeMap<>();
    for (String name : names(Path.of(args[0]))) {
      tables.put(name, values(JsonRows.of(name)));
    }
    tables.put(NameRows.TABLE, values(NameRows.made()));
    Path into = Path.of(args[1]).resolve(PackedRows.FILE);
    Files.write(into, new TableWriter(tables).written());
  }

  private static List<Map<String, Object>> values(List<Row> rows) {
    return rows.stream().map(Row::values).toList();
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(ENDING))
          .map(file -> file.substring(0, file.length() - ENDING.length()))
          .sorted()
          .toList();
    }
  }
}
