package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every kind of broken file is answered by one clear sentence that names it, everything else is
 * read, and the broken file stays as it is.
 */
class BrokenFilesTest {
  private static final Path CASES = Path.of("src/test/resources/records/broken.jsonl");
  @TempDir Path home;

  /** A broken file. */
  record Case(String kind, String why, String says, byte[] bytes) {
    static Case of(String line) {
      Node node = Json.read(line.getBytes(StandardCharsets.UTF_8));
      Object text = node.get("text").value();
      byte[] bytes =
          text == null
              ? Base64.getDecoder().decode(node.get("base64").text())
              : text.toString().getBytes(StandardCharsets.UTF_8);
      return new Case(
          node.get("kind").text(), node.get("why").text(), node.get("says").text(), bytes);
    }

    @Override
    public String toString() {
      return kind + ": " + why;
    }
  }

  private static List<Case> cases(String... kinds) throws IOException {
    List<String> wanted = List.of(kinds);
    return Files.readAllLines(CASES).stream()
        .map(Case::of)
        .filter(c -> wanted.contains(c.kind()))
        .toList();
  }

  static List<Case> shelves() throws IOException {
    return cases("label", "lawn", "sprayer");
  }

  static List<Case> logs() throws IOException {
    return cases("log");
  }

  static List<Case> imports() throws IOException {
    return cases("geojson", "csv");
  }

  static List<Case> rows() throws IOException {
    return cases("csvrow");
  }

  @Test
  void thereAreAtLeastFortyKindsOfEachSortTogether() throws IOException {
    int all = shelves().size() + logs().size() + imports().size() + rows().size();
    assertEquals(Files.readAllLines(CASES).size(), all);
    assertTrue(all >= 40);
  }

  @ParameterizedTest
  @MethodSource("shelves")
  void aBrokenFileOfALabelLawnOrSprayerIsToldAndTheRestRead(Case broken) throws IOException {
    RecordBook before = fullBook();
    Path file = home.resolve(broken.kind() + "s").resolve("broken.json");
    Files.write(file, broken.bytes());
    RecordBook book = RecordBook.open(home);
    assertOneSentence(book.problems(), file.toString(), broken.says());
    assertEquals(before.labels(), book.labels());
    assertEquals(before.lawns(), book.lawns());
    assertEquals(before.sprayers(), book.sprayers());
    assertEquals(1, book.log().entries().size());
    book.save(Label.named("broken").label());
    book.save(Lawn.named("broken"));
    book.save(Sprayer.named("broken"));
    assertArrayEquals(broken.bytes(), Files.readAllBytes(file));
  }

  @ParameterizedTest
  @MethodSource("logs")
  void aBrokenLineOfTheLogIsSetAsideAndToldAndTheRestRead(Case broken) throws IOException {
    Path log = home.resolve("log.jsonl");
    byte[] whole = joined(line("first"), broken.bytes(), "\n".getBytes(UTF_8), line("last"));
    Files.write(log, whole);
    RecordBook book = RecordBook.open(home);
    assertEquals(
        List.of("first", "last"), book.log().entries().stream().map(LogEntry::id).toList());
    assertOneSentence(
        book.problems(), log.toString(), "line 2", broken.says(), "log.jsonl.damaged");
    assertArrayEquals(
        joined(broken.bytes(), "\n".getBytes(UTF_8)),
        Files.readAllBytes(home.resolve("log.jsonl.damaged")));
    assertArrayEquals(whole, Files.readAllBytes(log));
    assertEquals(1, RecordBook.open(home).problems().size());
    assertArrayEquals(
        joined(broken.bytes(), "\n".getBytes(UTF_8)),
        Files.readAllBytes(home.resolve("log.jsonl.damaged")));
  }

  @ParameterizedTest
  @MethodSource("logs")
  void aBrokenLastLineWithoutAnEndDoesNotSwallowTheNextEntry(Case broken) throws IOException {
    Files.write(home.resolve("log.jsonl"), joined(line("first"), broken.bytes()));
    RecordBook book = RecordBook.open(home);
    LogEntry next = book.append(LogEntry.of(Samples.MAY, "jug"));
    List<String> ids = RecordBook.open(home).log().entries().stream().map(LogEntry::id).toList();
    assertEquals(List.of("first", next.id()), ids);
    assertEquals(ids, book.log().entries().stream().map(LogEntry::id).toList());
    assertEquals(1, RecordBook.open(home).problems().size());
  }

