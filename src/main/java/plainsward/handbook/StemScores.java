package plainsward.handbook;

import java.util.List;

/** The exact scores of some documents in a field, whether or not a search found them by it. */
final class StemScores {
  private final NoteLists index;
  private final String field;
  private final Places documents;

  /** Will score these documents. */
  StemScores(NoteLists index, String field, Places documents) {
    this.index = index;
    this.field = field;
    this.documents = documents;
  }

  /** Each document's score for one thing: that of its best way, 0 if it has none. */
  float[] of(Sought sought) {
    float[] best = new float[documents.count()];
    for (Sought.Way way : sought.ways()) {
      float boost = way.boost() * sought.worth();
      if (way.stems().size() == 1) {
        index.raise(field, way.stems().get(0), documents, boost, best);
      } else {
        raise(best, of(way.stems()), boost);
      }
    }
    return best;
  }

  private static void raise(float[] best, float[] scores, float boost) {
    for (int i = 0; i < best.length; i++) {
      best[i] = Math.max(best[i], scores[i] * boost);
    }
  }

  /** The sum of the scores of several stems, for documents that hold them all. */
  private float[] of(List<String> stems) {
    float[] sum = of(stems.get(0));
    for (String stem : stems.subList(1, stems.size())) {
      float[] other = of(stem);
      for (int i = 0; i < sum.length; i++) {
        sum[i] = sum[i] > 0 && other[i] > 0 ? sum[i] + other[i] : 0;
      }
    }
    return sum;
  }

  private float[] of(String stem) {
    float[] scores = new float[documents.count()];
    index.raise(field, stem, documents, 1, scores);
    return scores;
  }
}
