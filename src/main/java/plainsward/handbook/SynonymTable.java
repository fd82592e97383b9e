package plainsward.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/**
 * Reads the table of trade synonyms in the build. A row is {@code {"same": [...]}} (each phrase
 * stands for all others), {@code {"say": [...], "means": [...]}} (one way only) or {@code {"light":
 * [...]}} (words that say nothing about the matter). JSON is read as YAML, which it is a part of.
 */
final class SynonymTable {
  private SynonymTable() {}

  static SynonymMaker read(Path file) throws IOException {
    Object table = new Load(LoadSettings.builder().build()).loadFromString(Files.readString(file));
    SynonymMaker synonyms = new SynonymMaker();
    int row = 0;
    for (Object each : (List<?>) table) {
      add(file + ", row " + row++, (Map<?, ?>) each, synonyms);
    }
    return synonyms;
  }

  private static void add(String where, Map<?, ?> row, SynonymMaker synonyms) {
    if (row.containsKey("same")) {
      synonyms.add(phrases(where, row, "same"), phrases(where, row, "same"));
    } else if (row.containsKey("light")) {
      synonyms.addLight(phrases(where, row, "light"));
    } else {
      synonyms.add(phrases(where, row, "say"), phrases(where, row, "means"));
    }
  }

  private static List<String> phrases(String where, Map<?, ?> row, String key) {
    if (row.get(key) instanceof List<?> items && !items.isEmpty()) {
      return items.stream().map(String::valueOf).toList();
    }
    throw new IllegalArgumentException(where + ": '" + key + "' must be a list of phrases.");
  }
}
