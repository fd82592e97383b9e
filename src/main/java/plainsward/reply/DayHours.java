package plainsward.reply;

/**
 * Some hours of a day and whether they suit spraying.
 *
 * @param from the hour at which they begin, 0 to 23
 * @param to the hour at which they end, above {@code from}, at most 24
 * @param verdict {@code go}, {@code wait} or {@code no}
 * @param why the reason, a few words
 */
public record DayHours(int from, int to, String verdict, String why) {}
