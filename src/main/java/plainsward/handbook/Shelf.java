package plainsward.handbook;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.Term;
import org.apache.lucene.index.Terms;
import org.apache.lucene.index.TermsEnum;
import org.apache.lucene.search.IndexSearcher;
import org.apache.lucene.search.ScoreDoc;
import org.apache.lucene.search.TermQuery;
import org.apache.lucene.util.BytesRef;

/** Notes that are open for searching: the index, its synonyms, and its words for typing slips. */
final class Shelf {
  private static final int MOST_NOTES = 1_000;

  private final IndexSearcher searcher;
  private final StemIndex index;
  private final Synonyms synonyms;
  private final BitSet hidden;
  private final int noteCount;
  private final Map<Integer, Note> notes = new ConcurrentHashMap<>();
  private volatile Spellings stems;
  private volatile Spellings words;

  private Shelf(IndexReader reader, Synonyms synonyms, BitSet hidden) throws IOException {
    this.searcher = new IndexSearcher(reader);
    this.synonyms = synonyms;
    this.hidden = hidden;
    this.noteCount = reader.getDocCount(Fields.WORDS);
    searcher.setSimilarity(Fields.SIMILARITY);
    searcher.setQueryCache(null);
    this.index = new StemIndex(searcher);
  }

  static Shelf of(IndexReader reader, Synonyms synonyms) throws IOException {
    return new Shelf(reader, synonyms, new BitSet());
  }

  /** This shelf and more notes; a note of {@code own} hides the one of the same id that is here. */
  Shelf with(IndexReader own) throws IOException {
    IndexReader here = searcher.getIndexReader();
    BitSet covered = new BitSet();
    for (BytesRef id : terms(own, Fields.ID)) {
      for (ScoreDoc same : searcher.search(idQuery(id.utf8ToString()), 1).scoreDocs) {
        covered.set(same.doc + own.maxDoc());
      }
    }
    return new Shelf(new MultiReader(own, here), synonyms, covered);
  }

  static TermQuery idQuery(String id) {
    return new TermQuery(new Term(Fields.ID, id));
  }

  private static List<BytesRef> terms(IndexReader reader, String field) throws IOException {
    List<BytesRef> found = new ArrayList<>();
    Terms terms = MultiTerms.getTerms(reader, field);
    if (terms != null) {
      TermsEnum each = terms.iterator();
      while (each.next() != null) {
        found.add(BytesRef.deepCopyOf(each.term()));
      }
    }
    return found;
  }

  IndexSearcher searcher() {
    return searcher;
  }

  /** The lists of the stems. */
  StemIndex index() {
    return index;
  }

  Synonyms synonyms() {
    return synonyms;
  }

  /** The note of a document; the first thousand asked for are kept. */
  Note note(int document) throws IOException {
    Note kept = notes.get(document);
    if (kept == null) {
      kept = NoteDocuments.note(searcher.storedFields().document(document));
      if (notes.size() < MOST_NOTES) {
        notes.put(document, kept);
      }
    }
    return kept;
  }

  /** Whether the note of this document is hidden by a user's own. */
  boolean isHidden(int document) {
    return hidden.get(document);
  }

  /** How many notes name a stem. */
  int notesWith(String stem) {
    return documentsWith(Fields.WORDS, stem);
  }

  /** How many documents hold a stem in a field. */
  int documentsWith(String field, String stem) {
    return index.count(field, stem);
  }

  /** Whether any note names a stem. */
  boolean knows(String stem) {
    return notesWith(stem) > 0;
  }

  /** How much stems together tell notes apart: the sum of their inverse document frequencies. */
  double weight(List<String> stems) {
    double sum = 0;
    for (String stem : stems) {
      sum += weight(stem);
    }
    return sum;
  }

  private double weight(String stem) {
    int notes = notesWith(stem);
    return Math.log1p((noteCount - notes + 0.5) / (notes + 0.5));
  }

  /** The stems that notes hold, to compare a mistyped one with; made at first need. */
  Spellings stems() {
    Spellings made = stems;
    if (made == null) {
      try {
        List<BytesRef> terms = terms(searcher.getIndexReader(), Fields.WORDS);
        made = new Spellings(terms.stream().map(BytesRef::utf8ToString).toList());
        stems = made;
      } catch (IOException fault) {
        throw new UncheckedIOException(fault);
      }
    }
    return made;
  }

  /** The words of the synonym table, to compare a mistyped one with; made at first need. */
  Spellings words() {
    Spellings made = words;
    if (made == null) {
      made = new Spellings(synonyms.words());
      words = made;
    }
    return made;
  }
}
