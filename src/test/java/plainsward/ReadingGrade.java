package plainsward;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The school grade that a text asks for: 0.39 × words per sentence + 11.8 × syllables per word −
 * 15.59. Kincaid, Fishburne, Rogers and Chissom, "Derivation of New Readability Formulas for Navy
 * Enlisted Personnel", Naval Technical Training Command, Research Branch Report 8-75 (1975).
 * Syllables are counted by groups of vowels, which is near enough for a limit.
 */
public final class ReadingGrade {
  private static final Pattern WORD = Pattern.compile("[A-Za-z][A-Za-z'’]*|\\d[\\d.,/]*");
  private static final Pattern SENTENCE_END =
      Pattern.compile("[.!?:;](?=\\s|$)|\\n\\s*(?=\\n|[-*] )");
  private static final Pattern VOWELS = Pattern.compile("[aeiouy]+");

  private ReadingGrade() {}

  /** The grade of a text, as a US school year; 8 is about age 13. */
  public static double of(String text) {
    Matcher words = WORD.matcher(text);
    int count = 0;
    int syllables = 0;
    while (words.find()) {
      count++;
      syllables += syllables(words.group());
    }
    long sentences = Math.max(1, SENTENCE_END.matcher(text.strip() + "\n").results().count());
    return 0.39 * count / sentences + 11.8 * syllables / Math.max(1, count) - 15.59;
  }

  /** How many syllables a word has, near enough. */
  static int syllables(String word) {
    String lower = word.toLowerCase(Locale.ROOT).replaceAll("['’]s?$", "");
    int groups = (int) VOWELS.matcher(lower).results().count();
    boolean silent = lower.matches(".*[^aeiouyl]e|.*[aeiouy]le|.*[^aeiouydt]ed|.*[^aeiousxzcgh]es");
    return Math.max(1, silent ? groups - 1 : groups);
  }
}
