package plainsward.reading;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import plainsward.trade.ByteReader;
import plainsward.trade.PackedWords;

/**
 * The phrases of many books, ready to be looked for: which words may follow which. The build makes
 * it, so that neither reading the phrases nor sorting them costs anything at start; {@link
 * TrieLayout} says how it lies in its bytes.
 */
final class PhraseTrie {
  /** The most tokens that a gap skips. */
  private static final int WIDEST_GAP = 4;

  private static final int MOST_KEPT = 20_000;

  /** A book's number is a byte. */
  private static final int MOST_BOOKS = 128;

  /** Any book. */
  private static final int ANY = -1;

  /** What a first step takes: its book, its label and the node behind it. */
  private static final int ROOT = 3;

  private final byte[] bytes;
  private final PackedWords words;
  private final PackedWords prefixes;
  private final int shortest;
  private final int longest;
  private final int roots;
  private final int sequences;
  private final String[] tags;
  private final int[][] wordless = new int[MOST_BOOKS][];
  private final Map<String, Word> known = new ConcurrentHashMap<>();

  /** The words of the text that a thread looked through last: many books look for theirs in it. */
  private final ThreadLocal<Said> said = ThreadLocal.withInitial(Said::new);

  /**
   * A word as the trie knows it.
   *
   * @param labels its own label and those of how it begins
   * @param roots the first steps that it makes, for each its book, its label and the node behind it
   */
  private record Word(int[] labels, int[] roots) {}

  /** Words by their place in a text, as far as they are still the same there. */
  private static final class Said {
    private Token[] tokens = new Token[0];
    private Word[] words = new Word[0];

    void makeRoom(int size) {
      if (tokens.length < size) {
        tokens = Arrays.copyOf(tokens, size);
        words = Arrays.copyOf(words, size);
      }
    }
  }

  PhraseTrie(byte[] bytes) {
    this.bytes = bytes;
    words = new PackedWords(bytes, ByteReader.three(bytes, TrieLayout.WORDS));
    prefixes = new PackedWords(bytes, ByteReader.three(bytes, TrieLayout.PREFIXES));
    shortest = ByteReader.three(bytes, TrieLayout.SHORTEST);
    longest = ByteReader.three(bytes, TrieLayout.LONGEST);
    roots = ByteReader.three(bytes, TrieLayout.ROOTS);
    sequences = ByteReader.three(bytes, TrieLayout.SEQUENCES);
    int at = ByteReader.three(bytes, TrieLayout.TAG_NAMES);
    tags = new String[bytes[at]];
    at++;
    for (int i = 0; i < tags.length; i++) {
      tags[i] = ByteReader.text(bytes, at);
      at += bytes[at] + 1;
    }
  }

  /** The phrases of a book that stand in a text. */
  PhraseHits find(int book, List<Token> tokens) {
    PhraseHits hits = new PhraseHits();
    int size = tokens.size();
    int[] wordless = wordlessOf(book);
    Walk walk = new Walk(tokens, hits);
    for (int at = 0; at < size; at++) {
      hits.startAt(at);
      begin(walk, walk.word(at).roots, book, at);
      begin(walk, wordless, book, at);
    }
    return hits;
  }

  private static void begin(Walk walk, int[] roots, int book, int at) {
    for (int i = 0; i < roots.length; i += ROOT) {
      if (roots[i] == book) {
        walk.first(roots[i + 1], roots[i + 2], at);
      }
    }
  }

  /**
   * The first steps without words into the phrases of a book. Two threads may both find them; they
   * are alike, and one of them stays.
   */
  private int[] wordlessOf(int book) {
    int[] found = wordless[book];
    if (found == null) {
      int[] labels = new int[TrieLayout.TAGS + tags.length - TrieLayout.NUMBER];
      for (int i = 0; i < labels.length; i++) {
        labels[i] = TrieLayout.NUMBER + i;
      }
      found = roots(labels, book);
      wordless[book] = found;
    }
    return found;
  }

  /** The first steps that labels make into the phrases of one book, or of {@link #ANY} of them. */
  private int[] roots(int[] labels, int book) {
    int[] found = new int[8 * ROOT];
    int count = 0;
    for (int label : labels) {
      int at = ByteReader.three(bytes, roots + 3 * label);
      int end = at == 0 ? 0 : at + 2 + 4 * ByteReader.two(bytes, at);
      for (int i = at + 2; i < end; i += 4) {
        if (book == ANY || bytes[i] == book) {
          if (count == found.length) {
            found = Arrays.copyOf(found, 2 * count);
          }
          found[count++] = bytes[i];
          found[count++] = label;
          found[count++] = ByteReader.three(bytes, i + 1);
        }
      }
    }
    return Arrays.copyOf(found, count);
  }

  /** The number of the meaning of a sequence. */
  int meaning(int sequence) {
    return ByteReader.two(bytes, sequences + 2 * sequence);
  }

