package plainsward.records;

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
import org.junit.jupiter.api.Named;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainsward.units.Quantity;

/** The book does the same in a folder and in memory. */
class RecordBookTest {
  @TempDir static Path folder;
  private static int books;

  static Stream<Named<RecordBook>> books() {
    return Stream.of(
        Named.of("in a folder", RecordBook.open(folder.resolve("new/home" + books++))),
        Named.of("in memory", RecordBook.inMemory()));
  }

  @ParameterizedTest
  @MethodSource("books")
  void startsEmpty(RecordBook book) {
    assertTrue(book.labels().isEmpty());
    assertTrue(book.lawns().isEmpty());
    assertTrue(book.sprayers().isEmpty());
    assertTrue(book.log().entries().isEmpty());
    assertTrue(book.undoLast().isEmpty());
    assertTrue(book.problems().isEmpty());
    assertFalse(book.forgetLabel("none"));
  }

  @ParameterizedTest
  @MethodSource("books")
  void givesBackALabelWithEveryFieldAsItWasSaved(RecordBook book) {
    Label label = Samples.fullLabel("Blue jug");
    book.save(label);
    assertEquals(List.of(label), book.labels());
    assertEquals(Optional.of(label), book.label("  blue  JUG "));
  }

  @ParameterizedTest
  @MethodSource("books")
  void keepsOneThingOfAName(RecordBook book) {
    book.save(Label.named("Blue jug").label());
    book.save(Label.named("blue jug").applicationsPerYear(3).label());
    assertEquals(1, book.labels().size());
    assertEquals(Optional.of(3), book.labels().get(0).season().applications());
  }

  @ParameterizedTest
  @MethodSource("books")
  void keepsNamesApartThatWouldShareAFileName(RecordBook book) {
    List<String> names = List.of("blue jug", "blue-jug", "blue/jug", "草", "芝生", "con", "../up");
    names.forEach(name -> book.save(Label.named(name).label()));
    assertEquals(
        names.stream().sorted().toList(),
        book.labels().stream().map(Label::name).sorted().toList());
  }

