package plainsward.units;

import java.util.EnumMap;
import java.util.Map;

/**
 * What a quantity measures: powers of the base kinds, such as volume 1, area -1 for a spray rate.
 *
 * @param powers each base kind's power, without zeros
 */
public record Dimension(Map<Base, Integer> powers) {

  /** A plain number. */
  public static final Dimension NONE = new Dimension(Map.of());

  /** A volume. */
  public static final Dimension VOLUME = of(Base.VOLUME);

  /** A mass. */
  public static final Dimension MASS = of(Base.MASS);

  /** An area. */
  public static final Dimension AREA = of(Base.AREA);

  /** A length. */
  public static final Dimension LENGTH = of(Base.LENGTH);

  /** A time. */
  public static final Dimension TIME = of(Base.TIME);

  /** A pressure. */
  public static final Dimension PRESSURE = of(Base.PRESSURE);

  /** A temperature. */
  public static final Dimension TEMPERATURE = of(Base.TEMPERATURE);

  /** An amount of money. */
  public static final Dimension MONEY = of(Base.MONEY);

  /** Length per time. */
  public static final Dimension SPEED = LENGTH.per(TIME);

  /** Volume per area, such as a liquid's label rate or a spray rate. */
  public static final Dimension VOLUME_PER_AREA = VOLUME.per(AREA);

  /** Mass per area, such as a granule's rate. */
  public static final Dimension MASS_PER_AREA = MASS.per(AREA);

  /** Mass per volume, such as a powder's strength or a liquid's active ingredient. */
  public static final Dimension MASS_PER_VOLUME = MASS.per(VOLUME);

  /** Volume per time, such as a nozzle's flow. */
  public static final Dimension FLOW = VOLUME.per(TIME);

  /** Drops powers of zero. */
  public Dimension {
    EnumMap<Base, Integer> kept = new EnumMap<>(Base.class);
    powers.forEach(
        (base, power) -> {
          if (power != 0) {
            kept.put(base, power);
          }
        });
    powers = Map.copyOf(kept);
  }

  private static Dimension of(Base base) {
    return new Dimension(Map.of(base, 1));
  }

  /** The product's dimension. */
  public Dimension times(Dimension other) {
    return combined(other, 1);
  }

  /** The quotient's dimension. */
  public Dimension per(Dimension other) {
    return combined(other, -1);
  }

  private Dimension combined(Dimension other, int sign) {
    EnumMap<Base, Integer> sum = new EnumMap<>(Base.class);
    sum.putAll(powers);
    other.powers.forEach((base, power) -> sum.merge(base, sign * power, Integer::sum));
    return new Dimension(sum);
  }
}
