package plainsward.handbook;

import java.io.IOException;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.Set;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.ByteBuffersDirectory;

/**
 * Measures searching, by hand: {@code SearchBenchmark [NOTES]}, 100,000 made-up notes unless
 * another number is given, 0 for the shipped ones. Words are drawn by Zipf's law, the commonest
 * being the real words of the synonym table, so that questions in it meet long lists.
 */
final class SearchBenchmark {
  private static final Path SYNONYMS = Path.of("corpus/tables/synonyms.json");
  private static final int VOCABULARY = 30_000;
  private static final int WARM_UP = 1_500;
  private static final int MEASURED = 3_000;

  private final Random random = new Random(7);
  private final List<String> vocabulary = new ArrayList<>();
  private final double[] chance = new double[VOCABULARY];

  private SearchBenchmark(Synonyms synonyms) {
    vocabulary.addAll(synonyms.words());
    while (vocabulary.size() < VOCABULARY) {
      vocabulary.add(inventedWord());
    }
    double sum = 0;
    for (int i = 0; i < VOCABULARY; i++) {
      sum += 1.0 / (i + 10);
      chance[i] = sum;
    }
  }

  /** Runs it and prints the times. */
  public static void main(String[] args) throws IOException {
    int notes = args.length > 0 ? Integer.parseInt(args[0]) : 100_000;
    Synonyms synonyms = new Synonyms(SynonymTable.read(SYNONYMS).packed());
    SearchBenchmark benchmark = new SearchBenchmark(synonyms);
    Handbook book = notes == 0 ? Handbook.shipped() : benchmark.book(notes, synonyms);
    benchmark.measure(book, notes == 0 ? wordings() : benchmark.questions(), System.out);
  }

  private Handbook book(int notes, Synonyms synonyms) throws IOException {
    ByteBuffersDirectory index = new ByteBuffersDirectory();
    try (NoteIndexer indexer = new NoteIndexer(index)) {
      for (int i = 0; i < notes; i++) {
        indexer.add(note(i));
      }
    }
    StemIndex lists = new StemIndex(DirectoryReader.open(ArrayDirectory.copyOf(index)));
    Shelf shelf = Shelf.of(lists, synonyms);
    return new Handbook(() -> shelf, List.of(), Set.of());
  }

  private Note note(int number) {
    List<String> questions = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      questions.add(text(9));
    }
    return new Note(
        "note-" + number,
        text(6),
        List.of("mix"),
        List.of(text(1), text(1), text(1), text(2)),
        text(20),
        List.of(),
        List.of("from memory"),
        questions,
        text(130));
  }

  private void measure(Handbook book, List<String> asked, PrintStream out) {
    for (int i = 0; i < WARM_UP; i++) {
      book.search(asked.get(i % asked.size()), Search.first(5));
    }
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    long[] times = new long[MEASURED];
    for (int i = 0; i < MEASURED; i++) {
      long start = threads.getCurrentThreadCpuTime();
      book.search(asked.get(i % asked.size()), Search.first(5));
      times[i] = threads.getCurrentThreadCpuTime() - start;
    }
    Arrays.sort(times);
    out.printf(
        Locale.ROOT,
        "processor time of a search: median %.2f ms, p90 %.2f ms, p99 %.2f ms, worst %.2f ms%n",
        times[MEASURED / 2] / 1e6,
        times[MEASURED * 9 / 10] / 1e6,
        times[MEASURED * 99 / 100] / 1e6,
        times[MEASURED - 1] / 1e6);
  }

  /** Real wordings where there are some, and made-up ones of 4 to 24 words, some mistyped. */
  private List<String> questions() {
    List<String> asked = new ArrayList<>(wordings());
    for (int i = 0; i < 400; i++) {
      asked.add(text(4 + random.nextInt(20)) + (i % 2 == 0 ? " dandylion" : " sprayred"));
    }
    return asked;
  }

  private static List<String> wordings() {
    try {
      return Files.readAllLines(Path.of("src/test/resources/handbook/wordings.jsonl")).stream()
          .map(line -> line.split("\"")[3])
          .toList();
    } catch (IOException none) {
      return List.of();
    }
  }

  private String text(int words) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < words; i++) {
      int at = Arrays.binarySearch(chance, random.nextDouble() * chance[VOCABULARY - 1]);
      text.append(i == 0 ? "" : " ").append(vocabulary.get(at < 0 ? -at - 1 : at));
    }
    return text.toString();
  }

  private String inventedWord() {
    StringBuilder word = new StringBuilder();
    for (int i = 3 + random.nextInt(6); i > 0; i--) {
      word.append((char) ('a' + random.nextInt(26)));
    }
    return word.toString();
  }
}
