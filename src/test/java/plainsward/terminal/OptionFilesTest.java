package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Help, man page and completions tell the same options, and those are the ones understood. */
class OptionFilesTest {
  private static final Path FRAME = Path.of("src", "main", "packaging", "plainsward.1");
  private static final Path BASH = Path.of("/usr/bin/bash");

  @Test
  void everyOptionIsUnderstood() throws WrongUse {
    for (Option option : Option.all()) {
      String value =
          switch (option.value()) {
            case "YYYY-MM-DD" -> "2026-05-01";
            default -> option.choices().isEmpty() ? "." : option.choices().get(0);
          };
      String[] typed =
          option.takes().isEmpty()
              ? new String[] {option.name()}
              : new String[] {option.name(), value};
      Choices choices = ChoiceReader.read(typed);
      assertEquals("", choices.question(), option.name());
    }
  }

  @Test
  void theManPageAndTheCompletionsNameEveryOption() throws IOException {
    String man = OptionFiles.manPage(Files.readString(FRAME), "1.2").replace("\\-", "-");
    Completions completions = new Completions();
    assertFalse(man.contains("{"), man);
    for (String name : Option.names()) {
      assertTrue(man.contains("\\fB" + name + "\\fR"), name);
      assertTrue(completions.bash().contains(name), name);
      assertTrue(completions.zsh().contains("'" + name + "["), name);
      assertTrue(completions.fish().contains(" -l " + name.substring(2) + " "), name);
    }
  }

  @Test
  void bashCompletesWhatIsBegun(@TempDir Path folder) throws Exception {
    Assumptions.assumeTrue(Files.isExecutable(BASH), "there is no bash");
    Path script = folder.resolve("completions");
    Files.writeString(script, new Completions().bash());
    assertEquals("--units", completed(script, "plainsward", "--un"));
    assertEquals("metric", completed(script, "plainsward", "--units", "m"));
    assertEquals("--batch --brief", completed(script, "plainsward", "--b"));
  }

  private static String completed(Path script, String... words) throws Exception {
    String run =
        "source '%s'; COMP_WORDS=(%s); COMP_CWORD=%d; _plainsward; echo \"${COMPREPLY[*]}\""
            .formatted(script, String.join(" ", words), words.length - 1);
    Process bash = new ProcessBuilder(List.of(BASH.toString(), "-c", run)).start();
    return new String(bash.getInputStream().readAllBytes()).strip();
  }
}
