package plainsward.terminal;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import plainsward.reply.Reply;

/** Objects of JSON on one line each, without the line's end. */
final class JsonLine {
  /** Room for most replies, so that it need not grow on the way. */
  private static final int ROOM = 8_000;

  private JsonLine() {}

  /** What is written into a line. */
  interface Content {
    /** Writes it. */
    void write(JsonGenerator json) throws IOException;
  }

  /** The line that this content makes. */
  static String of(Content content) {
    StringWriter line = new StringWriter(ROOM);
    try (JsonGenerator json = ReplyJson.FACTORY.createGenerator(line)) {
      content.write(json);
    } catch (IOException fault) {
      throw new UncheckedIOException("JSON can't be written", fault);
    }
    return line.toString();
  }

  /** One reply. */
  static String of(Reply reply, Length length) {
    return of(json -> new ReplyJson(json).write(reply, PlainText.of(reply, length)));
  }

  /** What stands in place of replies where a line can't be answered. */
  static String error(String sentence, long lineNumber) {
    return of(
        json -> {
          json.writeStartObject();
          json.writeStringField("error", CleanText.line(sentence));
          json.writeNumberField("line", lineNumber);
          json.writeEndObject();
        });
  }

  /** JSON of others in which half a surrogate pair, which an id may hold, is an escape. */
  static String withoutHalfPairs(String line) {
    int first = 0;
    while (first < line.length() && !Character.isSurrogate(line.charAt(first))) {
      first++;
    }
    if (first == line.length()) {
      return line;
    }
    StringBuilder whole = new StringBuilder(line.length() + 16);
    line.codePoints()
        .forEach(
            c -> {
              if (Character.getType(c) == Character.SURROGATE) {
                whole.append("\\u").append(Integer.toHexString(c));
              } else {
                whole.appendCodePoint(c);
              }
            });
    return whole.toString();
  }
}
