package plainsward.handbook;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A question as somebody might put it, and the notes that answer it.
 *
 * @param ask the words
 * @param notes the ids of the notes, any of which will do
 */
record Wording(String ask, Set<String> notes) {
  private static final Path FOLDER = Path.of("src/test/resources/handbook");

  /** The wordings that the search was tuned on. */
  static List<Wording> all() throws IOException {
    return in("wordings.jsonl");
  }

  /** Wordings written blind; README.md beside them tells the share found at the first try. */
  static List<Wording> blind() throws IOException {
    return in("blind-wordings.jsonl");
  }

  private static List<Wording> in(String file) throws IOException {
    List<Wording> read = new ArrayList<>();
    for (String line : Files.readAllLines(FOLDER.resolve(file))) {
      read.add(of(line));
    }
    return read;
  }

  private static Wording of(String line) throws IOException {
    String ask = "";
    Set<String> notes = new LinkedHashSet<>();
    try (JsonParser json = new JsonFactory().createParser(line)) {
      String field = "";
      while (json.nextToken() != null) {
        if (json.currentToken() == JsonToken.FIELD_NAME) {
          field = json.currentName();
        } else if (json.currentToken() == JsonToken.VALUE_STRING && field.equals("ask")) {
          ask = json.getText();
        } else if (json.currentToken() == JsonToken.VALUE_STRING) {
          notes.add(json.getText());
        }
      }
    }
    return new Wording(ask, notes);
  }
}
