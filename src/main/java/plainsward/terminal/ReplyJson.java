package plainsward.terminal;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import plainsward.reply.Assumed;
import plainsward.reply.Caution;
import plainsward.reply.Figure;
import plainsward.reply.NoteLink;
import plainsward.reply.Reply;
import plainsward.reply.Understood;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * Writes a reply as the one JSON object of the reply contract: every key, in the contract's order,
 * values to 17 digits, which is what a double can tell apart.
 */
final class ReplyJson {
  private static final MathContext DIGITS = new MathContext(17, RoundingMode.HALF_EVEN);
  private static final int LONGEST_PLAIN = 21;
  private static final String DATE = "0000-00-00";

  /** Made once, at the first reply that is written. */
  static final JsonFactory FACTORY = new JsonFactory();

  private final JsonGenerator json;

  ReplyJson(JsonGenerator json) {
    this.json = json;
  }

  /**
   * Writes one reply.
   *
   * @param reply the reply
   * @param text the whole of it as the plain screen shows it
   */
  void write(Reply reply, String text) throws IOException {
    json.writeStartObject();
    json.writeStringField("kind", reply.kind().word());
    words("topics", reply.topics());
    said("headline", reply.headline());
    json.writeStringField("text", CleanText.paragraphs(text));
    list("figures", reply.figures(), this::figure);
    words("working", reply.working());
    list("assumed", reply.assumed(), this::assumed);
    words("needs", reply.needs());
    list("understood", reply.understood(), this::understood);
    list("cautions", reply.cautions(), this::caution);
    list("notes", reply.notes(), this::note);
    words("suggest", reply.suggest());
    json.writeEndObject();
  }

  /** Writes one thing of a list. */
  private interface Part<T> {
    void write(T thing) throws IOException;
  }

  private <T> void list(String name, List<T> things, Part<T> part) throws IOException {
    json.writeArrayFieldStart(name);
    for (T thing : things) {
      part.write(thing);
    }
    json.writeEndArray();
  }

  private <T> void object(T thing, Part<T> fields) throws IOException {
    json.writeStartObject();
    fields.write(thing);
    json.writeEndObject();
  }

  private void words(String name, List<String> words) throws IOException {
    list(name, words, word -> json.writeString(CleanText.line(word)));
  }

  private void said(String name, String line) throws IOException {
    json.writeStringField(name, CleanText.line(line));
  }

  private void figure(Figure figure) throws IOException {
    object(
        figure,
        f -> {
          said("name", f.name());
          amount(f.value(), f.high());
          if (f.date().isPresent()) {
            json.writeStringField("date", f.date().get().toString());
          }
          if (f.word().isPresent()) {
            said("word", f.word().get());
          }
          said("shown", f.shown());
        });
  }

  private void understood(Understood understood) throws IOException {
    object(
        understood,
        u -> {
          said("name", u.name());
          amount(u.value(), u.high());
          if (u.value().isEmpty() && u.word().isPresent()) {
            String word = u.word().get();
            said(isDate(word) ? "date" : "word", word);
          }
          said("said", u.said());
          said("from", u.from());
        });
  }

  /** Whether it is written as the days of ISO 8601 are. */
  private static boolean isDate(String word) {
    boolean date = word.length() == DATE.length();
    for (int i = 0; date && i < word.length(); i++) {
      char c = word.charAt(i);
      date = DATE.charAt(i) == '0' ? c >= '0' && c <= '9' : c == DATE.charAt(i);
    }
    return date;
  }

  private void assumed(Assumed assumed) throws IOException {
    object(
        assumed,
        a -> {
          said("name", a.name());
          amount(Optional.of(a.value()), Optional.empty());
          said("reason", a.reason());
        });
  }

  private void caution(Caution caution) throws IOException {
    object(
        caution,
        c -> {
          said("id", c.id());
          said("text", c.text());
        });
  }

  private void note(NoteLink note) throws IOException {
    object(
        note,
        n -> {
          said("id", n.id());
          said("title", n.title());
        });
  }

  /** The value; for a range also its ends, the value being the low one. */
  private void amount(Optional<Quantity> value, Optional<Quantity> high) throws IOException {
    if (value.isEmpty()) {
      return;
    }
    Quantity low = value.get();
    number("value", low.value());
    if (high.isPresent()) {
      number("low", low.value());
      number("high", high.get().in(low.unit()).value());
    }
    said("unit", low.unit().code());
  }

  private void number(String name, Ratio value) throws IOException {
    json.writeFieldName(name);
    json.writeNumber(number(value));
  }

  /** The decimal as JSON writes it, with an exponent only where it would be very long. */
  static String number(Ratio value) {
    BigDecimal decimal =
        new BigDecimal(value.numerator()).divide(new BigDecimal(value.denominator()), DIGITS);
    if (decimal.signum() == 0) {
      return "0";
    }
    BigDecimal bare = decimal.stripTrailingZeros();
    boolean isShort =
        Math.abs(bare.scale()) < LONGEST_PLAIN && bare.precision() - bare.scale() < LONGEST_PLAIN;
    return isShort ? bare.toPlainString() : bare.toString();
  }

  /** Whether this fault is the text's and not the program's. */
  static boolean isOfText(IOException fault) {
    return fault instanceof JsonProcessingException;
  }
}
