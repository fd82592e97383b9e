package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plainsward.handbook.Handbook;
import plainsward.reply.Kind;
import plainsward.reply.ReplyBuilder;

@Timeout(60)
class BatchTest {
  private static final Choices CHOICES = choices();

  private static Choices choices() {
    try {
      return ChoiceReader.read(new String[] {"--batch"});
    } catch (WrongUse impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Ran batch(String in) {
    return Ran.echo(in, "--batch");
  }

  private static String headline(String line, int turn) {
    return (String) JsonTree.reply(line, turn).get("headline");
  }

  @Test
  void aPlainLineIsAQuestionWithoutAnId() {
    Ran ran = batch("how much?\n");
    assertEquals(0, ran.status());
    assertEquals(List.of("replies"), List.copyOf(JsonTree.object(ran.out().strip()).keySet()));
    assertEquals("how much?|2026-05-01|us", headline(ran.lines()[0], 0));
  }

  @Test
  void anObjectIsAConversationOfItsOwnDateAndMeasures() {
    Ran ran =
        batch(
            "{\"units\":\"metric\",\"turns\":[\"a\",\"b\"],\"more\":{\"x\":[1]},"
                + "\"id\":\"q17\",\"today\":\"2025-12-31\"}\n");
    assertEquals(List.of("id", "replies"), List.copyOf(JsonTree.object(ran.out()).keySet()));
    assertEquals("q17", JsonTree.object(ran.out()).get("id"));
    assertEquals("a|2025-12-31|metric", headline(ran.lines()[0], 0));
    assertEquals("b|2025-12-31|metric", headline(ran.lines()[0], 1));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "1",
        "12345678901234567890.12345678901234567890",
        "2.50e400",
        "null",
        "true",
        "[1,{\"a\":[]}]",
        "{}",
        "\"\\u001b[2J \\\"q\\\"\"",
        "\"\\ud83c\\udf31\"",
      })
  void anIdOfAnyKindIsHandedBackAsItCame(String id) {
    Ran ran = batch("{\"id\":" + id + ",\"turns\":[]}\n");
    assertEquals(0, ran.status());
    assertEquals(JsonTree.object("{\"id\":" + id + ",\"replies\":[]}"), JsonTree.object(ran.out()));
  }

  @Test
  void halfASurrogatePairInAnIdIsKept() {
    Ran ran = batch("{\"id\":\"a\\ud83cb\",\"turns\":[]}\n");
    assertEquals("{\"id\":\"a\\ud83cb\",\"replies\":[]}\n", ran.out());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{",
        "{bad}",
        "{\"turns\":[\"a\"]",
        "{\"turns\":[\"a\"]} x",
        "{\"turns\":[\"a\"]}{}",
        "{\"turns\":\"a\"}",
        "{\"turns\":[1]}",
        "{\"turns\":[[\"a\"]]}",
        "{\"turns\":null}",
        "{\"id\":1}",
        "{}",
        "{\"turns\":[\"a\"],\"today\":5}",
        "{\"turns\":[\"a\"],\"today\":\"2026-13-01\"}",
        "{\"turns\":[\"a\"],\"units\":\"feet\"}",
        "{\"turns\":[\"a\"],\"units\":[]}",
        "{\"id\":[1,\"turns\":[]}",
        "{\"id\":NaN,\"turns\":[]}",
      })
  void aLineThatIsNotWellFormedGetsAnErrorInItsPlaceAndTheBatchGoesOn(String line) {
    Ran ran = batch("one\n" + line + "\nthree\n");
    assertEquals(3, ran.lines().length);
    Map<String, Object> error = JsonTree.object(ran.lines()[1]);
    assertEquals(List.of("error", "line"), List.copyOf(error.keySet()));
    assertEquals(new BigDecimal(2), error.get("line"));
    assertTrue(((String) error.get("error")).matches("\\S[^{}\\[\\]]+\\."), ran.lines()[1]);
    assertEquals("three|2026-05-01|us", headline(ran.lines()[2], 0));
    assertEquals(1, ran.status());
    assertEquals("", ran.err());
  }

  @Test
  void deepNestingIsAnErrorAndNoCrash() {
    Ran ran = batch("{\"id\":" + "[".repeat(200_000) + "\nnext\n");
    assertTrue(ran.lines()[0].startsWith("{\"error\":"), ran.lines()[0]);
    assertEquals(2, ran.lines().length);
  }

  @Test
  void nullForADateOrMeasuresIsLikeLeavingThemOut() {
    Ran ran = batch("{\"turns\":[\"a\"],\"today\":null,\"units\":null}");
    assertEquals("a|2026-05-01|us", headline(ran.lines()[0], 0));
  }

  @Test
  void everyLineHasItsAnswerWhateverEndsIt() {
    assertEquals(0, batch("").lines().length);
    assertEquals(1, batch("\n").lines().length);
    assertEquals(3, batch("a\r\n\r\nb").lines().length);
    assertEquals("a|2026-05-01|us", headline(batch("a\r\n").lines()[0], 0));
    assertEquals(2, batch("\uFEFF{\"turns\":[]}\nx\n").lines().length);
    assertFalse(batch("\uFEFF{\"turns\":[]}\n").out().contains("error"));
  }

  @Test
  void brokenUtf8IsReplacedAndControlCharactersAreNotSent() {
    byte[] in = {'a', (byte) 0xff, (byte) 0xc3, 0x1b, '[', '2', 'J', 0, 7, 'b', '\n'};
    Ran ran = Ran.with(Ran.ECHO, in, "--batch");
    assertEquals("a\uFFFD\uFFFDb|2026-05-01|us", headline(ran.lines()[0], 0));
    assertEquals(0, ran.status());
  }

  @Test
  void anEmptyLineIsAQuestionWithNothingToRead() {
    assertEquals("unsure", JsonTree.reply(Ran.real("\n", "--batch").lines()[0], 0).get("kind"));
  }

  @Test
  void aLineOfSeveralMegabytesIsAnsweredAndALongerOneIsRefused() {
    Ran ran = batch("x".repeat(5 << 20) + "\n" + "y".repeat(Batch.LONGEST_LINE + 1) + "\nz\n");
    assertEquals(3, ran.lines().length);
    assertTrue(ran.lines()[0].startsWith("{\"replies\""));
    assertEquals("{\"error\":\"The line is longer than 8 MB.\",\"line\":2}", ran.lines()[1]);
    assertTrue(ran.lines()[2].contains("z|"));
  }

  @Test
  void aLineOnWhichTheProgramFailsGetsAnErrorAndTheBatchGoesOn() {
    Ran ran = Ran.with(Ran.FAILING, "fail\nok\n".getBytes(StandardCharsets.UTF_8), "--batch");
    assertEquals(1, ran.status());
    assertTrue(ran.lines()[0].startsWith("{\"error\":\"The program itself failed"));
    assertTrue(ran.lines()[1].startsWith("{\"replies\""));
  }

  @Test
  void aFileIsReadLikeStandardInput(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("questions.txt");
    Files.writeString(file, "one\ntwo\n");
    assertEquals(batch("one\ntwo\n"), Ran.echo("ignored", "--batch", file.toString()));
  }

  @Test
  void answersKeepTheOrderOfTheLinesThoughSomeTakeLonger() throws IOException {
    StringBuilder in = new StringBuilder();
    for (int i = 0; i < 500; i++) {
      in.append("{\"id\":").append(i).append(",\"turns\":[\"").append(i % 7).append("\"]}\n");
    }
    Answering slow =
        said -> {
          pause(said.equals("3") ? 5 : 0);
          return new ReplyBuilder(Kind.ANSWER).headline(said).build();
        };
    String[] lines = run(slow, 3, in.toString()).split("\n", -1);
    for (int i = 0; i < 500; i++) {
      assertEquals(new BigDecimal(i), JsonTree.object(lines[i]).get("id"));
      assertEquals(String.valueOf(i % 7), headline(lines[i], 0));
    }
  }

  @Test
  void twoLinesAreAnsweredAtOnce() throws IOException {
    CyclicBarrier both = new CyclicBarrier(2);
    Answering meeting =
        said -> {
          try {
            both.await(20, TimeUnit.SECONDS);
          } catch (Exception alone) {
            throw new IllegalStateException(alone);
          }
          return new ReplyBuilder(Kind.ANSWER).headline("met").build();
        };
    assertFalse(run(meeting, 2, "a\nb\nc\nd\n").contains("error"));
  }

  @Test
  void realConversationsSideBySideSayWhatTheySayAlone() throws IOException {
    StringBuilder in = new StringBuilder();
    for (int i = 1; i <= 40; i++) {
      in.append("lawn ").append(i * 100).append(" sq ft, label 1.5 fl oz per 1000, tank 2 gal\n");
      in.append("what kills clover in fescue\n");
    }
    byte[] lines = in.toString().getBytes(StandardCharsets.UTF_8);
    assertEquals(real(lines, 1), real(lines, 4));
  }

  private static String real(byte[] in, int workers) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Desk desk = new Desk(CHOICES, Ran.around(Ran.REAL), Handbook.shipped());
    new Batch(desk, new Out(new PrintStream(out)), Length.SCREENFUL, workers)
        .run(new ByteArrayInputStream(in), done -> {});
    return out.toString(StandardCharsets.UTF_8);
  }

