package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;

/** A question as the handbook reads it. */
public final class Asked {
  private final Shelf shelf;
  private final List<Sought> sought;

  Asked(Shelf shelf, String words) {
    this.shelf = shelf;
    this.sought = new QuestionReader(shelf).read(words);
  }

  /** The notes that fit it best, the best first; none where no note has any of its words. */
  public List<Hit> search(Search options) {
    List<Hit> hits = new ArrayList<>();
    for (Ranked ranked : new Ranking(shelf).rank(sought, options)) {
      hits.add(new Hit(shelf.note(ranked.document()), ranked.rank(), Confidence.of(ranked)));
    }
    return hits;
  }
}
