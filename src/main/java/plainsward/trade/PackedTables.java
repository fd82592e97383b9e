package plainsward.trade;

/**
 * The packed tables as text, a letter for each byte. The build writes this class anew with the
 * tables in it, for a class comes out of a class-data archive with no file opened; as it stands
 * here it has none.
 */
final class PackedTables {
  private PackedTables() {}

  /** As {@link Pack.Pieces} says. */
  static String[] pieces(int number) {
    return new String[0];
  }
}
