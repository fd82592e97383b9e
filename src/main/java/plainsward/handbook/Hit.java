package plainsward.handbook;

/**
 * A note that was found.
 *
 * @param note the note
 * @param score how well it fits, for comparing hits of one search with each other only
 * @param confidence how likely the note is about what was asked, 0 to 1; under one half, say so
 *     rather than show the note as the answer
 */
public record Hit(Note note, float score, double confidence) {}
