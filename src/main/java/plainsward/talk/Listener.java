package plainsward.talk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.records.Label;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Takes what was understood of a turn into the memory. */
final class Listener {
  /** What belongs to its turn alone. */
  private static final Set<String> PASSING =
      Set.of(
          "wanted",
          "number",
          "vague",
          "day",
          "other",
          "elapsed",
          "listed_volume",
          "tank_part",
          "told_part",
          "piece_makes",
          "taken_rate",
          "in_hand",
          "dial_setting",
          "old_spray_rate",
          "old_label_rate");

  private static final Set<String> VESSELS = Set.of("trigger");
  private static final Set<String> GROUND = Set.of("area", "shape", "minus", "minus_shape");

  private final Memory memory;
  private final int turn;

  Listener(Memory memory, int turn) {
    this.memory = memory;
    this.turn = turn;
  }

  /** Remembers a turn's facts. */
  void hear(Facts facts, List<Fact> all) {
    if (memory.latest("put_down").filter(told -> told.turn() < turn - 1).isPresent()) {
      memory.drop("put_down");
      memory.drop("put_on");
    }
    ground(facts, all);
    labels(facts, all);
    Map<String, List<Fact>> byRole = new LinkedHashMap<>();
    for (Fact fact : all) {
      boolean elsewhere = GROUND.contains(fact.name()) || isAnothersLabel(fact);
      if (!PASSING.contains(fact.name()) && !elsewhere) {
        byRole.computeIfAbsent(fact.name(), k -> new ArrayList<>()).add(fact);
      }
    }
    if (facts.says("label-most")) {
      byRole.computeIfPresent(
          "label_rate", (role, said) -> said.stream().map(Listener::asMost).toList());
      byRole.computeIfPresent(
          "strength", (role, said) -> said.stream().map(Listener::asMost).toList());
    }
    if (byRole.getOrDefault("tank", List.of()).size() > 1) {
      byRole.put("tank_option", byRole.get("tank"));
    }
    byRole.forEach((role, said) -> memory.replace(role, said, turn));
    settle(byRole);
    end(facts, byRole);
    form(facts);
    inTank(facts, byRole, all);
  }

  /** "put 4 oz in 2 gal and covered 1500 sq ft": what went on the ground, until a rate is told. */
  private void putDown(Fact hand, List<Fact> all) {
    for (Fact fact : all) {
      boolean on = fact.name().equals("area") || fact.name().equals("test_area");
      if (on && fact.value().isPresent() && fact.high().isEmpty()) {
        memory.replace("put_down", List.of(hand.as("put_down")), turn);
        memory.replace("put_on", List.of(fact.as("put_on")), turn);
      }
    }
  }

  /** What is in the tank already stays so until another tank or lawn is spoken of. */
  private void inTank(Facts facts, Map<String, List<Fact>> byRole, List<Fact> all) {
    Fact hand = null;
    boolean ground = false;
    for (Fact fact : all) {
      hand = fact.name().equals("in_hand") ? fact : hand;
      ground |= GROUND.contains(fact.name()) || fact.name().equals("test_area");
    }
    if (hand != null && facts.says("past")) {
      putDown(hand, all);
    }
    if (hand != null && !ground) {
      memory.replace("in_tank", List.of(hand.as("in_tank")), turn);
    } else if (ground || byRole.containsKey("tank") || byRole.containsKey("spray_volume")) {
      memory.drop("in_tank");
    }
    boolean other = ground || byRole.containsKey("tank") || byRole.containsKey("spray_volume");
    if (other && !byRole.containsKey("mix_left")) {
      memory.drop("mix_left");
    }
  }

  /** What the label says is the most that it allows. */
  private static Fact asMost(Fact rate) {
    List<String> doubts = new ArrayList<>(rate.doubts());
    doubts.add("most");
    return rate.doubting(doubts);
  }

