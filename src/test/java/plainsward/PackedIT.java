package plainsward;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packed program answers alike whichever way its classes and tables come: by its own loader and
 * out of files, as from the bare jar, or by the usual loader and out of classes, as with an
 * archive.
 */
class PackedIT {
  private static final Path JAR = Path.of("target/plainsward.jar");
  private static final String JAVA =
      Path.of(System.getProperty("java.home"), "bin", "java").toString();
  private static final String BATCH =
      """
      {"turns":["4,000 sq ft at 1.5 fl oz per thousand, 2 gallon sprayer","and 6,000?"]}
      {"turns":["how do I get rid of clover without hurting my lawn?"]}
      {"turns":["round scalloped leaves, square stem, smells of mint. what is it?"]}
      {"turns":["my kid drank some weed killer"]}
      {"turns":["caf\u00e9: how much nitrogen is in a 50 lb bag of 24-0-11?"]}
      {"turns":["killd thistels in teh lawn, galon sprayr 2 oz per thosand, 3k"]}
      {"turns":["what is the capital of France?"]}
      """;

  @TempDir Path home;

  @BeforeAll
  static void thereIsAJar() {
    Assumptions.assumeTrue(Files.exists(JAR), "no jar was packed");
  }

  private String run(String input, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(JAVA));
    command.addAll(List.of(words));
    Path typed = Files.writeString(home.resolve("typed.txt"), input);
    File out = home.resolve("out.txt").toFile();
    int status =
        new ProcessBuilder(command)
            .redirectInput(typed.toFile())
            .redirectOutput(out)
            .redirectErrorStream(true)
            .start()
            .waitFor();
    assertEquals(0, status);
    return Files.readString(out.toPath());
  }

  @Test
  void bothWaysAnswerAlike() throws Exception {
    String bare = run(BATCH, "-jar", JAR.toString(), "--batch");
    String ready = run(BATCH, "-Dplainsward.ready=true", "-jar", JAR.toString(), "--batch");
    assertEquals(bare, ready);
    assertEquals(7, bare.lines().count(), bare);
    assertTrue(bare.contains("9 fl oz"), bare);
  }

  @Test
  void aTalkKeepsItsRecordsFromOneRunToTheNext() throws Exception {
    String folder = home.resolve("records").toString();
    run(
        "the blue jug says 1.5 oz per thousand\nthe back lawn is 4,000 sq ft\n",
        "-jar",
        JAR.toString(),
        "--home",
        folder);
    String later =
        run("how much blue jug for the back lawn?\n", "-jar", JAR.toString(), "--home", folder);
    assertTrue(later.contains("6 fl oz"), later);
  }

  @Test
  void aWrongOptionIsToldWithItsStatus() throws Exception {
    Process process =
        new ProcessBuilder(JAVA, "-jar", JAR.toString(), "--no-such-option")
            .redirectErrorStream(true)
            .start();
    String said = new String(process.getInputStream().readAllBytes(), "UTF-8");
    assertEquals(2, process.waitFor(), said);
  }
}
