package plainsward.trade;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One row of a trade table. A value that is missing or of another kind is a fault of the file, told
 * with its place.
 */
public final class Row {
  private final String file;
  private final int number;
  private final Map<String, Object> values;

  /**
   * A list of texts under a key.
   *
   * @param items the texts, in their order
   */
  public record Texts(List<String> items) {}

  /** Row {@code number} of a file, counted from 0; values as {@link #values} gives them. */
  public Row(String file, int number, Map<String, Object> values) {
    this.file = file;
    this.number = number;
    this.values = values;
  }

  /** All values by key: texts, decimals, truth values and {@link Texts}. */
  public Map<String, Object> values() {
    return Collections.unmodifiableMap(values);
  }

  /** Where the row stands: file and number. */
  public String place() {
    return file + "[" + number + "]";
  }

  /** The text under a key that must be there. */
  public String text(String key) {
    return optional(key).orElseThrow(() -> fault(key, "a text was expected"));
  }

  /** The text under a key, or nothing. */
  public Optional<String> optional(String key) {
    Object value = values.get(key);
    if (value == null) {
      return Optional.empty();
    }
    if (value instanceof String text) {
      return Optional.of(text);
    }
    if (value instanceof BigDecimal number) {
      return Optional.of(number.toPlainString());
    }
    throw fault(key, "a text was expected");
  }

  /** The texts under a key; a key that is missing gives none, a single text gives one. */
  public List<String> texts(String key) {
    Object value = values.get(key);
    if (value == null) {
      return List.of();
    }
    if (value instanceof String text) {
      return List.of(text);
    }
    if (value instanceof Texts list) {
      return list.items();
    }
    throw fault(key, "a list of texts was expected");
  }

  /** The number under a key, or nothing. */
  public Optional<BigDecimal> number(String key) {
    Object value = values.get(key);
    if (value == null) {
      return Optional.empty();
    }
    if (value instanceof BigDecimal number) {
      return Optional.of(number);
    }
    throw fault(key, "a number was expected");
  }

  /** Whether the flag under a key is set; a missing one is not. */
  public boolean flag(String key) {
    return Boolean.TRUE.equals(values.get(key));
  }

  private IllegalStateException fault(String key, String what) {
    return new IllegalStateException(place() + "." + key + ": " + what);
  }
}
