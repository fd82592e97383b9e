package plainsward.records;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * Where the records live unless another place is named: the data folder of the XDG Base Directory
 * Specification, elsewhere the system's own.
 */
public final class DataFolder {
  private static final String NAME = "plainsward";

  private DataFolder() {}

  /** The folder of whoever runs the program. It need not exist. */
  public static Path usual() {
    return of(
        System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", ""));
  }

  /** The folder by these variables of the environment, system and home folder. */
  static Path of(Map<String, String> environment, String system, String home) {
    String named = environment.getOrDefault("XDG_DATA_HOME", "");
    if (isAbsolute(named)) {
      return Path.of(named, NAME);
    }
    String lower = system.toLowerCase(Locale.ROOT);
    String roaming = environment.getOrDefault("APPDATA", "");
    if (lower.startsWith("windows") && isAbsolute(roaming)) {
      return Path.of(roaming, NAME);
    }
    return lower.startsWith("mac")
        ? Path.of(home, "Library", "Application Support", NAME)
        : Path.of(home, ".local", "share", NAME);
  }

  /** The specification wants relative paths passed over. */
  private static boolean isAbsolute(String path) {
    try {
      return !path.isEmpty() && Path.of(path).isAbsolute();
    } catch (InvalidPathException notOne) {
      return false;
    }
  }
}
