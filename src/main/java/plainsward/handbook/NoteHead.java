package plainsward.handbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** The head of a note's file, read field by field; a fault names the field and what it must be. */
final class NoteHead {
  private static final Pattern ID = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

  private final String file;
  private final Map<?, ?> fields;

  NoteHead(String file, Map<?, ?> fields) {
    this.file = file;
    this.fields = fields;
  }

  String id() throws NoteFault {
    String id = text("id");
    if (!ID.matcher(id).matches()) {
      throw fault("id", "lower-case words with hyphens between were expected");
    }
    if (!file.equals(id + ".md")) {
      throw fault("id", "'" + id + "' was given, the file's name says otherwise");
    }
    return id;
  }

  String text(String field) throws NoteFault {
    Object value = fields.get(field);
    if (value == null) {
      throw fault(field, "it is missing, a text was expected");
    }
    return oneText(field, value);
  }

  List<String> list(String field) throws NoteFault {
    List<String> values = optionalList(field);
    if (values.isEmpty()) {
      throw fault(field, "it is missing, one text or a list of texts was expected");
    }
    return values;
  }

  List<String> optionalList(String field) throws NoteFault {
    Object value = fields.get(field);
    if (value == null) {
      return List.of();
    }
    if (!(value instanceof List<?> items)) {
      return List.of(oneText(field, value));
    }
    List<String> texts = new ArrayList<>();
    for (Object item : items) {
      texts.add(oneText(field, item));
    }
    return texts;
  }

  private String oneText(String field, Object value) throws NoteFault {
    if (value == null || value instanceof Map || value instanceof List) {
      throw fault(field, "a text was expected, put quotes round it if it holds ': ' or ' #'");
    }
    String text = String.valueOf(value).strip();
    if (text.isEmpty()) {
      throw fault(field, "it is empty, a text was expected");
    }
    return text;
  }

  private NoteFault fault(String field, String what) {
    return new NoteFault(file, "field '" + field + "': " + what);
  }
}
