package plainsward.handbook;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** Lucene queries for what is sought; made of terms alone, never parsed from a user's text. */
final class Queries {
  private static final int MOST_STEMS = 500;

  private Queries() {}

  /** Documents with any stem of the things in a field, of any of some topics (of all, if empty). */
  static Query any(List<Sought> sought, String field, Collection<String> topics) {
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    boosts(sought)
        .forEach((stem, boost) -> any.add(new BoostQuery(term(field, stem), boost), Occur.SHOULD));
    any.setMinimumNumberShouldMatch(1);
    if (!topics.isEmpty()) {
      any.add(ofTopics(topics), Occur.FILTER);
    }
    return any.build();
  }

  private static Map<String, Float> boosts(List<Sought> sought) {
    Map<String, Float> boosts = new LinkedHashMap<>();
    for (Sought each : sought) {
      for (Sought.Way way : each.ways()) {
        float boost = way.boost() * each.worth();
        for (String stem : way.stems()) {
          if (boosts.size() < MOST_STEMS) {
            boosts.merge(stem, boost, Math::max);
          }
        }
      }
    }
    return boosts;
  }

  /** Documents of any of some topics. */
  static Query ofTopics(Collection<String> topics) {
    BooleanQuery.Builder of = new BooleanQuery.Builder();
    topics.forEach(t -> of.add(term(Fields.TOPIC, t), Occur.SHOULD));
    return of.build();
  }

  private static TermQuery term(String field, String text) {
    return new TermQuery(new Term(field, text));
  }
}
