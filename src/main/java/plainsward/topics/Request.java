package plainsward.topics;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import plainsward.handbook.Asked;
import plainsward.handbook.Handbook;
import plainsward.reading.Ask;
import plainsward.reading.Facts;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;

/**
 * What a topic answers: the facts that are known, each with its provenance, and what is asked. What
 * a topic looks at is noted, so that the reply can say what it was worked out from.
 */
public final class Request {
  private final Facts turn;
  private final Map<String, List<Known>> known;
  private final List<Ask> asks;
  private final UnitSystem units;
  private final LocalDate today;
  private final Handbook handbook;
  private final List<Known> used = new ArrayList<>();
  private String words = "";
  private Asked asked;

  /**
   * A request.
   *
   * @param turn what was understood of this turn
   * @param known what is known by role, the latest last
   * @param asks what is asked, this turn's or the one that is redone
   * @param units the measures taken where nothing tells
   * @param today the date to reckon from
   * @param handbook the notes to be searched
   */
  public Request(
      Facts turn,
      Map<String, List<Known>> known,
      List<Ask> asks,
      UnitSystem units,
      LocalDate today,
      Handbook handbook) {
    this.turn = turn;
    this.handbook = handbook;
    this.known = Map.copyOf(known);
    this.asks = List.copyOf(asks);
    this.units = units;
    this.today = today;
  }

  /** This turn. */
  public Facts turn() {
    return turn;
  }

  /** The measures taken where nothing tells. */
  public UnitSystem units() {
    return units;
  }

  /** The date to reckon from. */
  public LocalDate today() {
    return today;
  }

  /** The notes to be searched. */
  public Handbook handbook() {
    return handbook;
  }

  /** The words as the handbook reads them, for all that is looked for in the same ones. */
  Asked asked(String question) {
    if (asked == null || !words.equals(question)) {
      asked = handbook.asked(question);
      words = question;
    }
    return asked;
  }

  /** What is asked. */
  public List<Ask> asks() {
    return asks;
  }

  /** Whether this figure is asked for. */
  public boolean wants(String figure) {
    return asks.stream().anyMatch(a -> a.want().equals(figure));
  }

  /** Whether something of this role is known. */
  public boolean has(String name) {
    return !known.getOrDefault(name, List.of()).isEmpty();
  }

  /** The latest of a role, noted as used. */
  public Optional<Known> get(String name) {
    List<Known> all = known.getOrDefault(name, List.of());
    if (all.isEmpty()) {
      return Optional.empty();
    }
    Known latest = all.get(all.size() - 1);
    use(latest);
    return Optional.of(latest);
  }

  /** All of a role, noted as used. */
  public List<Known> all(String name) {
    List<Known> all = known.getOrDefault(name, List.of());
    all.forEach(this::use);
    return all;
  }

  /** The latest of a role of which this holds, noted as used. */
  public Optional<Known> find(String name, Predicate<Known> wanted) {
    Optional<Known> found =
        known.getOrDefault(name, List.of()).stream().filter(wanted).reduce((a, b) -> b);
    found.ifPresent(this::use);
    return found;
  }

  /** The latest amount of a role. */
  public Optional<Quantity> amount(String name) {
    return get(name).flatMap(k -> k.fact().value());
  }

  /** What was looked at so far, in order. */
  public List<Known> used() {
    return List.copyOf(used);
  }

  private void use(Known one) {
    if (!used.contains(one)) {
      used.add(one);
    }
  }

  /** The unit that the answer is wanted in, of the same kind as {@code like}. */
  public Optional<Unit> wanted(Unit like) {
    return turnWanted().stream().filter(u -> u.dimension().equals(like.dimension())).findFirst();
  }

  /** All units that the answer is wanted in. */
  public List<Unit> turnWanted() {
    return known.getOrDefault("wanted", List.of()).stream()
        .map(k -> Unit.of(k.fact().word().orElseThrow()))
        .toList();
  }

  /** Whether the words of this turn say this. */
  public boolean says(String sign) {
    return turn.says(sign);
  }
}
