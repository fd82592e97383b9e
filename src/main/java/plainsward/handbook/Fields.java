package plainsward.handbook;

import org.apache.lucene.search.similarities.PerFieldSimilarityWrapper;
import org.apache.lucene.search.similarities.Similarity;

/**
 * The fields of the index. A note is a document, and each of its sample questions is one right
 * behind it, so that one close question is enough however many others the note has. BM25 after
 * Robertson and Zaragoza, "The Probabilistic Relevance Framework: BM25 and Beyond" (2009); the
 * weights of title, about, answer and body act on the term counts as in its BM25F.
 */
final class Fields {
  /** The stems of the whole note, counted by the weight of the part that they stand in. */
  static final String WORDS = "words";

  /** The stems of one sample question. */
  static final String ASKED = "asked";

  /** A code of a topic; on notes and on their questions. */
  static final String TOPIC = "topic";

  /** The note's id. */
  static final String ID = "id";

  /**
   * Where a document stands in its block: on a note the negative count of its questions, on a
   * question its distance from the note, 1 and up.
   */
  static final String PLACE = "place";

  static final int TITLE_WEIGHT = 12;
  static final int ABOUT_WEIGHT = 6;
  static final int ANSWER_WEIGHT = 2;
  static final int QUESTION_WEIGHT = 2;
  static final int BODY_WEIGHT = 1;

  /** Scores both kinds of text; used in indexing too, for what it keeps of a text's length. */
  static final Similarity SIMILARITY =
      new PerFieldSimilarityWrapper() {
        private final Similarity words = new FlooredBm25(6f, 0.5f);
        private final Similarity asked = new FlooredBm25(0.6f, 0.8f);

        @Override
        public Similarity get(String field) {
          return field.equals(ASKED) ? asked : words;
        }
      };

  private Fields() {}
}
