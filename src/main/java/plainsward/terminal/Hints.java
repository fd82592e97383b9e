package plainsward.terminal;

/**
 * Words that tell how to see what was kept back.
 *
 * @param more how to see all of it
 * @param steps how to see the sum's steps, after "3 more steps"
 */
record Hints(String more, String steps) {
  /** In a conversation, where a word can be typed. */
  static final Hints TALK = new Hints("There is more: type more.", ": say \"show the sum\"");

  /** At a single question. */
  static final Hints ONCE = new Hints("There is more: add --plain to see all of it.", "");
}
