package plainsward.talk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plainsward.records.RecordBook;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.units.UnitSystem;

/** What is told in a talk with a home is there in the next one, and in files of open formats. */
class RecordsTalkTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 20);

  @TempDir Path home;
  private Conversation talk;

  @BeforeEach
  void begin() {
    talk = another();
    talk.answer("the blue jug is 1.5 oz per thousand, 28 days between, rainfast in 4 hours");
    talk.answer("the front is 40 by 60 ft");
    talk.answer("Ida sprayed the front may 10 with the blue jug, 3.5 oz");
  }

  private Conversation another() {
    return new Conversation(new Setting(TODAY, UnitSystem.US, Optional.of(RecordBook.open(home))));
  }

  @Test
  void theNextTalkKnowsAllOfIt() {
    Conversation next = another();
    assertTrue(text(next, "what did I tell you about the blue jug?").contains("4 h without rain"));
    assertTrue(text(next, "when can I spray the front again?").contains("June 7, 2026"));
    assertTrue(text(next, "what did we put on the front in May?").contains("by Ida"));
    assertEquals(Kind.DECLINE, next.answer("how much of the blue jug for the front").kind());
    assertEquals(
        "3.6 fl oz",
        next.answer("how much of the blue jug for the front for june 20")
            .figure("product_total")
            .orElseThrow()
            .shown());
  }

  @Test
  void whatIsTakenBackIsTakenOffTheDisk() {
    talk.answer("sprayed the front with the blue jug may 19");
    talk.answer("scratch that");
    talk.answer("the red jug is 2 oz per thousand, rainfast in 2 hours");
    talk.answer("scratch that");
    talk.answer("it says no watering for 24 hours");
    Conversation next = another();
    assertTrue(text(next, "when can I spray the front again?").contains("June 7, 2026"));
    assertEquals(1, RecordBook.open(home).labels().size(), "the red jug was taken back");
  }

  /** Bare ounces stay in doubt however long they lie on the disk; said fluid ounces do not. */
  @ParameterizedTest
  @ValueSource(strings = {"oz", "fl oz"})
  void whatWasTakenForAnOunceIsToldInTheNextTalkAsWell(String unit) {
    talk.answer("the red jug is 2 " + unit + " per thousand, rainfast in 2 hours");
    talk.answer("the tan jug is a concentrate, for clover 2 " + unit + " per thousand");
    for (String jug : List.of("red", "tan")) {
      Reply dose = another().answer("how much " + jug + " jug for 4000 sq ft");
      boolean doubted = dose.cautions().stream().anyMatch(c -> c.id().equals("ounce-kind"));
      assertEquals("8 fl oz", dose.figure("product_total").orElseThrow().shown());
      assertEquals(unit.equals("oz"), doubted, jug);
    }
  }

  @Test
  void noneAYearIsKeptOnTheDisk() {
    talk.answer("the red jug is 2 oz per thousand, 0 applications a year, rainfast in 2 hours");
    assertEquals(Kind.DECLINE, another().answer("how much red jug for 4000 sq ft").kind());
  }

  @Test
  void aPowderIsWeighedInTheNextTalkAsWell() {
    talk.answer("the green box is a powder, 0.5 oz per thousand, rainfast in 2 hours");
    assertEquals(
        "[oz_av]",
        another()
            .answer("how much green box for 4000 sq ft")
            .figure("product_total")
            .flatMap(f -> f.value())
            .orElseThrow()
            .unit()
            .code());
  }

  @Test
  void whatIsForgottenStaysForgotten() {
    talk.answer("forget the blue jug");
    assertTrue(RecordBook.open(home).labels().isEmpty());
    assertEquals(1, RecordBook.open(home).log().entries().size());
  }

  @Test
  void theLogIsWrittenAndNothingIsOverwritten() throws IOException {
    Reply first = talk.answer("export the log as csv");
    String written = Files.readString(home.resolve("log.csv"));
    assertEquals(Kind.DONE, first.kind());
    assertTrue(first.headline().contains(home.resolve("log.csv").toString()));
    assertTrue(written.contains("2026-05-10,front,blue jug,3.5,[foz_us]"));
    talk.answer("sprayed the back with the blue jug may 12");
    assertTrue(text(talk, "export the log as csv").contains("log-2.csv"));
    assertEquals(written, Files.readString(home.resolve("log.csv")));
    assertTrue(text(talk, "export the log as markdown").contains("log.md"));
    assertTrue(text(talk, "put the next dates in a calendar file").contains("next-dates.ics"));
    assertTrue(Files.readString(home.resolve("next-dates.ics")).contains("DATE:20260607"));
    assertTrue(text(talk, "save everything as json").contains("everything.json"));
    assertTrue(text(talk, "export the log for the back as csv to back.csv").contains("1 spraying"));
    assertFalse(Files.readString(home.resolve("back.csv")).contains("front"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../log.csv",
        "/log.csv",
        "sub/log.csv",
        "..\\log.csv",
        ".log.csv",
        "con.csv",
        "~/log.csv",
        "log.json"
      })
  void aFileNameThatLeadsElsewhereIsNotTaken(String name) throws IOException {
    Reply reply = talk.answer("export the log as csv to " + name);
    assertEquals(Kind.ASK, reply.kind(), reply.headline());
    try (Stream<Path> files = Files.list(home)) {
      assertTrue(files.noneMatch(f -> f.toString().endsWith(".csv")));
    }
  }

  @Test
  void lawnsAreReadFromATableInTheHome() throws IOException {
    Files.writeString(home.resolve("route.csv"), "name,area,unit\nHill,5400,sq ft\nDale,x,sq ft\n");
    String told = text(talk, "read the lawns from route.csv");
    assertTrue(told.contains("1 lawn: Hill"), told);
    assertTrue(told.contains("line 3"), told);
    assertEquals(
        "8.1 fl oz",
        talk.answer("how much of the blue jug for the hill lawn")
            .figure("product_total")
            .orElseThrow()
            .shown());
    assertTrue(text(talk, "read the lawns from route.csv").contains("In place of"));
    assertEquals(Kind.DECLINE, talk.answer("read the lawns from nowhere.csv").kind());
    assertEquals(Kind.ASK, talk.answer("read the lawns from ../route.csv").kind());
  }

  @Test
  void withoutAHomeNoFileIsTouched() {
    Conversation loose = new Conversation(new Setting(TODAY, UnitSystem.US));
    loose.answer("sprayed the front with the blue jug may 10");
    assertEquals(Kind.DECLINE, loose.answer("export the log as csv").kind());
  }

  @Test
  void anotherCallerHearsNothingOfWhatIsSavedUnlessItIsNamed() {
    Conversation desk = another();
    desk.answer("new caller");
    assertEquals(Kind.ASK, desk.answer("when can I spray again?").kind());
    assertFalse(text(desk, "show me the log").contains("Ida"));
  }

  private static String text(Conversation talk, String turn) {
    Reply reply = talk.answer(turn);
    return reply.headline() + "\n" + String.join("\n", reply.body());
  }
}
