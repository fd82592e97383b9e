package plainsward.records;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import plainsward.units.Ratio;

/**
 * A value of a JSON file with its path. Every reading method either gives what was expected or
 * throws a {@link FieldFault} that says where, what was expected and what was found.
 *
 * @param path where it stands, such as {@code rates[0].amount}; empty for the whole
 * @param value a map, a list, a text, a decimal, a flag, or null
 */
record Node(String path, Object value) {
  /** More digits than any amount needs; a longer number would make exact sums crawl. */
  private static final int MOST_DIGITS = 60;

  private static final int LONGEST_TEXT = 4000;

  /** Made when first wanted. */
  private static final class Forms {
    static final Pattern FRACTION = Pattern.compile("-?[0-9]{1,60}/[0-9]{1,60}");
    static final Pattern DATE = Pattern.compile("[0-9]{4}-[0-9]{2}-[0-9]{2}");
  }

  /** The fault that something else was expected here. */
  FieldFault expected(String what) {
    return FieldFault.at(path, what, value);
  }

  /** The fields of an object. */
  Map<?, ?> object() {
    if (value instanceof Map<?, ?> map) {
      return map;
    }
    throw expected("an object");
  }

  /** Refuses fields that are not among these, so that a misspelt one is not overlooked. */
  Node allow(Set<String> known) {
    for (Object key : object().keySet()) {
      if (!known.contains(key)) {
        throw FieldFault.saying(pathOf((String) key), "there is no such field");
      }
    }
    return this;
  }

  private String pathOf(String key) {
    String plain = key.length() > 40 ? key.substring(0, 40) : key;
    return path.isEmpty() ? plain : path + "." + plain;
  }

  /** Whether the object has the field with a value. */
  boolean has(String key) {
    return object().get(key) != null;
  }

  /** A field, whose value may be null. */
  Node get(String key) {
    return new Node(pathOf(key), object().get(key));
  }

  /** A field that may be missing. */
  <T> Optional<T> optional(String key, Function<Node, T> reader) {
    Node field = get(key);
    return field.value == null ? Optional.empty() : Optional.of(reader.apply(field));
  }

  /** The items of a list; a missing one is empty. */
  <T> List<T> list(String key, Function<Node, T> reader) {
    Node field = get(key);
    return field.value == null ? List.of() : field.items().stream().map(reader).toList();
  }

  /** The items of this list. */
  List<Node> items() {
    if (!(value instanceof List<?> list)) {
      throw expected("a list");
    }
    List<Node> items = new ArrayList<>();
    for (Object item : list) {
      items.add(new Node(path + "[" + items.size() + "]", item));
    }
    return items;
  }

  /** A text that is not blank. */
  String text() {
    if (value instanceof String text && !text.isBlank()) {
      if (text.length() > LONGEST_TEXT) {
        throw FieldFault.saying(path, "the text is longer than " + LONGEST_TEXT + " characters");
      }
      return text;
    }
    throw expected("a text");
  }

  /** A name. */
  String name() {
    if (value instanceof String text && Names.isName(text)) {
      return text;
    }
    throw expected("a name of 1 to " + Names.LONGEST + " visible characters");
  }

  /** A flag. */
  boolean flag() {
    if (value instanceof Boolean flag) {
      return flag;
    }
    throw expected("true or false");
  }

  /** A number of ordinary size, or a fraction as a text ({@code "1/3"}). */
  Ratio number() {
    if (value instanceof BigDecimal number) {
      return ratio(number);
    }
    if (value instanceof String text && Forms.FRACTION.matcher(text).matches()) {
      String[] parts = text.split("/");
      Ratio below = Ratio.of(parts[1]);
      if (below.signum() != 0) {
        return Ratio.of(parts[0]).dividedBy(below);
      }
    }
    throw expected("a number");
  }

  private Ratio ratio(BigDecimal number) {
    if (number.precision() > MOST_DIGITS || Math.abs((long) number.scale()) > MOST_DIGITS) {
      throw expected("a number of ordinary size");
    }
    return Ratio.of(number);
  }

  /** A whole number between two bounds. */
  int whole(int least, int most) {
    if (value instanceof BigDecimal number) {
      Ratio exact = ratio(number);
      if (exact.isWhole()
          && exact.compareTo(Ratio.of(least)) >= 0
          && exact.compareTo(Ratio.of(most)) <= 0) {
        return exact.numerator().intValueExact();
      }
    }
    throw expected("a whole number from " + least + " to " + most);
  }

  /** A date such as 2026-05-01. */
  LocalDate date() {
    if (value instanceof String text && Forms.DATE.matcher(text).matches()) {
      try {
        return LocalDate.of(
            Integer.parseInt(text, 0, 4, 10),
            Integer.parseInt(text, 5, 7, 10),
            Integer.parseInt(text, 8, 10, 10));
      } catch (DateTimeException noSuchDay) {
        throw expected("a day of the calendar");
      }
    }
    throw expected("a date such as 2026-05-01");
  }

  /** One of the words of a closed list. */
  <E extends Word> E word(E[] all) {
    List<String> words = new ArrayList<>();
    for (E each : all) {
      if (each.word().equals(value)) {
        return each;
      }
      words.add('"' + each.word() + '"');
    }
    throw expected(String.join(" or ", words));
  }

  /** The version of a file; without one it is 0. */
  int version(int known) {
    Optional<Integer> found = optional("version", v -> v.whole(0, 1_000_000));
    if (found.isPresent() && found.get() > known) {
      throw FieldFault.newer(pathOf("version"), found.get(), known);
    }
    return found.orElse(0);
  }
}
