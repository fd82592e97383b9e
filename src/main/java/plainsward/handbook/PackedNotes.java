package plainsward.handbook;

/**
 * What the build made of the notes, as text, a letter for each byte. The build writes this class
 * anew with that in it; as it stands here it has nothing.
 */
final class PackedNotes {
  private PackedNotes() {}

  /** As {@link plainsward.trade.Pack.Pieces} says. */
  static String[] pieces(int number) {
    return new String[0];
  }
}
