package plainsward.topics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.reading.Token;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/** The weeds table as the topics use it: by id, and by the looks that people describe. */
final class WeedBook {
  private static final List<String> LOOKS = List.of("leaf", "stem", "flower", "habit");
  private static final WeedBook SHIPPED = new WeedBook();

  /**
   * A weed that fits a description.
   *
   * @param weed its row
   * @param traits the traits that fit
   * @param score how well
   */
  record Match(Row weed, List<String> traits, double score) {}

  private final Map<String, Row> byId = new LinkedHashMap<>();
  private final Map<String, Set<String>> traitsOf = new HashMap<>();
  private final Map<String, Integer> carriers = new HashMap<>();
  private final List<Row> traitRows = PhraseColumn.TRAITS.rows();
  private final PhraseBook<String> traits =
      PhraseBook.of(
          PhraseColumn.TRAITS, n -> traitRows.get(n).text("trait").toLowerCase(Locale.ROOT));

  /** Made when a text is first looked through for them. */
  private static final class Names {
    static final List<String> LOWER_CASE = new ArrayList<>();

    static {
      for (Row weed : SHIPPED.byId.values()) {
        LOWER_CASE.add(weed.text("name").toLowerCase(Locale.ROOT));
      }
    }
  }

  private WeedBook() {
    for (Row row : Rows.of("weeds")) {
      byId.put(row.text("id"), row);
      Set<String> looks = new HashSet<>();
      LOOKS.forEach(key -> row.texts(key).forEach(t -> looks.add(t.toLowerCase(Locale.ROOT))));
      row.texts("season").forEach(t -> looks.add(t.toLowerCase(Locale.ROOT)));
      traitsOf.put(row.text("id"), looks);
      looks.forEach(t -> carriers.merge(t, 1, Integer::sum));
    }
  }

  static WeedBook shipped() {
    return SHIPPED;
  }

  Optional<Row> weed(String id) {
    return Optional.ofNullable(byId.get(id));
  }

  /** Whether a text speaks of one of the weeds by its name. */
  boolean isNamedIn(String text) {
    String words = text.toLowerCase(Locale.ROOT);
    for (String name : Names.LOWER_CASE) {
      if (words.contains(name)) {
        return true;
      }
    }
    return false;
  }

  /** The weeds that fit the words, best first. */
  List<Match> matches(List<Token> tokens) {
    Set<String> said = traits.meaningsIn(tokens);
    if (said.isEmpty()) {
      return List.of();
    }
    List<Match> all = new ArrayList<>();
    for (Map.Entry<String, Row> weed : byId.entrySet()) {
      Set<String> looks = traitsOf.get(weed.getKey());
      if (!Collections.disjoint(looks, said)) {
        List<String> fit = said.stream().filter(looks::contains).sorted().toList();
        double score = fit.stream().mapToDouble(this::weight).sum();
        all.add(new Match(weed.getValue(), fit, score));
      }
    }
    all.sort((a, b) -> Double.compare(b.score(), a.score()));
    return all;
  }

  /** A trait that few weeds have tells more. */
  private double weight(String trait) {
    int many = carriers.getOrDefault(trait, 1);
    return Math.log((byId.size() + 1.0) / many);
  }
}
