package plainsward.handbook;

/** A note that can't be taken up; the message is one sentence with the file and what is wrong. */
public final class NoteFault extends Exception {
  private static final long serialVersionUID = 1L;

  /**
   * Names what is wrong.
   *
   * @param file the note's file name
   * @param what the field, and what was expected of it
   */
  public NoteFault(String file, String what) {
    super(file + ": " + what + ".");
  }
}
