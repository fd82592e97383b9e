package plainsward.topics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Denials;
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

  /** How the weeds look; made when first a look is described. */
  private static final class Looks {
    static final Map<String, Set<String>> OF = new HashMap<>();
    static final Map<String, Integer> CARRIERS = new HashMap<>();

    static {
      for (Row row : SHIPPED.rows) {
        Set<String> looks = new HashSet<>();
        LOOKS.forEach(key -> row.texts(key).forEach(t -> looks.add(t.toLowerCase(Locale.ROOT))));
        row.texts("season").forEach(t -> looks.add(t.toLowerCase(Locale.ROOT)));
        OF.put(row.text("id"), looks);
        looks.forEach(t -> CARRIERS.merge(t, 1, Integer::sum));
      }
    }
  }

  private final List<Row> rows = Rows.of("weeds");
  private final List<Row> traitRows = PhraseColumn.TRAITS.rows();
  private final PhraseBook<String> traits =
      PhraseBook.of(
          PhraseColumn.TRAITS, n -> traitRows.get(n).text("trait").toLowerCase(Locale.ROOT));

  /** Made when a text is first looked through for them. */
  private static final class Names {
    static final List<String> LOWER_CASE = new ArrayList<>();

    static {
      for (Row weed : SHIPPED.rows) {
        LOWER_CASE.add(weed.text("name").toLowerCase(Locale.ROOT));
      }
    }
  }

  private static final Set<String> COLORS =
      Set.of(
          "white flowers",
          "yellow flowers",
          "purple flowers",
          "pink flowers",
          "blue flowers",
          "orange flowers");
  private static final Set<String> SEASONS =
      Set.of(
          "early spring",
          "spring",
          "late spring",
          "early summer",
          "summer",
          "late summer",
          "fall",
          "winter");
  private static final double OTHER_COLOR = 0.5;
  private static final double OF_SEASON = 0.4;
  private static final double DENIED = 0.3;

  private WeedBook() {}

  static WeedBook shipped() {
    return SHIPPED;
  }

  Optional<Row> weed(String id) {
    for (Row row : rows) {
      if (row.text("id").equals(id)) {
        return Optional.of(row);
      }
    }
    return Optional.empty();
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
    Set<String> denied = new HashSet<>();
    Set<String> said = said(tokens, denied);
    if (said.isEmpty()) {
      return List.of();
    }
    List<Match> all = new ArrayList<>();
    for (Row weed : rows) {
      Set<String> looks = Looks.OF.get(weed.text("id"));
      if (!Collections.disjoint(looks, said)) {
        List<String> fit = said.stream().filter(looks::contains).sorted().toList();
        double score = fit.stream().mapToDouble(this::weight).sum();
        score *= isOfAnotherColor(said, looks) ? OTHER_COLOR : 1;
        score *= Collections.disjoint(looks, denied) ? 1 : DENIED;
        all.add(new Match(weed, fit, score));
      }
    }
    all.sort((a, b) -> Double.compare(b.score(), a.score()));
    return all;
  }

  /** The traits that are told; into the other set those that it is told not to have. */
  private Set<String> said(List<Token> tokens, Set<String> denied) {
    Set<String> said = new HashSet<>();
    for (PhraseBook.Found<String> found : traits.find(tokens)) {
      (Denials.areBefore(tokens, found.from()) ? denied : said).add(found.meaning());
    }
    denied.removeAll(said);
    return said;
  }

  /** Whether flowers of a color are told, and the weed's have none of the colors told. */
  private static boolean isOfAnotherColor(Set<String> said, Set<String> looks) {
    return !Collections.disjoint(said, COLORS)
        && !Collections.disjoint(looks, COLORS)
        && COLORS.stream().noneMatch(color -> said.contains(color) && looks.contains(color));
  }

  /** A trait that few weeds have tells more; a season tells little, as weeds last. */
  private double weight(String trait) {
    int many = Looks.CARRIERS.getOrDefault(trait, 1);
    double rare = Math.log((rows.size() + 1.0) / many);
    return SEASONS.contains(trait) ? rare * OF_SEASON : rare;
  }
}
