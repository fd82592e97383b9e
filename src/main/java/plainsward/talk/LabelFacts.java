package plainsward.talk;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reading.TradeNames;
import plainsward.records.Label;
import plainsward.records.Rate;
import plainsward.records.WettingAgent;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Units;

/** What a kept label says, as facts that sums, dates and limits are worked out with. */
final class LabelFacts {
  private final String owner;
  private final List<Fact> facts = new ArrayList<>();

  private LabelFacts(Label label) {
    this.owner = Memory.key(label.name());
  }

  /** The rates, the interval and the cap; of several rates of a kind the one told last. */
  static List<Fact> doses(Label label) {
    LabelFacts made = new LabelFacts(label);
    label.rates().forEach(rate -> made.facts.add(made.rate(rate)));
    label.season().interval().ifPresent(wait -> made.wait("interval", wait));
    label
        .season()
        .applications()
        .ifPresent(
            most -> made.add("season_limit", Quantity.number(Ratio.of(most)), LabelText.cap(most)));
    label
        .wettingAgent()
        .filter(agent -> agent.rule() != WettingAgent.Rule.FORBIDDEN)
        .flatMap(WettingAgent::strength)
        .ifPresent(share -> made.add("adjuvant_rate", share.low(), Shown.of(share.low())));
    return made.facts;
  }

  /** One rate as the fact that it is told by. */
  static Fact rate(Label label, Rate rate) {
    return new LabelFacts(label).rate(rate);
  }

  /** The limits: weather, waits, grasses, the most a year. */
  static List<Fact> limits(Label label) {
    LabelFacts made = new LabelFacts(label);
    if (label.isDry()) {
      made.facts.add(Fact.of("dry_product", "dry", "dry", 0).of(made.owner));
    }
    if (label.form().equals(Optional.of(Label.Form.READY_TO_USE))) {
      made.facts.add(Fact.of("ready_to_use", "rtu", "ready to use", 0).of(made.owner));
    }
    for (Label.Active active : label.actives()) {
      made.facts.add(Fact.of("label_active", active.name(), active.name(), 0).of(made.owner));
    }
    Label.Weather weather = label.weather();
    made.limit("rain-free", weather.rainFree());
    made.limit("wind", weather.windMost());
    made.limit("heat", weather.heatMost());
    made.limit("cold", weather.coldLeast());
    label.reentry().ifPresent(made::reentry);
    made.amount("mow_wait", label.care().mowAfter());
    made.amount("water_wait", label.care().waterAfter());
    made.amount("water_in", label.care().waterIn());
    made.amount("water_in_within", label.care().waterInWithin());
    label.seeding().seedAfter().ifPresent(wait -> made.wait("seed_wait", wait));
    made.amount("year_amount", label.season().amount());
    label.grasses().allows().forEach(grass -> made.grass("grass_allowed", grass));
    label.grasses().harms().forEach(grass -> made.grass("grass_harmed", grass));
    return made.facts;
  }

  private Fact rate(Rate rate) {
    Quantity low = rate.amount().low();
    String role = rate.basis() == Rate.Basis.AREA ? "label_rate" : "strength";
    Optional<Quantity> high =
        rate.amount().isRange() ? Optional.of(rate.amount().high()) : Optional.empty();
    Fact fact = Fact.of(role, low, Shown.of(low), 0).with(low, high).of(owner);
    return rate.taken() ? fact.doubting(List.of("ounce")) : fact;
  }

  private void add(String role, Quantity amount, String said) {
    facts.add(Fact.of(role, amount, said, 0).of(owner));
  }

  private void amount(String role, Optional<Quantity> amount) {
    amount.ifPresent(q -> add(role, q, Shown.of(q)));
  }

  private void limit(String what, Optional<Quantity> amount) {
    amount.ifPresent(
        q -> facts.add(Fact.of("label_limit", q, Shown.of(q), 0).worded(what).of(owner)));
  }

  private void reentry(Label.Reentry reentry) {
    if (reentry.untilDry()) {
      facts.add(Fact.of("label_limit", "until-dry", "off until dry", 0).of(owner));
    }
    limit("re-entry", reentry.time());
  }

  private void wait(String role, Period wait) {
    boolean months = wait.toTotalMonths() > 0;
    long count = months ? wait.toTotalMonths() : wait.getDays();
    Quantity amount = Quantity.of(count, months ? Units.ONE : Units.DAY);
    String said = LabelText.wait(wait);
    facts.add(Fact.of(role, amount, said, 0).worded(months ? "months" : "days").of(owner));
  }

  private void grass(String role, String grass) {
    String id = TradeNames.grass(grass).orElse(grass);
    facts.add(Fact.of(role, id, grass, 0).of(owner));
  }
}
