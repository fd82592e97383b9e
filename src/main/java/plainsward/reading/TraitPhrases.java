package plainsward.reading;

import java.util.List;
import java.util.Locale;

/** Makes phrases of how the traits table says that a weed looks. */
final class TraitPhrases {
  private TraitPhrases() {}

  /** Long descriptions may have other words between theirs. */
  static void add(List<String> phrases, String said) {
    String plain = said.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 '#-]", " ");
    String phrase = plain.replace("-", " ").replace("'", "").strip().replaceAll("\\s+", " * ");
    if (!phrase.isEmpty()) {
      phrases.add(said.split(" ").length > 3 ? phrase : phrase.replace(" * ", " "));
    }
  }
}
