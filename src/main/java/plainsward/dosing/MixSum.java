package plainsward.dosing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** The sums of one tank mix, in the order in which a person would do them. */
final class MixSum {
  private final TankJob job;
  private final List<Step> steps = new ArrayList<>();
  private Optional<Quantity> sprayRate;
  private Optional<Quantity> spray;
  private Optional<Quantity> area;

  MixSum(TankJob job) {
    this.job = job;
  }

  TankMix total() {
    if (job.rate().isEmpty() && job.strength().isEmpty() && job.adjuvant().isEmpty()) {
      throw new NotDosable("label_rate", NotDosable.Why.MISSING);
    }
    sprayRate = rateFromJob().or(job::sprayRate);
    spray = job.spray().or(this::sprayOnArea).or(this::oneTank);
    area = job.area().or(this::groundUnderSpray);
    Optional<Quantity> product = product();
    Optional<Quantity> adjuvant = job.adjuvant().map(this::adjuvantTotal);
    Optional<Fills> fills = job.tank().flatMap(tank -> spray.map(all -> loads(tank, all)));
    return new TankMix(area, product, spray, adjuvant, fills, steps);
  }

  private Optional<Quantity> rateFromJob() {
    return job.area().flatMap(ground -> job.spray().map(all -> sprayOver(all, ground)));
  }

  private Quantity sprayOver(Quantity all, Quantity ground) {
    return step(Working.of("spray_rate", all).over(ground), Fitting.sprayRate(all, ground));
  }

  private Optional<Quantity> sprayOnArea() {
    return job.area().flatMap(ground -> sprayRate.map(per -> sprayOn(per, ground)));
  }

  private Quantity sprayOn(Quantity per, Quantity ground) {
    Unit unit = job.tank().map(Quantity::unit).orElse(per.unit().above().single());
    return step(Working.of("spray_total", per).times(ground), unit);
  }

  private Optional<Quantity> oneTank() {
    return job.area().isPresent() ? Optional.empty() : job.tank();
  }

  private Optional<Quantity> groundUnderSpray() {
    return spray.flatMap(all -> sprayRate.map(per -> ground("area", all, per)));
  }

  private Quantity ground(String what, Quantity volume, Quantity per) {
    Unit unit = job.area().map(Quantity::unit).orElse(Fitting.areaBelow(per.unit()));
    Step step = Fitting.walkable(Working.of(what, volume).over(per).as(unit));
    steps.add(step);
    return step.result();
  }

  private Optional<Quantity> product() {
    if (job.rate().isPresent()) {
      return job.rate().map(rate -> onGround("product_total", rate));
    }
    return job.strength().map(strength -> inSpray("product_total", strength));
  }

  private Quantity adjuvantTotal(Quantity agent) {
    return Strength.isPerArea(agent)
        ? onGround("adjuvant_total", agent)
        : inSpray("adjuvant_total", agent);
  }

  private Quantity onGround(String what, Quantity rate) {
    String missing = spray.isPresent() ? "spray_rate" : "area";
    Quantity ground = Given.needed(missing, area);
    return step(Working.of(what, rate).times(ground), rate.unit().above().single());
  }

  private Quantity inSpray(String what, Quantity strength) {
    String missing = area.isPresent() ? "spray_rate" : "spray_volume";
    Quantity all = Given.needed(missing, spray);
    Unit unit = Fitting.product(strength.unit(), all.unit());
    return step(Working.of(what, strength).times(all), unit);
  }

  private Fills loads(Quantity tank, Quantity all) {
    Tanks tanks = Tanks.holding(all, tank);
    steps.addAll(tanks.steps());
    Optional<Quantity> perFill = sprayRate.map(per -> ground("area_per_fill", tank, per));
    Load each = fullLoad(tank, perFill);
    Load last = tanks.isLastFull() ? each : lastLoad(each, tanks.last());
    return new Fills(tanks.count(), tanks.full(), each, last, perFill);
  }

  private Load fullLoad(Quantity tank, Optional<Quantity> ground) {
    Optional<Quantity> per = job.rate().or(job::strength);
    return load(
        tank,
        per.map(figure -> inTank("product_per_fill", figure, ground, tank)),
        job.adjuvant().map(figure -> inTank("adjuvant_per_fill", figure, ground, tank)));
  }

  private Quantity inTank(String what, Quantity per, Optional<Quantity> ground, Quantity tank) {
    if (Strength.isPerArea(per)) {
      Quantity covered = Given.needed("spray_rate", ground);
      return step(Working.of(what, per).times(covered), per.unit().above().single());
    }
    return step(Working.of(what, per).times(tank), Fitting.product(per.unit(), tank.unit()));
  }

  private Load lastLoad(Load each, Quantity volume) {
    return load(
        volume,
        each.product().map(full -> inPart("product_last_fill", full, volume, each.volume())),
        each.adjuvant().map(full -> inPart("adjuvant_last_fill", full, volume, each.volume())));
  }

  private Quantity inPart(String what, Quantity full, Quantity volume, Quantity tank) {
    return step(Working.of(what, full).times(volume).over(tank), full.unit());
  }

  private Load load(Quantity volume, Optional<Quantity> product, Optional<Quantity> adjuvant) {
    Quantity water = volume.minus(liquid(product, volume)).minus(liquid(adjuvant, volume));
    if (water.signum() < 0) {
      throw new NotDosable("spray_rate", NotDosable.Why.DOES_NOT_FIT);
    }
    return new Load(volume, product, adjuvant, water);
  }

  private static Quantity liquid(Optional<Quantity> amount, Quantity volume) {
    return amount
        .filter(there -> there.dimension().equals(Dimension.VOLUME))
        .orElse(Quantity.of(0, volume.unit()));
  }

  private Quantity step(Working working, Unit unit) {
    Step step = working.as(unit);
    steps.add(step);
    return step.result();
  }
}
