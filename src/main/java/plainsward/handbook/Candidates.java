package plainsward.handbook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The notes worth a closer look: those that fit best as a whole, and those of which one sample
 * question fits best.
 */
final class Candidates {
  private static final int MOST = 30;
  private static final int MOST_QUESTIONS = 40;
  private static final int MOST_STEMS = 500;
  private static final int FEWEST_SOUGHT = 2;
  private static final int FEW_ENTRIES = 4_000;
  private static final int SHARE = 50;
  private static final ThreadLocal<Leaders> LEADERS = ThreadLocal.withInitial(Leaders::new);

  /** A thing sought, with how many entries the lists of its stems have. */
  private record Counted(Sought sought, long entries) {}

  private final Shelf shelf;
  private final NoteLists index;

  Candidates(Shelf shelf) {
    this.shelf = shelf;
    this.index = shelf.index();
  }

  /**
   * The documents of notes, in rising order.
   *
   * @param require topics of which a note must have at least one; empty for no such condition
   */
  int[] find(List<Sought> sought, Set<String> require) {
    Optional<BitSet> among = index.ofTopics(require);
    int[] notes = best(sought, Fields.WORDS, MOST, among);
    int[] questions = best(sought, Fields.ASKED, MOST_QUESTIONS, among);
    int[] all = Arrays.copyOf(notes, notes.length + questions.length);
    for (int i = 0; i < questions.length; i++) {
      all[notes.length + i] = questions[i] - index.place(questions[i]);
    }
    Arrays.sort(all);
    int n = 0;
    for (int note : all) {
      if ((n == 0 || all[n - 1] != note) && !shelf.isHidden(note)) {
        all[n++] = note;
      }
    }
    return Arrays.copyOf(all, n);
  }

  private int[] best(List<Sought> sought, String field, int most, Optional<BitSet> among) {
    Boosts boosts = boosts(rarest(sought, field));
    Leaders leaders = LEADERS.get();
    leaders.start(index.size());
    for (int i = 0; i < boosts.count(); i++) {
      leaders.add(index.postings(field, boosts.stem(i)), boosts.boost(i));
    }
    return leaders.best(most, among);
  }

  /**
   * The rarest of what is sought, as far as that can be gone through in time: not the words that a
   * large part of the notes hold, where others tell enough.
   */
  private List<Sought> rarest(List<Sought> sought, String field) {
    List<Counted> sorted = new ArrayList<>(sought.size());
    for (Sought each : sought) {
      Counted counted = new Counted(each, entries(each, field));
      int at = sorted.size();
      while (at > 0 && sorted.get(at - 1).entries > counted.entries) {
        at--;
      }
      sorted.add(at, counted);
    }
    long most = FEW_ENTRIES + index.size() / SHARE;
    long entries = 0;
    List<Sought> rarest = new ArrayList<>(sorted.size());
    for (Counted each : sorted) {
      entries += each.entries;
      if (rarest.size() >= FEWEST_SOUGHT && entries > most) {
        break;
      }
      rarest.add(each.sought);
    }
    return rarest;
  }

  private long entries(Sought sought, String field) {
    long entries = 0;
    for (Sought.Way way : sought.ways()) {
      for (String stem : way.stems()) {
        entries += shelf.documentsWith(field, stem);
      }
    }
    return entries;
  }

  private static Boosts boosts(List<Sought> sought) {
    Boosts boosts = new Boosts(MOST_STEMS);
    for (Sought each : sought) {
      for (Sought.Way way : each.ways()) {
        float boost = way.boost() * each.worth();
        for (String stem : way.stems()) {
          boosts.raise(stem, boost);
        }
      }
    }
    return boosts;
  }
}
