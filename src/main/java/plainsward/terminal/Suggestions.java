package plainsward.terminal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jline.reader.History;

/**
 * What is likely to be typed next, shown in grey: the words that begin an answer to what was asked,
 * the next step that the last reply named, what was typed before, and the words that mean this
 * room. It never holds a figure of its own.
 */
final class Suggestions {
  private static final int LATEST = 200;
  private static final Map<String, String> OPENINGS = openings();

  private final Answering talk;
  private final History history;
  private String next = "";

  Suggestions(Answering talk, History history) {
    this.talk = talk;
    this.history = history;
  }

  /** Takes note of the question that a reply named as next; what stands after it is not asked. */
  void next(Optional<String> question) {
    String asked = question.map(CleanText::line).filter(Suggestions::isFreeOfFigures).orElse("");
    next = asked.substring(0, asked.indexOf('?') + 1);
  }

  /** The rest of what is likely to be typed, empty where nothing is. */
  String after(String typed) {
    if (typed.indexOf('\n') >= 0) {
      return "";
    }
    String start = typed.toLowerCase(Locale.ROOT);
    return candidates(typed).stream()
        .filter(whole -> whole.length() > typed.length())
        .filter(whole -> whole.toLowerCase(Locale.ROOT).startsWith(start))
        .findFirst()
        .map(whole -> whole.substring(typed.length()))
        .orElse("");
  }

  private List<String> candidates(String typed) {
    List<String> all = new ArrayList<>();
    talk.standing().needs().stream().map(OPENINGS::get).filter(o -> o != null).forEach(all::add);
    all.add(next);
    if (!typed.isBlank()) {
      for (int at = history.last(); at >= history.first() && at > history.last() - LATEST; at--) {
        all.add(CleanText.line(history.get(at)));
      }
      all.addAll(LocalWord.phrases());
    }
    return all;
  }

  private static boolean isFreeOfFigures(String question) {
    return question.chars().noneMatch(Character::isDigit);
  }

  private static Map<String, String> openings() {
    Map<String, String> openings = new HashMap<>();
    for (String line : Texts.of("openings.txt").split("\n", -1)) {
      int equals = line.indexOf('=');
      if (equals > 0 && line.charAt(0) != '#') {
        openings.put(line.substring(0, equals).strip(), line.substring(equals + 1).strip() + " ");
      }
    }
    return Map.copyOf(openings);
  }
}
