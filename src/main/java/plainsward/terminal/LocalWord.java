package plainsward.terminal;

import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Words that are meant for this room and not for the conversation, from {@code words.txt}. */
enum LocalWord {
  /** Leave. */
  QUIT,
  /** Show examples. */
  HELP,
  /** Show what did not fit on the screen. */
  MORE,
  /** Write the talk into a file. */
  SAVE,
  /** Somebody else calls: a turn of the conversation that begins a new talk. */
  FRESH,
  /** None of them: a turn of the conversation. */
  NONE;

  private static final int LONGEST = 60;
  private static final Pattern ENDING = Pattern.compile("([ ,]+please)?[ .!]*$");
  private static final Map<String, LocalWord> WORDS = load();
  private static final List<String> PHRASES =
      WORDS.keySet().stream().filter(words -> words.length() > 1).toList();

  /** Which one a line is, if it is nothing else. */
  static LocalWord of(String line) {
    return WORDS.getOrDefault(bare(line), NONE);
  }

  /** Whether a line begins a talk anew, whatever follows in it. */
  static boolean isFresh(String line) {
    String bare = bare(line);
    return WORDS.entrySet().stream()
        .anyMatch(word -> word.getValue() == FRESH && bare.startsWith(word.getKey()));
  }

  /** All of them as they are typed, but for single letters. */
  static List<String> phrases() {
    return PHRASES;
  }

  private static String bare(String line) {
    String start = line.strip();
    start = start.length() > LONGEST ? start.substring(0, LONGEST) : start;
    return ENDING.matcher(start.toLowerCase(Locale.ROOT)).replaceFirst("");
  }

  private static Map<String, LocalWord> load() {
    Map<String, LocalWord> words = new LinkedHashMap<>();
    for (String line : Texts.of("words.txt").split("\n", -1)) {
      int equals = line.indexOf('=');
      if (equals > 0 && line.charAt(0) != '#') {
        LocalWord word = valueOf(line.substring(0, equals).strip().toUpperCase(Locale.ROOT));
        Arrays.stream(line.substring(equals + 1).split("\\|", -1))
            .forEach(said -> words.put(said.strip(), word));
      }
    }
    return Collections.unmodifiableMap(words);
  }
}
