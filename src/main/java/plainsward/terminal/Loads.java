package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/**
 * The loads that a reply's figures tell of: how many are full, and whether the last is but a part.
 * The size of a full load is what the others hold when the last is taken off the whole; of a single
 * load, the tank that was named.
 */
final class Loads {
  /**
   * Loads that are all alike.
   *
   * @param count how many
   * @param isPart whether it is less than a full tank
   * @param volume the finished spray in one
   * @param full what a full tank holds
   * @param product the product in one, where there is any
   * @param adjuvant the wetting agent in one, where there is any
   * @param area the ground that one covers, where that is known
   */
  record Load(
      long count,
      boolean isPart,
      Quantity volume,
      Quantity full,
      Optional<Figure> product,
      Optional<Figure> adjuvant,
      Optional<Figure> area) {}

  private final Reply reply;

  private Loads(Reply reply) {
    this.reply = reply;
  }

  /** The loads in the order in which they are filled; none where nothing is poured. */
  static List<Load> of(Reply reply) {
    if (reply.kind() != Kind.ANSWER) {
      return List.of();
    }
    return new Loads(reply)
        .all().stream()
            .filter(load -> load.product().isPresent() || load.adjuvant().isPresent())
            .toList();
  }

  private List<Load> all() {
    Optional<Quantity> last = amount("last_fill");
    Optional<Quantity> fills = amount("fills");
    if (last.isEmpty() || fills.isEmpty()) {
      return oneVolume();
    }
    long count = fills.get().value().floor().longValue();
    Quantity full = full(last.get(), count);
    boolean part = last.get().compareTo(full) < 0;
    long wholes = part ? count - 1 : count;
    List<Load> loads = new ArrayList<>();
    if (wholes > 0) {
      loads.add(load(wholes, false, full, full, count == 1 ? "last_fill" : "per_fill"));
    }
    if (part) {
      loads.add(load(1, true, last.get(), full, "last_fill"));
    }
    return loads;
  }

  private Quantity full(Quantity last, long count) {
    Optional<Quantity> spray = amount("spray_total");
    if (count > 1 && spray.isPresent()) {
      return spray.get().minus(last).dividedBy(Ratio.of(count - 1)).in(last.unit());
    }
    return tank(last).orElse(last);
  }

  /** A single load may fill only a part of the tank that was named. */
  private Optional<Quantity> tank(Quantity load) {
    return reply.understood().stream()
        .filter(u -> u.name().equals("tank"))
        .flatMap(u -> u.value().stream())
        .filter(v -> v.dimension().equals(load.dimension()) && v.compareTo(load) > 0)
        .findFirst();
  }

  private Load load(long count, boolean isPart, Quantity volume, Quantity full, String which) {
    Optional<Figure> area = isPart ? Optional.empty() : reply.figure("area_per_fill");
    return new Load(
        count,
        isPart,
        volume,
        full,
        reply.figure("product_" + which),
        reply.figure("adjuvant_" + which),
        area);
  }

  /** Spray mixed at a strength, with no tank to part it into. */
  private List<Load> oneVolume() {
    Optional<Quantity> spray = amount("spray_total");
    if (spray.isEmpty() || !reply.topics().contains("strength")) {
      return List.of();
    }
    return List.of(load(1, false, spray.get(), spray.get(), "total"));
  }

  private Optional<Quantity> amount(String name) {
    return reply.figure(name).flatMap(Figure::value);
  }
}
