package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import plainsward.trade.MeasureWord;
import plainsward.trade.MeasureWords;

/**
 * Mends typos of the words that carry a dose or a question. Known slips stand in the table {@code
 * typos}; beyond them a word of five letters or more, or of four where a number is meant, that is
 * one slip away from exactly one trade word is taken for it, unless it is a word of its own.
 */
final class Spelling {
  private static final Spelling SHIPPED = new Spelling();
  private static final int SHORTEST = 5;
  private static final int SHORTEST_NUMBER = 4;
  private static final int SHORTEST_PART = 2;

  /** What a word becomes that may be one number or another, so that nothing is made of it. */
  static final String UNREAD = "(number)";

  /** Words that stand for a number between "thousand" and "hundred". */
  private static final Map<String, String> BETWEEN_SCALES =
      Map.of("for", "four", "fur", "four", "fore", "four", "to", "two", "too", "two", "won", "one");

  /** Words that stand for "three" before what is counted. */
  private static final Set<String> THREE = Set.of("tree", "there", "ther", "thee");

  private static final Set<String> CUT_FEET = Set.of("fe", "fee", "feer", "feey");
  private static final Set<String> NO_FEET =
      Set.of(
          "for", "from", "front", "full", "first", "five", "four", "fall", "field", "fescue", "of");

  private static final int MOST_KEPT = 5_000;

  private final SpellingWords words = new SpellingWords();
  private final Map<String, String> mended = new ConcurrentHashMap<>();

  private Spelling() {}

  static Spelling shipped() {
    return SHIPPED;
  }

  List<Token> mended(List<Token> tokens) {
    List<Token> mended = new ArrayList<>(tokens.size());
    for (Token token : tokens) {
      Token before = mended.isEmpty() ? token : mended.get(mended.size() - 1);
      Token right = token.isWord() ? mended(token, before) : token;
      int gap = right == token ? -1 : right.norm().indexOf(' ');
      if (gap < 0) {
        mended.add(right);
      } else {
        addBoth(mended, right, gap);
      }
    }
    for (int i = 0; i + 1 < mended.size(); i++) {
      String number = i > 0 ? BETWEEN_SCALES.get(mended.get(i).norm()) : null;
      if (number != null && mended.get(i - 1).is("thousand") && mended.get(i + 1).is("hundred")) {
        mended.set(i, mended.get(i).as(number));
      }
      if (i > 0 && mended.get(i).is("are") && isAcres(mended.get(i - 1))) {
        mended.set(i, mended.get(i).as("acre"));
      }
      if (THREE.contains(mended.get(i).norm()) && isCounted(mended, i + 1)) {
        mended.set(i, mended.get(i).as("three"));
      }
    }
    return mended;
  }

  /** Two words that were typed without the space between them. */
  private static void addBoth(List<Token> mended, Token glued, int gap) {
    String norm = glued.norm();
    int middle = glued.start() + gap;
    String first = glued.said().substring(0, gap);
    String second = glued.said().substring(gap);
    mended.add(
        new Token(
            Token.Kind.WORD,
            first,
            norm.substring(0, gap),
            glued.start(),
            middle,
            glued.apart(),
            ""));
    mended.add(
        new Token(
            Token.Kind.WORD, second, norm.substring(gap + 1), middle, glued.end(), false, ""));
  }

  /** Whether a scale, a unit or "and a half" follows, so that a number is meant. */
  private static boolean isCounted(List<Token> tokens, int i) {
    String next = tokens.get(i).norm();
    boolean half =
        next.equals("and")
            && i + 2 < tokens.size()
            && NumberWords.PARTS.containsKey(tokens.get(i + 2).norm());
    return half
        || NumberWords.SCALES.containsKey(next)
        || NumberWords.PARTS.containsKey(next)
        || next.length() > 1 && isMeasure(tokens, i);
  }

  /** Before "are" for acre: "an", or a number with a point. */
  private static boolean isAcres(Token before) {
    return before.is("an") || before.isNumber() && before.norm().indexOf('.') >= 0;
  }

