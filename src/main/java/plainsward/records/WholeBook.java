package plainsward.records;

/** Everything of a book as one JSON text, for keeping elsewhere or for another program. */
public final class WholeBook {
  private static final int VERSION = 1;

  private WholeBook() {}

  /** Labels, lawns, sprayers, the log, and the entries of the log that were undone. */
  public static String json(RecordBook book) {
    return new Tree()
        .put("version", VERSION)
        .putAll("labels", book.labels().stream().map(LabelWriter::tree).toList())
        .putAll("lawns", book.lawns().stream().map(new LawnCodec()::tree).toList())
        .putAll("sprayers", book.sprayers().stream().map(new SprayerCodec()::tree).toList())
        .putAll("log", book.log().entries().stream().map(LogLine::tree).toList())
        .putAll("undone", book.log().undone().stream().map(LogLine::tree).toList())
        .text();
  }
}
