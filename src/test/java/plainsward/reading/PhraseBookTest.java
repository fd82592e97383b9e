package plainsward.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Phrases of every form, found by a book of their own. */
class PhraseBookTest {
  private static PhraseBook<Integer> book(String... phrases) {
    TrieMaker maker = new TrieMaker();
    maker.book();
    for (int i = 0; i < phrases.length; i++) {
      maker.add(phrases[i], i);
    }
    return new PhraseBook<>(new PhraseTrie(maker.bytes()), 0, n -> n);
  }

  private static List<Token> tokens(String text) {
    return Tokenizer.tokens(text);
  }

  private static String found(String phrase, String text) {
    StringBuilder all = new StringBuilder();
    for (PhraseBook.Found<Integer> each : book(phrase).find(tokens(text))) {
      all.append(all.length() == 0 ? "" : " ").append(each.from()).append('-').append(each.to());
    }
    return all.toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "mow high | mow high or mow higher | 0-2",
        "(mow~,cut) high | mowing high is cut high | 0-2 3-5",
        "mow [it] high | mow high, mow it high | 0-2 3-6",
        "spray # times | spray 3 times or two times | 0-3",
        "spray _ times | spray many times, spray . times | 0-3",
        "kill * weeds | kill all the weeds and the weeds | 0-4",
        "kill * weeds | kill. weeds | ''",
        "kill * weeds | kill a b c d e weeds | ''",
        "^ how much | how much? so how much | 0-2",
        "^ how much | hi, how much. how much | 5-7",
        "in all $ | in all, in all. in all | 3-5 6-8",
        "a [b] [c] | a b c | 0-3 0-2 0-1",
      })
  void aPhraseIsFoundWhereItStands(String phrase, String text, String places) {
    assertEquals(places, found(phrase.replace(',', '|'), text));
  }

  @Test
  void aNameIsTakenWhole() {
    List<Token> tokens =
        tokens("kill wild garlic now").stream()
            .map(t -> t.is("wild") || t.is("garlic") ? t.tagged("weed") : t)
            .toList();
    PhraseBook.Found<Integer> found = book("kill @weed now").find(tokens).get(0);
    assertEquals(4, found.to());
  }

  @Test
  void booksOfOneTrieDoNotMix() {
    TrieMaker maker = new TrieMaker();
    maker.book();
    maker.add("green lawn", 3);
    maker.book();
    maker.add("green", 5);
    PhraseTrie trie = new PhraseTrie(maker.bytes());
    List<Token> text = tokens("a green lawn");
    assertEquals(1, trie.find(0, text).count());
    assertEquals(3, trie.meaning(trie.find(0, text).sequence(0)));
    assertEquals(5, trie.meaning(trie.find(1, text).sequence(0)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {"(a|b", "a)", "[]", "''"})
  void aBrokenPhraseIsRefused(String phrase) {
    assertThrows(IllegalArgumentException.class, () -> book(phrase));
  }

  @Test
  void wordsOfManyBeginningsAreFoundByEach() {
    PhraseBook<Integer> book = book("s~", "sp~", "spr~", "spra~", "spray~", "sprayer");
    assertEquals(6, book.meaningsIn(tokens("sprayer")).size());
  }
}
