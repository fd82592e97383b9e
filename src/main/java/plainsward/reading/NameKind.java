package plainsward.reading;

/** What a name that was found in the text names. */
public enum NameKind {
  /** A weed of the weeds table. */
  WEED,
  /** A lawn grass of the grasses table. */
  GRASS,
  /** An active ingredient. */
  ACTIVE,
  /** A kind of product, such as a three-way. */
  PRODUCT,
  /** A wetting agent or other adjuvant. */
  ADJUVANT
}
