package plainsward.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plainsward.units.UnitSystem;

/** Where in a text quantities stand, to be marked while it is typed. */
public final class Marks {
  private static final int LONGEST = 1000;

  private Marks() {}

  /**
   * A stretch of text.
   *
   * @param start the place of its first character
   * @param end the place after its last
   */
  public record Stretch(int start, int end) {}

  /**
   * The quantities in a text, left to right without overlap: amounts, rates, sides, days, waits. A
   * number that has no unit is none. Text over 1,000 characters, or with signs that reading
   * replaces by longer ones, gives none.
   *
   * @param system the measures meant where the text does not tell
   * @param today the day that dates are reckoned from
   */
  public static List<Stretch> quantities(String typed, UnitSystem system, LocalDate today) {
    String text = typed.length() > LONGEST ? "" : Cleaner.clean(typed);
    List<Stretch> found = new ArrayList<>();
    if (text.length() != typed.length()) {
      return found;
    }
    List<Token> tokens = Spelling.shipped().mended(Tokens.joined(Tokenizer.tokens(text)));
    for (Mention mention : new Scanner(tokens, system, today).mentions()) {
      if (isQuantity(mention)) {
        int start = tokens.get(mention.from()).start();
        found.add(new Stretch(start, tokens.get(mention.to() - 1).end()));
      }
    }
    return found;
  }

  private static boolean isQuantity(Mention mention) {
    return !(mention instanceof Mention.Bare
        || mention instanceof Mention.Wanted
        || mention instanceof Mention.Named);
  }
}
