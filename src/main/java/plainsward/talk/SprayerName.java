package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reading.Token;

/** The name of a sprayer in a sentence: "my backpack", "the old hand sprayer". */
final class SprayerName {
  private static final Set<String> KINDS =
      Set.of("backpack", "knapsack", "sprayer", "skid", "boom", "rig", "tow");
  private static final Set<String> OWN = Set.of("my", "the", "our", "his", "her", "their");
  private static final Set<String> NO_NAME =
      Set.of(
          "other", "same", "whole", "full", "next", "gallon", "gal", "litre", "liter", "of", "in");
  private static final int MOST_WORDS = 2;

  private SprayerName() {}

  /** The first sprayer that is named, lower-case. */
  static Optional<String> in(Facts turn) {
    List<Token> tokens = turn.tokens();
    for (int i = 1; i < tokens.size(); i++) {
      boolean goesOn = i + 1 < tokens.size() && KINDS.contains(tokens.get(i + 1).norm());
      if (KINDS.contains(tokens.get(i).norm()) && !goesOn) {
        Optional<String> name = name(tokens, i);
        if (name.isPresent()) {
          return name;
        }
      }
    }
    return Optional.empty();
  }

  private static Optional<String> name(List<Token> tokens, int noun) {
    List<String> words = new ArrayList<>(List.of(tokens.get(noun).norm()));
    for (int i = noun - 1; i >= 0; i--) {
      Token token = tokens.get(i);
      if (OWN.contains(token.norm())) {
        return Optional.of(String.join(" ", words));
      }
      boolean word = token.isWord() && !NO_NAME.contains(token.norm());
      if (!word || words.size() > MOST_WORDS) {
        return Optional.empty();
      }
      words.add(0, token.norm());
    }
    return Optional.empty();
  }
}
