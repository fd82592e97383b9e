package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is full, read-only or broken is told in one sentence, and nothing is half done. */
class DiskFaultTest {
  @TempDir Path home;

  /** A disk that takes so many bytes more and then reports what a full one does (simulated). */
  private static final class FullDisk extends Disk {
    private int room;

    FullDisk(int room) {
      this.room = room;
    }

    @Override
    void write(FileChannel channel, ByteBuffer bytes) throws IOException {
      ByteBuffer part = bytes.slice();
      part.limit(Math.min(room, part.remaining()));
      room -= part.remaining();
      boolean tooMuch = part.remaining() < bytes.remaining();
      super.write(channel, part);
      if (tooMuch) {
        throw new IOException("No space left on device");
      }
    }
  }

  private RecordBook book(Disk disk) {
    return RecordBook.open(home, Duration.ofSeconds(5), disk);
  }

  @Test
  void aDiskThatFillsUpInTheMiddleOfALineLosesNothingAndLeavesNoHalfLine() throws IOException {
    RecordBook.open(home).append(LogEntry.of(Samples.MAY, "jug"));
    byte[] before = Files.readAllBytes(home.resolve("log.jsonl"));
    for (int room = 0; room < 60; room += 7) {
      RecordBook book = book(new FullDisk(room));
      RecordFault fault =
          assertThrows(RecordFault.class, () -> book.append(LogEntry.of(Samples.MAY, "jug")));
      assertFull(fault, "log.jsonl");
      org.junit.jupiter.api.Assertions.assertArrayEquals(
          before, Files.readAllBytes(home.resolve("log.jsonl")));
      assertEquals(1, book.log().entries().size());
    }
    assertEquals(List.of(), RecordBook.open(home).problems());
  }

