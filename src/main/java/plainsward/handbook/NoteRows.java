package plainsward.handbook;

import java.util.LinkedHashMap;
import java.util.Map;
import plainsward.trade.Row;

/** Turns a note into a row and back. */
final class NoteRows {
  private NoteRows() {}

  static Row row(Note note, int number) {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("id", note.id());
    values.put("title", note.title());
    values.put("topics", new Row.Texts(note.topics()));
    values.put("about", new Row.Texts(note.about()));
    values.put("answer", note.answer());
    values.put("cautions", new Row.Texts(note.cautions()));
    values.put("basis", new Row.Texts(note.basis()));
    values.put("questions", new Row.Texts(note.questions()));
    values.put("body", note.body());
    return new Row("notes", number, values);
  }

  static Note note(Row row) {
    return new Note(
        row.text("id"),
        row.text("title"),
        row.texts("topics"),
        row.texts("about"),
        row.text("answer"),
        row.texts("cautions"),
        row.texts("basis"),
        row.texts("questions"),
        row.text("body"));
  }
}
