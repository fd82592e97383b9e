package plainsward.terminal;

/** Something that was to be read can't be; the message is one sentence that names it. */
final class Unreadable extends Exception {
  private static final long serialVersionUID = 1;

  Unreadable(String sentence) {
    super(sentence);
  }
}