  private Word word(String norm) {
    Word word = known.get(norm);
    if (word == null) {
      int[] labels = labels(norm);
      word = new Word(labels, roots(labels, ANY));
      if (known.size() < MOST_KEPT) {
        known.put(norm, word);
      }
    }
    return word;
  }

  /** A string's hash is that of its beginning, times 31, and the next letter. */
  private int[] labels(String word) {
    int[] labels = new int[4];
    int count = 0;
    int hash = 0;
    int most = word.length() > longest ? longest : word.length();
    for (int i = 0; i < most; i++) {
      hash = 31 * hash + word.charAt(i);
      int label = i + 1 < shortest ? PackedWords.NONE : prefixes.find(word, i + 1, hash);
      if (label != PackedWords.NONE) {
        if (count == labels.length) {
          labels = Arrays.copyOf(labels, 2 * count);
        }
        labels[count++] = label;
      }
    }
    int whole = words.find(word);
    if (whole == PackedWords.NONE) {
      return Arrays.copyOf(labels, count);
    }
    labels = Arrays.copyOf(labels, count + 1);
    labels[count] = whole;
    return labels;
  }

  /** One text, along the ways of the trie. */
  private final class Walk {
    private final List<Token> tokens;
    private final int size;
    private final Said words = said.get();
    private final PhraseHits hits;

    Walk(List<Token> tokens, PhraseHits hits) {
      this.tokens = tokens;
      this.size = tokens.size();
      this.hits = hits;
      words.makeRoom(size);
    }

    Word word(int at) {
      Token token = tokens.get(at);
      if (words.tokens[at] != token) {
        words.words[at] = PhraseTrie.this.word(token.norm());
        words.tokens[at] = token;
      }
      return words.words[at];
    }

    /** The first step into a phrase. */
    void first(int label, int node, int at) {
      if (label < TrieLayout.TAGS + tags.length) {
        special(label, node, at);
      } else {
        from(node, at + 1);
      }
    }

    /** All that follows a node, the text being read up to a place. */
    private void from(int node, int at) {
      int ends = bytes[node] & 0xFF;
      int place = node + 1;
      for (int i = 0; i < ends; i++, place += 2) {
        hits.add(ByteReader.two(bytes, place), at);
      }
      int special = bytes[place] & 0xFF;
      int spoken = ByteReader.two(bytes, place + 1);
      place += 3;
      for (int i = 0; i < special; i++, place += TrieLayout.WAY) {
        special(ByteReader.two(bytes, place), ByteReader.three(bytes, place + 2), at);
      }
      if (spoken > 0 && at < size) {
        for (int label : word(at).labels) {
          spoken(label, place, spoken, at);
        }
      }
    }

    /** The ways by one label among those sorted. */
    private void spoken(int label, int ways, int count, int at) {
      int low = 0;
      int high = count;
      while (low < high) {
        int middle = (low + high) >>> 1;
        if (ByteReader.two(bytes, ways + TrieLayout.WAY * middle) < label) {
          low = middle + 1;
        } else {
          high = middle;
        }
      }
      int way = ways + TrieLayout.WAY * low;
      for (; low < count && ByteReader.two(bytes, way) == label; low++, way += TrieLayout.WAY) {
        from(ByteReader.three(bytes, way + 2), at + 1);
      }
    }

    /** A way that needs no certain word. */
    private void special(int label, int node, int at) {
      switch (label) {
        case TrieLayout.NUMBER:
          if (at < size && isNumber(tokens.get(at))) {
            from(node, at + 1);
          }
          break;
        case TrieLayout.ANY:
          if (at < size && tokens.get(at).kind() != Token.Kind.SIGN) {
            from(node, at + 1);
          }
          break;
        case TrieLayout.GAP:
          gap(node, at);
          break;
        case TrieLayout.START:
          if (startsSentence(tokens, at)) {
            from(node, at);
          }
          break;
        case TrieLayout.END:
          if (at == size || tokens.get(at).endsSentence()) {
            from(node, at);
          }
          break;
        default:
          name(tags[label - TrieLayout.TAGS], node, at);
      }
    }

    private void gap(int node, int at) {
      for (int to = at; to <= at + WIDEST_GAP; to++) {
        from(node, to);
        if (to >= size || tokens.get(to).endsSentence()) {
          return;
        }
      }
    }

    private void name(String tag, int node, int at) {
      int to = at;
      while (to < size && tokens.get(to).tag().equals(tag)) {
        to++;
      }
      if (to > at) {
        from(node, to);
      }
    }
  }

  private static boolean isNumber(Token token) {
    return token.isNumber() || NumberWords.isNumberWord(token.norm());
  }

  private static boolean startsSentence(List<Token> tokens, int at) {
    int before = at - 1;
    while (before >= 0 && tokens.get(before).is(",")) {
      before--;
    }
    return before < 0 || tokens.get(before).endsSentence();
  }
}
