package plainsward.trade;

import java.util.Optional;

/** The texts of the screen, where the build has packed them beside the tables. */
public final class TextRows {
  /** The name of the table. */
  public static final String TABLE = "screen-texts";

  /** The folder of the texts on the class path. */
  public static final String FOLDER = "terminal";

  /** The key of a text's file name. */
  public static final String NAME = "file";

  /** The key of a text. */
  public static final String TEXT = "text";

  private TextRows() {}

  /**
   * The text of a file of the folder, its lines ended by {@code \n}; empty where none is packed.
   */
  public static Optional<String> text(String file) {
    if (Rows.arePacked(TABLE)) {
      for (Row row : Rows.of(TABLE)) {
        if (row.text(NAME).equals(file)) {
          return Optional.of(row.text(TEXT));
        }
      }
    }
    return Optional.empty();
  }
}
