package plainsward.handbook;

import java.util.List;
import java.util.Set;

/**
 * How well the notes that are worth a closer look fit what is sought, topics apart: the score of
 * the note as a whole plus that of its closest sample question, both BM25.
 */
final class Fits {
  private static final float ASKED_SHARE = 0.2f;

  private final NoteLists index;
  private final int[] notes;
  private final float[] fits;
  private final Coverage covered;

  /**
   * Looks for what is sought.
   *
   * @param require topics of which a note must have at least one; empty for no such condition
   */
  Fits(Shelf shelf, List<Sought> sought, Set<String> require) {
    this.index = shelf.index();
    this.notes = new Candidates(shelf).find(sought, require);
    this.covered = new Coverage(notes.length);
    int[] starts = new int[notes.length + 1];
    for (int i = 0; i < notes.length; i++) {
      starts[i + 1] = starts[i] - index.place(notes[i]);
    }
    this.fits = whole(shelf, sought);
    float[] asked = asked(sought, questions(starts));
    for (int i = 0; i < notes.length; i++) {
      fits[i] += ASKED_SHARE * highest(asked, starts[i], starts[i + 1]);
    }
  }

  /** The scores of the notes as a whole; notes too how much of what is sought they name. */
  private float[] whole(Shelf shelf, List<Sought> sought) {
    StemScores scores = scores(Fields.WORDS, notes);
    float[] sums = new float[notes.length];
    for (Sought each : sought) {
      float[] found = scores.of(each);
      add(sums, found);
      if (each.kind() == Sought.Kind.THING) {
        covered.add(found, shelf.weight(each.ways().get(0).stems()), each.trust());
      }
    }
    return sums;
  }

  private float[] asked(List<Sought> sought, int[] questions) {
    StemScores scores = scores(Fields.ASKED, questions);
    float[] sums = new float[questions.length];
    for (Sought each : sought) {
      add(sums, scores.of(each));
    }
    return sums;
  }

  private StemScores scores(String field, int[] documents) {
    return new StemScores(index, field, new Places(documents, index.size()));
  }

  private static void add(float[] sums, float[] more) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] += more[i];
    }
  }

  /** The documents of the notes' sample questions, which stand right behind each note's own. */
  private int[] questions(int[] starts) {
    int[] questions = new int[starts[notes.length]];
    for (int i = 0; i < notes.length; i++) {
      for (int at = starts[i]; at < starts[i + 1]; at++) {
        questions[at] = notes[i] + 1 + at - starts[i];
      }
    }
    return questions;
  }

  private static float highest(float[] sums, int from, int to) {
    float highest = 0;
    for (int i = from; i < to; i++) {
      highest = Math.max(highest, sums[i]);
    }
    return highest;
  }

  /** How many notes there are; they are numbered in the order in which they stand in the index. */
  int count() {
    return notes.length;
  }

  /** The document of a note. */
  int note(int i) {
    return notes[i];
  }

  /** How well a note fits. */
  float fit(int i) {
    return fits[i];
  }

  /** The share of what is sought that a note names, 0 to 1, rare things counting more. */
  double covered(int i) {
    return covered.of(i);
  }
}
