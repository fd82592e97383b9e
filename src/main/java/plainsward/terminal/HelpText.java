package plainsward.terminal;

import java.io.IOException;
import java.io.InputStream;
import java.util.Properties;
import java.util.stream.Collectors;

/** The texts about the program itself. */
final class HelpText {
  private static final String PROPERTIES = "/META-INF/maven/plainsward/plainsward/pom.properties";

  private HelpText() {}

  /** What can be said on the command line. */
  static String usage() {
    String lines = Option.all().stream().map(Option::line).collect(Collectors.joining("\n"));
    return Texts.of("usage.txt").replace("{options}", lines).strip();
  }

  /** Examples of what can be asked, by task. */
  static String examples() {
    return Texts.of("help.txt").strip();
  }

  /** The words of greeting. */
  static String greeting() {
    return Texts.of("greeting.txt").strip();
  }

  /** The program's name and version; a version not packed yet has no number. */
  static String version() {
    Properties properties = new Properties();
    try (InputStream in = HelpText.class.getResourceAsStream(PROPERTIES)) {
      if (in != null) {
        properties.load(in);
      }
    } catch (IOException notToBeTold) {
      properties.clear();
    }
    return "plainsward " + properties.getProperty("version", "not packed");
  }
}