  @ParameterizedTest
  @MethodSource("imports")
  void aBrokenTableOrOutlineIsRefusedWithItsPlace(Case broken) throws IOException {
    RecordBook book = fullBook();
    Path file = home.resolve("import." + broken.kind());
    Files.write(file, broken.bytes());
    RecordFault fault = assertThrows(RecordFault.class, () -> book.importLawns(file));
    assertEquals(RecordFault.Why.BROKEN, fault.why());
    assertOneSentence(List.of(fault.getMessage()), file.toString(), broken.says());
    assertEquals(1, book.lawns().size());
  }

  @ParameterizedTest
  @MethodSource("rows")
  void aBrokenRowIsToldAndTheOtherLawnsAreRead(Case broken) throws IOException {
    RecordBook book = RecordBook.open(home.resolve("book"));
    Path file = home.resolve("lawns.csv");
    Files.write(file, broken.bytes());
    Imported imported = book.importLawns(file);
    assertOneSentence(imported.problems(), file.toString(), broken.says());
    assertEquals(List.of("good"), book.lawns().stream().map(Lawn::name).toList());
  }

  @Test
  void aMegabyteWithoutALineEndIsPassedOver() throws IOException {
    byte[] noise = "x".repeat(3_000_000).getBytes(UTF_8);
    Files.write(
        home.resolve("log.jsonl"),
        joined(line("first"), noise, "\n".getBytes(UTF_8), line("last")));
    RecordBook book = RecordBook.open(home);
    assertEquals(2, book.log().entries().size());
    assertEquals(1, book.problems().size());
  }

  @Test
  void manyBrokenLinesAreToldInAFewSentences() throws IOException {
    Files.writeString(home.resolve("log.jsonl"), "broken\n".repeat(5000));
    List<String> problems = RecordBook.open(home).problems();
    assertEquals(21, problems.size());
    assertTrue(problems.get(20).contains("4980 more lines"));
  }

  @Test
  void aFolderOrAHugeFileInAFilesPlaceIsTold() throws IOException {
    Files.createDirectories(home.resolve("labels/folder.json"));
    Files.createDirectories(home.resolve("log.jsonl"));
    Files.write(home.resolve("labels/huge.json"), new byte[2_000_000]);
    RecordBook book = RecordBook.open(home);
    List<String> problems = book.problems();
    assertEquals(3, problems.size(), problems::toString);
    problems.forEach(p -> assertOneSentence(List.of(p), home.toString()));
    assertThrows(RecordFault.class, book::log);
  }

  @Test
  void twoFilesOfOneNameAreToldAndTheFirstIsRead() throws IOException {
    RecordBook book = RecordBook.open(home);
    book.save(Label.named("jug").label());
    Files.writeString(home.resolve("labels/other.json"), "{\"version\":1,\"name\":\"Jug\"}");
    assertEquals(List.of("jug"), book.labels().stream().map(Label::name).toList());
    assertOneSentence(book.problems(), "other.json", "jug.json already");
  }

  private static final java.nio.charset.Charset UTF_8 = StandardCharsets.UTF_8;

  private RecordBook fullBook() {
    RecordBook book = RecordBook.open(home);
    book.save(Samples.fullLabel("good"));
    book.save(Lawn.named("good").withArea(Samples.sqFt(4000)));
    book.save(Sprayer.named("good"));
    book.append(LogEntry.of(Samples.MAY, "good"));
    return book;
  }

  private static byte[] line(String id) {
    return (LogLine.tree(LogEntry.of(Samples.MAY, "jug").withId(id)).line() + "\n").getBytes(UTF_8);
  }

  private static byte[] joined(byte[]... parts) {
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    for (byte[] part : parts) {
      all.writeBytes(part);
    }
    return all.toByteArray();
  }

  private static void assertOneSentence(List<String> told, String... parts) {
    assertEquals(1, told.size(), told::toString);
    String sentence = told.get(0);
    for (String part : parts) {
      assertTrue(sentence.contains(part), () -> sentence + "\n  does not say: " + part);
    }
    assertTrue(sentence.endsWith(".") && !sentence.endsWith(".."), sentence);
    assertFalse(sentence.chars().anyMatch(c -> Character.isISOControl(c)), sentence);
    assertFalse(sentence.contains("Exception"), sentence);
  }
}
