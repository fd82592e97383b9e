package plainsward.reply;

/** How much of a reply is to be told. */
public enum Telling {
  /** All of it. */
  WHOLE,
  /** What to say aloud, what to ask next and what to write down. */
  IN_SHORT,
  /** The sum, every step of it. */
  THE_SUM
}
