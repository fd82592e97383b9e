package plainsward;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The self-contained folder answers with nothing on the PATH, each way in. It is made by {@code mvn
 * -Pimage package}; where it was not, these tests are skipped.
 */
class ImageIT {
  private static final Path PROGRAM = Path.of("target/image/plainsward/bin/plainsward");

  /** What a run printed. */
  private record Printed(int status, String out, String err) {}

  @TempDir Path home;

  @BeforeAll
  static void thereIsAFolder() {
    Assumptions.assumeTrue(Files.isExecutable(PROGRAM), "no image was made");
  }

  private Printed run(String input, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(PROGRAM.toAbsolutePath().toString()));
    command.addAll(List.of(words));
    Path typed = Files.writeString(home.resolve("typed.txt"), input);
    File out = home.resolve("out.txt").toFile();
    File err = home.resolve("err.txt").toFile();
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .redirectInput(typed.toFile())
            .redirectOutput(out)
            .redirectError(err);
    builder.environment().clear();
    builder.environment().put("PATH", "/nowhere");
    int status = builder.start().waitFor();
    return new Printed(
        status,
        Files.readString(out.toPath(), StandardCharsets.UTF_8),
        Files.readString(err.toPath(), StandardCharsets.UTF_8));
  }

  private void tells(String said, Printed printed) {
    assertEquals("", printed.err());
    assertEquals(0, printed.status());
    assertTrue(printed.out().contains(said), printed.out());
  }

  @Test
  void oneQuestionIsAnswered() throws Exception {
    tells("6 fl oz", run("", "4,000 sq ft at 1.5 fl oz per thousand, 2 gallon sprayer"));
  }

  @Test
  void theHandbookIsSearched() throws Exception {
    tells("clover", run("", "how do I get rid of clover without hurting my lawn?"));
  }

  @Test
  void aTalkAndABatchAreAnswered() throws Exception {
    tells("4.8 fl oz", run("hello\n40 by 60 at 2 oz per thousand\n", "--home", home.toString()));
    tells("4.8 fl oz", run("{\"turns\":[\"40 by 60 at 2 oz per thousand\"]}\n", "--batch"));
  }

  @Test
  void theVersionIsTold() throws Exception {
    tells("plainsward ", run("", "--version"));
  }
}
