package plainsward.records;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** JSON text into maps, lists, texts, decimals and flags; a broken text is told with its line. */
final class Json {
  private static final int DEEPEST = 40;
  private static final JsonFactory JSON =
      JsonFactory.builder()
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .streamReadConstraints(
              StreamReadConstraints.builder().maxNestingDepth(DEEPEST).maxNumberLength(120).build())
          .build();

  private Json() {}

  /**
   * The one value that the bytes hold.
   *
   * @throws FieldFault where they are not UTF-8, not JSON, or more than one value
   */
  static Node read(byte[] bytes) {
    String text = text(bytes);
    if (text.isBlank()) {
      throw FieldFault.saying("", "it is empty");
    }
    try (JsonParser json = JSON.createParser(text)) {
      json.nextToken();
      Object value = value(json);
      if (json.nextToken() != null) {
        throw FieldFault.saying(place(json.currentTokenLocation()), "nothing more was expected");
      }
      return new Node("", value);
    } catch (NumberFormatException endless) {
      throw FieldFault.saying("", "the number is too long");
    } catch (JsonEOFException early) {
      throw FieldFault.saying("", "it ends in the middle");
    } catch (JsonProcessingException broken) {
      throw FieldFault.saying(place(broken.getLocation()), reason(broken));
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** The text of UTF-8 bytes, without a byte-order mark. */
  static String text(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException notText) {
      throw FieldFault.saying("", "it is not UTF-8 text");
    }
  }

  private static String place(JsonLocation at) {
    return at == null ? "" : "line " + at.getLineNr() + ", column " + at.getColumnNr();
  }

  private static String reason(JsonProcessingException broken) {
    String message = String.valueOf(broken.getOriginalMessage());
    if (message.startsWith("Duplicate field")) {
      return "a field stands there twice";
    }
    if (message.contains("nesting depth")) {
      return "it is nested more than " + DEEPEST + " deep";
    }
    return message.contains("Number value length") ? "the number is too long" : "this is not JSON";
  }

  private static Object value(JsonParser json) throws IOException {
    return switch (json.currentToken()) {
      case START_OBJECT -> object(json);
      case START_ARRAY -> list(json);
      case VALUE_STRING -> json.getText();
      case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> json.getDecimalValue();
      case VALUE_TRUE -> Boolean.TRUE;
      case VALUE_FALSE -> Boolean.FALSE;
      default -> null;
    };
  }

  private static Map<String, Object> object(JsonParser json) throws IOException {
    Map<String, Object> fields = new LinkedHashMap<>();
    while (json.nextToken() == JsonToken.FIELD_NAME) {
      String key = json.currentName();
      json.nextToken();
      fields.put(key, value(json));
    }
    return fields;
  }

  private static List<Object> list(JsonParser json) throws IOException {
    List<Object> items = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      items.add(value(json));
    }
    return items;
  }
}
