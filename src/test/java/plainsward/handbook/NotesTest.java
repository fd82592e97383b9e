package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import plainsward.ReadingGrade;

/** What every note of the handbook must keep to. A failure names each note and what is wrong. */
class NotesTest {
  private static final Path FOLDER = Path.of("corpus/notes");
  private static final Path LISTS = Path.of("src/test/resources/handbook");
  private static final int FEWEST_NOTES = 220;
  private static final int FEWEST_WORDS = 60;
  private static final int MOST_WORDS = 200;
  private static final int MOST_ANSWER_WORDS = 45;
  private static final double HARDEST_GRADE = 8;

  private static final Pattern SAFE =
      Pattern.compile("\\b(is|are|was|be|it's|they're|now|totally|perfectly) safe\\b");
  private static final Pattern LINK = Pattern.compile("\\[[^\\]]*\\]\\(([^)]*)\\)");
  private static final String NUMBER = "\\d+([./]\\d+)?( to |-|–)?(\\d+([./]\\d+)?)? ?";
  private static final Pattern RATE =
      Pattern.compile(
          NUMBER
              + "(fl oz|fluid ounces?|oz|ounces?|ml|milliliters?|tsp|teaspoons?|tbsp|tablespoons?"
              + "|cups?|pints?|pt|quarts?|qt|g|grams?|l|liters?) ?(per|/|an?|to the|for (each|every))"
              + " ?(1,?000|acre|gal|sq|square|100|ha\\b|hectare|m2|lit)");
  private static final Pattern PERCENT_MIX =
      Pattern.compile(NUMBER + "(%|percent) (solution|mix|spray)");

  private static final List<Note> NOTES = new ArrayList<>();
  private static final List<String> BROKEN = new ArrayList<>();

  @BeforeAll
  static void readAll() throws IOException {
    NOTES.clear();
    BROKEN.clear();
    for (Path file : NoteFolder.files(FOLDER)) {
      try {
        NOTES.add(NoteReader.read(file));
      } catch (NoteFault fault) {
        BROKEN.add(fault.getMessage());
      }
    }
  }

  @Test
  void everyNoteIsWellFormed() {
    assertEquals(List.of(), BROKEN);
  }

  @Test
  void thereAreEnoughNotes() {
    assertTrue(NOTES.size() >= FEWEST_NOTES, () -> NOTES.size() + " notes");
  }

  @Test
  void idsAreUnique() {
    assertEquals(Map.of(), repeated(note -> List.of(note.id())));
  }

  @Test
  void titlesAreUnique() {
    assertEquals(Map.of(), repeated(note -> List.of(plain(note.title()))));
  }

  @Test
  void sampleQuestionsAreUnique() {
    assertEquals(
        Map.of(), repeated(note -> note.questions().stream().map(NotesTest::plain).toList()));
  }

  @Test
  void everyNoteSaysWhatItIsAboutAndHowItIsAskedFor() {
    assertNone(note -> note.about().isEmpty(), note -> "no 'about'");
    assertNone(note -> note.questions().isEmpty(), note -> "no sample question");
  }

  @Test
  void bodiesAreOfGoodLength() {
    assertNone(
        note -> words(note.body()) < FEWEST_WORDS || words(note.body()) > MOST_WORDS,
        note -> words(note.body()) + " words in the body");
  }

  @Test
  void answersAreShort() {
    assertNone(
        note -> words(note.answer()) > MOST_ANSWER_WORDS,
        note -> words(note.answer()) + " words in the answer");
  }

  @Test
  void topicsAndCautionsAreOfTheReplyContract() throws IOException {
    Set<String> topics = Set.copyOf(Files.readAllLines(LISTS.resolve("topics.txt")));
    Set<String> cautions = Set.copyOf(Files.readAllLines(LISTS.resolve("cautions.txt")));
    assertNone(note -> !topics.containsAll(note.topics()), note -> "topics " + note.topics());
    assertNone(
        note -> !cautions.containsAll(note.cautions()), note -> "cautions " + note.cautions());
  }

  @Test
  void bodiesReadEasily() {
    assertNone(
        note -> ReadingGrade.of(note.body()) > HARDEST_GRADE,
        note -> String.format(Locale.ROOT, "grade %.1f", ReadingGrade.of(note.body())));
  }

  @Test
  void noNoteGivesARateOfAProduct() {
    assertNone(note -> !found(RATE, note).isEmpty(), note -> "rate " + found(RATE, note));
    assertNone(
        note -> !found(PERCENT_MIX, note).isEmpty(), note -> "rate " + found(PERCENT_MIX, note));
  }

  @Test
  void noNoteCallsAnythingSafe() {
    assertNone(note -> !found(SAFE, note).isEmpty(), note -> "says " + found(SAFE, note));
  }

  @Test
  void linksLeadToNotes() {
    Set<String> ids = new HashSet<>();
    NOTES.forEach(note -> ids.add(note.id()));
    assertNone(
        note ->
            LINK.matcher(note.body())
                .results()
                .map(m -> m.group(1).replaceFirst("\\.md$", ""))
                .anyMatch(to -> !to.startsWith("https://") && !ids.contains(to)),
        note -> "a link that leads nowhere");
  }

  private static void assertNone(Predicate<Note> fault, Function<Note, String> what) {
    List<String> faults =
        NOTES.stream().filter(fault).map(note -> note.id() + ": " + what.apply(note)).toList();
    assertTrue(faults.isEmpty(), () -> "\n" + String.join("\n", faults));
  }

  private static Map<String, List<String>> repeated(Function<Note, List<String>> keys) {
    Map<String, List<String>> byKey = new HashMap<>();
    for (Note note : NOTES) {
      keys.apply(note)
          .forEach(key -> byKey.computeIfAbsent(key, k -> new ArrayList<>()).add(note.id()));
    }
    byKey.values().removeIf(ids -> ids.size() < 2);
    return byKey;
  }

  private static String found(Pattern pattern, Note note) {
    String text = (note.answer() + "\n" + note.body()).toLowerCase(Locale.ROOT);
    Matcher match = pattern.matcher(text);
    return match.find() ? "'" + match.group() + "'" : "";
  }

  private static String plain(String text) {
    return String.join(" ", Words.of(text));
  }

  private static int words(String text) {
    return text.strip().split("\\s+").length;
  }
}
