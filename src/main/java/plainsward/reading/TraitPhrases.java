package plainsward.reading;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes phrases of how the traits table says that a weed looks. */
final class TraitPhrases {
  /** "round leaves", which are also said as "round shiny leaves" and "the leaves are round". */
  private static final Pattern LOOK =
      Pattern.compile(
          "(\\w+) (leaf|leaves|stem|stems|flower|flowers|blade|blades|stalk|sap|roots|pods)");

  private TraitPhrases() {}

  /** Long descriptions may have other words between theirs. */
  static void add(List<String> phrases, String said) {
    String plain = said.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9 '#-]", " ");
    String phrase = plain.replace("-", " ").replace("'", "").strip().replaceAll("\\s+", " ");
    if (phrase.isEmpty()) {
      return;
    }
    phrases.add(said.split(" ").length > 3 ? phrase.replace(" ", " * ") : phrase);
    Matcher look = LOOK.matcher(phrase);
    if (look.matches()) {
      String how = look.group(1);
      String part = look.group(2);
      phrases.add(how + " _ " + part);
      phrases.add(part + " (is|are|look|looks) [_] " + how);
    }
  }
}
