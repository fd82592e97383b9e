package plainsward.reply;

import java.time.LocalDate;

/**
 * A day that matters after spraying.
 *
 * @param day the day
 * @param mark the letter that stands for it in a drawing
 * @param what what is on that day, a few words
 */
public record Milestone(LocalDate day, String mark, String what) {}
