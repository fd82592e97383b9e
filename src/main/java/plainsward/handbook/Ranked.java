package plainsward.handbook;

/**
 * A note with what speaks for it.
 *
 * @param document its document
 * @param rank what it is sorted by
 * @param fit how well the words fit it, topics apart
 * @param covered the share, 0 to 1, of what is sought that it names, rare things counting more
 */
record Ranked(int document, float rank, float fit, double covered) {}
