package plainsward.talk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Detail;
import plainsward.reading.Fact;
import plainsward.records.Label;
import plainsward.records.LabelBuilder;
import plainsward.records.Range;
import plainsward.records.Rate;
import plainsward.records.WettingAgent;
import plainsward.trade.NameTable;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.Units;

/** Puts what was told of a label into it; what is told anew takes the place of what was there. */
final class LabelMerge {
  /** The most applications a year that a label file may hold. */
  static final int MOST_APPLICATIONS = 52;

  private static final int LONGEST_WAIT = 3660;
  private static final int MOST_MOWINGS = 20;

  private Label label;
  private final Set<String> fields = new LinkedHashSet<>();

  LabelMerge(Label label) {
    this.label = label;
  }

  /** The label with all that was told; a dry product's ounces are weight. */
  Label label() {
    return label.isDry() ? DryLabel.weighed(label) : label;
  }

  /** The fields that were told. */
  Set<String> fields() {
    return Set.copyOf(fields);
  }

  /** Takes in what sums need: interval, cap, spray volume, wetting agent, the most a year. */
  LabelMerge facts(List<Fact> facts) {
    for (Fact fact : facts) {
      boolean none = fact.name().equals("season_limit") && isNothing(fact);
      if (fact.value().isEmpty() || fact.amount().signum() <= 0 && !none) {
        continue;
      }
      LabelBuilder change = label.change();
      switch (fact.name()) {
        case "interval" -> {
          if (Waits.count(fact.amount()) <= LONGEST_WAIT) {
            set("interval", change.interval(Waits.period(fact)));
          }
        }
        case "season_limit" -> {
          if (Waits.count(fact.amount()) <= MOST_APPLICATIONS) {
            set("applications", change.applicationsPerYear(Waits.count(fact.amount())));
          }
        }
        case "year_amount" -> set("year-amount", change.amountPerYear(fact.amount()));
        case "adjuvant_rate" -> agent(fact);
        case "label_rate", "strength" -> rate(fact.amount(), fact.high(), "", isTaken(fact));
        case "spray_rate" -> {
          if (fact.amount().dimension().equals(Dimension.VOLUME_PER_AREA)) {
            set("spray-volume", change.sprayVolume(range(fact.amount(), fact.high())));
          }
        }
        default -> {
          // It is no matter of the label.
        }
      }
    }
    return this;
  }

  private static boolean isTakenRate(Fact fact) {
    boolean rate = fact.name().equals("label_rate") || fact.name().equals("strength");
    return rate && fact.value().isPresent() && isTaken(fact);
  }

  /** Whether bare ounces were taken as fluid ounces. */
  private static boolean isTaken(Fact rate) {
    Unit above = rate.amount().unit().above();
    boolean ounces = above.equals(Units.FL_OZ) || above.equals(Units.IMPERIAL_FL_OZ);
    return ounces && (rate.leavesOpen("ounce") || rate.leavesOpen("unit"));
  }

  /** "0 a year" is a cap like another. */
  private static boolean isNothing(Fact fact) {
    return fact.value().isPresent() && fact.amount().signum() == 0;
  }

  private void set(String field, LabelBuilder change) {
    label = change.label();
    fields.add(field);
  }

  private static Range range(Quantity low, Optional<Quantity> high) {
    return new Range(low, high.orElse(low));
  }

  private void rate(Quantity low, Optional<Quantity> high, String use, boolean taken) {
    Optional<String> purpose = use.isEmpty() ? Optional.empty() : Optional.of(use);
    set("rate", label.change().rate(new Rate(range(low, high), purpose, taken)));
  }

  private void agent(Fact share) {
    WettingAgent.Rule rule =
        label.wettingAgent().map(WettingAgent::rule).orElse(WettingAgent.Rule.REQUIRED);
    Optional<String> kind = label.wettingAgent().flatMap(WettingAgent::kind);
    Range strength = range(share.amount(), share.high());
    set(
        "wetting-agent",
        label.change().wettingAgent(new WettingAgent(rule, kind, Optional.of(strength))));
  }

  /**
   * Takes in the rest.
   *
   * @param facts the facts of the same words, which tell what a rate leaves open
   */
  LabelMerge details(List<Detail> details, List<Fact> facts) {
    for (Detail detail : details) {
      if (!isFit(detail)) {
        continue;
      }
      switch (detail.field()) {
        case "rate" -> {
          boolean taken = facts.stream().anyMatch(f -> f.at() == detail.at() && isTakenRate(f));
          rate(detail.low().orElseThrow(), detail.high(), detail.item(), taken);
        }
        case "rain-free", "wind", "heat", "cold" -> weather(detail);
        case "mow-before", "mow-after", "water", "water-in", "water-in-within" -> care(detail);
        case "seed-after", "new-grass", "new-grass-mowings" -> seeding(detail);
        case "grass-allows", "grass-harms" -> grass(detail);
        default -> word(detail);
      }
    }
    return this;
  }

