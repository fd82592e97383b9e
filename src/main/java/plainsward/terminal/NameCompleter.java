package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import org.jline.reader.Candidate;
import org.jline.reader.Completer;
import org.jline.reader.LineReader;
import org.jline.reader.ParsedLine;
import plainsward.reading.TradeNames;

/**
 * Completes names of the trade, the user's own names, and the words that mean this room. A name of
 * several words is found by its first words.
 */
final class NameCompleter implements Completer {
  private static final int MOST_WORDS = 3;

  private final Supplier<Set<String>> own;

  /** Completes the user's own names, asked for anew each time, beside those of the trade. */
  NameCompleter(Supplier<Set<String>> own) {
    this.own = own;
  }

  /** The names, read when the first one is wanted. */
  private static final class Trade {
    static final List<String> NAMES = TradeNames.all();
  }

  @Override
  public void complete(LineReader reader, ParsedLine line, List<Candidate> candidates) {
    String typed = line.line().substring(0, line.cursor());
    String rest = line.line().substring(line.cursor());
    for (String phrase : LocalWord.phrases()) {
      if (startsWith(phrase, typed) && !typed.isBlank()) {
        candidates.add(candidate("", phrase, rest));
      }
    }
    List<String> names = new ArrayList<>(own.get());
    names.addAll(Trade.NAMES);
    for (int words = MOST_WORDS; words >= 1 && candidates.isEmpty(); words--) {
      int start = start(typed, words);
      String begun = start < 0 ? "" : typed.substring(start);
      if (begun.isBlank() || begun.endsWith(" ") && words == 1) {
        continue;
      }
      for (String name : names) {
        if (startsWith(name, begun)) {
          candidates.add(candidate(typed.substring(0, start), name, rest));
        }
      }
    }
  }

  private static boolean startsWith(String name, String begun) {
    return name.toLowerCase(Locale.ROOT).startsWith(begun.toLowerCase(Locale.ROOT));
  }

  /** The place of the last so many words, or -1 where there are not as many. */
  private static int start(String typed, int words) {
    int at = typed.length();
    for (int i = 0; i < words; i++) {
      if (at <= 0) {
        return -1;
      }
      at = typed.lastIndexOf(' ', at - 1);
    }
    return at + 1;
  }

  private static Candidate candidate(String before, String name, String rest) {
    String clean = CleanText.line(name);
    return new Candidate(before + clean + rest, clean, null, null, null, null, rest.isEmpty());
  }
}
