package plainsward.handbook;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.util.CharTokenizer;
import org.tartarus.snowball.SnowballStemmer;
import org.tartarus.snowball.ext.PorterStemmer;

/**
 * Cuts English into words, lower-case and without a possessive, and words to their stems. Cutting
 * and stemming are two steps because trade synonyms are looked up between them.
 */
final class Words {
  private static final int MOST_LETTERS = 60;
  private static final int MOST_KEPT = 20_000;

  private static final Set<String> STOP =
      Set.of(
          ("a an and are as at be but by for from had has have i if im in into is it its me my of"
                  + " on or our so such that the their them then there these they this those to was"
                  + " we were will with you your am been being he she his her him us")
              .split(" "));

  /** Made when first wanted: few questions have a hyphen or a comma behind a digit. */
  private static final class Hyphened {
    static final Pattern ANALYSIS = Pattern.compile("\\b\\d{1,2}-\\d{1,2}-\\d{1,2}\\b");
    static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d)");
    static final Pattern NUMBER_LETTER = Pattern.compile("(?<=\\d)-(?=\\p{L}(?![\\p{L}\\d]))");
  }

  /** Made when first wanted: most questions are of plain letters. */
  private static final class Lucene {
    static final Analyzer CUTTER =
        new Analyzer() {
          @Override
          protected TokenStreamComponents createComponents(String field) {
            Tokenizer cut = CharTokenizer.fromTokenCharPredicate(Words::isOfWord);
            return new TokenStreamComponents(
                cut, new EnglishPossessiveFilter(new ASCIIFoldingFilter(new LowerCaseFilter(cut))));
          }
        };
  }

  private static final Map<String, String> STEMS = new ConcurrentHashMap<>();

  private Words() {}

  private static boolean isOfWord(int c) {
    return Character.isLetterOrDigit(c) || c == '\'' || c == '\u2019';
  }

  /** The words of a text in their order, stop words too. */
  static List<String> of(String text) {
    List<String> words = new ArrayList<>();
    String whole = joined(text);
    for (String term : isPlain(whole) ? cut(whole) : terms(whole)) {
      String word = term.replace("'", "");
      if (!word.isEmpty() && word.length() <= MOST_LETTERS) {
        words.add(word);
      }
    }
    return words;
  }

  /** Whether the text is of plain letters and no word is longer than Lucene takes as one. */
  private static boolean isPlain(String text) {
    int length = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      length = isOfWord(c) ? length + 1 : 0;
      if (c > 126 || length > MOST_LETTERS) {
        return false;
      }
    }
    return true;
  }

  /** Does with plain letters what the cutter does with any: lower case, and no possessive. */
  private static List<String> cut(String text) {
    List<String> terms = new ArrayList<>();
    int from = -1;
    for (int i = 0; i <= text.length(); i++) {
      if (i < text.length() && isOfWord(text.charAt(i))) {
        from = from < 0 ? i : from;
      } else if (from >= 0) {
        String term = text.substring(from, i).toLowerCase(Locale.ROOT);
        terms.add(term.endsWith("'s") ? term.substring(0, term.length() - 2) : term);
        from = -1;
      }
    }
    return terms;
  }

  /**
   * Takes the comma out of 1,000 and the hyphen out of 4-D, so that 2,4-D is one word, and reads
   * three numbers with hyphens as what they are called.
   */
  private static String joined(String text) {
    if (!hasJointAfterDigit(text)) {
      return text;
    }
    String named = Hyphened.ANALYSIS.matcher(text).replaceAll("N-P-K");
    String whole = Hyphened.THOUSANDS.matcher(named).replaceAll("");
    return Hyphened.NUMBER_LETTER.matcher(whole).replaceAll("");
  }

  private static boolean hasJointAfterDigit(String text) {
    for (int i = 1; i < text.length(); i++) {
      char c = text.charAt(i);
      if ((c == '-' || c == ',') && Character.isDigit(text.charAt(i - 1))) {
        return true;
      }
    }
    return false;
  }

  /** The stem of a word; the stems of stop words are asked for too (in synonyms). */
  static String stem(String word) {
    String known = STEMS.get(word);
    if (known != null) {
      return known;
    }
    SnowballStemmer stemmer = new PorterStemmer();
    stemmer.setCurrent(word);
    stemmer.stem();
    String stem = stemmer.getCurrent().isEmpty() ? word : stemmer.getCurrent();
    if (STEMS.size() >= MOST_KEPT) {
      STEMS.clear();
    }
    STEMS.put(word, stem);
    return stem;
  }

  /** The stems of a phrase's words, each once; without stop words, unless it has no others. */
  static List<String> stemsOf(List<String> words) {
    List<String> stems = new ArrayList<>(words.size());
    addStems(words, false, stems);
    if (stems.isEmpty()) {
      addStems(words, true, stems);
    }
    return stems;
  }

  private static void addStems(List<String> words, boolean stopWords, List<String> stems) {
    for (String word : words) {
      if (isStop(word) == stopWords && !stems.contains(stem(word))) {
        stems.add(stem(word));
      }
    }
  }

  /** Whether the word says too little to be searched for. */
  static boolean isStop(String word) {
    return STOP.contains(word);
  }

  /** The stems of a text without its stop words: what is indexed. */
  static List<String> stems(String text) {
    List<String> stems = new ArrayList<>();
    for (String word : of(text)) {
      if (!isStop(word)) {
        stems.add(stem(word));
      }
    }
    return stems;
  }

  private static List<String> terms(String text) {
    List<String> terms = new ArrayList<>();
    try (TokenStream tokens = Lucene.CUTTER.tokenStream("", new StringReader(text))) {
      CharTermAttribute term = tokens.addAttribute(CharTermAttribute.class);
      tokens.reset();
      while (tokens.incrementToken()) {
        terms.add(term.toString());
      }
      tokens.end();
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
    return terms;
  }
}
