package plainsward.handbook;

import java.util.Collection;
import java.util.List;
import org.apache.lucene.index.Term;
import org.apache.lucene.search.BooleanClause.Occur;
import org.apache.lucene.search.BooleanQuery;
import org.apache.lucene.search.BoostQuery;
import org.apache.lucene.search.DisjunctionMaxQuery;
import org.apache.lucene.search.Query;
import org.apache.lucene.search.TermQuery;

/** Lucene queries for what is sought; made of terms alone, never parsed from a user's text. */
final class Queries {
  private Queries() {}

  /** Documents with any of the things in a field, of any of some topics (of all, if empty). */
  static Query any(List<Sought> sought, String field, Collection<String> topics) {
    BooleanQuery.Builder any = new BooleanQuery.Builder();
    sought.forEach(each -> any.add(one(each, field), Occur.SHOULD));
    any.setMinimumNumberShouldMatch(1);
    if (!topics.isEmpty()) {
      any.add(ofTopics(topics), Occur.FILTER);
    }
    return any.build();
  }

  /** Documents of any of some topics. */
  static Query ofTopics(Collection<String> topics) {
    BooleanQuery.Builder of = new BooleanQuery.Builder();
    topics.forEach(t -> of.add(new TermQuery(new Term(Fields.TOPIC, t)), Occur.SHOULD));
    return of.build();
  }

  /** Documents with one thing in a field; a document's best way counts. */
  static Query one(Sought sought, String field) {
    List<Query> ways = sought.ways().stream().map(way -> way(way, field)).toList();
    Query best = ways.size() == 1 ? ways.get(0) : new DisjunctionMaxQuery(ways, 0);
    return new BoostQuery(best, sought.worth());
  }

  private static Query way(Sought.Way way, String field) {
    if (way.stems().size() == 1) {
      return new BoostQuery(new TermQuery(new Term(field, way.stems().get(0))), way.boost());
    }
    BooleanQuery.Builder all = new BooleanQuery.Builder();
    way.stems().forEach(stem -> all.add(new TermQuery(new Term(field, stem)), Occur.MUST));
    return new BoostQuery(all.build(), way.boost());
  }
}
