package plainsward.handbook;

/**
 * A note with what speaks for it.
 *
 * @param document its document
 * @param score its rank's score
 * @param covered the share, 0 to 1, of what is sought that the whole note names, by weight
 * @param asked the same for the best of its sample questions
 */
record Ranked(int document, float score, double covered, double asked) {}
