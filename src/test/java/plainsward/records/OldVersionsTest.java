package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of version 0, which had no version field, are read and written again as version 1. */
class OldVersionsTest {
  private static final Path OLD = Path.of("src/test/resources/records/version0");
  @TempDir Path home;

  @BeforeEach
  void copyOldFiles() throws IOException {
    for (String file :
        List.of("labels/jug.json", "lawns/front.json", "sprayers/can.json", "log.jsonl")) {
      Files.createDirectories(home.resolve(file).getParent());
      Files.copy(OLD.resolve(file), home.resolve(file));
    }
  }

  @Test
  void oldFilesAreRead() {
    RecordBook book = RecordBook.open(home);
    assertEquals(List.of(), book.problems());
    Label label = book.label("old jug").orElseThrow();
    assertEquals(List.of(Rate.of(Samples.fl("1.5"), "whole lawn")), label.rates());
    assertEquals(Optional.of(Period.ofDays(28)), label.season().interval());
    assertEquals(Optional.of(2), label.season().applications());
    assertEquals(Optional.of(Samples.sqFt(4000)), book.lawn("front").orElseThrow().area());
    assertEquals("old jug", book.heldLast("can").orElseThrow().product());
  }

  @Test
  void anOldLogGoesOnAndItsEntriesCanBeUndone() throws IOException {
    RecordBook book = RecordBook.open(home);
    assertEquals(2, book.log().entries().size());
    assertEquals(Samples.MAY.plusDays(30), book.undoLast().orElseThrow().date());
    book.append(Samples.entry(Samples.MAY.plusDays(40), "front", "old jug"));
    assertEquals(2, RecordBook.open(home).log().entries().size());
    assertEquals(4, Files.readAllLines(home.resolve("log.jsonl")).size());
  }

  @Test
  void anOldFileIsWrittenAgainAsTheNewVersion() throws IOException {
    RecordBook book = RecordBook.open(home);
    Label before = book.label("old jug").orElseThrow();
    book.save(before);
    assertEquals(
        true, Files.readString(home.resolve("labels/jug.json")).contains("\"version\" : 1"));
    assertEquals(List.of(before), RecordBook.open(home).labels());
  }
}
