package plainsward.reading;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import plainsward.units.Ratio;

/** Number words and what they add up from. */
final class NumberWords {
  static final Map<String, Integer> SMALL = small();
  static final Map<String, Integer> TENS =
      Map.of(
          "twenty", 20, "thirty", 30, "forty", 40, "fourty", 40, "fifty", 50, "sixty", 60,
          "seventy", 70, "eighty", 80, "ninety", 90);
  static final Map<String, Integer> SCALES =
      Map.of(
          "hundred",
          100,
          "thousand",
          1000,
          "thou",
          1000,
          "million",
          1_000_000,
          "billion",
          1_000_000_000,
          "thosand",
          1000,
          "thousnd",
          1000,
          "thousnad",
          1000,
          "thousands",
          1000);

  /** Twelve by its names. */
  static final Set<String> DOZENS = Set.of("dozen", "dozens", "doz", "dozs");

  /** Two by its names, where a measure follows. */
  static final Set<String> COUPLES = Set.of("couple", "pair");

  /** Parts of one: "third" is 1/3, "quarters" 1/4. */
  static final Map<String, Ratio> PARTS = parts();

  private static final Set<String> ALL = all();

  private NumberWords() {}

  static boolean isNumberWord(String word) {
    return ALL.contains(word);
  }

  private static Set<String> all() {
    Set<String> all = new HashSet<>(SMALL.keySet());
    all.addAll(TENS.keySet());
    all.addAll(SCALES.keySet());
    all.addAll(PARTS.keySet());
    return all;
  }

  private static Map<String, Integer> small() {
    String[] words = {
      "zero",
      "one",
      "two",
      "three",
      "four",
      "five",
      "six",
      "seven",
      "eight",
      "nine",
      "ten",
      "eleven",
      "twelve",
      "thirteen",
      "fourteen",
      "fifteen",
      "sixteen",
      "seventeen",
      "eighteen",
      "nineteen"
    };
    Map<String, Integer> all = new HashMap<>();
    for (int i = 0; i < words.length; i++) {
      all.put(words[i], i);
    }
    all.put("dozen", 12);
    all.put("nought", 0);
    all.put("naught", 0);
    return Map.copyOf(all);
  }

  private static Map<String, Ratio> parts() {
    Map<String, Ratio> all = new HashMap<>();
    String[] names = {
      "half", "third", "quarter", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth"
    };
    for (int i = 0; i < names.length; i++) {
      Ratio part = Ratio.of(1, i + 2L);
      all.put(names[i], part);
      all.put(i == 0 ? "halves" : names[i] + "s", part);
    }
    all.put("sixteenth", Ratio.of(1, 16));
    all.put("sixteenths", Ratio.of(1, 16));
    all.put("twelfth", Ratio.of(1, 12));
    all.put("twelfths", Ratio.of(1, 12));
    all.put("hundredth", Ratio.of(1, 100));
    all.put("hundredths", Ratio.of(1, 100));
    all.put("fourth", Ratio.of(1, 4));
    all.put("fourths", Ratio.of(1, 4));
    return Map.copyOf(all);
  }
}