  /** "the high end": from now on the rate, until another is told; the range stays known. */
  private void end(Facts facts, Map<String, List<Fact>> byRole) {
    for (String role : List.of("label_rate", "strength")) {
      if (byRole.containsKey(role)) {
        memory.drop("rate_range");
      }
      boolean named = facts.says("high-end") || facts.says("low-end") || facts.says("middle-end");
      Optional<Fact> range =
          memory
              .latest("rate_range")
              .or(() -> memory.latest(role))
              .map(Memory.Told::fact)
              .filter(f -> f.name().equals(role) && f.high().isPresent());
      if (named && range.isPresent()) {
        memory.replace("rate_range", List.of(range.get()), turn);
        memory.replace(role, List.of(chosen(range.get(), facts)), turn);
      }
    }
  }

  private static Fact chosen(Fact range, Facts facts) {
    Quantity low = range.amount();
    Quantity high = range.high().orElseThrow();
    Quantity end =
        facts.says("middle-end")
            ? low.plus(high).times(Ratio.of(1, 2))
            : facts.says("high-end") ? high : low;
    return range.with(end, Optional.empty());
  }

  /** Whether the product is ready to use, a concentrate, or dry. */
  private void form(Facts facts) {
    boolean vessel = facts.has("strength") && facts.has("tank") && facts.hasWord(VESSELS);
    if (facts.says("ready-to-use")
        && !facts.says("concentrate")
        && !facts.has("in_hand")
        && !vessel) {
      memory.replace(
          "ready_to_use", List.of(Fact.of("ready_to_use", "rtu", "ready to use", 0)), turn);
    } else if (facts.says("concentrate") || facts.has("label_rate") || facts.has("strength")) {
      memory.drop("ready_to_use");
    }
    if (facts.says("dry-product")) {
      memory.replace("dry_product", List.of(Fact.of("dry_product", "dry", "dry", 0)), turn);
    }
  }

  /** A rate per area and a strength say the same thing in two ways: the later one stands. */
  private void settle(Map<String, List<Fact>> byRole) {
    if (byRole.containsKey("label_rate") && !byRole.containsKey("strength")) {
      memory.drop("strength");
    } else if (byRole.containsKey("strength") && !byRole.containsKey("label_rate")) {
      memory.drop("label_rate");
    }
    if (byRole.containsKey("spray_volume") && !byRole.containsKey("tank_part")) {
      memory.drop("tank_part");
    }
    if (byRole.containsKey("tank") && !byRole.containsKey("spray_volume")) {
      memory.drop("spray_volume");
    }
  }

  private boolean isAnothersLabel(Fact fact) {
    return fact.isOfLabel()
        && !fact.owner().isEmpty()
        && !fact.owner().equals(memory.chosenLabel());
  }

  private void labels(Facts facts, List<Fact> all) {
    String last = "";
    for (Fact fact : all) {
      if (fact.isOfLabel() && !fact.owner().isEmpty()) {
        memory.label(fact.owner(), fact, turn);
        last = fact.owner();
        learn(last, fact);
      }
    }
    String spoken = facts.labels().isEmpty() ? last : facts.labels().get(facts.labels().size() - 1);
    if (!spoken.isEmpty()) {
      memory.chooseLabel(spoken);
    }
  }

  private void learn(String name, Fact fact) {
    Label label = memory.labelCards().get(name).orElseGet(() -> Label.named(name).label());
    memory.labelCards().put(name, new LabelMerge(label).facts(List.of(fact)).label(), turn);
  }

  private void ground(Facts facts, List<Fact> all) {
    List<Fact> ground = all.stream().filter(f -> GROUND.contains(f.name())).toList();
    Map<String, List<Fact>> owned = new LinkedHashMap<>();
    List<Fact> unowned = new ArrayList<>();
    for (Fact fact : ground) {
      if (fact.owner().isEmpty()) {
        unowned.add(fact);
      } else {
        owned.computeIfAbsent(fact.owner(), k -> new ArrayList<>()).add(fact);
      }
    }
    owned.forEach((lawn, facts1) -> memory.lawn(lawn, facts1, turn));
    boolean lawn =
        !ground.isEmpty() && ground.stream().anyMatch(f -> !f.name().startsWith("minus"));
    if (lawn || !facts.lawns().isEmpty()) {
      memory.drop("lawn_part");
      memory.drop("lawn_each");
      memory.drop("lawn_count");
      if (all.stream().noneMatch(fact -> fact.name().equals("lawn_each"))) {
        memory.drop("lawns_all");
      }
    }
    choose(facts, owned, unowned);
  }

