package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Small repairs of a token list before anything is looked up in it. */
final class Tokens {
  private static final Set<String> SHORTENED =
      Set.of(
          "oz", "ozs", "fl", "sq", "ft", "gal", "gals", "lb", "lbs", "tbsp", "tsp", "yd", "yds",
          "pt", "pts", "qt", "qts", "ac", "approx", "vs", "jan", "feb", "mar", "apr", "jun", "jul",
          "aug", "sep", "sept", "oct", "nov", "dec", "in", "st", "ml", "l", "min", "sec", "no",
          "temp", "app", "apps", "max", "mr", "mrs", "dr", "m", "s", "f", "u", "p");

  private Tokens() {}

  /** Leaves out the stop of a shortened word ("1.1 oz. per thousand"). */
  static List<Token> joined(List<Token> tokens) {
    List<Token> kept = new ArrayList<>(tokens.size());
    for (int i = 0; i < tokens.size(); i++) {
      Token token = tokens.get(i);
      boolean stop =
          token.is(".")
              && !token.apart()
              && i > 0
              && SHORTENED.contains(tokens.get(i - 1).norm())
              && i + 1 < tokens.size()
              && goesOn(tokens.get(i - 1), tokens.get(i + 1));
      if (!stop) {
        kept.add(token);
      }
    }
    return kept;
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