  private static boolean isMeasure(List<Token> tokens, int i) {
    MeasureWords measures = MeasureWords.shipped();
    String next = tokens.get(i).norm();
    boolean two = i + 1 < tokens.size() && measures.longest(next) > 1;
    return measures.find(next).isPresent()
        || two && measures.find(next + " " + tokens.get(i + 1).norm()).isPresent();
  }

  /** After "square" a short word with an f at its head is feet, however it is typed. */
  private Token mended(Token token, Token before) {
    boolean afterSquare = before.is("square") || before.is("sq");
    String norm = token.norm();
    boolean feet =
        afterSquare
            && norm.startsWith("f")
            && (norm.indexOf('t') > 0 || CUT_FEET.contains(norm))
            && norm.length() <= 6
            && !NO_FEET.contains(norm)
            && MeasureWords.shipped().longest(norm) == 0;
    return feet ? token.as("feet") : mended(token);
  }

  private Token mended(Token token) {
    String norm = token.norm();
    String slip = words.slip(norm);
    if (slip != null) {
      return token.as(slip);
    }
    boolean leave =
        norm.length() < SHORTEST_NUMBER
            || norm.length() > 14
            || words.isMendedTo(norm)
            || words.isItsOwn(norm)
            || NumberWords.isNumberWord(norm);
    if (leave) {
      return token;
    }
    String one = norm.substring(0, norm.length() - 1);
    boolean many = norm.endsWith("s") && !one.endsWith("s") && words.isMendedTo(one);
    if (many) {
      return MeasureWords.shipped().find(one).isPresent() ? token.as(one) : token;
    }
    return token.as(nearest(norm));
  }

  /** Whether it does not matter which of the two was meant. */
  private static boolean isSame(String one, String other) {
    Optional<MeasureWord> unit = MeasureWords.shipped().find(one);
    return one.equals(other) || unit.isPresent() && unit.equals(MeasureWords.shipped().find(other));
  }

  /** Kept, as people use the same words over and over. */
  private String nearest(String norm) {
    String known = mended.get(norm);
    if (known == null) {
      known = found(norm);
      if (mended.size() >= MOST_KEPT) {
        mended.clear();
      }
      mended.put(norm, known);
    }
    return known;
  }

  private String found(String norm) {
    String found = null;
    for (String word : words.of(norm.charAt(0))) {
      boolean longEnough = norm.length() >= SHORTEST || NumberWords.isNumberWord(word);
      if (longEnough && Math.abs(word.length() - norm.length()) <= 1 && Slip.isOne(norm, word)) {
        if (found != null && !isSame(found, word)) {
          boolean numbers = NumberWords.isNumberWord(found) && NumberWords.isNumberWord(word);
          return numbers ? UNREAD : norm;
        }
        found = word;
      }
    }
    return found != null ? found : isAlmostNumber(norm) ? UNREAD : parted(norm);
  }

  /** "ozper", "twoounces" as their two words; every other word as it is. */
  private static String parted(String norm) {
    MeasureWords measures = MeasureWords.shipped();
    for (int k = SHORTEST_PART; k <= norm.length() - SHORTEST_PART; k++) {
      String first = norm.substring(0, k);
      String second = norm.substring(k);
      boolean rate = second.equals("per") && measures.find(first).isPresent();
      boolean counted =
          (NumberWords.SMALL.containsKey(first)
                  || NumberWords.TENS.containsKey(first)
                  || first.equals("half"))
              && measures.find(second).isPresent();
      if (rate || counted) {
        return first + " " + second;
      }
    }
    return norm;
  }

  /** Whether it is two slips from a long number word, so that a number may have been meant. */
  private boolean isAlmostNumber(String norm) {
    for (String word : words.of(norm.charAt(0))) {
      boolean large =
          word.length() >= SHORTEST
              && NumberWords.isNumberWord(word)
              && (norm.length() > SHORTEST || norm.endsWith("ty") && word.endsWith("ty"));
      if (large && Slip.areAtMost(2, norm, word)) {
        return true;
      }
    }
    return false;
  }
}
