package plainsward.dosing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import plainsward.units.Base;
import plainsward.units.Dimension;
import plainsward.units.DimensionMismatch;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * A step of a sum in the making: terms are put on one by one, and {@link #as} reckons them from
 * left to right. Ground is length times length here, so that width × length makes an area and flow
 * ÷ speed ÷ width a spray rate. To keep a line readable as it is reckoned, nothing is multiplied or
 * divided after an addend.
 */
public final class Working {
  private final String what;
  private final List<Term> terms = new ArrayList<>();
  private Ratio base;
  private Dimension dimension;
  private boolean added;

  private Working(String what, Quantity first) {
    this.what = what;
    this.base = first.inBase();
    this.dimension = first.dimension();
    terms.add(new Term(Sign.START, first));
  }

  /** Starts a step with its first term. */
  public static Working of(String what, Quantity first) {
    return new Working(what, first);
  }

  /** Multiplies. */
  public Working times(Quantity factor) {
    return product(Sign.TIMES, factor, base.times(factor.inBase()));
  }

  /** Multiplies by a plain number. */
  public Working times(long factor) {
    return times(Quantity.of(factor, Units.ONE));
  }

  /** Divides by something that is not 0. */
  public Working over(Quantity divisor) {
    return product(Sign.OVER, divisor, base.dividedBy(divisor.inBase()));
  }

  /** Divides by a plain number other than 0. */
  public Working over(long divisor) {
    return over(Quantity.of(divisor, Units.ONE));
  }

  /** Adds something of the same kind. */
  public Working plus(Quantity addend) {
    return sum(Sign.PLUS, addend, base.plus(addend.inBase()));
  }

  /** Takes off something of the same kind. */
  public Working minus(Quantity part) {
    return sum(Sign.MINUS, part, base.minus(part.inBase()));
  }

  /** The finished step, its outcome in this unit. */
  public Step as(Unit unit) {
    Quantity exact = in(unit);
    return new Step(what, terms, false, exact, exact);
  }

  /** The finished step, its outcome raised to the next whole number of the unit. */
  public Step roundedUp(Unit unit) {
    Quantity exact = in(unit);
    Ratio whole = Ratio.of(new BigDecimal(exact.value().ceiling()));
    return new Step(what, terms, false, exact, new Quantity(whole, unit));
  }

  /** The finished step, its outcome lowered to a whole number of the unit. */
  public Step roundedDown(Unit unit) {
    Quantity exact = in(unit);
    Ratio whole = Ratio.of(new BigDecimal(exact.value().floor()));
    return new Step(what, terms, false, exact, new Quantity(whole, unit));
  }

  /** The finished step: the square root of the terms; the terms must not come to less than 0. */
  public Step root(Unit unit) {
    check(ground(dimension), ground(unit.dimension().times(unit.dimension())));
    Ratio inside = base.dividedBy(unit.factor().times(unit.factor()));
    Quantity exact = new Quantity(Ratio.ofDouble(Math.sqrt(inside.toDouble())), unit);
    return new Step(what, terms, true, exact, exact);
  }

  private Quantity in(Unit unit) {
    check(ground(dimension), ground(unit.dimension()));
    return new Quantity(base.minus(unit.offset()).dividedBy(unit.factor()), unit);
  }

  private Working product(Sign sign, Quantity term, Ratio outcome) {
    if (added) {
      throw new IllegalStateException("a factor after an addend makes the line read wrongly");
    }
    base = outcome;
    dimension =
        sign == Sign.TIMES ? dimension.times(term.dimension()) : dimension.per(term.dimension());
    terms.add(new Term(sign, term));
    return this;
  }

  private Working sum(Sign sign, Quantity term, Ratio outcome) {
    check(ground(term.dimension()), ground(dimension));
    base = outcome;
    added = true;
    terms.add(new Term(sign, term));
    return this;
  }

  private static Dimension ground(Dimension dimension) {
    Map<Base, Integer> powers = new EnumMap<>(Base.class);
    powers.putAll(dimension.powers());
    Integer areas = powers.remove(Base.AREA);
    if (areas != null) {
      powers.merge(Base.LENGTH, 2 * areas, Integer::sum);
    }
    return Dimension.of(powers);
  }

  private static void check(Dimension made, Dimension wanted) {
    if (!made.equals(wanted)) {
      throw new DimensionMismatch(made, wanted);
    }
  }
}
