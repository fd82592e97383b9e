package plainsward.records;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A JSON object in the making: fields in order, what is not known left out. */
final class Tree {
  private static final JsonFactory JSON =
      JsonFactory.builder().enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN).build();

  private final Map<String, Object> fields = new LinkedHashMap<>();

  /** Adds a field. */
  Tree put(String key, Object value) {
    fields.put(key, value instanceof Tree tree ? tree.fields : value);
    return this;
  }

  /** Adds a field if there is a value. */
  Tree put(String key, Optional<?> value) {
    value.ifPresent(v -> put(key, v));
    return this;
  }

  /** Adds an object if it holds anything. */
  Tree putIfAny(String key, Tree value) {
    return value.fields.isEmpty() ? this : put(key, value);
  }

  /** Adds a list if it holds anything. */
  Tree putIfAny(String key, List<?> values) {
    return values.isEmpty() ? this : putAll(key, values);
  }

  /** Adds a list, even an empty one. */
  Tree putAll(String key, List<?> values) {
    return put(key, values.stream().map(v -> v instanceof Tree tree ? tree.fields : v).toList());
  }

  /** Adds all fields of another. */
  Tree addAll(Tree other) {
    fields.putAll(other.fields);
    return this;
  }

  /** The object on one line, without a line end. */
  String line() {
    return written(false);
  }

  /** The object as a text that people can read, two spaces a level. */
  String text() {
    return written(true) + "\n";
  }

  private String written(boolean pretty) {
    StringWriter out = new StringWriter();
    try (JsonGenerator json = JSON.createGenerator(out)) {
      if (pretty) {
        DefaultIndenter indent = new DefaultIndenter("  ", "\n");
        json.setPrettyPrinter(
            new DefaultPrettyPrinter().withObjectIndenter(indent).withArrayIndenter(indent));
      }
      write(json, fields);
    } catch (IOException impossible) {
      throw new IllegalStateException(impossible);
    }
    return out.toString();
  }

  private static void write(JsonGenerator json, Object value) throws IOException {
    if (value instanceof Map<?, ?> object) {
      json.writeStartObject();
      for (Map.Entry<?, ?> field : object.entrySet()) {
        json.writeFieldName((String) field.getKey());
        write(json, field.getValue());
      }
      json.writeEndObject();
    } else if (value instanceof Collection<?> list) {
      json.writeStartArray();
      for (Object item : list) {
        write(json, item);
      }
      json.writeEndArray();
    } else {
      writeLeaf(json, value);
    }
  }

  private static void writeLeaf(JsonGenerator json, Object value) throws IOException {
    if (value instanceof BigDecimal number) {
      json.writeNumber(number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean flag) {
      json.writeBoolean(flag);
    } else {
      json.writeString(String.valueOf(value));
    }
  }
}
