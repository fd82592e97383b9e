package plainsward.handbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicLong;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.LeafReaderContext;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.NumericDocValues;
import org.apache.lucene.index.PostingsEnum;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.CollectionStatistics;
import org.apache.lucene.search.DocIdSetIterator;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.TermStatistics;
import org.apache.lucene.search.similarities.Similarity.SimScorer;
import org.apache.lucene.util.BytesRef;

/**
 * The lists of the Lucene index, scored by its similarity and kept in memory once they were asked
 * for: people's questions are made of the same few thousand words, and going through the index anew
 * for each was most of the time that an answer took. What is kept is bounded; the rest is read
 * anew.
 */
final class StemIndex implements NoteLists {
  private static final int LONG = 8_000;
  private static final int MOST_NOTES = 1_000;
  private static final long MOST_KEPT = 6_000_000;

  private final IndexSearcher searcher;
  private final Map<String, Map<String, Postings>> kept;
  private final Map<Integer, Note> notes = new ConcurrentHashMap<>();
  private final Map<String, BitSet> topics = new ConcurrentHashMap<>();
  private final AtomicLong room = new AtomicLong(MOST_KEPT);
  private volatile int[] places;

  StemIndex(IndexReader reader) {
    this.searcher = new IndexSearcher(reader);
    searcher.setSimilarity(Fields.SIMILARITY);
    searcher.setQueryCache(null);
    this.kept = new HashMap<>();
    kept.put(Fields.WORDS, new ConcurrentHashMap<>());
    kept.put(Fields.ASKED, new ConcurrentHashMap<>());
  }

  @Override
  public int size() {
    return searcher.getIndexReader().maxDoc();
  }

  @Override
  public Postings postings(String field, String stem) {
    Map<String, Postings> known = kept.get(field);
    Postings found = known.get(stem);
    if (found == null) {
      found = read(new Term(field, stem));
      if (room.addAndGet(-1 - found.size()) > 0) {
        known.put(stem, found);
      }
    }
    return found;
  }

  @Override
  public int count(String field, String stem) {
    Postings known = kept.get(field).get(stem);
    return known != null ? known.size() : count(new Term(field, stem));
  }

