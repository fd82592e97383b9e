package plainsward.terminal;

import java.util.LinkedHashMap;
import java.util.Map;

/** The contract's names in plain words, from the file {@code names.txt}. */
final class Names {
  private static final Map<String, String> PHRASES = load();

  private Names() {}

  /** A phrase with a value in its place: {@code area} and {@code 4,000 sq ft} of lawn. */
  static String phrase(String name, String value) {
    String phrase = PHRASES.get(name);
    return phrase == null ? words(name) + " " + value : phrase.replace("{}", value);
  }

  /** The bare name, as in "product total". */
  static String words(String name) {
    String words = name.replace('_', ' ');
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private static Map<String, String> load() {
    Map<String, String> phrases = new LinkedHashMap<>();
    for (String line : Texts.of("names.txt").split("\n", -1)) {
      int equals = line.indexOf('=');
      if (equals > 0 && line.charAt(0) != '#') {
        phrases.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip());
      }
    }
    return phrases;
  }
}
