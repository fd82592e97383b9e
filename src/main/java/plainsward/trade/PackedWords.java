package plainsward.trade;

import java.util.Map;

/**
 * Words with a number each, found by their hash in bytes that the build can make, so that nothing
 * need be sorted into a map at start: how many places there are (three bytes, a power of two), for
 * each place where its word stands (three bytes, counted from the beginning, 0 for none; where a
 * place is taken the next is), and the words: number (two bytes), length (one) and letters.
 */
public final class PackedWords {
  /** What is given for a word that is not there. */
  public static final int NONE = -1;

  private static final int PLACE = 3;
  private static final int HEAD = 3;

  private final byte[] bytes;
  private final int start;
  private final int mask;

  /**
   * Words that are packed among other things.
   *
   * @param bytes all that is packed
   * @param start where the words begin
   */
  public PackedWords(byte[] bytes, int start) {
    this.bytes = bytes;
    this.start = start;
    this.mask = ByteReader.three(bytes, start) - 1;
  }

  /**
   * Packs words.
   *
   * @param words words of at most 255 letters of Latin-1, and their numbers below 65,536; others
   *     are refused with an {@link IllegalArgumentException}
   */
  public static byte[] packed(Map<String, Integer> words) {
    int places = Integer.highestOneBit(Math.max(1, words.size())) * 4;
    int[] table = new int[places];
    ByteMaker body = new ByteMaker(0);
    for (Map.Entry<String, Integer> each : words.entrySet()) {
      int place = each.getKey().hashCode() & (places - 1);
      while (table[place] != 0) {
        place = (place + 1) & (places - 1);
      }
      table[place] = HEAD + PLACE * places + body.size();
      body.two(each.getValue());
      body.text(each.getKey());
    }
    ByteMaker all = new ByteMaker(0);
    all.three(places);
    for (int place : table) {
      all.three(place);
    }
    all.bytes(body.all());
    return all.all();
  }

  /** The number of a word, or {@link #NONE}. */
  public int find(String word) {
    return find(word, word.length(), word.hashCode());
  }

  /**
   * The number of the beginning of a word, or {@link #NONE}.
   *
   * @param length how many letters are meant
   * @param hash their hash, as of a string of these alone
   */
  public int find(String word, int length, int hash) {
    int place = hash & mask;
    for (int at = at(place); at != 0; at = at(place)) {
      if ((bytes[start + at + 2] & 0xFF) == length && isAt(word, length, start + at + 3)) {
        return ByteReader.two(bytes, start + at);
      }
      place = (place + 1) & mask;
    }
    return NONE;
  }

  private int at(int place) {
    return ByteReader.three(bytes, start + HEAD + PLACE * place);
  }

  private boolean isAt(String word, int length, int at) {
    for (int i = 0; i < length; i++) {
      if (word.charAt(i) != (bytes[at + i] & 0xFF)) {
        return false;
      }
    }
    return true;
  }
}
