package plainsward.reading;

import plainsward.trade.PackedWords;

/**
 * How a {@link PhraseTrie} lies in its bytes, all numbers with the high byte first: a head of seven
 * numbers of three bytes, and what they point at.
 *
 * <ul>
 *   <li>The words and the beginnings of words with their labels, as {@link PackedWords}.
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
  /** The numbers of the head. */
  static final int HEAD = 7;

  /** Where in the head stands where the roots begin. */
  static final int ROOTS = 0;

  /** The like of the words. */
  static final int WORDS = 3;

  /** The like of their beginnings. */
  static final int PREFIXES = 6;

  /** How many letters the shortest beginning has. */
  static final int SHORTEST = 9;

  /** And the longest. */
  static final int LONGEST = 12;

  /** Where the tags begin. */
  static final int TAG_NAMES = 15;

  /** Where the sequences begin. */
  static final int SEQUENCES = 18;

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
