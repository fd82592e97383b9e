package plainsward.units;

/** The units that the trade uses most, by name. */
public final class Units {
  /** US fluid ounce. */
  public static final Unit FL_OZ = Unit.of("[foz_us]");

  /** US gallon. */
  public static final Unit GALLON = Unit.of("[gal_us]");

  /** US quart. */
  public static final Unit QUART = Unit.of("[qt_us]");

  /** US pint. */
  public static final Unit PINT = Unit.of("[pt_us]");

  /** US cup. */
  public static final Unit CUP = Unit.of("[cup_us]");

  /** US tablespoon. */
  public static final Unit TABLESPOON = Unit.of("[tbs_us]");

  /** US teaspoon. */
  public static final Unit TEASPOON = Unit.of("[tsp_us]");

  /** Imperial gallon. */
  public static final Unit IMPERIAL_GALLON = Unit.of("[gal_br]");

  /** Imperial fluid ounce. */
  public static final Unit IMPERIAL_FL_OZ = Unit.of("[foz_br]");

  /** Litre. */
  public static final Unit LITRE = Unit.of("L");

  /** Millilitre. */
  public static final Unit MILLILITRE = Unit.of("mL");

  /** Ounce of weight. */
  public static final Unit OUNCE = Unit.of("[oz_av]");

  /** Pound. */
  public static final Unit POUND = Unit.of("[lb_av]");

  /** Gram. */
  public static final Unit GRAM = Unit.of("g");

  /** Kilogram. */
  public static final Unit KILOGRAM = Unit.of("kg");

  /** Square foot. */
  public static final Unit SQUARE_FOOT = Unit.of("[sft_i]");

  /** Square yard. */
  public static final Unit SQUARE_YARD = Unit.of("[syd_i]");

  /** Acre of 43,560 square feet. */
  public static final Unit ACRE = Unit.of("[acr_us]");

  /** Square metre. */
  public static final Unit SQUARE_METRE = Unit.of("m2");

  /** Hectare. */
  public static final Unit HECTARE = Unit.of("har");

  /** Foot. */
  public static final Unit FOOT = Unit.of("[ft_i]");

  /** Inch. */
  public static final Unit INCH = Unit.of("[in_i]");

  /** Metre. */
  public static final Unit METRE = Unit.of("m");

  /** Second. */
  public static final Unit SECOND = Unit.of("s");

  /** Minute. */
  public static final Unit MINUTE = Unit.of("min");

  /** Hour. */
  public static final Unit HOUR = Unit.of("h");

  /** Day. */
  public static final Unit DAY = Unit.of("d");

  /** Mile per hour. */
  public static final Unit MILE_PER_HOUR = Unit.of("[mi_i]/h");

  /** Pound-force per square inch. */
  public static final Unit PSI = Unit.of("[psi]");

  /** Degree Fahrenheit. */
  public static final Unit FAHRENHEIT = Unit.of("[degF]");

  /** Degree Celsius. */
  public static final Unit CELSIUS = Unit.of("Cel");

  /** Per cent. */
  public static final Unit PERCENT = Unit.of("%");

  /** A plain number. */
  public static final Unit ONE = Unit.of("1");

  /** US dollar. */
  public static final Unit DOLLAR = Unit.of("USD");

  /** A thousand square feet, which the trade calls "M". */
  public static final Unit THOUSAND_SQUARE_FEET = Unit.of("1000.[sft_i]");

  /** A hundred square metres. */
  public static final Unit HUNDRED_SQUARE_METRES = Unit.of("100.m2");

  /** US fluid ounces per thousand square feet. */
  public static final Unit FL_OZ_PER_THOUSAND = Unit.of("[foz_us]/(1000.[sft_i])");

  /** US gallons per thousand square feet. */
  public static final Unit GALLON_PER_THOUSAND = Unit.of("[gal_us]/(1000.[sft_i])");

  /** Pounds per thousand square feet. */
  public static final Unit POUND_PER_THOUSAND = Unit.of("[lb_av]/(1000.[sft_i])");

  /** US gallons per acre. */
  public static final Unit GALLON_PER_ACRE = Unit.of("[gal_us]/[acr_us]");

  /** Millilitres per hundred square metres. */
  public static final Unit ML_PER_HUNDRED = Unit.of("mL/(100.m2)");

  /** Litres per hundred square metres. */
  public static final Unit LITRE_PER_HUNDRED = Unit.of("L/(100.m2)");

  /** Litres per hectare. */
  public static final Unit LITRE_PER_HECTARE = Unit.of("L/har");

  /** US fluid ounces per gallon. */
  public static final Unit FL_OZ_PER_GALLON = Unit.of("[foz_us]/[gal_us]");

  private Units() {}
}
