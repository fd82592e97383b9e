package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.trade.MeasureWord;
import plainsward.trade.MeasureWords;

/** Whose an area or a label's fact is: "the front is 1,900", "the red can is 0.9 per thousand". */
final class Owners {
  private static final Set<String> LEADING = Set.of("in", "on", "for", "the", "up", "of", "my");
  private static final Set<String> BINDING =
      Set.of(
          "is", "are", "s", ":", "=", "measures", "has", "was", "equals", "runs", "comes", "its");
  private static final Set<String> LOOSE =
      Set.of(
          "about", "around", "roughly", "only", "at", "a", "an", "exactly", "maybe", "to", "of",
          "approx", "just", "another", "like", "by", "-", "the");
  private static final Set<String> EDGES =
      Set.of(
          "the",
          "my",
          "our",
          "his",
          "her",
          "their",
          "a",
          "an",
          "and",
          "for",
          "with",
          "on",
          "did",
          "of",
          "in",
          "at",
          "plus",
          "that",
          "do",
          "spray",
          "but",
          "so",
          "if",
          "says",
          "ok",
          "how",
          "much",
          "this",
          "got",
          "have",
          "has",
          "i",
          "k",
          "thousand",
          "take",
          "off",
          "is",
          "are",
          "just",
          "to");
  private static final Set<String> GENERIC =
      Set.of(
          "lawn",
          "yard",
          "grass",
          "area",
          "total",
          "size",
          "it",
          "place",
          "property",
          "turf",
          "thats",
          "that",
          "this",
          "there",
          "which",
          "whole",
          "garden",
          "caller",
          "customer",
          "she",
          "he",
          "they",
          "we",
          "you",
          "here",
          "one",
          "stops",
          "label",
          "rate",
          "tank",
          "today",
          "bit",
          "customers",
          "patch",
          "job",
          "lawns",
          "sprayer",
          "box",
          "instructions",
          "its",
          "test",
          "strip",
          "lots",
          "lot",
          "covers",
          "map",
          "nephew",
          "paced",
          "too",
          "also",
          "well");
  private static final Set<String> KNOWN_LAWNS =
      Set.of(
          "front",
          "frnt",
          "back",
          "bak",
          "side",
          "sides",
          "rear",
          "strip",
          "slope",
          "paddock",
          "backyard",
          "frontyard",
          "verge",
          "corner",
          "boulevard",
          "orchard",
          "north",
          "south",
          "east",
          "west",
          "church",
          "upper",
          "lower");
  private static final Set<String> CONTAINERS =
      Set.of("jug", "bottle", "can", "box", "tub", "pail", "container", "bag", "drum", "packet");
  private static final Set<String> NO_NICKNAME =
      Set.of(
          "the",
          "my",
          "a",
          "this",
          "full",
          "empty",
          "same",
          "whole",
          "quart",
          "gallon",
          "pop",
          "trigger",
          "old",
          "british",
          "one",
          "her",
          "his",
          "our",
          "your",
          "of",
          "big",
          "each",
          "per",
          "lb",
          "that",
          "any",
          "pint",
          "half",
          "oz",
          "ounce",
          "litre",
          "liter",
          "watering",
          "new",
          "in",
          "pump",
          "drink",
          "every",
          "another",
          "plastic",
          "glass",
          "spray",
          "tree",
          "right",
          "wrong",
          "kill",
          "killer",
          "driveway",
          "field",
          "moss",
          "hand",
          "on",
          "and",
          "left",
          "bottle",
          "jug",
          "many",
          "weed",
          "to",
          "with",
          "from",
          "is",
          "first",
          "but",
          "gal",
          "qt",
          "second");

  private static final Set<String> DETERMINERS =
      Set.of("the", "my", "a", "our", "much", "his", "her");

  /** Words after which "can" is a thing and no verb. */
  private static final Set<String> COLOURS =
      Set.of(
          "red", "green", "blue", "white", "black", "yellow", "orange", "brown", "grey", "gray",
          "silver", "purple");

  private final Passage passage;

  Owners(Passage passage) {
    this.passage = passage;
  }

  /** Whether a word is a colour, by which people call a jug or a can. */
  static boolean isColour(String word) {
    return COLOURS.contains(word);
  }

  /** The lawn's name before an area at this token, or empty. */
  Optional<String> lawn(int place) {
    int i = place - 1;
    boolean bound = false;
    while (i >= 0 && (passage.in(i, LOOSE) || passage.in(i, BINDING))) {
      bound |= passage.in(i, BINDING);
      i--;
    }
    List<String> words = new ArrayList<>();
    while (i >= 0 && words.size() < 3) {
      Token token = passage.tokens().get(i);
      boolean possessive = token.said().endsWith("'s");
      String word =
          possessive
              ? token
                  .said()
                  .substring(0, token.said().length() - 2)
                  .toLowerCase(java.util.Locale.ROOT)
              : token.norm();
      if (!token.isWord() || EDGES.contains(word) || isAmountWord(word)) {
        break;
      }
      boolean verb = possessive && words.isEmpty() && !bound;
      bound |= verb;
      words.add(0, possessive && !verb ? token.norm() : word);
      i--;
    }
    words.removeIf(GENERIC::contains);
    boolean known = words.stream().anyMatch(KNOWN_LAWNS::contains);
    String name = String.join(" ", words);
    return words.isEmpty() || words.size() > 2 || !(bound || known)
        ? Optional.empty()
        : Optional.of(name);
  }

  /** The lawn's own word right after an area, or empty: "3k front", "5k in the back". */
  Optional<String> lawnAfter(int place) {
    int i = place;
    while (passage.in(i, LEADING)) {
      i++;
    }
    return passage.in(i, KNOWN_LAWNS) ? Optional.of(passage.word(i)) : Optional.empty();
  }

  /** The unit of the sentence before ("2.5 gal. lawn's 5200") is no part of a name. */
  private static boolean isAmountWord(String word) {
    return MeasureWords.shipped()
        .find(word)
        .map(MeasureWord::us)
        .filter(unit -> MeasuredReader.isStuff(unit.dimension()))
        .isPresent();
  }

  /** A label's nickname with its place. */
  record Nickname(String name, int from, int to) {}

  /** The nicknames of labels in the text: "the blue jug", "white bottle". */
  List<Nickname> labels() {
    List<Nickname> found = new ArrayList<>();
    List<Token> tokens = passage.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      Token noun = tokens.get(i);
      Token before = tokens.get(i - 1);
      String word = stripped(noun);
      boolean pair = CONTAINERS.contains(word) && before.isWord() && isNickname(before);
      boolean determined = i > 1 && DETERMINERS.contains(tokens.get(i - 2).norm());
      if (word.equals("can") && !determined && !COLOURS.contains(before.norm())) {
        continue;
      }
      if (pair && before.tag().isEmpty()) {
        found.add(new Nickname(before.norm() + " " + word, i - 1, i + 1));
      } else if (before.is("pump") && word.equals("bottle")) {
        found.add(new Nickname("pump bottle", i - 1, i + 1));
      }
    }
    return found;
  }

  private static String stripped(Token token) {
    return token.said().endsWith("'s")
        ? token.norm().substring(0, token.norm().length() - 1)
        : token.norm();
  }

  private static boolean isNickname(Token token) {
    return !NO_NICKNAME.contains(token.norm()) && !NumberWords.isNumberWord(token.norm());
  }
}
