package plainsward.handbook;

import org.apache.lucene.search.similarities.BM25Similarity;

/**
 * BM25 in which a word that hardly any note holds weighs no more than one of a few notes: people
 * add chance words to their questions, and in a small handbook these would outweigh the matter.
 */
final class FlooredBm25 extends BM25Similarity {
  private static final long FEWEST = 6;

  FlooredBm25(float k1, float b) {
    super(k1, b);
  }

  @Override
  protected float idf(long docFreq, long docCount) {
    return super.idf(Math.max(docFreq, Math.min(FEWEST, docCount)), docCount);
  }
}
