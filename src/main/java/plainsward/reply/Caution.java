package plainsward.reply;

/**
 * A caution that the reply carries.
 *
 * @param id one of the contract's caution ids
 * @param text one or two plain sentences
 */
public record Caution(String id, String text) {}
