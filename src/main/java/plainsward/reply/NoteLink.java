package plainsward.reply;

/**
 * A handbook note that the reply rests on.
 *
 * @param id the note's id
 * @param title its title
 */
public record NoteLink(String id, String title) {}
