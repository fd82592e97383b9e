package plainsward.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import plainsward.trade.JsonRows;
import plainsward.trade.Row;

/**
 * The names of the trade tables as phrases: rows of a kind, an id and what people say. The build
 * keeps them, since making them means reading every name as if somebody had typed it.
 */
public final class NameRows {
  /** The name of the table that they make. */
  public static final String TABLE = "names";

  private final List<Row> rows = new ArrayList<>();

  private NameRows() {
    load("weeds", NameKind.WEED);
    load("grasses", NameKind.GRASS);
    load("actives", NameKind.ACTIVE);
    load("kinds", NameKind.PRODUCT);
    load("adjuvants", NameKind.ADJUVANT);
  }

  /** The rows, made from the tables. */
  public static List<Row> made() {
    return new NameRows().rows;
  }

  private void load(String table, NameKind kind) {
    for (Row row : JsonRows.of(table)) {
      List<String> said = new ArrayList<>(row.texts("nicknames"));
      said.add(row.text("name"));
      row.optional("botanical").ifPresent(said::add);
      List<String> phrases = new ArrayList<>();
      said.stream().distinct().forEach(words -> add(phrases, words));
      Map<String, Object> made = new LinkedHashMap<>();
      made.put("kind", kind.name());
      made.put("id", row.text("id"));
      made.put("say", new Row.Texts(phrases));
      rows.add(new Row(TABLE, rows.size(), made));
    }
  }

  private static void add(List<String> phrases, String words) {
    String phrase = phrase(words);
    if (!phrase.isEmpty()) {
      phrases.add(phrase);
      if (!phrase.endsWith("s")) {
        phrases.add(phrase + "s");
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
}
