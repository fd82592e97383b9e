package plainsward.topics;

import java.util.Optional;
import java.util.Set;
import plainsward.handbook.Asked;
import plainsward.handbook.Hit;
import plainsward.handbook.Note;
import plainsward.handbook.Search;
import plainsward.reply.NoteLink;
import plainsward.safety.Cautions;

/** The handbook as the topics use it: the note that answers a question best. */
public final class Notes {
  /** How sure a note must be to answer whatever the question's kind (0 to 1). */
  private static final double PLAIN = 0.75;

  private Notes() {}

  /** The best note for these words, among those of the topics first; nothing where none is near. */
  public static Optional<Note> best(
      Request request, String words, Set<String> topics, double least) {
    return best(request.asked(words), topics, least);
  }

  /** The best note of all, where it is one of the user's own. */
  static Optional<Note> own(Request request, double least) {
    return best(request.asked(request.turn().text()), Set.of(), least)
        .filter(note -> request.handbook().isOwn(note));
  }

  private static Optional<Note> best(Asked asked, Set<String> topics, double least) {
    Search search = Search.first(1);
    return asked.search(topics.isEmpty() ? search : search.preferring(topics)).stream()
        .findFirst()
        .filter(hit -> hit.confidence() >= least)
        .map(Hit::note);
  }

  /**
   * The note that is plainly meant; else the best note of a topic, however far it is, unless one of
   * another kind is as sure as {@code least}.
   */
  static Optional<Note> of(Request request, String words, String topic, double least) {
    Asked asked = request.asked(words);
    return best(asked, Set.of(), PLAIN)
        .or(() -> best(asked, Set.of(topic), least))
        .or(
            () ->
                asked.search(Search.first(1).requiring(Set.of(topic))).stream()
                    .findFirst()
                    .map(Hit::note));
  }

  /** Puts a note into a reply: its body, its cautions, and the link. */
  static void tell(Note note, Sheet sheet) {
    sheet.say(note.body());
    cite(note, sheet);
  }

  /** Puts a note's cautions and the link into a reply. */
  static void cite(Note note, Sheet sheet) {
    for (String topic : note.topics()) {
      sheet.alsoTopic(topic);
    }
    for (String caution : note.cautions()) {
      if (Cautions.has(caution)) {
        sheet.caution(caution);
      }
    }
    sheet.note(new NoteLink(note.id(), note.title()));
  }
}
