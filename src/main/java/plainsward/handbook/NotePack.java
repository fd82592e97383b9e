package plainsward.handbook;

import plainsward.trade.Pack;

/** What the build made of the notes beside their Lucene index. */
public final class NotePack {
  /** The folder of the index, and of this, on the class path. */
  public static final String FOLDER = "handbook-index/";

  /** How the names of these files end. */
  public static final String ENDING = ".pack";

  /** The synonyms. */
  static final String SYNONYMS = "synonyms" + ENDING;

  /** Which notes hold which stems. */
  static final String LISTS = "lists" + ENDING;

  /** How many notes go into one file: reading one takes no longer for it. */
  static final int NOTES_OF_FILE = 32;

  private static final Pack PACK = new Pack(FOLDER, PackedNotes::pieces);

  private NotePack() {}

  /** The notes from a multiple of {@link #NOTES_OF_FILE} on. */
  static String texts(int file) {
    return "texts-" + file + ENDING;
  }

  /** Whether the build made one of these. */
  static boolean has(String name) {
    return PACK.has(name);
  }

  /** The bytes of one of these, or of a file of the index. */
  static byte[] bytes(String name) {
    return PACK.bytes(name);
  }
}
