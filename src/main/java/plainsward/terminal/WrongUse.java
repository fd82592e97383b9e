package plainsward.terminal;

/** The command line makes no sense; the message is one sentence for the person who typed it. */
final class WrongUse extends Exception {
  private static final long serialVersionUID = 1;

  WrongUse(String sentence) {
    super(sentence);
  }
}
