package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * Slips of the finger in numbers: a letter in place of a digit, a stray space or sign, a missing
 * space. None of them may be read as another number; some can only be asked about.
 */
final class BrokenNumbers {
  private static final Pattern NUMBER =
      Pattern.compile("(?<![\\w.,/-])[0-9]+([.,][0-9]+)*(?![0-9e])");
  private static final Pattern DIGIT = Pattern.compile("[0-9]");
  private static final List<String> POINTS = List.of(" .", ". ", " . ", "..", ",", ", ");
  private static final List<String> COMMAS = List.of(" ,", ", ", ".", " ");

  private BrokenNumbers() {}

  /** The text with one number broken. */
  static String in(Random random, String text) {
    List<MatchResult> numbers = new ArrayList<>(NUMBER.matcher(text).results().toList());
    if (numbers.isEmpty()) {
      return text;
    }
    MatchResult number = numbers.get(random.nextInt(numbers.size()));
    String rest = text.substring(number.end());
    return text.substring(0, number.start()) + broken(random, number.group()) + glued(random, rest);
  }

  private static String broken(Random random, String number) {
    int point = number.indexOf('.');
    int comma = number.indexOf(',');
    if (point > 0 && random.nextBoolean()) {
      return number.replace(".", POINTS.get(random.nextInt(POINTS.size())));
    }
    if (comma > 0 && random.nextBoolean()) {
      return random.nextInt(4) == 0
          ? number.replaceFirst(",([0-9])", "$1,")
          : number.replace(",", COMMAS.get(random.nextInt(COMMAS.size())));
    }
    String typed =
        switch (random.nextInt(4)) {
          case 0 -> number.replaceFirst("0", "O");
          case 1 -> number.replace('0', 'o');
          case 2 -> number.replaceFirst("1", "l");
          default -> number.replaceFirst("1", "I");
        };
    return number.length() > 1 && !DIGIT.matcher(typed).find() ? number : typed;
  }

  /** Now and then the unit stands right behind the number. */
  private static String glued(Random random, String rest) {
    String tight = random.nextInt(4) == 0 ? rest.replaceFirst("^ (?=[a-zA-Z])", "") : rest;
    return random.nextInt(4) == 0 ? tight.replaceFirst(" per ", "per ") : tight;
  }
}
