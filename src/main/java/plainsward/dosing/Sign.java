package plainsward.dosing;

/** What is done with a term of a step. */
public enum Sign {
  /** It stands first. */
  START(""),
  /** Added. */
  PLUS("+"),
  /** Taken off. */
  MINUS("−"),
  /** Multiplied by. */
  TIMES("×"),
  /** Divided by. */
  OVER("÷");

  private final String symbol;

  Sign(String symbol) {
    this.symbol = symbol;
  }

  /** The sign as it is written; empty for the first term. */
  public String symbol() {
    return symbol;
  }
}
