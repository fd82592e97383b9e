package plainsward.units;

/** Quantities as tests write them. */
public final class Amounts {
  private Amounts() {}

  /** A quantity such as {@code 1.5 [foz_us]/(1000.[sft_i])}: a number, a space, a UCUM code. */
  public static Quantity q(String written) {
    int space = written.indexOf(' ');
    return Quantity.of(r(written.substring(0, space)), written.substring(space + 1));
  }

  /** A number such as {@code 43.56} or {@code 1/3}. */
  public static Ratio r(String written) {
    int slash = written.indexOf('/');
    return slash < 0
        ? Ratio.of(written)
        : Ratio.of(written.substring(0, slash)).dividedBy(Ratio.of(written.substring(slash + 1)));
  }
}
