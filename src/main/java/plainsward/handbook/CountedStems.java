package plainsward.handbook;

import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.TermFrequencyAttribute;

/** Stems with a count each, as a token stream: how field weights come into the index. */
final class CountedStems extends TokenStream {
  private final Map<String, Integer> counts = new TreeMap<>();
  private final CharTermAttribute term = addAttribute(CharTermAttribute.class);
  private final TermFrequencyAttribute count = addAttribute(TermFrequencyAttribute.class);
  private Iterator<Map.Entry<String, Integer>> left = counts.entrySet().iterator();

  /** Counts the stems of a text, each {@code weight} times. */
  CountedStems add(String text, int weight) {
    Words.stems(text).forEach(stem -> counts.merge(stem, weight, Integer::sum));
    return this;
  }

  /** Counts the stems of some texts, each {@code weight} times. */
  CountedStems add(List<String> texts, int weight) {
    texts.forEach(text -> add(text, weight));
    return this;
  }

  @Override
  public void reset() {
    left = counts.entrySet().iterator();
  }

  @Override
  public boolean incrementToken() {
    clearAttributes();
    if (!left.hasNext()) {
      return false;
    }
    Map.Entry<String, Integer> next = left.next();
    term.append(next.getKey());
    count.setTermFrequency(next.getValue());
    return true;
  }
}
