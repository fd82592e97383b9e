package plainsward.reading;

import java.util.List;
import java.util.Optional;

/** The days of a month as ordinal words: "third", "twenty first". */
final class Ordinals {
  private static final List<String> WORDS =
      List.of(
          "first",
          "second",
          "third",
          "fourth",
          "fifth",
          "sixth",
          "seventh",
          "eighth",
          "ninth",
          "tenth",
          "eleventh",
          "twelfth",
          "thirteenth",
          "fourteenth",
          "fifteenth",
          "sixteenth",
          "seventeenth",
          "eighteenth",
          "nineteenth",
          "twentieth");

  private Ordinals() {}

  /** The number that an ordinal word stands for, up to twenty. */
  static Optional<Integer> of(String word) {
    int at = WORDS.indexOf(word);
    return at < 0 ? Optional.empty() : Optional.of(at + 1);
  }
}
