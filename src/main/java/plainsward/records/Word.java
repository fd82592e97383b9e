package plainsward.records;

/** A member of a closed list with the word that files use for it. */
public interface Word {
  /** The word in files, lower case. */
  String word();
}
