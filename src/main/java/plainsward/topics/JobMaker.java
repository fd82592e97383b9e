package plainsward.topics;

import java.util.Optional;
import plainsward.dosing.TankJob;
import plainsward.units.Quantity;

/** Puts what is known of a job together for the sum. */
final class JobMaker {
  private final Request request;
  private final Sheet sheet;
  private final Optional<LabelRate> rate;
  private final Optional<Quantity> ground;
  private final Optional<Quantity> volume;

  JobMaker(
      Request request,
      Sheet sheet,
      Optional<LabelRate> rate,
      Optional<Quantity> ground,
      Optional<Quantity> volume) {
    this.request = request;
    this.sheet = sheet;
    this.rate = rate;
    this.ground = ground;
    this.volume = volume;
  }

  TankJob job() {
    TankJob job = TankJob.start();
    boolean perArea = rate.map(LabelRate::isPerArea).orElse(false);
    if (rate.isPresent()) {
      job = perArea ? job.atRate(rate.get().low()) : job.atStrength(rate.get().low());
    }
    boolean spraySaid = volume.isPresent();
    boolean onGround = ground.isPresent() && !(spraySaid && !perArea && rate.isPresent());
    if (onGround) {
      job = job.onArea(ground.get());
    }
    if (spraySaid && !(onGround && request.has("spray_rate"))) {
      job = job.withSpray(volume.get());
    }
    if (request.has("tank") && !(spraySaid && isSmallerThanTank())) {
      job = job.fromTank(request.amount("tank").orElseThrow());
    }
    if (request.has("adjuvant_rate")) {
      job = job.withAdjuvant(request.amount("adjuvant_rate").orElseThrow());
    }
    return needsSprayRate(job, perArea) ? job.atSprayRate(Sprayer.rate(request, sheet)) : job;
  }

  /** "a 4 gallon backpack, only filled to 2": the fill counts, not the tank. */
  private boolean isSmallerThanTank() {
    return volume.get().compareTo(request.amount("tank").orElseThrow()) <= 0;
  }

  private boolean needsSprayRate(TankJob job, boolean perArea) {
    if (request.has("spray_rate") && !(job.area().isPresent() && job.spray().isPresent())) {
      return true;
    }
    if (job.area().isPresent() && job.spray().isPresent()) {
      return false;
    }
    boolean split = request.has("tank") || request.has("adjuvant_rate") || asksSpray();
    boolean strengthOnGround = job.area().isPresent() && !perArea && rate.isPresent();
    boolean rateInTank = perArea && job.area().isEmpty();
    return strengthOnGround || rateInTank || job.area().isPresent() && split;
  }

  private boolean asksSpray() {
    return request.wants("spray_total")
        || request.wants("fills")
        || request.wants("water_per_fill");
  }
}
