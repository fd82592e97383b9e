package plainsward.units;

/** Somebody tried to add, compare or convert things that measure different things. */
public final class DimensionMismatch extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** Names both dimensions. */
  public DimensionMismatch(Dimension made, Dimension wanted) {
    super("these measure different things: " + made.powers() + " and " + wanted.powers());
  }
}
