package plainsward.handbook;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plainsward.trade.ByteMaker;
import plainsward.trade.PackedWords;
import plainsward.trade.Row;
import plainsward.trade.RowPacker;

/** Packs the lists of a Lucene index of notes, scored by it, as {@link PackedLists} reads them. */
final class ListMaker {
  private final StemIndex index;

  ListMaker(StemIndex index) {
    this.index = index;
  }

  byte[] packed() {
    ByteMaker out = new ByteMaker(PackedLists.PARTS);
    TreeSet<String> words = new TreeSet<>(index.terms(Fields.WORDS));
    TreeSet<String> stems = new TreeSet<>(words);
    stems.addAll(index.terms(Fields.ASKED));
    out.part(PackedWords.packed(numbers(stems)));
    for (String field : List.of(Fields.WORDS, Fields.ASKED)) {
      List<byte[]> lists = new ArrayList<>();
      stems.forEach(stem -> lists.add(list(index.postings(field, stem))));
      put(out, lists);
    }
    List<String> topics = index.terms(Fields.TOPIC);
    out.part(PackedWords.packed(numbers(topics)));
    List<byte[]> ofTopics = new ArrayList<>();
    topics.forEach(topic -> ofTopics.add(list(index.ofTopics(Set.of(topic)).orElseThrow())));
    put(out, ofTopics);
    Map<String, Integer> ids = new TreeMap<>();
    out.part();
    out.two(index.size());
    for (int i = 0; i < index.size(); i++) {
      int place = index.place(i);
      if (place <= 0) {
        ids.put(index.note(i).id(), i);
      }
      out.one(place + PackedLists.LEAST_PLACE);
      out.two(ids.size() - 1);
    }
    out.part(PackedWords.packed(ids));
    out.part();
    out.two(ids.size());
    out.part();
    words.forEach(out::line);
    return out.all();
  }

  private static Map<String, Integer> numbers(Iterable<String> texts) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    texts.forEach(text -> numbers.put(text, numbers.size()));
    return numbers;
  }

  /** Where each list begins, and the lists. */
  private static void put(ByteMaker out, List<byte[]> lists) {
    out.part();
    int at = out.size() + 3 * lists.size();
    for (byte[] list : lists) {
      out.three(at);
      at += list.length;
    }
    lists.forEach(out::bytes);
  }

  private static byte[] list(Postings postings) {
    ByteMaker out = new ByteMaker(0);
    out.two(postings.size());
    for (int i = 0; i < postings.size(); i++) {
      out.two(postings.document(i));
    }
    for (int i = 0; i < postings.size(); i++) {
      out.four(Float.floatToIntBits(postings.score(i)));
    }
    return out.all();
  }

  private static byte[] list(BitSet documents) {
    ByteMaker out = new ByteMaker(0);
    out.two(documents.cardinality());
    documents.stream().forEach(out::two);
    return out.all();
  }

  /** The notes as rows, in the order of their documents, by the file that they go into. */
  List<byte[]> texts() {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; i < index.size(); i++) {
      if (index.place(i) <= 0) {
        rows.add(NoteRows.row(index.note(i), rows.size()));
      }
    }
    List<byte[]> files = new ArrayList<>();
    for (int from = 0; from < rows.size(); from += NotePack.NOTES_OF_FILE) {
      int to = Math.min(rows.size(), from + NotePack.NOTES_OF_FILE);
      files.add(RowPacker.packed(rows.subList(from, to)));
    }
    return files;
  }
}
