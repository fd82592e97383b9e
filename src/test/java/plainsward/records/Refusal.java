package plainsward.records;

/** What a refusal may look like. */
final class Refusal {
  private static final int LONGEST = 400;

  private Refusal() {}

  /** An error where it is not one short sentence without control characters. */
  static void check(FieldFault refused) {
    String told = refused.getMessage();
    boolean clean =
        !told.isBlank() && told.length() <= LONGEST && told.chars().noneMatch(c -> c < ' ');
    if (!clean) {
      throw new AssertionError("no clean sentence: " + told, refused);
    }
  }
}
