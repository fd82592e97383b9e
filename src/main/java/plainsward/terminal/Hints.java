package plainsward.terminal;

/**
 * Words that tell how to see what was kept back.
 *
 * @param more how to see all of it
 * @param steps how to see the sum's steps, after "3 more steps"
 * @param sumStays whether a sum is kept as long as it may, and cautions as many
 */
record Hints(String more, String steps, boolean sumStays) {
  private static final String ADD = "There is more: add --more to see all of it.";

  /** In a conversation, where a word can be typed. */
  static final Hints TALK = new Hints("There is more: type more.", ": say \"show the sum\"", false);

  /** At a single question on a screen. */
  static final Hints ONCE = new Hints(ADD, "", false);

  /** At a single question whose answer is read by something else. */
  static final Hints PLAIN = new Hints(ADD, "", true);
}
