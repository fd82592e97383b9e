package plainsward.dosing;

import java.util.List;
import java.util.Map;
import plainsward.units.Base;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;

/**
 * One step of a sum's working. It is made by {@link Working}, which reckons the outcome from the
 * very terms that it keeps, so that a line of working can't disagree with the figure.
 *
 * @param what what it works out, by the reply contract's figure name where it is a figure
 * @param terms what is put together, from left to right
 * @param root whether the square root of the whole is taken
 * @param exact the outcome
 * @param result the outcome as used: rounded to a whole number where only whole ones make sense
 */
public record Step(String what, List<Term> terms, boolean root, Quantity exact, Quantity result) {

  /** The number π, to the precision of a double; a line writes it as its letter. */
  static final Quantity PI = Quantity.number(Ratio.ofDouble(Math.PI));

  /** Keeps the terms as they are. */
  public Step {
    terms = List.copyOf(terms);
  }

  /**
   * The step as a line, such as {@code 1.5 fl oz per 1,000 sq ft × 4,000 sq ft = 6 fl oz}; an arrow
   * leads to what it was rounded to. An amount of product is never shown above its exact value.
   */
  public String line() {
    return line(Map.of());
  }

  /**
   * The step as a line that goes on from others: what one of them worked out is written as it was
   * there, so that no amount is rounded in two ways.
   *
   * @param before how amounts were written
   */
  public String line(Map<Quantity, String> before) {
    StringBuilder line = new StringBuilder(root ? "√(" : "");
    for (Term term : terms) {
      if (term.sign() != Sign.START) {
        line.append(' ').append(term.sign().symbol()).append(' ');
      }
      String written = before.get(term.value());
      line.append(written == null ? named(term.value()) : written);
    }
    line.append(root ? ") = " : " = ").append(shown(exact));
    if (!exact.isSameAmount(result)) {
      line.append(" → ").append(shown(result));
    }
    return line.toString();
  }

  /** The same step, its outcome told in another unit. */
  public Step in(Unit unit) {
    return new Step(what, terms, root, exact.in(unit), result.in(unit));
  }

  /** The outcome as it stands in the line, or what it was rounded to. */
  public String outcome() {
    return shown(result);
  }

  private static String named(Quantity term) {
    return term.equals(PI) ? "π" : Shown.of(term);
  }

  private String shown(Quantity outcome) {
    return isDose(outcome.dimension()) ? Shown.notAbove(outcome) : Shown.of(outcome);
  }

  private boolean isDose(Dimension dimension) {
    boolean substance = dimension.has(Base.VOLUME) || dimension.has(Base.MASS);
    return substance && (what.startsWith("product") || what.startsWith("adjuvant"));
  }
}
