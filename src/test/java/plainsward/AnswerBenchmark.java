package plainsward;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import plainsward.reply.Reply;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** How many mixed questions a second the whole path answers, warm, on one core. */
@State(Scope.Benchmark)
@BenchmarkMode({Mode.Throughput, Mode.SampleTime})
@OutputTimeUnit(TimeUnit.SECONDS)
public class AnswerBenchmark {
  private static final Setting SETTING = new Setting(LocalDate.of(2026, 6, 1), UnitSystem.US);
  private final List<String> questions = questions();
  private int next;

  private static List<String> questions() {
    try (InputStream in = AnswerBenchmark.class.getResourceAsStream("/benchmark/questions.txt")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException broken) {
      throw new IllegalStateException(broken);
    }
  }

  /** One question, each in a conversation of its own. */
  @Benchmark
  public Reply answer() {
    next = (next + 1) % questions.size();
    return new Conversation(SETTING).answer(questions.get(next));
  }

  /** Runs it in this JVM. */
  public static void main(String[] args) throws RunnerException {
    new Runner(
            new OptionsBuilder()
                .include(AnswerBenchmark.class.getSimpleName())
                .forks(0)
                .threads(1)
                .warmupIterations(3)
                .warmupTime(TimeValue.seconds(5))
                .measurementIterations(3)
                .measurementTime(TimeValue.seconds(5))
                .build())
        .run();
  }
}