  private static String run(Answering answering, int workers, String in) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Desk desk = new Desk(CHOICES, Ran.around(setting -> answering), Handbook.shipped());
    new Batch(desk, new Out(new PrintStream(out)), Length.SCREENFUL, workers)
        .run(new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)), done -> {});
    return out.toString(StandardCharsets.UTF_8);
  }

  @Test
  void anAnswerIsSentBeforeTheNextQuestionIsAsked() throws Exception {
    CountDownLatch answered = new CountDownLatch(1);
    OutputStream out =
        new OutputStream() {
          @Override
          public void write(int b) {
            answered.countDown();
          }
        };
    InputStream in = new WaitingInput(answered);
    assertEquals(0, Ran.into(out, Ran.around(Ran.ECHO), in, "--batch").status());
  }

  @Test
  void noMoreIsReadThanCanBeWritten() throws Exception {
    EndlessInput in = new EndlessInput();
    CountDownLatch open = new CountDownLatch(1);
    OutputStream stuck =
        new OutputStream() {
          @Override
          public void write(int b) throws IOException {
            await(open);
            throw new IOException("Broken pipe");
          }
        };
    Thread run =
        new Thread(() -> Ran.into(stuck, Ran.around(Ran.ECHO), in, "--batch"), "stuck-batch");
    run.start();
    long before = -1;
    while (before != in.read.get()) {
      before = in.read.get();
      pause(300);
    }
    assertTrue(in.read.get() < 4 << 20, "read " + in.read.get());
    open.countDown();
    run.join(20_000);
    assertFalse(run.isAlive());
  }

  private static void await(CountDownLatch latch) {
    try {
      assertTrue(latch.await(30, TimeUnit.SECONDS));
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  private static void pause(long millis) {
    try {
      Thread.sleep(millis);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }

  /** A line, and another once the first was answered. */
  private static final class WaitingInput extends InputStream {
    private final CountDownLatch answered;
    private int reads;

    WaitingInput(CountDownLatch answered) {
      this.answered = answered;
    }

    @Override
    public int read() {
      throw new UnsupportedOperationException();
    }

    @Override
    public int read(byte[] buffer, int from, int most) {
      reads++;
      if (reads == 2) {
        await(answered);
      }
      buffer[from] = 'q';
      buffer[from + 1] = '\n';
      return reads > 2 ? -1 : 2;
    }
  }

  /** The same line for ever. */
  private static final class EndlessInput extends InputStream {
    final AtomicLong read = new AtomicLong();

    @Override
    public int read() {
      throw new UnsupportedOperationException();
    }

    @Override
    public int read(byte[] buffer, int from, int most) {
      byte[] line = ("x".repeat(999) + "\n").getBytes(StandardCharsets.US_ASCII);
      int many = Math.min(most, line.length);
      System.arraycopy(line, 0, buffer, from, many);
      read.addAndGet(many);
      return many;
    }
  }
}
