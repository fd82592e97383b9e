package plainsward.handbook;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.Tokenizer;
import org.apache.lucene.analysis.core.KeywordTokenizer;
import org.apache.lucene.analysis.en.EnglishPossessiveFilter;
import org.apache.lucene.analysis.en.PorterStemFilter;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.util.CharTokenizer;

/**
 * Cuts English into words, lower-case and without a possessive, and words to their stems. Cutting
 * and stemming are two steps because trade synonyms are looked up between them.
 */
final class Words {
  private static final int MOST_LETTERS = 60;
  private static final int MOST_KEPT = 20_000;

  private static final Pattern ANALYSIS = Pattern.compile("\\b\\d{1,2}-\\d{1,2}-\\d{1,2}\\b");
  private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d),(?=\\d)");
  private static final Pattern NUMBER_LETTER =
      Pattern.compile("(?<=\\d)-(?=\\p{L}(?![\\p{L}\\d]))");

  private static final Set<String> STOP =
      Set.of(
          ("a an and are as at be but by for from had has have i if im in into is it its me my of"
                  + " on or our so such that the their them then there these they this those to was"
                  + " we were will with you your am been being he she his her him us")
              .split(" "));

  private static final Analyzer CUTTER =
      new Analyzer() {
        @Override
        protected TokenStreamComponents createComponents(String field) {
          Tokenizer cut = CharTokenizer.fromTokenCharPredicate(Words::isOfWord);
          return new TokenStreamComponents(
              cut, new EnglishPossessiveFilter(new ASCIIFoldingFilter(new LowerCaseFilter(cut))));
        }
      };

  private static final Analyzer STEMMER =
      new Analyzer() {
        @Override
        protected TokenStreamComponents createComponents(String field) {
          Tokenizer whole = new KeywordTokenizer();
          return new TokenStreamComponents(whole, new PorterStemFilter(whole));
        }
      };

  private static final Map<String, String> STEMS = new ConcurrentHashMap<>();

  private Words() {}

  private static boolean isOfWord(int c) {
    return Character.isLetterOrDigit(c) || c == '\'' || c == '\u2019';
  }

  /** The words of a text in their order, stop words too. */
  static List<String> of(String text) {
    List<String> words = new ArrayList<>();
    for (String term : terms(CUTTER, joined(text))) {
      String word = term.replace("'", "");
      if (!word.isEmpty() && word.length() <= MOST_LETTERS) {
        words.add(word);
      }
    }
    return words;
  }

  /**
   * Takes the comma out of 1,000 and the hyphen out of 4-D, so that 2,4-D is one word, and reads
   * three numbers with hyphens as what they are called.
   */
  private static String joined(String text) {
    if (text.indexOf('-') < 0 && text.indexOf(',') < 0) {
      return text;
    }
    String named = ANALYSIS.matcher(text).replaceAll("N-P-K");
    String whole = THOUSANDS.matcher(named).replaceAll("");
    return NUMBER_LETTER.matcher(whole).replaceAll("");
  }

  /** The stem of a word; the stems of stop words are asked for too (in synonyms). */
  static String stem(String word) {
    String known = STEMS.get(word);
    if (known != null) {
      return known;
    }
    List<String> stems = terms(STEMMER, word);
    String stem = stems.isEmpty() ? word : stems.get(0);
    if (STEMS.size() < MOST_KEPT) {
      STEMS.put(word, stem);
    }
    return stem;
  }

  /** The stems of a phrase's words, each once; without stop words, unless it has no others. */
  static List<String> stemsOf(List<String> words) {
    List<String> content = words.stream().filter(w -> !isStop(w)).toList();
    return (content.isEmpty() ? words : content).stream().map(Words::stem).distinct().toList();
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

  private static List<String> terms(Analyzer analyzer, String text) {
    List<String> terms = new ArrayList<>();
    try (TokenStream tokens = analyzer.tokenStream("", new StringReader(text))) {
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