  @Test
  void aDiskThatFillsUpInTheMiddleOfAFileLeavesTheOldOneWhole() throws IOException {
    Label old = Samples.fullLabel("jug");
    RecordBook.open(home).save(old);
    for (int room = 0; room < 600; room += 97) {
      RecordBook book = book(new FullDisk(room));
      Label changed = old.change().applicationsPerYear(9).label();
      assertFull(assertThrows(RecordFault.class, () -> book.save(changed)), "jug.json");
      assertEquals(List.of(old), book.labels());
      assertEquals(List.of("jug.json"), names(home.resolve("labels")));
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).toList();
    }
  }

  private static void assertFull(RecordFault fault, String file) {
    assertEquals(RecordFault.Why.FULL, fault.why());
    assertTrue(fault.getMessage().contains(file), fault.getMessage());
    assertTrue(fault.getMessage().endsWith("was not saved: the disk is full."));
  }

  @Test
  void theSystemsOwnFullDeviceIsToldAsAFullDisk() throws IOException {
    Path full = Path.of("/dev/full");
    assumeTrue(Files.exists(full), "this system has no /dev/full");
    Path link = Files.createSymbolicLink(home.resolve("log.jsonl"), full);
    byte[] line = "x\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
    IOException fault = assertThrows(IOException.class, () -> new Disk().append(link, line));
    Files.delete(link);
    assertEquals(RecordFault.Why.FULL, Faults.why(fault));
  }

  @Test
  void aFileSystemOf64KilobytesThatFillsUpKeepsEverythingAcknowledged() throws Exception {
    List<String> command = new ArrayList<>(List.of("unshare", "-m", "sh", "-c"));
    command.add(
        "mount -t tmpfs -o size=64k none \"$0\" && echo mounted && \"$@\"; cat \"$0\"/log.jsonl");
    command.add(home.toString());
    command.addAll(Child.command(home.toString(), "w", "100000", "all"));
    ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
    Process process = startOrSkip(builder);
    List<String> lines = process.inputReader().lines().toList();
    assumeTrue(lines.contains("mounted"), "this user may not mount a file system");
    assertTrue(lines.stream().anyMatch(l -> l.contains("was not saved: the disk is full.")));
    List<String> acknowledged =
        lines.stream().filter(l -> l.startsWith("log ")).map(l -> l.substring(4)).toList();
    assertTrue(acknowledged.size() > 5);
    for (String id : acknowledged) {
      assertTrue(lines.stream().anyMatch(l -> l.contains("\"id\":\"" + id + "\"")), id);
    }
  }

  private static Process startOrSkip(ProcessBuilder builder) {
    try {
      return builder.start();
    } catch (IOException noSuchCommand) {
      return org.junit.jupiter.api.Assumptions.abort("this system has no unshare");
    }
  }

  @Test
  void aFsyncThatFailsIsNoAcknowledgement() {
    RecordBook book =
        book(
            new Disk() {
              @Override
              void force(FileChannel channel) throws IOException {
                throw new IOException("Input/output error");
              }
            });
    RecordFault fault =
        assertThrows(RecordFault.class, () -> book.append(LogEntry.of(Samples.MAY, "jug")));
    assertEquals(RecordFault.Why.OTHER, fault.why());
    assertTrue(fault.getMessage().contains("log.jsonl was not saved"));
    assertEquals(0, book.log().entries().size());
    assertThrows(RecordFault.class, () -> book.save(Label.named("jug").label()));
    assertEquals(List.of(), book.labels());
  }

  @Test
  void aReadOnlyDiskIsTold() {
    RecordBook book =
        book(
            new Disk() {
              @Override
              void rename(Path from, Path to) throws IOException {
                throw new AccessDeniedException(to.toString());
              }
            });
    RecordFault fault =
        assertThrows(RecordFault.class, () -> book.save(Label.named("jug").label()));
    assertEquals(RecordFault.Why.NO_ACCESS, fault.why());
    assertEquals(
        home.resolve("labels/jug.json") + " was not saved: it may not be written (read-only).",
        fault.getMessage());
  }

  @Test
  void aReadOnlyFileSystemIsToldAsSuchByTheSystemsOwnWords() {
    assertEquals(
        RecordFault.Why.NO_ACCESS, Faults.why(new IOException("x: Read-only file system")));
    assertEquals(RecordFault.Why.FULL, Faults.why(new IOException("Disk quota exceeded")));
    assertEquals(
        RecordFault.Why.FULL, Faults.why(new IOException("There is not enough space on the disk")));
  }

  @Test
  void aHomeThatMayNotBeWrittenCanBeRead() throws IOException {
    RecordBook.open(home).save(Label.named("jug").label());
    Files.writeString(home.resolve("log.jsonl"), "broken\n");
    Path lock = home.resolve(".lock");
    Files.delete(lock);
    Files.createDirectory(lock);
    RecordBook book = RecordBook.open(home);
    assertEquals(1, book.labels().size());
    assertEquals(0, book.log().entries().size());
    assertEquals(1, book.problems().size());
    assertTrue(book.problems().get(0).contains("left where it is"));
    assertThrows(RecordFault.class, () -> book.append(LogEntry.of(Samples.MAY, "jug")));
  }

  @Test
  void aFileWhereTheHomeShouldBeIsTold() throws IOException {
    Path file = Files.writeString(home.resolve("file"), "x");
    RecordFault fault = assertThrows(RecordFault.class, () -> RecordBook.open(file));
    assertEquals(RecordFault.Why.NOT_A_FOLDER, fault.why());
    assertEquals(file + " is a file, and a folder is needed there.", fault.getMessage());
  }

  @Test
  void aFileWhereAFolderShouldBeIsTold() throws IOException {
    Files.writeString(home.resolve("labels"), "x");
    Files.writeString(home.resolve("file"), "x");
    RecordBook book = RecordBook.open(home);
    assertEquals(1, book.problems().size());
    RecordFault fault =
        assertThrows(RecordFault.class, () -> book.save(Label.named("jug").label()));
    assertEquals(RecordFault.Why.NOT_A_FOLDER, fault.why());
    assertTrue(fault.getMessage().endsWith("a file stands where a folder is needed."));
    RecordBook below = RecordBook.open(home.resolve("file/home"));
    RecordFault second =
        assertThrows(RecordFault.class, () -> below.append(LogEntry.of(Samples.MAY, "jug")));
    assertEquals(RecordFault.Why.NOT_A_FOLDER, second.why());
  }

  @Test
  void whatAKilledRunLeftUnfinishedIsClearedAway() throws IOException {
    RecordBook book = RecordBook.open(home);
    book.save(Label.named("jug").label());
    Files.writeString(home.resolve("labels/.1234.unfinished"), "{\"ver");
    assertEquals(1, book.labels().size());
    book.save(Label.named("can").label());
    assertEquals(
        List.of("can.json", "jug.json"), names(home.resolve("labels")).stream().sorted().toList());
  }

  @Test
  void aLinkedFileIsReplacedWhereItReallyIs() throws IOException {
    Path real = Files.createDirectories(home.resolve("elsewhere")).resolve("jug.json");
    Files.writeString(real, "{\"version\":1,\"name\":\"jug\"}");
    Files.createDirectories(home.resolve("labels"));
    Files.createSymbolicLink(home.resolve("labels/jug.json"), real);
    RecordBook.open(home).save(Label.named("jug").applicationsPerYear(2).label());
    assertTrue(Files.isSymbolicLink(home.resolve("labels/jug.json")));
    assertTrue(Files.readString(real).contains("applications"));
  }
}
