package plainsward.records;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** Lawns from a file of another program: a CSV table, or a GeoJSON outline. */
public final class LawnFile {
  private LawnFile() {}

  /**
   * The lawns in a file whose name ends in {@code .csv}, {@code .geojson} or {@code .json}.
   *
   * @throws RecordFault where nothing of it can be read, with the place in the file
   */
  public static Imported read(Path file) {
    try {
      byte[] bytes = ShelfFile.bytes(file);
      String name = String.valueOf(file.getFileName());
      if (name.toLowerCase(Locale.ROOT).endsWith(".csv")) {
        return LawnTable.read(file.toString(), Json.text(bytes));
      }
      return new Imported(Outlines.read(Json.read(bytes), plainName(name)), List.of());
    } catch (FieldFault fault) {
      throw Faults.content(file, fault);
    } catch (IOException fault) {
      throw Faults.reading(file, fault);
    }
  }

  /** What a lawn is called that has no name of its own: as its file. */
  private static String plainName(String file) {
    String plain = file.replaceFirst("\\.[A-Za-z]+$", "").replaceAll("[_-]+", " ").strip();
    return Names.isName(plain) ? plain : "lawn";
  }
}
