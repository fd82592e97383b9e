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

  private final byte[] bytes;
  private final PackedWords words;
  private final PackedWords prefixes;
  private final int shortest;
  private final int longest;
  private final int roots;
  private final int sequences;
  private final String[] tags;
  private final int[][] wordless = new int[MOST_BOOKS][];
  private final Map<String, int[]> known = new ConcurrentHashMap<>();

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
      for (int label : walk.labels(at)) {
        begin(walk, label, book, at);
      }
      for (int label : wordless) {
        begin(walk, label, book, at);
      }
    }
    return hits;
  }

  /** Two threads may both find them; they are alike, and one of them stays. */
  private int[] wordlessOf(int book) {
    int[] labels = wordless[book];
    if (labels == null) {
      labels = wordless(book);
      wordless[book] = labels;
    }
    return labels;
  }

  /** The labels without words that phrases of a book begin with. */
  private int[] wordless(int book) {
    int[] labels = new int[TrieLayout.TAGS + tags.length];
    int count = 0;
    for (int label = TrieLayout.NUMBER; label < TrieLayout.TAGS + tags.length; label++) {
      int at = ByteReader.three(bytes, roots + 3 * label);
      for (int i = 0; at != 0 && i < ByteReader.two(bytes, at); i++) {
        if (bytes[at + 2 + 4 * i] == book) {
          labels[count++] = label;
          break;
        }
      }
    }
    return Arrays.copyOf(labels, count);
  }

  /** The number of the meaning of a sequence. */
  int meaning(int sequence) {
    return ByteReader.two(bytes, sequences + 2 * sequence);
  }

  /** Goes all ways by which the phrases of a book begin with a label. */
  private void begin(Walk walk, int label, int book, int token) {
    int at = ByteReader.three(bytes, roots + 3 * label);
    if (at != 0) {
      int end = at + 2 + 4 * ByteReader.two(bytes, at);
      for (int i = at + 2; i < end; i += 4) {
        if (bytes[i] == book) {
          walk.first(label, ByteReader.three(bytes, i + 1), token);
        }
      }
    }
  }

  /** The labels of a word: its own and those of how it begins. */
  private int[] labels(String word) {
    int[] labels = known.get(word);
    if (labels == null) {
      labels = looked(word);
      if (known.size() < MOST_KEPT) {
        known.put(word, labels);
      }
    }
    return labels;
  }

  /** A string's hash is that of its beginning, times 31, and the next letter. */
  private int[] looked(String word) {
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
    private final int[][] labels;
    private final PhraseHits hits;

    Walk(List<Token> tokens, PhraseHits hits) {
      this.tokens = tokens;
      this.size = tokens.size();
      this.labels = new int[size][];
      this.hits = hits;
    }

    int[] labels(int at) {
      if (labels[at] == null) {
        labels[at] = PhraseTrie.this.labels(tokens.get(at).norm());
      }
      return labels[at];
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
        for (int label : labels(at)) {
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
