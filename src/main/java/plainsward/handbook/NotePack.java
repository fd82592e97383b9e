package plainsward.handbook;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import plainsward.trade.Pack;

/**
 * What the build made of the notes beside their Lucene index: from a class, else from a file on the
 * class path beside the index.
 */
public final class NotePack {
  /** The folder of the index on the class path. */
  public static final String FOLDER = "handbook-index/";

  /** How the names end of the files that may be put into a class. */
  public static final String ENDING = ".pack";

  /** The synonyms. */
  static final String SYNONYMS = "synonyms" + ENDING;

  /** Which notes hold which stems. */
  static final String LISTS = "lists" + ENDING;

  /** The notes themselves. */
  static final String TEXTS = "texts" + ENDING;

  private static final Pack PACK = new Pack(PackedNotes::pieces);

  private NotePack() {}

  /** The bytes of one of these. */
  static byte[] bytes(String name) {
    return PACK.has(name) ? PACK.bytes(name) : file(name);
  }

  /** The bytes of a file of the index's folder. */
  static byte[] file(String name) {
    try (InputStream in = NotePack.class.getClassLoader().getResourceAsStream(FOLDER + name)) {
      if (in == null) {
        throw new FileNotFoundException(FOLDER + name);
      }
      return in.readAllBytes();
    } catch (IOException fault) {
      throw new UncheckedIOException("The handbook's index can't be read", fault);
    }
  }
}
