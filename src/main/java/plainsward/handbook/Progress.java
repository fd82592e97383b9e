package plainsward.handbook;

/** Hears how far the reading of a notes folder has come. */
@FunctionalInterface
public interface Progress {
  /** Hears nothing. */
  Progress SILENT = (done, total) -> {};

  /** Called after each file, with how many of how many are done. */
  void at(int done, int total);
}
