package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** The names of the trade tables as people say them: weeds, grasses, active ingredients ... */
final class NameBook {
  private static final NameBook SHIPPED = new NameBook();

  record Name(NameKind kind, String id) {}

  private final PhraseBook<Name> book = new PhraseBook<>();

  private NameBook() {
    load("weeds", NameKind.WEED);
    load("grasses", NameKind.GRASS);
    load("actives", NameKind.ACTIVE);
    load("kinds", NameKind.PRODUCT);
    load("adjuvants", NameKind.ADJUVANT);
  }

  static NameBook shipped() {
    return SHIPPED;
  }

  private void load(String table, NameKind kind) {
    for (Row row : Rows.of(table)) {
      Name name = new Name(kind, row.text("id"));
      List<String> said = new ArrayList<>(row.texts("nicknames"));
      said.add(row.text("name"));
      row.optional("botanical").ifPresent(said::add);
      said.stream().distinct().forEach(words -> add(words, name));
    }
  }

  private void add(String words, Name name) {
    String phrase = phrase(words);
    if (!phrase.isEmpty()) {
      book.add(phrase, name);
      if (!phrase.endsWith("s")) {
        book.add(phrase + "s", name);
      }
    }
  }

  /** A name as a phrase: its tokens with one space between. */
  private static String phrase(String words) {
    List<Token> tokens = Tokenizer.tokens(Cleaner.clean(words.toLowerCase(Locale.ROOT)));
    return String.join(
        " ",
        tokens.stream()
            .map(Token::norm)
            .filter(n -> "()[]|*#_^$@~".indexOf(n.charAt(0)) < 0)
            .toList());
  }

  /** The names in the text, the longer one where two overlap. */
  List<PhraseBook.Found<Name>> names(List<Token> tokens) {
    List<PhraseBook.Found<Name>> kept = new ArrayList<>();
    int end = 0;
    for (PhraseBook.Found<Name> found : book.find(tokens)) {
      if (found.from() >= end) {
        kept.add(found);
        end = found.to();
      }
    }
    return kept;
  }
}