  private void choose(Facts facts, Map<String, List<Fact>> owned, List<Fact> unowned) {
    boolean onlyMinus =
        !unowned.isEmpty() && unowned.stream().allMatch(f -> f.name().startsWith("minus"));
    if (facts.says("added")
        && memory.has("area")
        && !onlyMinus
        && !ground(owned, unowned).isEmpty()) {
      List<Fact> together =
          new ArrayList<>(memory.all("area").stream().map(Memory.Told::fact).toList());
      together.addAll(ground(owned, unowned));
      memory.replace("area", together, turn);
    } else if (facts.says("leave-out") && isLeftOut(unowned)) {
      return;
    } else if (!owned.isEmpty()) {
      List<String> lawns = new ArrayList<>(owned.keySet());
      memory.chooseLawns(OnlyLawns.of(facts, lawns));
      if (!unowned.isEmpty() && !OnlyLawns.areNamed(facts, lawns)) {
        List<Fact> together = new ArrayList<>();
        owned.values().forEach(together::addAll);
        together.addAll(unowned);
        memory.replace("area", together, turn);
      }
    } else if (onlyMinus && memory.has("area")) {
      lessGround(unowned, facts.says("correction"));
    } else if (!unowned.isEmpty()) {
      memory.replace("area", unowned, turn);
    } else if (facts.says("both") && memory.lawnNames().size() > 1) {
      memory.chooseLawns(memory.lawnNames());
    } else if (!facts.lawns().isEmpty()) {
      memory.chooseLawns(facts.lawns());
    }
  }

  private static List<Fact> ground(Map<String, List<Fact>> owned, List<Fact> unowned) {
    List<Fact> all = new ArrayList<>();
    owned.values().forEach(all::addAll);
    all.addAll(unowned);
    return all;
  }

  /** "skip the 3k one": of the pieces known, the one of that size; whether there was such a one. */
  private boolean isLeftOut(List<Fact> named) {
    List<Fact> pieces =
        new ArrayList<>(memory.all("area").stream().map(Memory.Told::fact).toList());
    int before = pieces.size();
    pieces.removeIf(
        p ->
            p.value().isPresent()
                && named.stream()
                    .anyMatch(n -> n.value().isPresent() && n.amount().isSameAmount(p.amount())));
    if (pieces.isEmpty() || pieces.size() == before) {
      return false;
    }
    memory.replace("area", pieces, turn);
    return true;
  }

  /**
   * "take off 900 for the patio": what is left out comes off the ground spoken of. "The patio is
   * more like 1,100" stands in place of the one piece that was left out before.
   */
  private void lessGround(List<Fact> minus, boolean correction) {
    List<Fact> together =
        new ArrayList<>(memory.all("area").stream().map(Memory.Told::fact).toList());
    long before = together.stream().filter(f -> f.name().startsWith("minus")).count();
    if (correction && before == minus.size()) {
      together.removeIf(f -> f.name().startsWith("minus"));
    }
    together.addAll(minus);
    memory.replace("area", together, turn);
  }

  /** The unit that a fact of this role had, for a bare number that corrects it. */
  static Optional<Fact> withNumber(Optional<Fact> before, Fact number) {
    return before
        .filter(b -> b.value().isPresent())
        .map(
            b ->
                b.with(
                    new plainsward.units.Quantity(number.amount().value(), b.amount().unit()),
                    number
                        .high()
                        .map(h -> new plainsward.units.Quantity(h.value(), b.amount().unit()))));
  }
}
