package plainsward.units;

import java.util.Locale;

/** Which measures a person thinks in, where the question itself does not tell. */
public enum UnitSystem {
  /** US gallons, fluid ounces, square feet. */
  US,
  /** Litres, millilitres, square metres. */
  METRIC,
  /** Imperial gallons and fluid ounces. */
  IMPERIAL;

  /** The word that the {@code --units} option takes. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
