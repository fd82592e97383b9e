package plainsward.talk;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reading.TradeNames;
import plainsward.reading.Vocabulary;
import plainsward.records.Label;
import plainsward.records.Lawn;
import plainsward.records.Sprayer;
import plainsward.units.Shown;

/**
 * What was told so far, role by role, with the turn in which it was said; lawns and labels by the
 * user's own names beside it. It holds a bounded amount however long the talk goes on.
 */
final class Memory {
  private static final int MOST_NAMES = 1000;

  /** The roles that a label fills. */
  private static final List<String> OF_LABELS =
      List.of(
          "label_rate",
          "strength",
          "interval",
          "season_limit",
          "adjuvant_rate",
          "label_limit",
          "mow_wait",
          "water_wait",
          "water_in",
          "water_in_within",
          "seed_wait",
          "year_amount",
          "rate_use",
          "label_active",
          "dry_product",
          "ready_to_use",
          "grass_allowed",
          "grass_harmed");

  /**
   * A fact and the turn in which it was said.
   *
   * @param fact what was said
   * @param turn when
   */
  record Told(Fact fact, int turn) {}

  private final Map<String, List<Told>> slots = new LinkedHashMap<>();
  private final Map<String, List<Told>> lawns = new LinkedHashMap<>();
  private final Map<String, Map<String, Told>> labels = new LinkedHashMap<>();
  private final Set<String> chosenLawns = new LinkedHashSet<>();
  private String chosenLabel = "";
  private String chosenSprayer = "";
  private boolean stranger;
  private Optional<Interview> interview = Optional.empty();
  private Cards<Label> labelCards = new Cards<>();
  private Cards<Lawn> lawnCards = new Cards<>();
  private Cards<Sprayer> sprayerCards = new Cards<>();

  /** How a name is written here: small and capital letters don't tell names apart. */
  static String key(String name) {
    return name.toLowerCase(Locale.ROOT);
  }

  /** All that was told of labels. */
  Cards<Label> labelCards() {
    return labelCards;
  }

  /** All that was told of lawns beside their ground. */
  Cards<Lawn> lawnCards() {
    return lawnCards;
  }

  /** All that was told of sprayers. */
  Cards<Sprayer> sprayerCards() {
    return sprayerCards;
  }

  /** The sprayer spoken of, or empty. */
  String chosenSprayer() {
    return chosenSprayer;
  }

  /** Speaks of this sprayer from now on: its tank and what it lays down count. */
  void chooseSprayer(String name) {
    Optional<Sprayer> sprayer = sprayerCards.get(name);
    if (sprayer.isEmpty() || name.equals(chosenSprayer)) {
      return;
    }
    chosenSprayer = name;
    drop("tank");
    drop("spray_rate");
    sprayer.get().tank().ifPresent(q -> add("tank", Fact.of("tank", q, Shown.of(q), 0), 0));
    sprayer
        .get()
        .sprayRate()
        .ifPresent(q -> add("spray_rate", Fact.of("spray_rate", q, Shown.of(q), 0), 0));
  }

  /** Whether somebody else is speaking than the one who told what is saved. */
  boolean isStranger() {
    return stranger;
  }

  /** From now on somebody else speaks: what is saved is not theirs unless they name it. */
  void meetStranger() {
    stranger = true;
    chosenSprayer = "";
    drop("tank");
    drop("spray_rate");
  }

  /** Where the asking for a label stands, while one is asked for. */
  Optional<Interview> interview() {
    return interview;
  }

  /** Goes on asking for a label, or ends it with nothing. */
  void interview(Optional<Interview> now) {
    interview = now;
  }

  /** A copy that later changes do not touch. */
  Memory copy() {
    Memory copy = new Memory();
    slots.forEach((name, told) -> copy.slots.put(name, new ArrayList<>(told)));
    lawns.forEach((name, told) -> copy.lawns.put(name, new ArrayList<>(told)));
    labels.forEach((name, facts) -> copy.labels.put(name, new HashMap<>(facts)));
    copy.chosenLawns.addAll(chosenLawns);
    copy.chosenLabel = chosenLabel;
    copy.chosenSprayer = chosenSprayer;
    copy.stranger = stranger;
    copy.interview = interview;
    copy.labelCards = labelCards.copy();
    copy.lawnCards = lawnCards.copy();
    copy.sprayerCards = sprayerCards.copy();
    return copy;
  }

  /** Takes back what was told of labels since: what is not allowed must not become the label. */
  void labelsAsIn(Memory earlier) {
    OF_LABELS.forEach(slots::remove);
    OF_LABELS.stream()
        .filter(earlier.slots::containsKey)
        .forEach(role -> slots.put(role, new ArrayList<>(earlier.slots.get(role))));
    labels.clear();
    earlier.labels.forEach((name, facts) -> labels.put(name, new LinkedHashMap<>(facts)));
    labelCards = earlier.labelCards.copy();
  }

  /** Forgets everything. */
  void clear() {
    slots.clear();
    lawns.clear();
    labels.clear();
    chosenLawns.clear();
    chosenLabel = "";
    chosenSprayer = "";
    stranger = false;
    interview = Optional.empty();
    labelCards = new Cards<>();
    lawnCards = new Cards<>();
    sprayerCards = new Cards<>();
  }