  private int count(Term term) {
    try {
      return searcher.getIndexReader().docFreq(term);
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  @Override
  public void raise(String field, String stem, Places wanted, float boost, float[] best) {
    if (count(field, stem) <= LONG || kept.get(field).containsKey(stem)) {
      postings(field, stem).raise(wanted, boost, best);
    } else {
      read(new Term(field, stem), wanted.documents()).raise(wanted, boost, best);
    }
  }

  private SimScorer scorer(Term term, int count) throws IOException {
    CollectionStatistics all = searcher.collectionStatistics(term.field());
    // How often a stem stands in all notes together is not asked by BM25: any count from the
    // number of documents up will do.
    TermStatistics of = new TermStatistics(new BytesRef(term.text()), count, count);
    return searcher.getSimilarity().scorer(1, all, of);
  }

  /** Those of some documents, which are in rising order, that hold a term that some hold. */
  private Postings read(Term term, int[] wanted) {
    try {
      SimScorer scorer = scorer(term, count(term));
      int[] documents = new int[wanted.length];
      float[] scores = new float[wanted.length];
      int n = 0;
      int next = 0;
      for (LeafReaderContext leaf : searcher.getLeafContexts()) {
        int end = leaf.docBase + leaf.reader().maxDoc();
        PostingsEnum postings = leaf.reader().postings(term, PostingsEnum.FREQS);
        NumericDocValues norms = leaf.reader().getNormValues(term.field());
        for (; next < wanted.length && wanted[next] < end; next++) {
          int here = wanted[next] - leaf.docBase;
          if (postings != null && postings.docID() < here) {
            postings.advance(here);
          }
          if (postings != null && postings.docID() == here) {
            long norm = norms != null && norms.advanceExact(here) ? norms.longValue() : 1;
            documents[n] = wanted[next];
            scores[n++] = scorer.score(postings.freq(), norm);
          }
        }
      }
      return new Postings(Arrays.copyOf(documents, n), Arrays.copyOf(scores, n));
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  private Postings read(Term term) {
    try {
      int count = count(term);
      if (count == 0) {
        return Postings.NONE;
      }
      SimScorer scorer = scorer(term, count);
      int[] documents = new int[count];
      float[] scores = new float[count];
      int n = 0;
      for (LeafReaderContext leaf : searcher.getLeafContexts()) {
        n = read(leaf, term, scorer, n, documents, scores);
      }
      return new Postings(Arrays.copyOf(documents, n), Arrays.copyOf(scores, n));
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  private static int read(
      LeafReaderContext leaf, Term term, SimScorer scorer, int from, int[] into, float[] scores)
      throws IOException {
    PostingsEnum postings = leaf.reader().postings(term, PostingsEnum.FREQS);
    if (postings == null) {
      return from;
    }
    NumericDocValues norms = leaf.reader().getNormValues(term.field());
    int n = from;
    for (int doc = postings.nextDoc();
        doc != DocIdSetIterator.NO_MORE_DOCS;
        doc = postings.nextDoc()) {
      long norm = norms != null && norms.advanceExact(doc) ? norms.longValue() : 1;
      into[n] = leaf.docBase + doc;
      scores[n++] = scorer.score(postings.freq(), norm);
    }
    return n;
  }

  private BitSet ofTopic(String topic) {
    BitSet known = topics.get(topic);
    if (known == null) {
      known = readTopic(new Term(Fields.TOPIC, topic));
      topics.put(topic, known);
    }
    return known;
  }

  @Override
  public Optional<BitSet> ofTopics(Set<String> codes) {
    if (codes.size() == 1) {
      return Optional.of(ofTopic(codes.iterator().next()));
    }
    BitSet all = new BitSet();
    codes.forEach(code -> all.or(ofTopic(code)));
    return codes.isEmpty() ? Optional.empty() : Optional.of(all);
  }

  private BitSet readTopic(Term term) {
    try {
      BitSet found = new BitSet(size());
      for (LeafReaderContext leaf : searcher.getLeafContexts()) {
        PostingsEnum postings = leaf.reader().postings(term, PostingsEnum.NONE);
        while (postings != null && postings.nextDoc() != DocIdSetIterator.NO_MORE_DOCS) {
          found.set(leaf.docBase + postings.docID());
        }
      }
      return found;
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  @Override
  public int place(int document) {
    int[] known = places;
    if (known == null) {
      known = readPlaces();
      places = known;
    }
    return known[document];
  }

  private int[] readPlaces() {
    try {
      int[] read = new int[size()];
      for (LeafReaderContext leaf : searcher.getLeafContexts()) {
        NumericDocValues values = leaf.reader().getNumericDocValues(Fields.PLACE);
        while (values != null && values.nextDoc() != DocIdSetIterator.NO_MORE_DOCS) {
          read[leaf.docBase + values.docID()] = (int) values.longValue();
        }
      }
      return read;
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  /** The note of a document; the first thousand asked for are kept. */
  @Override
  public Note note(int document) {
    Note known = notes.get(document);
    if (known == null) {
      try {
        known = NoteDocuments.note(searcher.storedFields().document(document));
      } catch (IOException fault) {
        throw unreadable(fault);
      }
      if (notes.size() < MOST_NOTES) {
        notes.put(document, known);
      }
    }
    return known;
  }

  @Override
  public OptionalInt find(String id, int from) {
    try {
      for (LeafReaderContext leaf : searcher.getLeafContexts()) {
        PostingsEnum with = leaf.reader().postings(new Term(Fields.ID, id), PostingsEnum.NONE);
        while (with != null && with.nextDoc() != DocIdSetIterator.NO_MORE_DOCS) {
          if (leaf.docBase + with.docID() >= from) {
            return OptionalInt.of(leaf.docBase + with.docID());
          }
        }
      }
      return OptionalInt.empty();
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  @Override
  public Collection<String> stems() {
    return terms(Fields.WORDS);
  }

  /** The terms of a field. */
  List<String> terms(String field) {
    try {
      List<String> found = new ArrayList<>();
      Terms terms = MultiTerms.getTerms(reader(), field);
      TermsEnum each = terms == null ? TermsEnum.EMPTY : terms.iterator();
      while (each.next() != null) {
        found.add(each.term().utf8ToString());
      }
      return found;
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  @Override
  public int notes() {
    try {
      return reader().getDocCount(Fields.WORDS);
    } catch (IOException fault) {
      throw unreadable(fault);
    }
  }

  @Override
  public IndexReader reader() {
    return searcher.getIndexReader();
  }

  private static UncheckedIOException unreadable(IOException fault) {
    return new UncheckedIOException("The handbook's index can't be read", fault);
  }
}
