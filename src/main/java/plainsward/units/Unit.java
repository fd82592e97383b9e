package plainsward.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A unit by its UCUM code: what it measures and how many base units it is. Currencies go by their
 * ISO 4217 code. Only temperatures have an offset.
 *
 * @param code the UCUM code, such as {@code [foz_us]/(1000.[sft_i])}
 * @param dimension what it measures
 * @param factor how many base units one of it is, above 0
 * @param offset what is added after the factor to reach the base unit (degrees Fahrenheit only)
 */
public record Unit(String code, Dimension dimension, Ratio factor, Ratio offset) {
  private static final Map<String, Unit> KNOWN = new ConcurrentHashMap<>();
  private static final int MOST_KEPT = 4096;

  /**
   * The unit of a UCUM code made of known units, whole multipliers ({@code 1000.[sft_i]}) and
   * slashes.
   *
   * @throws IllegalArgumentException where a part of the code is not known, naming it
   */
  public static Unit of(String code) {
    Unit known = KNOWN.get(code);
    if (known != null) {
      return known;
    }
    Unit made = parse(code);
    if (KNOWN.size() < MOST_KEPT) {
      KNOWN.put(code, made);
    }
    return made;
  }

  /** Whether {@link #of} would find a unit of this code. */
  public static boolean isKnown(String code) {
    try {
      of(code);
      return true;
    } catch (IllegalArgumentException notKnown) {
      return false;
    }
  }

  private static Unit parse(String code) {
    List<String> parts = split(code);
    Unit first = term(parts.get(0));
    Ratio factor = first.factor;
    Dimension dimension = first.dimension;
    for (String part : parts.subList(1, parts.size())) {
      Unit below = term(part);
      factor = factor.dividedBy(below.factor);
      dimension = dimension.per(below.dimension);
    }
    return new Unit(code, dimension, factor, parts.size() == 1 ? first.offset : Ratio.ZERO);
  }

  private static List<String> split(String code) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < code.length(); i++) {
      char c = code.charAt(i);
      if (c == '(') {
        depth++;
      } else if (c == ')') {
        depth--;
      } else if (c == '/' && depth == 0) {
        parts.add(code.substring(from, i));
        from = i + 1;
      }
    }
    parts.add(code.substring(from));
    return parts;
  }

  private static Unit term(String text) {
    Unit atom = Atoms.find(text);
    if (atom != null) {
      return atom;
    }
    String bare =
        text.startsWith("(") && text.endsWith(")") ? text.substring(1, text.length() - 1) : text;
    int dot = bare.indexOf('.');
    Unit of = dot > 0 ? Atoms.find(bare.substring(dot + 1)) : Atoms.find(bare);
    if (of == null || (dot > 0 && !bare.substring(0, dot).chars().allMatch(Character::isDigit))) {
      throw new IllegalArgumentException("unit not known: " + text);
    }
    Ratio many = dot > 0 ? Ratio.of(bare.substring(0, dot)) : Ratio.ONE;
    return new Unit(text, of.dimension, of.factor.times(many), Ratio.ZERO);
  }

  /** This unit per another: {@code [foz_us]} per {@code 1000.[sft_i]}. */
  public Unit per(Unit below) {
    String code = below.code;
    boolean bare = code.indexOf('/') < 0 && (code.indexOf('.') < 0 || code.startsWith("("));
    return of(this.code + "/" + (bare ? code : "(" + code + ")"));
  }

  /** So many of this unit as a unit of its own: {@code 1000.[sft_i]}. */
  public Unit times(long many) {
    return many == 1 ? this : of(many + "." + code);
  }

  /** What stands above the first slash: ounces, of ounces per thousand; without a slash this. */
  public Unit above() {
    List<String> parts = split(code);
    return parts.size() == 1 ? this : of(parts.get(0));
  }

  /** What it is per, where it is per just one thing: a thousand square feet, a gallon. */
  public Optional<Unit> below() {
    List<String> parts = split(code);
    return parts.size() == 2 ? Optional.of(of(unbracketed(parts.get(1)))) : Optional.empty();
  }

  /** How many of {@link #single} it is: 1000 for {@code 1000.[sft_i]}, else 1. */
  public long many() {
    int dot = code.indexOf('.');
    return dot > 0 && code.indexOf('/') < 0 ? Long.parseLong(code.substring(0, dot)) : 1;
  }

  /** The unit without its multiplier: {@code [sft_i]} for {@code 1000.[sft_i]}. */
  public Unit single() {
    return many() == 1 ? this : of(code.substring(code.indexOf('.') + 1));
  }

  private static String unbracketed(String part) {
    return part.startsWith("(") ? part.substring(1, part.length() - 1) : part;
  }
}
