package plainsward.trade;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a trade table: a JSON array of flat objects, by streaming, because a tree costs start-up
 * time. A broken table stops the program with the file, the row and the line.
 */
public final class JsonRows {
  private static final JsonFactory JSON = new JsonFactory();

  private JsonRows() {}

  /** The rows of the table {@code corpus/tables/<name>.json} on the class path. */
  public static List<Row> of(String name) {
    String file = Rows.file(name);
    try (InputStream in = JsonRows.class.getClassLoader().getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + ": the table is missing");
      }
      return read(file, in);
    } catch (IOException fault) {
      throw new UncheckedIOException(file + ": " + fault.getMessage(), fault);
    }
  }

  private static List<Row> read(String file, InputStream in) throws IOException {
    List<Row> rows = new ArrayList<>();
    try (JsonParser json = JSON.createParser(in)) {
      expect(file, json, json.nextToken(), JsonToken.START_ARRAY);
      while (json.nextToken() != JsonToken.END_ARRAY) {
        expect(file, json, json.currentToken(), JsonToken.START_OBJECT);
        rows.add(new Row(file, rows.size(), object(file, json)));
      }
    }
    return Collections.unmodifiableList(rows);
  }

  private static Map<String, Object> object(String file, JsonParser json) throws IOException {
    Map<String, Object> values = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String key = json.currentName();
      json.nextToken();
      Object value = value(file, json);
      if (value != null) {
        values.put(key, value);
      }
    }
    return values;
  }

  private static Object value(String file, JsonParser json) throws IOException {
    return switch (json.currentToken()) {
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> json.getDecimalValue();
      case VALUE_TRUE -> Boolean.TRUE;
      case VALUE_FALSE -> Boolean.FALSE;
      case VALUE_NULL -> null;
      case START_ARRAY -> list(file, json);
      default -> throw fault(file, json, "a flat value was expected");
    };
  }

  private static Row.Texts list(String file, JsonParser json) throws IOException {
    List<String> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(String.valueOf(value(file, json)));
    }
    return new Row.Texts(List.copyOf(items));
  }

  private static void expect(String file, JsonParser json, JsonToken found, JsonToken wanted) {
    if (found != wanted) {
      throw fault(file, json, wanted + " was expected, found " + found);
    }
  }

  private static IllegalStateException fault(String file, JsonParser json, String what) {
    return new IllegalStateException(
        file + ", line " + json.currentLocation().getLineNr() + ": " + what);
  }
}
