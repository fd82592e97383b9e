package plainsward.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Phrases with a meaning each, found in a text wherever they stand. A phrase is words with one
 * space between; {@code (a|b c)} is a choice, {@code [a]} may be left out, {@code a~} is any word
 * that begins so, {@code #} a number, {@code _} any one word, {@code *} up to four words within a
 * sentence, {@code @weed} a name of the trade tables, {@code ^} the start of a sentence and {@code
 * $} its end.
 *
 * @param <T> what a phrase means
 */
public final class PhraseBook<T> {
  private static final int MOST_KEPT = 5_000;

  private final Map<String, List<Entry<T>>> byWord = new HashMap<>();
  private final Map<String, List<Entry<T>>> byPrefix = new HashMap<>();
  private final Map<String, List<Entry<T>>> byName = new HashMap<>();
  private final List<Entry<T>> byNumber = new ArrayList<>();
  private final List<Entry<T>> byNothing = new ArrayList<>();
  private final Map<String, Beginning<T>> atWord = new ConcurrentHashMap<>();
  private final Map<String, List<Later<T>>> later = new HashMap<>();
  private PhraseBook<T> atStart;
  private int shortestPrefix = Integer.MAX_VALUE;
  private int longestPrefix;

  /**
   * A phrase that was found.
   *
   * @param meaning what it means
   * @param from its first token
   * @param to the token after its last
   * @param <T> the kind of meaning
   */
  public record Found<T>(T meaning, int from, int to) {}

  private record Entry<T>(List<PhrasePart> parts, T meaning) {
    /** Whether this token may come second, as far as its normal form tells. */
    boolean mayGoOn(Token token) {
      return parts.size() == 1 || !parts.get(1).isOfOneWord() || parts.get(1).matches(token);
    }
  }

  /** A phrase to be read when a word is met that it may begin with. */
  private static final class Unread<T> {
    private final String phrase;
    private final T meaning;
    private List<Entry<T>> read = List.of();

    Unread(String phrase, T meaning) {
      this.phrase = phrase;
      this.meaning = meaning;
    }

    synchronized List<Entry<T>> entries() {
      if (read.isEmpty()) {
        read = PhraseParser.parse(phrase).stream().map(p -> new Entry<>(p, meaning)).toList();
      }
      return read;
    }
  }

  /** Where an unread phrase stands: after so many of the entries of its word. */
  private record Later<T>(Unread<T> phrase, int before) {}

  /**
   * Adds a phrase. A broken one is refused with an {@link IllegalArgumentException}, here or, where
   * it begins with plain words, when one of those is first met.
   */
  public PhraseBook<T> add(String phrase, T meaning) {
    List<String> firsts = PhraseStart.words(phrase);
    if (firsts.isEmpty()) {
      for (List<PhrasePart> parts : PhraseParser.parse(phrase)) {
        index(new Entry<>(parts, meaning));
      }
      return this;
    }
    assert !PhraseParser.parse(phrase).isEmpty();
    Unread<T> unread = new Unread<>(phrase, meaning);
    for (String first : firsts) {
      List<Later<T>> others = later.get(first);
      if (others == null) {
        others = new ArrayList<>(2);
        later.put(first, others);
      }
      List<Entry<T>> known = byWord.get(first);
      others.add(new Later<>(unread, known == null ? 0 : known.size()));
    }
    return this;
  }

  private void index(Entry<T> entry) {
    PhrasePart first = entry.parts.get(0);
    switch (first.kind()) {
      case WORDS -> indexWords(first, entry);
      case NAME -> first.words().forEach(tag -> put(byName, tag, entry));
      case NUMBER -> byNumber.add(entry);
      case START -> indexStart(entry);
      default -> byNothing.add(entry);
    }
  }

  private void indexWords(PhrasePart first, Entry<T> entry) {
    first.words().forEach(word -> put(byWord, word, entry));
    for (String prefix : first.prefixes()) {
      put(byPrefix, prefix, entry);
      shortestPrefix = Math.min(shortestPrefix, prefix.length());
      longestPrefix = Math.max(longestPrefix, prefix.length());
    }
  }

  /** What must begin a sentence is kept apart, since most words do not. */
  private void indexStart(Entry<T> entry) {
    List<PhrasePart> rest = entry.parts.subList(1, entry.parts.size());
    if (rest.isEmpty()) {
      byNothing.add(entry);
      return;
    }
    if (atStart == null) {
      atStart = new PhraseBook<>();
    }
    atStart.index(new Entry<>(rest, entry.meaning));
  }

  private static <T> void put(Map<String, List<Entry<T>>> into, String key, Entry<T> entry) {
    into.computeIfAbsent(key, k -> new ArrayList<>()).add(entry);
  }

  /** All phrases in the text, by place; phrases may overlap. */
  public List<Found<T>> find(List<Token> tokens) {
    List<Found<T>> found = new ArrayList<>();
    for (int i = 0; i < tokens.size(); i++) {
      findAt(tokens, i, found);
      if (atStart != null && startsSentence(tokens, i)) {
        atStart.findAt(tokens, i, found);
      }
    }
    found.sort(
        (a, b) -> a.from != b.from ? Integer.compare(a.from, b.from) : Integer.compare(b.to, a.to));
    return found;
  }

  private void findAt(List<Token> tokens, int i, List<Found<T>> found) {
    Token token = tokens.get(i);
    tryAll(beginning(token.norm()).before(tokens, i + 1), tokens, i, found);
    if (!token.tag().isEmpty()) {
      tryAll(byName.getOrDefault(token.tag(), List.of()), tokens, i, found);
    }
    if (!byNumber.isEmpty() && PhrasePart.isNumber(token)) {
      tryAll(byNumber, tokens, i, found);
    }
    tryAll(byNothing, tokens, i, found);
  }

  /** The phrases that a word may begin; kept, as people use the same words over and over. */
  private Beginning<T> beginning(String word) {
    Beginning<T> known = atWord.get(word);
    if (known == null) {
      known = new Beginning<>(begunBy(word));
      if (atWord.size() < MOST_KEPT || later.containsKey(word)) {
        atWord.put(word, known);
      }
    }
    return known;
  }

  private List<Entry<T>> begunBy(String word) {
    List<Entry<T>> all = new ArrayList<>(byWord.getOrDefault(word, List.of()));
    int more = all.size();
    for (Later<T> each : later.getOrDefault(word, List.of())) {
      all.addAll(each.before + all.size() - more, each.phrase.entries());
    }
    int most = Math.min(longestPrefix, word.length());
    for (int n = shortestPrefix; n <= most; n++) {
      all.addAll(byPrefix.getOrDefault(word.substring(0, n), List.of()));
    }
    return List.copyOf(all);
  }

  /** What a word may begin; where that is much, kept also by the word that comes next. */
  private static final class Beginning<T> {
    private static final int FEW = 6;
    private static final int MOST_NEXT = 500;

    private final List<Entry<T>> all;
    private final Map<String, List<Entry<T>>> byNext = new ConcurrentHashMap<>();

    Beginning(List<Entry<T>> all) {
      this.all = all;
    }

    List<Entry<T>> before(List<Token> tokens, int next) {
      if (all.size() <= FEW || next >= tokens.size()) {
        return all;
      }
      Token token = tokens.get(next);
      List<Entry<T>> known = byNext.get(token.norm());
      if (known == null) {
        known = all.stream().filter(entry -> entry.mayGoOn(token)).toList();
        if (byNext.size() < MOST_NEXT) {
          byNext.put(token.norm(), known);
        }
      }
      return known;
    }
  }

  /** Whether any phrase is in the text. */
  public boolean isIn(List<Token> tokens) {
    return !find(tokens).isEmpty();
  }

  private void tryAll(List<Entry<T>> entries, List<Token> tokens, int from, List<Found<T>> found) {
    for (int e = 0; e < entries.size(); e++) {
      Entry<T> entry = entries.get(e);
      int to = end(entry.parts, 0, tokens, from);
      if (to >= 0) {
        found.add(new Found<>(entry.meaning, from, to));
      }
    }
  }

  /** The place after the match of the parts from {@code part} on, or -1. */
  private static int end(List<PhrasePart> parts, int part, List<Token> tokens, int at) {
    if (part == parts.size()) {
      return at;
    }
    PhrasePart wanted = parts.get(part);
    switch (wanted.kind()) {
      case START:
        return startsSentence(tokens, at) ? end(parts, part + 1, tokens, at) : -1;
      case END:
        return at == tokens.size() || tokens.get(at).endsSentence()
            ? end(parts, part + 1, tokens, at)
            : -1;
      case GAP:
        return afterGap(parts, part, tokens, at);
      case NAME:
        int to = afterName(wanted, tokens, at);
        return to > at ? end(parts, part + 1, tokens, to) : -1;
      default:
        return at < tokens.size() && wanted.matches(tokens.get(at))
            ? end(parts, part + 1, tokens, at + 1)
            : -1;
    }
  }

  private static int afterName(PhrasePart wanted, List<Token> tokens, int at) {
    int to = at;
    while (to < tokens.size() && wanted.matches(tokens.get(to))) {
      to++;
    }
    return to;
  }

  private static int afterGap(List<PhrasePart> parts, int part, List<Token> tokens, int at) {
    for (int skipped = 0; skipped <= PhrasePart.WIDEST_GAP; skipped++) {
      int to = end(parts, part + 1, tokens, at + skipped);
      if (to >= 0) {
        return to;
      }
      if (at + skipped >= tokens.size() || tokens.get(at + skipped).endsSentence()) {
        return -1;
      }
    }
    return -1;
  }

  private static boolean startsSentence(List<Token> tokens, int at) {
    int before = at - 1;
    while (before >= 0 && tokens.get(before).is(",")) {
      before--;
    }
    return before < 0 || tokens.get(before).endsSentence();
  }
}
