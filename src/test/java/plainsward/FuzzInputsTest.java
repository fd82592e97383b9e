package plainsward;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import plainsward.reading.ReaderFuzz;
import plainsward.records.LabelFuzz;
import plainsward.records.LogFuzz;
import plainsward.records.OutlineFuzz;
import plainsward.terminal.BatchLineFuzz;
import plainsward.terminal.ScreenFuzz;
import plainsward.terminal.TurnFuzz;

/** What fuzzing began with and what it found, without a fuzzer. */
class FuzzInputsTest {
  private static final Path RESOURCES = Path.of("src", "test", "resources", "plainsward");
  private static final Map<String, Consumer<byte[]>> TARGETS =
      new TreeMap<>(
          Map.of(
              "reading/ReaderFuzz", ReaderFuzz::fuzzerTestOneInput,
              "records/LabelFuzz", LabelFuzz::fuzzerTestOneInput,
              "records/LogFuzz", LogFuzz::fuzzerTestOneInput,
              "records/OutlineFuzz", OutlineFuzz::fuzzerTestOneInput,
              "terminal/BatchLineFuzz", BatchLineFuzz::fuzzerTestOneInput,
              "terminal/ScreenFuzz", ScreenFuzz::fuzzerTestOneInput,
              "terminal/TurnFuzz", TurnFuzz::fuzzerTestOneInput));

  @TestFactory
  List<DynamicTest> everyInputIsTakenAsItShouldBe() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Map.Entry<String, Consumer<byte[]>> target : TARGETS.entrySet()) {
      for (Path input : inputs(target.getKey())) {
        String name = target.getKey() + "/" + input.getFileName();
        tests.add(
            DynamicTest.dynamicTest(
                name, () -> target.getValue().accept(Files.readAllBytes(input))));
      }
    }
    return tests;
  }

  private static List<Path> inputs(String target) throws IOException {
    try (Stream<Path> all = Files.list(RESOURCES.resolve(target + "Inputs").resolve("fuzz"))) {
      List<Path> inputs = all.sorted().toList();
      assertFalse(inputs.isEmpty(), target);
      return inputs;
    }
  }
}
