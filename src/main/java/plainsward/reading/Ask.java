package plainsward.reading;

/**
 * Something that is asked.
 *
 * @param topic the contract's topic
 * @param want the figure that is wanted most, or empty
 * @param weight how loudly the words ask it
 * @param from its first token
 * @param clause the part of the text in which it is asked
 */
public record Ask(String topic, String want, int weight, int from, String clause) {}
