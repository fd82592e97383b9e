package plainsward.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.StringWriter;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.UnitSystem;

/** Reads a batch line's object key by key; keys that are not known are passed over. */
final class BatchLineReader {
  private static final String ONE_DATE = "a date such as \"2026-05-01\"";
  private static final String ONE_SYSTEM = "\"us\", \"metric\" or \"imperial\"";
  private static final String QUESTIONS = "a list of questions";

  private final JsonParser json;
  private Optional<String> id = Optional.empty();
  private Optional<List<String>> turns = Optional.empty();
  private Optional<LocalDate> today = Optional.empty();
  private Optional<UnitSystem> units = Optional.empty();

  BatchLineReader(JsonParser json) {
    this.json = json;
  }

  /** The line; the parser stands before its opening brace. */
  BatchLine read() throws IOException, Unreadable {
    json.nextToken();
    while (json.nextToken() != JsonToken.END_OBJECT) {
      String key = json.currentName();
      json.nextToken();
      value(key);
    }
    if (json.nextToken() != null) {
      throw new Unreadable("There is more on the line after the object's closing brace.");
    }
    if (turns.isEmpty()) {
      throw new Unreadable("\"turns\" is missing: it takes " + QUESTIONS + ".");
    }
    return new BatchLine(id, turns.get(), today, units);
  }

  private void value(String key) throws IOException, Unreadable {
    switch (key) {
      case "id" -> id = Optional.of(copied());
      case "turns" -> turns = Optional.of(turns());
      case "today" -> today = today();
      case "units" -> units = units();
      default -> json.skipChildren();
    }
  }

  private List<String> turns() throws IOException, Unreadable {
    if (json.currentToken() != JsonToken.START_ARRAY) {
      throw wrong("turns", QUESTIONS);
    }
    List<String> said = new ArrayList<>();
    while (json.nextToken() != JsonToken.END_ARRAY) {
      if (json.currentToken() != JsonToken.VALUE_STRING) {
        throw wrong("turns", QUESTIONS);
      }
      said.add(json.getText());
    }
    return said;
  }

  private Optional<LocalDate> today() throws IOException, Unreadable {
    Optional<String> said = text("today", ONE_DATE);
    try {
      return said.map(LocalDate::parse);
    } catch (DateTimeException notADate) {
      throw wrong("today", ONE_DATE);
    }
  }

  private Optional<UnitSystem> units() throws IOException, Unreadable {
    Optional<String> said = text("units", ONE_SYSTEM);
    for (UnitSystem system : UnitSystem.values()) {
      if (said.equals(Optional.of(system.word()))) {
        return Optional.of(system);
      }
    }
    if (said.isPresent()) {
      throw wrong("units", ONE_SYSTEM);
    }
    return Optional.empty();
  }

  /** A text; null is as good as leaving the key out. */
  private Optional<String> text(String key, String what) throws IOException, Unreadable {
    if (json.currentToken() == JsonToken.VALUE_NULL) {
      return Optional.empty();
    }
    if (json.currentToken() != JsonToken.VALUE_STRING) {
      throw wrong(key, what);
    }
    return Optional.of(json.getText());
  }

  private static Unreadable wrong(String key, String what) {
    return new Unreadable("\"" + key + "\" takes " + what + ".");
  }

  /** The value as it stands, numbers digit for digit. */
  private String copied() throws IOException {
    StringWriter copy = new StringWriter();
    try (JsonGenerator out = ReplyJson.FACTORY.createGenerator(copy)) {
      int depth = copyToken(out);
      while (depth > 0) {
        json.nextToken();
        depth += copyToken(out);
      }
    }
    return copy.toString();
  }

  /** Copies one token and tells how much deeper it leads. */
  private int copyToken(JsonGenerator out) throws IOException {
    JsonToken token = json.currentToken();
    if (token.isNumeric()) {
      out.writeNumber(json.getText());
    } else {
      out.copyCurrentEvent(json);
    }
    return token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
  }
}