  @ParameterizedTest
  @MethodSource("books")
  void forgetsWhatItIsToldToForget(RecordBook book) {
    book.save(Label.named("jug").label());
    book.save(Lawn.named("front"));
    book.save(Sprayer.named("backpack"));
    assertTrue(book.forgetLabel("JUG"));
    assertTrue(book.forgetLawn("front"));
    assertTrue(book.forgetSprayer("backpack"));
    assertTrue(book.labels().isEmpty() && book.lawns().isEmpty() && book.sprayers().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("books")
  void givesBackLawnsAndSprayersAsTheyWereSaved(RecordBook book) {
    Lawn lawn =
        Lawn.named("front")
            .withPiece("strip", Samples.sqFt(500))
            .withPiece("main", Samples.sqFt(2500))
            .withGrass("tall fescue")
            .withNotes("steep")
            .withTrees(true)
            .withWaterNear(false);
    Sprayer sprayer =
        Sprayer.named("backpack")
            .withTank(Quantity.of("4", "[gal_us]"))
            .withSprayRate(Quantity.of("1.1", "[gal_us]/(1000.[sft_i])"), Samples.MAY)
            .withHeld("blue jug", Samples.MAY);
    book.save(lawn);
    book.save(sprayer);
    assertEquals(List.of(lawn), book.lawns());
    assertEquals(List.of(sprayer), book.sprayers());
    assertEquals(Samples.sqFt(3000), book.lawn("front").orElseThrow().area().orElseThrow());
    assertTrue(book.lawn("front").orElseThrow().vegetablesNear().isEmpty());
  }

  @ParameterizedTest
  @MethodSource("books")
  void undoesTheLatestEntryAndThenTheOneBefore(RecordBook book) {
    LogEntry first = book.append(Samples.entry(Samples.MAY, "front", "jug"));
    LogEntry second = book.append(Samples.entry(Samples.MAY.plusDays(9), "front", "jug"));
    assertEquals(Optional.of(second), book.undoLast());
    assertEquals(Optional.of(first), book.log().last("front", "jug"));
    assertEquals(Optional.of(first), book.undoLast());
    assertEquals(Optional.empty(), book.undoLast());
    assertEquals(List.of(first, second), book.log().undone());
  }

  @ParameterizedTest
  @MethodSource("books")
  void saysWhatASprayerHeldLastByTheLaterOfLogAndTelling(RecordBook book) {
    LocalDate later = Samples.MAY.plusDays(20);
    book.save(Sprayer.named("backpack").withHeld("glyphosate", Samples.MAY.plusDays(10)));
    assertEquals("glyphosate", book.heldLast("Backpack").orElseThrow().product());
    book.append(LogEntry.of(Samples.MAY, "jug").withSprayer("backpack"));
    assertEquals("glyphosate", book.heldLast("backpack").orElseThrow().product());
    book.append(LogEntry.of(later, "jug").withSprayer("backpack"));
    assertEquals(
        Optional.of(new Sprayer.Held("jug", Optional.of(later))), book.heldLast("backpack"));
    assertEquals(Optional.empty(), book.heldLast("another"));
  }

  @Test
  void makesNothingBeforeSomethingIsSaved(@TempDir Path empty) {
    Path home = empty.resolve("home");
    RecordBook book = RecordBook.open(home);
    book.labels();
    book.log();
    book.problems();
    assertFalse(Files.exists(home));
  }

  @Test
  void readsAgainWhatABookBeforeItSaved(@TempDir Path home) {
    RecordBook before = RecordBook.open(home);
    before.save(Samples.fullLabel("jug"));
    LogEntry entry =
        before.append(
            Samples.entry(Samples.MAY, "front", "jug")
                .withProduct(Samples.flOz("6"))
                .withArea(Samples.sqFt(4000))
                .withSprayer("backpack")
                .withWeather("72 °F, 4 mph")
                .withWho("Ann")
                .withRemark("two fills; \"quoted\"\n\u2028 and more"));
    RecordBook after = RecordBook.open(home);
    assertEquals(List.of(Samples.fullLabel("jug")), after.labels());
    assertEquals(List.of(entry), after.log().entries());
  }

  @Test
  void onlyEverAppendsToTheLog(@TempDir Path home) throws IOException {
    RecordBook book = RecordBook.open(home);
    book.append(Samples.entry(Samples.MAY, "front", "jug"));
    String before = Files.readString(home.resolve("log.jsonl"));
    book.undoLast();
    String after = Files.readString(home.resolve("log.jsonl"));
    assertTrue(after.startsWith(before) && after.length() > before.length());
  }

  @Test
  void seesAtOnceWhatAnotherBookWroteInTheSameFolder(@TempDir Path home) {
    RecordBook one = RecordBook.open(home);
    RecordBook two = RecordBook.open(home);
    one.save(Label.named("jug").label());
    assertEquals(1, two.labels().size());
    two.save(Label.named("jug").applicationsPerYear(2).label());
    assertEquals(Optional.of(2), one.label("jug").orElseThrow().season().applications());
    one.append(Samples.entry(Samples.MAY, "front", "jug"));
    two.append(Samples.entry(Samples.MAY, "back", "jug"));
    assertEquals(2, one.log().entries().size());
    one.undoLast();
    assertTrue(two.log().last("back", "jug").isEmpty());
  }

  @Test
  void readsTheLogAnewWhenItWasEditedByHand(@TempDir Path home) throws IOException {
    RecordBook book = RecordBook.open(home);
    book.append(Samples.entry(Samples.MAY, "front", "jug"));
    book.append(Samples.entry(Samples.MAY, "front", "can"));
    assertEquals(2, book.log().entries().size());
    Path file = home.resolve("log.jsonl");
    Files.writeString(file, Files.readAllLines(file).get(1) + "\r\n\r\n");
    assertEquals("can", book.log().entries().get(0).label());
    assertEquals(1, book.log().entries().size());
    assertEquals(List.of(), book.problems());
  }

  @Test
  void keepsAnExactFractionThatNoDecimalEquals(@TempDir Path home) {
    Quantity third = Quantity.of("1", "[foz_us]").dividedBy(plainsward.units.Ratio.of(3));
    RecordBook.open(home).append(LogEntry.of(Samples.MAY, "jug").withProduct(third));
    assertEquals(Optional.of(third), RecordBook.open(home).log().entries().get(0).product());
  }
}
