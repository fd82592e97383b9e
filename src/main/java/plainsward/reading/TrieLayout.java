package plainsward.reading;

/**
 * How a {@link PhraseTrie} lies in its bytes, all numbers with the high byte first: a head of eight
 * numbers of three bytes, and what they point at.
 *
 * <ul>
 *   <li>A table of words and one of beginnings of words: a power of two of places (three bytes
 *       each, 0 where empty), found by the hash of the text and then the next ones; there a label
 *       (two bytes), the length and the letters.
 *   <li>Tags: how many (one byte), and for each its length and letters; the first has label {@link
 *       #TAGS}.
 *   <li>Roots: for each label three bytes that point at how many ways begin with it (two bytes),
 *       and for each its book's number (one byte) and node; 0 where none does.
 *   <li>Sequences: for each the number of its meaning (two bytes).
 *   <li>Nodes: how many sequences end here (one byte) and which (two bytes each); how many ways on
 *       need no word (one byte), how many need one (two bytes), and each way's label (two bytes)
 *       and node (three), those with words sorted by label.
 * </ul>
 */
final class TrieLayout {
  /** The head: where the words are, and how many places their table has. */
  static final int WORDS = 0;

  static final int WORD_PLACES = 3;

  /** The same of the beginnings of words. */
  static final int PREFIXES = 6;

  static final int PREFIX_PLACES = 9;

  /** The shortest and the longest beginning, in letters. */
  static final int SHORTEST = 12;

  static final int LONGEST = 15;

  static final int TAG_NAMES = 18;
  static final int ROOTS = 21;
  static final int SEQUENCES = 24;
  static final int HEAD = 27;

  /** A number. */
  static final int NUMBER = 1;

  /** Any one word. */
  static final int ANY = 2;

  /** A few words. */
  static final int GAP = 3;

  /** The start of a sentence. */
  static final int START = 4;

  /** The end of a sentence. */
  static final int END = 5;

  /** The first of the tags. */
  static final int TAGS = 6;

  /** The bytes of a way: a label and a node. */
  static final int WAY = 5;

  private TrieLayout() {}
}
