package plainsward.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plainsward.trade.MeasureWords;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * Mends typos of the words that carry a dose or a question. Known slips stand in the table {@code
 * typos}; beyond them a word of five letters or more that is one slip away from exactly one trade
 * word is taken for it, unless it is a word of its own.
 */
final class Spelling {
  private static final Spelling SHIPPED = new Spelling();
  private static final int SHORTEST = 5;

  private final Map<String, String> slips = new HashMap<>();
  private final Set<String> words = new HashSet<>();
  private final Map<Character, List<String>> byFirst = new HashMap<>();
  private final Set<String> ownWords = new HashSet<>();

  private Spelling() {
    for (Row row : Rows.of("typos")) {
      row.texts("slips").forEach(slip -> slips.put(slip, row.text("word")));
      if (row.flag("mend")) {
        words.add(row.text("word"));
      }
      ownWords.addAll(row.texts("others"));
    }
    for (String spelling : MeasureWords.shipped().spellings()) {
      if (spelling.indexOf(' ') < 0 && spelling.length() >= SHORTEST) {
        words.add(spelling);
      }
    }
    for (String word : words) {
      byFirst.computeIfAbsent(word.charAt(0), k -> new ArrayList<>()).add(word);
    }
  }

  static Spelling shipped() {
    return SHIPPED;
  }

  List<Token> mended(List<Token> tokens) {
    List<Token> mended = new ArrayList<>(tokens.size());
    for (Token token : tokens) {
      mended.add(token.isWord() ? mended(token) : token);
    }
    return mended;
  }

  private Token mended(Token token) {
    String norm = token.norm();
    String slip = slips.get(norm);
    if (slip != null) {
      return token.as(slip);
    }
    boolean leave =
        norm.length() < SHORTEST
            || norm.length() > 14
            || words.contains(norm)
            || ownWords.contains(norm)
            || norm.endsWith("s") && words.contains(norm.substring(0, norm.length() - 1))
            || NumberWords.isNumberWord(norm);
    return leave ? token : token.as(nearest(norm));
  }

  private String nearest(String norm) {
    String found = null;
    for (String word : byFirst.getOrDefault(norm.charAt(0), List.of())) {
      if (Math.abs(word.length() - norm.length()) <= 1 && Slip.isOne(norm, word)) {
        if (found != null && !found.equals(word)) {
          return norm;
        }
        found = word;
      }
    }
    return found == null ? norm : found;
  }
}