  /** The names that may be said again. */
  Vocabulary vocabulary() {
    return new Vocabulary(lawnNames(), labelNames());
  }

  /** Whether nothing is known. */
  boolean isEmpty() {
    return slots.isEmpty() && lawns.isEmpty() && labels.isEmpty();
  }

  /** What is known of a role now. */
  List<Told> all(String name) {
    if (name.equals("area") && !chosenLawns.isEmpty()) {
      List<Told> ground = new ArrayList<>();
      chosenLawns.forEach(lawn -> ground.addAll(lawns.getOrDefault(lawn, List.of())));
      return ground;
    }
    return slots.getOrDefault(name, List.of());
  }

  /** The latest of a role. */
  Optional<Told> latest(String name) {
    List<Told> all = all(name);
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(all.size() - 1));
  }

  /** Whether something of a role is known. */
  boolean has(String name) {
    return !all(name).isEmpty();
  }

  /** The roles of which something is known. */
  Set<String> names() {
    Set<String> names = new LinkedHashSet<>(slots.keySet());
    if (!chosenLawns.isEmpty()) {
      names.add("area");
    }
    return names;
  }

  /** Puts these facts in place of what was known of the role. */
  void replace(String name, List<Fact> facts, int turn) {
    slots.put(name, told(facts, turn));
    if (name.equals("area")) {
      chosenLawns.clear();
    }
  }

  private static List<Told> told(List<Fact> facts, int turn) {
    List<Told> told = new ArrayList<>(facts.size());
    for (Fact fact : facts) {
      told.add(new Told(fact, turn));
    }
    return told;
  }

  /** Adds a fact to what is known of the role. */
  void add(String name, Fact fact, int turn) {
    slots.computeIfAbsent(name, k -> new ArrayList<>()).add(new Told(fact, turn));
  }

  /** Forgets a role. */
  void drop(String name) {
    slots.remove(name);
    if (name.equals("area")) {
      chosenLawns.clear();
    }
  }

  /** Keeps the ground of a named lawn. */
  void lawn(String name, List<Fact> ground, int turn) {
    if (lawns.size() < MOST_NAMES || lawns.containsKey(name)) {
      lawns.put(name, told(ground, turn));
    }
  }

  /** Speaks of these lawns from now on. */
  void chooseLawns(Collection<String> names) {
    chosenLawns.clear();
    chosenLawns.addAll(names);
    layOutGrass();
  }

  /** The grass of the lawns spoken of counts, and no other lawn's. */
  private void layOutGrass() {
    if (latest("grass").filter(told -> !told.fact().owner().isEmpty()).isPresent()) {
      drop("grass");
    }
    for (String lawn : chosenLawns) {
      lawnCards
          .get(lawn)
          .flatMap(Lawn::grass)
          .flatMap(TradeNames::grass)
          .ifPresent(id -> replace("grass", List.of(Fact.of("grass", id, id, 0).of(lawn)), 0));
    }
  }

  /** The lawns spoken of. */
  Set<String> chosenLawns() {
    return Set.copyOf(chosenLawns);
  }

  /** All named lawns. */
  Set<String> lawnNames() {
    Set<String> names = new LinkedHashSet<>(lawns.keySet());
    names.addAll(lawnCards.names());
    return names;
  }

  /** What is known of a named lawn. */
  List<Told> lawn(String name) {
    return List.copyOf(lawns.getOrDefault(name, List.of()));
  }

  /** Forgets a named lawn. */
  void dropLawn(String name) {
    lawns.remove(name);
    lawnCards.remove(name);
    chosenLawns.remove(name);
  }

  /** Keeps a fact of a named label. */
  void label(String name, Fact fact, int turn) {
    if (labels.size() < MOST_NAMES || labels.containsKey(name)) {
      labels
          .computeIfAbsent(name, k -> new LinkedHashMap<>())
          .put(fact.name(), new Told(fact, turn));
    }
  }

  /** Speaks of this label from now on: its facts take the place of another label's. */
  void chooseLabel(String name) {
    if (!name.equals(chosenLabel)) {
      layOutLabel(name);
    }
  }

  /** Puts what is known of a label in place of what another one said, or it said itself. */
  void layOutLabel(String name) {
    Map<String, Told> facts = labels.getOrDefault(name, Map.of());
    Optional<Label> card = labelCards.get(name);
    if (facts.isEmpty() && card.isEmpty()) {
      return;
    }
    OF_LABELS.forEach(slots::remove);
    facts.forEach((role, told) -> slots.put(role, new ArrayList<>(List.of(told))));
    card.ifPresent(label -> LabelFacts.limits(label).forEach(fact -> add(fact.name(), fact, 0)));
    chosenLabel = name;
  }

  /** The label spoken of, or empty. */
  String chosenLabel() {
    return chosenLabel;
  }

  /** All labels by nickname. */
  Set<String> labelNames() {
    Set<String> names = new LinkedHashSet<>(labels.keySet());
    names.addAll(labelCards.names());
    return names;
  }

  /** What is known of a label. */
  Map<String, Told> label(String name) {
    return labels.getOrDefault(name, Map.of());
  }

  /** Forgets a label. */
  void dropLabel(String name) {
    labels.remove(name);
    labelCards.remove(name);
    if (name.equals(chosenLabel)) {
      chosenLabel = "";
    }
  }
}
