package plainsward.talk;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A file that somebody names in a sentence. Only plain names are taken: letters, digits, hyphens,
 * underscores and dots within, no folder, nothing that a system keeps for itself.
 *
 * @param name the name as it was said
 * @param isPlain whether it may be used
 */
record FileName(String name, boolean isPlain) {
  private static final Pattern SAID =
      Pattern.compile(
          "\\S{1,200}\\.(csv|md|markdown|ics|json|geojson)\\b", Pattern.CASE_INSENSITIVE);
  private static final Pattern PLAIN =
      Pattern.compile("[A-Za-z0-9][A-Za-z0-9_-]*(\\.[A-Za-z0-9_-]+)*");
  private static final Pattern KEPT =
      Pattern.compile("(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");

  /** The file that a text names first, or nothing. */
  static Optional<FileName> in(String text) {
    Matcher said = SAID.matcher(text);
    if (!said.find()) {
      return Optional.empty();
    }
    String name = said.group().replaceAll("^[\"'(]+", "");
    boolean plain =
        PLAIN.matcher(name).matches() && !KEPT.matcher(name.toLowerCase(Locale.ROOT)).matches();
    return Optional.of(new FileName(name, plain));
  }

  /** Whether it ends in one of these. */
  boolean endsIn(Set<String> endings) {
    String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return endings.contains(ending);
  }
}