  /** Whether a label can hold it: nothing of nought, and no wait beyond all bounds. */
  private static boolean isFit(Detail detail) {
    if (detail.low().isEmpty()) {
      return true;
    }
    boolean cold = detail.field().equals("cold");
    Quantity amount = detail.longest();
    boolean wait = detail.field().equals("seed-after") || detail.field().equals("new-grass");
    return (amount.signum() > 0 || cold)
        && (!wait || Waits.count(amount) <= LONGEST_WAIT)
        && (!detail.field().equals("new-grass-mowings") || Waits.count(amount) <= MOST_MOWINGS);
  }

  private void weather(Detail detail) {
    Label.Weather is = label.weather();
    Optional<Quantity> told = Optional.of(detail.longest());
    set(
        detail.field(),
        label
            .change()
            .weather(
                new Label.Weather(
                    detail.field().equals("rain-free") ? told : is.rainFree(),
                    detail.field().equals("wind") ? told : is.windMost(),
                    detail.field().equals("heat") ? told : is.heatMost(),
                    detail.field().equals("cold") ? told : is.coldLeast())));
  }

  private void care(Detail detail) {
    Label.Care is = label.care();
    Optional<Quantity> told = Optional.of(detail.longest());
    set(
        detail.field(),
        label
            .change()
            .care(
                new Label.Care(
                    detail.field().equals("mow-before") ? told : is.mowBefore(),
                    detail.field().equals("mow-after") ? told : is.mowAfter(),
                    detail.field().equals("water") ? told : is.waterAfter(),
                    detail.field().equals("water-in") ? told : is.waterIn(),
                    detail.field().equals("water-in-within") ? told : is.waterInWithin())));
  }

  private void seeding(Detail detail) {
    Label.Seeding is = label.seeding();
    Label.Seeding told =
        switch (detail.field()) {
          case "seed-after" ->
              new Label.Seeding(
                  Optional.of(Waits.period(detail)), is.newGrassAfter(), is.newGrassMowings());
          case "new-grass" ->
              new Label.Seeding(
                  is.seedAfter(), Optional.of(Waits.period(detail)), is.newGrassMowings());
          default ->
              new Label.Seeding(
                  is.seedAfter(), is.newGrassAfter(), Optional.of(Waits.count(detail.longest())));
        };
    set(detail.field(), label.change().seeding(told));
  }

  private void grass(Detail detail) {
    boolean allowed = detail.field().equals("grass-allows");
    String name = NameTable.name("grasses", detail.item());
    List<String> allows = without(label.grasses().allows(), name);
    List<String> harms = without(label.grasses().harms(), name);
    (allowed ? allows : harms).add(name);
    set(detail.field(), label.change().grasses(allows, harms));
  }

  private static List<String> without(List<String> names, String name) {
    List<String> rest = new ArrayList<>(names);
    rest.removeIf(name::equalsIgnoreCase);
    return rest;
  }

  private void word(Detail detail) {
    switch (detail.field()) {
      case "form" -> set("form", label.change().form(word(Label.Form.values(), detail.item())));
      case "state" -> set("form", label.change().state(word(Label.State.values(), detail.item())));
      case "active" -> active(detail);
      case "gear" -> {
        if (!label.gear().contains(detail.item())) {
          set("gear", label.change().gear(detail.item()));
        }
      }
      case "reentry" -> reentry(detail);
      case "wetting-agent" -> rule(detail);
      default -> {
        // An interval is told as a fact.
      }
    }
  }

  private static <W extends plainsward.records.Word> W word(W[] all, String wanted) {
    return java.util.Arrays.stream(all)
        .filter(w -> w.word().equals(wanted))
        .findFirst()
        .orElseThrow();
  }

  private void active(Detail detail) {
    List<Label.Active> all = new ArrayList<>(label.actives());
    String name = NameTable.name("actives", detail.item());
    boolean known = all.stream().anyMatch(a -> a.name().equals(name));
    if (known && detail.low().isEmpty()) {
      return;
    }
    all.removeIf(a -> a.name().equals(name));
    all.add(new Label.Active(name, detail.low()));
    set("active", label.change().actives(all));
  }

  private void reentry(Detail detail) {
    boolean dry = detail.item().equals("until-dry");
    Optional<Label.Reentry> is = label.reentry();
    boolean untilDry = dry || is.map(Label.Reentry::untilDry).orElse(false);
    Optional<Quantity> time = detail.low().or(() -> is.flatMap(Label.Reentry::time));
    set("reentry", label.change().reentry(new Label.Reentry(untilDry, time)));
  }

  private void rule(Detail detail) {
    WettingAgent.Rule rule = word(WettingAgent.Rule.values(), detail.item());
    boolean none = rule == WettingAgent.Rule.FORBIDDEN;
    Optional<WettingAgent> is = none ? Optional.empty() : label.wettingAgent();
    set(
        "wetting-agent",
        label
            .change()
            .wettingAgent(
                new WettingAgent(
                    rule, is.flatMap(WettingAgent::kind), is.flatMap(WettingAgent::strength))));
  }
}
