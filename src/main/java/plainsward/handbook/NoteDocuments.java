package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;
import org.apache.lucene.document.Document;
import org.apache.lucene.document.Field;
import org.apache.lucene.document.FieldType;
import org.apache.lucene.document.NumericDocValuesField;
import org.apache.lucene.document.StoredField;
import org.apache.lucene.document.StringField;
import org.apache.lucene.index.IndexOptions;

/** Turns a note into its block of documents and back. */
final class NoteDocuments {
  private static final FieldType STEMS = stems();
  private static final String TITLE = "title";
  private static final String TOPICS = "topics";
  private static final String ABOUT = "about";
  private static final String ANSWER = "answer";
  private static final String CAUTIONS = "cautions";
  private static final String BASIS = "basis";
  private static final String QUESTIONS = "questions";
  private static final String BODY = "body";

  private NoteDocuments() {}

  private static FieldType stems() {
    FieldType type = new FieldType();
    type.setTokenized(true);
    type.setIndexOptions(IndexOptions.DOCS_AND_FREQS);
    type.freeze();
    return type;
  }

  /** The note's own document and one for each of its sample questions. */
  static List<Document> of(Note note) {
    List<Document> block = new ArrayList<>();
    block.add(noteDocument(note));
    for (String question : note.questions()) {
      Document asked = new Document();
      asked.add(new Field(Fields.ASKED, new CountedStems().add(question, 1), STEMS));
      addTopics(asked, note);
      asked.add(new NumericDocValuesField(Fields.PLACE, block.size()));
      block.add(asked);
    }
    return block;
  }

  private static Document noteDocument(Note note) {
    Document document = new Document();
    document.add(new StringField(Fields.ID, note.id(), Field.Store.YES));
    document.add(new Field(Fields.WORDS, weighted(note), STEMS));
    document.add(new NumericDocValuesField(Fields.PLACE, -note.questions().size()));
    addTopics(document, note);
    store(document, TITLE, List.of(note.title()));
    store(document, TOPICS, note.topics());
    store(document, ABOUT, note.about());
    store(document, ANSWER, List.of(note.answer()));
    store(document, CAUTIONS, note.cautions());
    store(document, BASIS, note.basis());
    store(document, QUESTIONS, note.questions());
    store(document, BODY, List.of(note.body()));
    return document;
  }

  private static CountedStems weighted(Note note) {
    return new CountedStems()
        .add(note.title(), Fields.TITLE_WEIGHT)
        .add(note.about(), Fields.ABOUT_WEIGHT)
        .add(note.answer(), Fields.ANSWER_WEIGHT)
        .add(note.questions(), Fields.QUESTION_WEIGHT)
        .add(note.body(), Fields.BODY_WEIGHT);
  }

  private static void addTopics(Document document, Note note) {
    for (String topic : note.topics()) {
      document.add(new StringField(Fields.TOPIC, topic, Field.Store.NO));
    }
  }

  private static void store(Document document, String field, List<String> values) {
    values.forEach(value -> document.add(new StoredField(field, value)));
  }

  /** The note that a document was made of. */
  static Note note(Document document) {
    return new Note(
        document.get(Fields.ID),
        document.get(TITLE),
        List.of(document.getValues(TOPICS)),
        List.of(document.getValues(ABOUT)),
        document.get(ANSWER),
        List.of(document.getValues(CAUTIONS)),
        List.of(document.getValues(BASIS)),
        List.of(document.getValues(QUESTIONS)),
        document.get(BODY));
  }
}
