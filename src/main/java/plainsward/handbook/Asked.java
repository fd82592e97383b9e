package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;

/** A question as the handbook reads it, to be searched for by one thread. */
public final class Asked {
  private final Shelf shelf;
  private final Ranking ranking;

  Asked(Shelf shelf, String words) {
    this.shelf = shelf;
    this.ranking = new Ranking(shelf, new QuestionReader(shelf).read(words));
  }

  /** The notes that fit it best, the best first; none where no note has any of its words. */
  public List<Hit> search(Search options) {
    List<Hit> hits = new ArrayList<>();
    for (Ranked ranked : ranking.rank(options)) {
      hits.add(new Hit(shelf.note(ranked.document()), ranked.rank(), Confidence.of(ranked)));
    }
    return hits;
  }
}
