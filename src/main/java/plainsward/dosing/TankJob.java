package plainsward.dosing;

import java.util.Optional;
import plainsward.units.Dimension;
import plainsward.units.Quantity;

/**
 * What is known of a job for a sprayer. Build it up from {@link #start()}; every part is checked as
 * it is given.
 *
 * @param area the ground to treat, above 0
 * @param spray the finished spray in all, above 0
 * @param rate the label's product per area, by volume or weight, above 0
 * @param strength the label's product per volume of spray: by volume (a part of at most the whole)
 *     or by weight, above 0
 * @param sprayRate finished spray per area, above 0
 * @param tank what one full load holds, above 0
 * @param adjuvant a wetting agent's strength per volume of spray, or its rate per area, above 0
 */
public record TankJob(
    Optional<Quantity> area,
    Optional<Quantity> spray,
    Optional<Quantity> rate,
    Optional<Quantity> strength,
    Optional<Quantity> sprayRate,
    Optional<Quantity> tank,
    Optional<Quantity> adjuvant) {

  /**
   * Checks every part.
   *
   * @throws NotDosable naming the part that is not above 0 or measures something else
   */
  public TankJob {
    area.ifPresent(given -> Given.above("area", given, Dimension.AREA));
    spray.ifPresent(given -> Given.above("spray_volume", given, Dimension.VOLUME));
    rate.ifPresent(
        given ->
            Given.above("label_rate", given, Dimension.VOLUME_PER_AREA, Dimension.MASS_PER_AREA));
    strength.ifPresent(given -> Strength.checked("strength", given));
    sprayRate.ifPresent(given -> Given.above("spray_rate", given, Dimension.VOLUME_PER_AREA));
    tank.ifPresent(given -> Given.above("tank", given, Dimension.VOLUME));
    adjuvant.ifPresent(TankJob::checkAdjuvant);
  }

  private static void checkAdjuvant(Quantity given) {
    Dimension kind = given.dimension();
    if (kind.equals(Dimension.VOLUME_PER_AREA) || kind.equals(Dimension.MASS_PER_AREA)) {
      Given.above("adjuvant_rate", given, kind);
    } else {
      Strength.checked("adjuvant_rate", given);
    }
  }

  /** A job of which nothing is known yet. */
  public static TankJob start() {
    Optional<Quantity> none = Optional.empty();
    return new TankJob(none, none, none, none, none, none, none);
  }

  /** The job with this area. */
  public TankJob onArea(Quantity given) {
    return new TankJob(Optional.of(given), spray, rate, strength, sprayRate, tank, adjuvant);
  }

  /** The job with this much finished spray in all. */
  public TankJob withSpray(Quantity given) {
    return new TankJob(area, Optional.of(given), rate, strength, sprayRate, tank, adjuvant);
  }

  /** The job with this label rate per area. */
  public TankJob atRate(Quantity given) {
    return new TankJob(area, spray, Optional.of(given), strength, sprayRate, tank, adjuvant);
  }

  /** The job with this strength per volume. */
  public TankJob atStrength(Quantity given) {
    return new TankJob(area, spray, rate, Optional.of(given), sprayRate, tank, adjuvant);
  }

  /** The job with this much spray per area. */
  public TankJob atSprayRate(Quantity given) {
    return new TankJob(area, spray, rate, strength, Optional.of(given), tank, adjuvant);
  }

  /** The job with this tank. */
  public TankJob fromTank(Quantity given) {
    return new TankJob(area, spray, rate, strength, sprayRate, Optional.of(given), adjuvant);
  }

  /** The job with this wetting agent. */
  public TankJob withAdjuvant(Quantity given) {
    return new TankJob(area, spray, rate, strength, sprayRate, tank, Optional.of(given));
  }
}
