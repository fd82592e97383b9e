package plainsward.units;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * What a quantity measures: powers of the base kinds, such as volume 1, area -1 for a spray rate.
 * Equal dimensions are equal objects.
 */
public final class Dimension {
  // A byte for each base: dimensions are compared and joined at every step of every sum.
  private static final int BITS = 8;
  private static final int MOST = Byte.MAX_VALUE;
  private static final Base[] BASES = Base.values();

  /** A plain number. */
  public static final Dimension NONE = new Dimension(0);

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

  private final long packed;

  private Dimension(long packed) {
    this.packed = packed;
  }

  /**
   * The dimension of these powers; a power of 0 says the same as none.
   *
   * @throws IllegalArgumentException where a power is beyond 127
   */
  public static Dimension of(Map<Base, Integer> powers) {
    long packed = 0;
    for (Map.Entry<Base, Integer> each : powers.entrySet()) {
      packed |= packed(each.getKey(), each.getValue());
    }
    return new Dimension(packed);
  }

  private static Dimension of(Base base) {
    return new Dimension(packed(base, 1));
  }

  private static long packed(Base base, int power) {
    if (Math.abs(power) > MOST) {
      throw new IllegalArgumentException("a power beyond " + MOST + ": " + power);
    }
    return (power & 0xFFL) << (BITS * base.ordinal());
  }

  /** The power of a base kind, 0 where it has no part in this. */
  public int power(Base base) {
    return (byte) (packed >>> (BITS * base.ordinal()));
  }

  /** Whether a base kind has a part in this. */
  public boolean has(Base base) {
    return power(base) != 0;
  }

  /** Each base kind's power, without zeros. */
  public Map<Base, Integer> powers() {
    Map<Base, Integer> powers = new EnumMap<>(Base.class);
    for (Base base : BASES) {
      if (has(base)) {
        powers.put(base, power(base));
      }
    }
    return Collections.unmodifiableMap(powers);
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
    long sum = 0;
    for (Base base : BASES) {
      sum |= packed(base, power(base) + sign * other.power(base));
    }
    return new Dimension(sum);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Dimension same && packed == same.packed;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(packed);
  }

  @Override
  public String toString() {
    return "Dimension" + powers();
  }
}
