package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;

/** By the XDG Base Directory Specification 0.8: the default, and relative paths passed over. */
@DisabledOnOs(OS.WINDOWS)
class DataFolderTest {
  private static Path of(String named, String system) {
    return DataFolder.of(Map.of("XDG_DATA_HOME", named), system, "/home/ann");
  }

  @Test
  void theNamedDataFolderIsUsed() {
    assertEquals(Path.of("/data/plainsward"), of("/data", "Linux"));
    assertEquals(Path.of("/data/plainsward"), of("/data", "Mac OS X"));
  }

  @Test
  void withoutOneItIsTheUsualFolderOfTheSystem() {
    assertEquals(Path.of("/home/ann/.local/share/plainsward"), of("", "Linux"));
    assertEquals(Path.of("/home/ann/Library/Application Support/plainsward"), of("", "Mac OS X"));
    assertEquals(
        Path.of("/roaming/plainsward"),
        DataFolder.of(Map.of("APPDATA", "/roaming"), "Windows 11", "/home/ann"));
  }

  @Test
  void aRelativeOrImpossibleOneIsPassedOver() {
    assertEquals(Path.of("/home/ann/.local/share/plainsward"), of("data", "Linux"));
    assertEquals(Path.of("/home/ann/.local/share/plainsward"), of("/da\0ta", "Linux"));
  }
}
