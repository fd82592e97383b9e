package plainsward.packing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import plainsward.handbook.NotePack;
import plainsward.reading.NameRows;
import plainsward.reading.PhraseColumn;
import plainsward.reading.SpellingWords;
import plainsward.trade.JsonRows;
import plainsward.trade.MeasureWords;
import plainsward.trade.Pack;
import plainsward.trade.Row;
import plainsward.trade.RowPacker;
import plainsward.trade.Rows;
import plainsward.trade.TextRows;

/**
 * Packs the trade tables into one class and what was made of the notes into another, since a class
 * is quick to load: with the tables go a table of all names as phrases, the phrases of all tables
 * sorted for the search and the words that typos are mended by, whose making takes longer than a
 * sum, and the texts of the screen. Run by the build with two arguments: the folder of the tables
 * and the folder of the compiled classes, with the handbook's index in it.
 */
public final class TablePacker {
  private static final String ENDING = ".json";

  private TablePacker() {}

  /** Packs the tables; see the class. */
  public static void main(String[] args) throws IOException {
    if (args.length != 2) {
      throw new IllegalArgumentException("TABLES-FOLDER CLASSES-FOLDER were expected");
    }
    Path classes = Path.of(args[1]);
    Map<String, List<Row>> tables = new TreeMap<>();
    for (String file : files(Path.of(args[0]), ENDING)) {
      String name = file.substring(0, file.length() - ENDING.length());
      tables.put(name, JsonRows.of(name));
    }
    tables.put(NameRows.TABLE, NameRows.made());
    tables.put(SpellingWords.BY_FIRST, SpellingWords.byFirst());
    tables.put(TextRows.TABLE, texts(classes.resolve(TextRows.FOLDER)));
    Map<String, byte[]> packed = new TreeMap<>();
    for (Map.Entry<String, List<Row>> table : tables.entrySet()) {
      packed.put(table.getKey(), RowPacker.packed(table.getValue()));
    }
    packed.put(PhraseColumn.PACKED, PhraseColumn.packed());
    packed.put(MeasureWords.PACKED_SPELLINGS, MeasureWords.packedSpellings());
    packed.put(MeasureWords.PACKED_FIRSTS, MeasureWords.packedFirsts());
    packed.put(SpellingWords.SLIPS, SpellingWords.slips());
    packed.put(SpellingWords.KNOWN, SpellingWords.known());
    Path folder = classes.resolve(Rows.FOLDER);
    Files.createDirectories(folder);
    for (Map.Entry<String, byte[]> each : packed.entrySet()) {
      Files.write(folder.resolve(each.getKey()), each.getValue());
    }
    write(folder, classes.resolve("plainsward/trade/PackedTables.class"), packed);
    Path index = classes.resolve(NotePack.FOLDER);
    write(index, classes.resolve("plainsward/handbook/PackedNotes.class"), notes(index));
  }

  /** What the build made of the notes. */
  private static Map<String, byte[]> notes(Path folder) throws IOException {
    Map<String, byte[]> packed = new TreeMap<>();
    for (String file : files(folder, NotePack.ENDING)) {
      packed.put(file, Files.readAllBytes(folder.resolve(file)));
    }
    return packed;
  }

  /** Writes the names of what is in a folder, and a class that holds it all. */
  private static void write(Path folder, Path holder, Map<String, byte[]> packed)
      throws IOException {
    byte[] names = (String.join("\n", packed.keySet()) + "\n").getBytes(StandardCharsets.US_ASCII);
    Files.write(folder.resolve(Pack.NAMES), names);
    List<byte[]> all = new ArrayList<>();
    all.add(names);
    all.addAll(packed.values());
    String name = new ClassReader(Files.readAllBytes(holder)).getClassName();
    Files.write(holder, TextClass.of(name, all));
  }

  private static List<Row> texts(Path folder) throws IOException {
    List<Row> rows = new ArrayList<>();
    for (String file : files(folder, ".txt")) {
      String text = Files.readString(folder.resolve(file)).replace("\r\n", "\n");
      Map<String, Object> values = new TreeMap<>(Map.of(TextRows.NAME, file, TextRows.TEXT, text));
      rows.add(new Row(file, 0, values));
    }
    return rows;
  }

  private static List<String> files(Path folder, String ending) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .map(file -> file.getFileName().toString())
          .filter(file -> file.endsWith(ending))
          .sorted()
          .toList();
    }
  }
}
