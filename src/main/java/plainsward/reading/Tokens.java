package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plainsward.trade.MeasureWords;

/** Small repairs of a token list before anything is looked up in it. */
final class Tokens {
  private static final Set<String> SHORTENED =
      Set.of(
          "oz", "ozs", "fl", "sq", "ft", "gal", "gals", "lb", "lbs", "tbsp", "tsp", "yd", "yds",
          "pt", "pts", "qt", "qts", "ac", "approx", "vs", "jan", "feb", "mar", "apr", "jun", "jul",
          "aug", "sep", "sept", "oct", "nov", "dec", "in", "st", "ml", "l", "min", "sec", "no",
          "temp", "app", "apps", "max", "mr", "mrs", "dr", "m", "s", "f", "u", "p");

  /** What counts the part in "and a half". */
  private static final Set<String> PARTS = Set.of("a", "an", "one", "two", "three");

  /** First words of measures of two words. */
  private static final Set<String> FIRST = Set.of("liquid", "dry", "sq", "square");

  private Tokens() {}

  /**
   * Mends broken numbers and leaves out the signs inside a measure or a number in words: the stop
   * of a shortened word ("1.1 oz. per thousand"), the hyphens of "one-and-a-half".
   */
  static List<Token> joined(List<Token> typed) {
    List<Token> tokens = NumberSlips.mended(typed);
    List<Token> kept = new ArrayList<>(tokens.size());
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      if (i == 0 || token.apart() || !isInner(tokens, kept, i)) {
        kept.add(token);
      }
    }
    return kept;
  }

  /** Whether a sign or an ending right after another token only joins what stands around it. */
  private static boolean isInner(List<Token> tokens, List<Token> kept, int i) {
    Token before = tokens.get(i - 1);
    Token next = i + 1 < tokens.size() ? tokens.get(i + 1) : null;
    return switch (tokens.get(i).norm()) {
      case "." -> next != null && (isStop(before, next) || isUnitOfLetters(tokens, i));
      case "-" -> next != null && !next.apart() && isInNumber(kept, before, next);
      case "^" -> next != null && before.isWord() && next.is("2");
      case "th", "ths", "rd", "rds" -> before.isNumber() && i > 1 && tokens.get(i - 2).is("/");
      default -> false;
    };
  }

  private static boolean isStop(Token before, Token next) {
    boolean unit =
        !isLetter(next) && !next.apart() && MeasureWords.shipped().find(next.norm()).isPresent();
    return SHORTENED.contains(before.norm()) && goesOn(before, next) || before.isNumber() && unit;
  }

  /** Whether the stop stands in "p.s.i." or "c.c.": single letters that make a unit together. */
  private static boolean isUnitOfLetters(List<Token> tokens, int i) {
    int from = i - 1;
    while (from >= 2 && isLetter(tokens.get(from - 2)) && tokens.get(from - 1).is(".")) {
      from -= 2;
    }
    StringBuilder unit = new StringBuilder();
    int to = from;
    while (to < tokens.size() && isLetter(tokens.get(to)) && (to == from || !apart(tokens, to))) {
      unit.append(to == from ? "" : " ").append(tokens.get(to).norm());
      to += to + 1 < tokens.size() && tokens.get(to + 1).is(".") ? 2 : tokens.size();
    }
    return unit.length() > 1 && MeasureWords.shipped().find(unit.toString()).isPresent();
  }

  private static boolean apart(List<Token> tokens, int i) {
    return tokens.get(i).apart() || tokens.get(i - 1).apart();
  }

  private static boolean isLetter(Token token) {
    return token.isWord() && token.norm().length() == 1;
  }

  /** Whether the hyphen stands in "two-hundred", "one-and-a-half" or "fl-oz", however spelt. */
  private static boolean isInNumber(List<Token> kept, Token before, Token next) {
    boolean goesOn = kept.size() > 1 && kept.get(kept.size() - 2).is("and");
    boolean scale = before.isWord() && NumberWords.SCALES.containsKey(next.norm());
    boolean counted = goesOn && next.isWord() && PARTS.contains(before.norm());
    return scale
        || next.is("and")
        || before.is("and")
        || counted
        || before.norm().startsWith("fl") && next.norm().startsWith("o")
        || FIRST.contains(before.norm())
            && MeasureWords.shipped().find(before.norm() + " " + next.norm()).isPresent();
  }

  private static boolean goesOn(Token before, Token next) {
    char c = next.said().charAt(0);
    boolean loud = isCapitals(before.said()) && isCapitals(next.said());
    return loud
        || Character.isLowerCase(c)
        || c == '/'
        || c == ','
        || Character.isDigit(c)
        || !next.apart();
  }

  private static boolean isCapitals(String said) {
    return said.length() > 1 && said.chars().allMatch(Character::isUpperCase);
  }
}
