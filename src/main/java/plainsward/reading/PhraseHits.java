package plainsward.reading;

import java.util.Arrays;

/** Where sequences of phrases were found in a text: each once from a place, as far as first met. */
final class PhraseHits {
  private static final int FIELDS = 3;

  private int[] all = new int[8 * FIELDS];
  private int count;
  private int from;
  private int firstOfPlace;

  /** What is added from now on begins at this token. */
  void startAt(int token) {
    from = token;
    firstOfPlace = count;
  }

  /** A sequence that ends before a token. */
  void add(int sequence, int to) {
    for (int i = firstOfPlace; i < count; i++) {
      if (sequence(i) == sequence) {
        return;
      }
    }
    if (count * FIELDS == all.length) {
      all = Arrays.copyOf(all, 2 * all.length);
    }
    int place = count;
    while (place > firstOfPlace && isBefore(sequence, to, place - 1)) {
      System.arraycopy(all, (place - 1) * FIELDS, all, place * FIELDS, FIELDS);
      place--;
    }
    all[place * FIELDS] = sequence;
    all[place * FIELDS + 1] = from;
    all[place * FIELDS + 2] = to;
    count++;
  }

  /** Of those from one place the longest comes first, then what the tables say first. */
  private boolean isBefore(int sequence, int to, int other) {
    return to > to(other) || to == to(other) && sequence < sequence(other);
  }

  int count() {
    return count;
  }

  int sequence(int hit) {
    return all[hit * FIELDS];
  }

  int from(int hit) {
    return all[hit * FIELDS + 1];
  }

  int to(int hit) {
    return all[hit * FIELDS + 2];
  }
}
