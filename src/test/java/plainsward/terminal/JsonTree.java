package plainsward.terminal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads JSON into maps, lists, texts and decimals, to be looked at by a test. */
final class JsonTree {
  private JsonTree() {}

  static Map<String, Object> object(String json) {
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      parser.nextToken();
      Map<String, Object> read = object(parser);
      if (parser.nextToken() != null) {
        throw new IllegalArgumentException("more than one value in: " + json);
      }
      return read;
    } catch (IOException broken) {
      throw new UncheckedIOException(json, broken);
    }
  }

  @SuppressWarnings("unchecked")
  static Map<String, Object> reply(String line, int turn) {
    return ((List<Map<String, Object>>) object(line).get("replies")).get(turn);
  }

  @SuppressWarnings("unchecked")
  static List<Map<String, Object>> list(Map<String, Object> reply, String key) {
    return (List<Map<String, Object>>) reply.get(key);
  }

  private static Map<String, Object> object(JsonParser parser) throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    while (parser.nextToken() != JsonToken.END_OBJECT) {
      String name = parser.currentName();
      parser.nextToken();
      fields.put(name, value(parser));
    }
    return fields;
  }

  private static Object value(JsonParser parser) throws IOException {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(parser);
      case START_ARRAY -> array(parser);
      case VALUE_STRING -> parser.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getDecimalValue();
      case VALUE_TRUE -> true;
      case VALUE_FALSE -> false;
      default -> "null";
    };
  }

  private static List<Object> array(JsonParser parser) throws IOException {
    List<Object> all = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      all.add(value(parser));
    }
    return all;
  }
}
