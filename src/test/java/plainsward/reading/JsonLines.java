package plainsward.reading;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Test data, a JSON object a line. An empty or missing file is an error, never an empty suite. */
public final class JsonLines {
  private static final Path RESOURCES = Path.of("src", "test", "resources");
  private static final JsonFactory JSON = new JsonFactory();

  private JsonLines() {}

  /** One line of a file. */
  public record Line(String file, int number, Map<String, Object> fields) {
    /** A text, or empty. */
    public String text(String name) {
      return (String) fields.getOrDefault(name, "");
    }

    /** A list of texts, empty where the field is not there. */
    public List<String> texts(String name) {
      return ((List<?>) fields.getOrDefault(name, List.of()))
          .stream().map(String.class::cast).toList();
    }

    /** A list of objects, empty where the field is not there. */
    @SuppressWarnings("unchecked")
    public List<Map<String, Object>> objects(String name) {
      return (List<Map<String, Object>>) fields.getOrDefault(name, List.of());
    }

    /** The place in the file, for messages. */
    public String place() {
      return file + ":" + number;
    }
  }

  /** The files of a folder under the test resources, sorted; there must be some. */
  public static List<Path> files(String folder) {
    try (Stream<Path> all = Files.list(RESOURCES.resolve(folder))) {
      List<Path> files = all.filter(f -> f.toString().endsWith(".jsonl")).sorted().toList();
      if (files.isEmpty()) {
        throw new IllegalStateException(folder + ": no files");
      }
      return files;
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  /** The lines of a file; there must be some. */
  public static List<Line> read(Path file) {
    try {
      List<String> texts = Files.readAllLines(file);
      List<Line> lines = new ArrayList<>();
      for (int i = 0; i < texts.size(); i++) {
        if (!texts.get(i).isBlank()) {
          lines.add(new Line(file.getFileName().toString(), i + 1, object(texts.get(i))));
        }
      }
      if (lines.isEmpty()) {
        throw new IllegalStateException(file + ": it is empty");
      }
      return lines;
    } catch (IOException fault) {
      throw new UncheckedIOException(file + ": " + fault.getMessage(), fault);
    }
  }

  private static Map<String, Object> object(String text) throws IOException {
    try (JsonParser json = JSON.createParser(text)) {
      json.nextToken();
      return object(json);
    }
  }

  private static Map<String, Object> object(JsonParser json) throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String name = json.currentName();
      json.nextToken();
      fields.put(name, value(json));
    }
    return fields;
  }

  private static Object value(JsonParser json) throws IOException {
    return switch (json.currentToken()) {
      case START_OBJECT -> object(json);
      case START_ARRAY -> list(json);
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT -> json.getIntValue();
      case VALUE_NULL -> null;
      default -> throw new IOException("a text, a whole number, a list or an object was expected");
    };
  }

  private static List<Object> list(JsonParser json) throws IOException {
    List<Object> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(json));
    }
    return items;
  }
}
