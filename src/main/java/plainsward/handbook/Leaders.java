package plainsward.handbook;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Optional;

/**
 * Adds up the scores of documents and tells the best. One is made for a search of a thread and used
 * again by it, so that a search need not clear room for every document.
 */
final class Leaders {
  private static final int FIRST_ROOM = 1_024;

  /** What each document has; none has 0 once a score was added, since all scores are above it. */
  private float[] sums = new float[0];

  private int[] touched = new int[FIRST_ROOM];
  private int count;

  /** Starts anew, for documents up to a number. */
  void start(int documents) {
    if (sums.length < documents) {
      sums = new float[documents];
      count = 0;
    }
    for (int i = 0; i < count; i++) {
      sums[touched[i]] = 0;
    }
    count = 0;
  }

  /**
   * Adds each score of a list, times a boost. A branch for new documents would be half the time.
   */
  void add(Postings postings, float boost) {
    int size = postings.size();
    if (count + size > touched.length) {
      touched = Arrays.copyOf(touched, 2 * (count + size));
    }
    for (int i = 0; i < size; i++) {
      int document = postings.document(i);
      float sum = sums[document];
      touched[count] = document;
      count += sum == 0 ? 1 : 0;
      sums[document] = sum + postings.score(i) * boost;
    }
  }

  /**
   * The documents with the highest sums, of two equal ones the earlier; in no order.
   *
   * @param most how many at most
   * @param among the documents that may be; empty for all
   */
  int[] best(int most, Optional<BitSet> among) {
    BitSet only = among.orElse(null);
    int[] heap = new int[most];
    int n = 0;
    for (int i = 0; i < count; i++) {
      int document = touched[i];
      if (only != null && !only.get(document)) {
        continue;
      }
      if (n < most) {
        heap[n] = document;
        rise(heap, n++);
      } else if (isBehind(heap[0], document)) {
        heap[0] = document;
        sink(heap, n);
      }
    }
    return Arrays.copyOf(heap, n);
  }

  private boolean isBehind(int one, int other) {
    return sums[one] != sums[other] ? sums[one] < sums[other] : one > other;
  }

  private void rise(int[] heap, int from) {
    int at = from;
    while (at > 0 && isBehind(heap[at], heap[(at - 1) / 2])) {
      swap(heap, at, (at - 1) / 2);
      at = (at - 1) / 2;
    }
  }

  private void sink(int[] heap, int n) {
    int at = 0;
    while (2 * at + 1 < n) {
      int child = 2 * at + 1;
      if (child + 1 < n && isBehind(heap[child + 1], heap[child])) {
        child++;
      }
      if (!isBehind(heap[child], heap[at])) {
        return;
      }
      swap(heap, at, child);
      at = child;
    }
  }

  private static void swap(int[] heap, int one, int other) {
    int kept = heap[one];
    heap[one] = heap[other];
    heap[other] = kept;
  }
}
