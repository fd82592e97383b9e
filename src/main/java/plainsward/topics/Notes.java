package plainsward.topics;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.handbook.Handbook;
import plainsward.handbook.Hit;
import plainsward.handbook.Note;
import plainsward.handbook.Search;
import plainsward.reply.NoteLink;
import plainsward.safety.Cautions;

/** The handbook as the topics use it: the note that answers a question best. */
public final class Notes {
  /** Below this a note is not about the question. */
  static final double SURE = 0.55;

  private static final int FIRST = 3;

  private Notes() {}

  /** The best note for these words, among those of the topics first; nothing where none is near. */
  public static Optional<Note> best(String words, Set<String> topics, double least) {
    Search search = Search.first(FIRST);
    List<Hit> hits =
        Handbook.shipped().search(words, topics.isEmpty() ? search : search.preferring(topics));
    return hits.stream().findFirst().filter(hit -> hit.confidence() >= least).map(Hit::note);
  }

  /** The best note of these topics, however far it is. */
  public static Optional<Note> of(String words, Set<String> topics) {
    List<Hit> hits =
        Handbook.shipped().search(words, Search.first(FIRST).requiring(new HashSet<>(topics)));
    return hits.stream().findFirst().map(Hit::note);
  }

  /** Puts a note into a reply: its body, its cautions, and the link. */
  static void tell(Note note, Sheet sheet) {
    sheet.say(note.body());
    cite(note, sheet);
  }

  /** Puts a note's cautions and the link into a reply. */
  static void cite(Note note, Sheet sheet) {
    note.topics().forEach(sheet::alsoTopic);
    note.cautions().stream().filter(Cautions::has).forEach(sheet::caution);
    sheet.note(new NoteLink(note.id(), note.title()));
  }
}
