package plainsward.handbook;

import java.util.BitSet;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.lucene.index.IndexReader;
import plainsward.trade.ByteReader;
import plainsward.trade.PackedRows;
import plainsward.trade.PackedWords;
import plainsward.trade.Row;

/**
 * The lists of the shipped notes as the build took them out of the Lucene index, with the scores of
 * its similarity: opening that index takes longer than an answer does. Its bytes have these parts:
 * the stems by number; for each of the two fields where each stem's list begins, and the lists
 * (their length, the documents, the scores); the topics by number, and the like lists of documents
 * alone; how many documents there are, and of each its place and its note's number; the documents
 * by the notes' ids; how many notes there are; the stems that notes hold, a line each. What was
 * asked for once is kept; it is little, and two threads may both make it, since it is alike.
 */
final class PackedLists implements NoteLists {
  /** The most documents that can be packed. */
  static final int MOST = 65_535;

  /** The parts of the bytes. */
  static final int PARTS = 9;

  /** Added to a place to keep it above 0: no note has more questions. */
  static final int LEAST_PLACE = 127;

  private static final int OF_DOCUMENT = 3;
  private static final int MOST_KEPT = 20_000;

  /** The lists of a stem: who holds it in the note as a whole, and in a sample question. */
  private record Held(Postings words, Postings asked) {
    static final Held BY_NONE = new Held(Postings.NONE, Postings.NONE);
  }

  private final byte[] bytes;
  private final int end;
  private final PackedWords stems;
  private final PackedWords topics;
  private final PackedWords ids;
  private final Map<String, Held> held = new ConcurrentHashMap<>();
  private final BitSet[] ofTopics;
  private final int documents;
  private final int size;
  private final Note[] notes;
  private final Map<Integer, List<Row>> files = new ConcurrentHashMap<>();

  PackedLists() {
    byte[] packed = NotePack.bytes(NotePack.LISTS);
    bytes = packed;
    end = packed.length;
    stems = new PackedWords(packed, part(0));
    topics = new PackedWords(packed, part(3));
    ofTopics = new BitSet[lists(4)];
    documents = part(5) + 2;
    size = ByteReader.two(bytes, part(5));
    ids = new PackedWords(packed, part(6));
    notes = new Note[ByteReader.two(bytes, part(7))];
  }

  private int part(int number) {
    return ByteReader.three(bytes, 3 * number);
  }

  /** How many lists a part has: the first begins behind what says where each begins. */
  private int lists(int part) {
    return (ByteReader.three(bytes, part(part)) - part(part)) / 3;
  }

  /** Where a list of a part begins. */
  private int list(int part, int number) {
    return ByteReader.three(bytes, part(part) + 3 * number);
  }

  @Override
  public int size() {
    return size;
  }

  @Override
  public int notes() {
    return notes.length;
  }

  @Override
  public Postings postings(String field, String stem) {
    Held known = held.get(stem);
    if (known == null) {
      int number = stems.find(stem);
      known =
          number == PackedWords.NONE
              ? Held.BY_NONE
              : new Held(read(list(1, number)), read(list(2, number)));
      if (held.size() < MOST_KEPT) {
        held.put(stem, known);
      }
    }
    return field.equals(Fields.WORDS) ? known.words : known.asked;
  }

  private Postings read(int list) {
    int count = ByteReader.two(bytes, list);
    int[] documents = new int[count];
    float[] scores = new float[count];
    int at = list + 2;
    for (int i = 0; i < count; i++) {
      documents[i] = ByteReader.two(bytes, at + 2 * i);
    }
    at += 2 * count;
    for (int i = 0; i < count; i++) {
      scores[i] = Float.intBitsToFloat(ByteReader.four(bytes, at + 4 * i));
    }
    return new Postings(documents, scores);
  }

  @Override
  public int count(String field, String stem) {
    return postings(field, stem).size();
  }

  @Override
  public void raise(String field, String stem, Places wanted, float boost, float[] best) {
    postings(field, stem).raise(wanted, boost, best);
  }

  @Override
  public Optional<BitSet> ofTopics(Set<String> codes) {
    BitSet all = new BitSet(size);
    for (String code : codes) {
      int number = topics.find(code);
      if (number != PackedWords.NONE) {
        all.or(ofTopic(number));
      }
    }
    return codes.isEmpty() ? Optional.empty() : Optional.of(all);
  }

  private BitSet ofTopic(int number) {
    BitSet known = ofTopics[number];
    if (known == null) {
      int list = list(4, number);
      known = new BitSet(size);
      for (int i = 0; i < ByteReader.two(bytes, list); i++) {
        known.set(ByteReader.two(bytes, list + 2 + 2 * i));
      }
      ofTopics[number] = known;
    }
    return known;
  }

  private int document(int number) {
    return documents + OF_DOCUMENT * number;
  }

  @Override
  public int place(int document) {
    return ByteReader.one(bytes, document(document)) - LEAST_PLACE;
  }

  @Override
  public Note note(int document) {
    int number = ByteReader.two(bytes, document(document) + 1);
    if (notes[number] == null) {
      int file = number / NotePack.NOTES_OF_FILE;
      List<Row> rows = files.get(file);
      if (rows == null) {
        String name = NotePack.texts(file);
        rows = PackedRows.of(name, NotePack.bytes(name));
        files.put(file, rows);
      }
      notes[number] = NoteRows.note(rows.get(number % NotePack.NOTES_OF_FILE));
    }
    return notes[number];
  }

  @Override
  public OptionalInt find(String id, int from) {
    int document = ids.find(id);
    return document < from ? OptionalInt.empty() : OptionalInt.of(document);
  }

  @Override
  public Collection<String> stems() {
    return ByteReader.lines(bytes, part(8), end);
  }

  @Override
  public IndexReader reader() {
    return ShippedIndex.reader();
  }
}
