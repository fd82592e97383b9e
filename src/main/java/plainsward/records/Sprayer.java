package plainsward.records;

import java.time.LocalDate;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * A sprayer with the user's own name for it.
 *
 * @param name the user's own name for it
 * @param tank what its tank holds
 * @param sprayRate what it lays down, volume per area
 * @param calibrated the day on which the spray rate was measured
 * @param held what was in it last, as far as somebody told
 */
public record Sprayer(
    String name,
    Optional<Quantity> tank,
    Optional<Quantity> sprayRate,
    Optional<LocalDate> calibrated,
    Optional<Held> held) {

  /** An unfit name is refused. */
  public Sprayer {
    name = Names.checked("sprayer", name);
  }

  /**
   * What a sprayer held.
   *
   * @param product the label's name or any words for it
   * @param day when
   */
  public record Held(String product, Optional<LocalDate> day) {

    /** An unfit name is refused. */
    public Held {
      product = Names.checked("product", product);
    }
  }

  /** A sprayer of which only the name is known. */
  public static Sprayer named(String name) {
    return new Sprayer(
        name, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  }

  /** The sprayer with its tank. */
  public Sprayer withTank(Quantity volume) {
    return new Sprayer(name, Optional.of(volume), sprayRate, calibrated, held);
  }

  /** The sprayer with what it lays down and the day on which that was measured. */
  public Sprayer withSprayRate(Quantity volumePerArea, LocalDate measured) {
    return new Sprayer(name, tank, Optional.of(volumePerArea), Optional.of(measured), held);
  }

  /** The sprayer with what was in it last. */
  public Sprayer withHeld(String product, LocalDate day) {
    return new Sprayer(
        name, tank, sprayRate, calibrated, Optional.of(new Held(product, Optional.of(day))));
  }

  /** The sprayer cleaned: nothing was in it last. */
  public Sprayer withoutHeld() {
    return new Sprayer(name, tank, sprayRate, calibrated, Optional.empty());
  }
}
