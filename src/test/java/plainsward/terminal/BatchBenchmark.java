package plainsward.terminal;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import plainsward.handbook.Handbook;

/**
 * How many mixed questions a second a batch answers, warm, from the bytes of a line to the bytes of
 * its reply, and how long one question takes. To keep it to one core, run it under {@code taskset
 * -c 0}.
 */
@State(Scope.Benchmark)
public class BatchBenchmark {
  private static final int LINES = 2_000;

  private final List<String> questions = questions();
  private final byte[] lines = lines(questions);
  private final Desk desk = new Desk(choices(), Surroundings.real(), Handbook.shipped());
  private int next;

  private static List<String> questions() {
    try {
      return MixedQuestions.some(LINES);
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  private static byte[] lines(List<String> questions) {
    StringBuilder lines = new StringBuilder();
    for (String question : questions) {
      String turn = question.replace("\\", "").replace("\"", "\\\"");
      lines.append("{\"id\": 1, \"turns\": [\"").append(turn).append("\"]}\n");
    }
    return lines.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static Choices choices() {
    try {
      return ChoiceReader.read(new String[] {"--batch", "--today", "2026-06-01"});
    } catch (WrongUse wrong) {
      throw new IllegalStateException(wrong);
    }
  }

  /** A whole batch. */
  @Benchmark
  @BenchmarkMode(Mode.Throughput)
  @OutputTimeUnit(TimeUnit.SECONDS)
  @OperationsPerInvocation(LINES)
  public boolean batch() throws IOException {
    InputStream in = new ByteArrayInputStream(lines);
    Out out = new Out(new PrintStream(OutputStream.nullOutputStream()));
    return new Batch(desk, out, Length.SCREENFUL, 1).run(in, lines -> {});
  }

  /** One question of it, each in a conversation of its own. */
  @Benchmark
  @BenchmarkMode(Mode.SampleTime)
  @OutputTimeUnit(TimeUnit.MILLISECONDS)
  public String question() throws Unreadable {
    next = (next + 1) % questions.size();
    return JsonLine.of(desk.open().answer(questions.get(next)), Length.SCREENFUL);
  }

  /** Runs it in this JVM. */
  public static void main(String[] args) throws RunnerException {
    new Runner(
            new OptionsBuilder()
                .include(BatchBenchmark.class.getSimpleName())
                .forks(0)
                .threads(1)
                .warmupIterations(9)
                .warmupTime(TimeValue.seconds(10))
                .measurementIterations(5)
                .measurementTime(TimeValue.seconds(5))
                .build())
        .run();
  }
}
