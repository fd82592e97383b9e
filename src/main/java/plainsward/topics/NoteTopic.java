package plainsward.topics;

import java.util.Optional;
import java.util.Set;
import plainsward.handbook.Note;
import plainsward.reply.Reply;

/** A topic that the handbook answers: the nearest note of its kind, told as it stands. */
public final class NoteTopic implements Topic {
  private final String code;

  /** The topic of a code whose notes are told. */
  public NoteTopic(String code) {
    this.code = code;
  }

  @Override
  public String code() {
    return code;
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, code);
    Optional<Note> note = Notes.of(request.turn().text(), Set.of(code));
    if (note.isEmpty()) {
      return sheet.ask("Tell me a little more: what did you see, use or want to do?", "product");
    }
    Notes.tell(note.get(), sheet);
    return sheet.answer(note.get().answer());
  }
}
