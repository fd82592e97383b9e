package plainsward.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

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
  private final PhraseTrie trie;
  private final int book;
  private final Meanings<T> meanings;
  private Object[] known = new Object[16];

  /**
   * A phrase that was found.
   *
   * @param meaning what it means
   * @param from its first token
   * @param to the token after its last
   * @param <T> the kind of meaning
   */
  public record Found<T>(T meaning, int from, int to) {}

  /**
   * What the phrases of a book mean, by number.
   *
   * @param <T> what a phrase means
   */
  public interface Meanings<T> {
    /** The meaning of this number, never null. */
    T of(int number);
  }

  PhraseBook(PhraseTrie trie, int book, Meanings<T> meanings) {
    this.trie = trie;
    this.book = book;
    this.meanings = meanings;
  }

  /** The phrases of a column of the trade tables; a meaning's number is as the column tells. */
  public static <T> PhraseBook<T> of(PhraseColumn column, Meanings<T> meanings) {
    return new PhraseBook<>(PhraseColumn.shipped(), column.ordinal(), meanings);
  }

  /** All phrases in the text, by place, the longer before the shorter; phrases may overlap. */
  public List<Found<T>> find(List<Token> tokens) {
    PhraseHits hits = trie.find(book, tokens);
    int count = hits.count();
    List<Found<T>> found = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      found.add(new Found<>(meaning(trie.meaning(hits.sequence(i))), hits.from(i), hits.to(i)));
    }
    return found;
  }

  /** What the phrases in the text mean, each once. */
  public Set<T> meaningsIn(List<Token> tokens) {
    PhraseHits hits = trie.find(book, tokens);
    Set<T> all = new HashSet<>();
    for (int i = 0; i < hits.count(); i++) {
      all.add(meaning(trie.meaning(hits.sequence(i))));
    }
    return all;
  }

  /** Whether any phrase is in the text. */
  public boolean isIn(List<Token> tokens) {
    return trie.find(book, tokens).count() > 0;
  }

  /**
   * Two threads may both make a meaning, and one array may be lost for the other: each gives back
   * what it made itself, and they are alike.
   */
  @SuppressWarnings("unchecked") // only meanings are kept there
  private T meaning(int number) {
    Object[] all = known;
    Object kept = number < all.length ? all[number] : null;
    if (kept != null) {
      return (T) kept;
    }
    T made = meanings.of(number);
    if (number >= all.length) {
      all = Arrays.copyOf(all, 2 * number + 1);
      known = all;
    }
    all[number] = made;
    return made;
  }
}
