package plainsward.handbook;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Reads a note: a YAML head between two lines of three hyphens, then the body. The id must be the
 * file's name, since a reply's links and the notes of a user's own folder are told apart by it.
 */
public final class NoteReader {
  /** The most characters that one note may have; a larger file is no note. */
  public static final int MOST_CHARACTERS = 200_000;

  private static final String FENCE = "---\n";

  private NoteReader() {}

  /** Reads the note in a file. */
  public static Note read(Path file) throws NoteFault {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > MOST_CHARACTERS) {
        throw new NoteFault(name, "the file is larger than a note may be");
      }
      return read(name, Files.readString(file, StandardCharsets.UTF_8));
    } catch (CharacterCodingException fault) {
      throw new NoteFault(name, "the text is not UTF-8");
    } catch (IOException fault) {
      throw new NoteFault(name, "the file can't be read");
    }
  }

  /** Reads the note in a text; {@code name} is its file's name. */
  public static Note read(String name, String text) throws NoteFault {
    String plain = text.replace("\r\n", "\n").replace("\uFEFF", "");
    int end = plain.indexOf("\n" + FENCE, FENCE.length() - 1);
    if (!plain.startsWith(FENCE) || end < 0) {
      throw new NoteFault(name, "a head between two lines of three hyphens was expected first");
    }
    NoteHead head = new NoteHead(name, yaml(name, plain.substring(FENCE.length(), end + 1)));
    String body = plain.substring(end + 1 + FENCE.length()).strip();
    if (body.isEmpty()) {
      throw new NoteFault(name, "a body was expected after the head");
    }
    return note(head, body);
  }

  private static Note note(NoteHead head, String body) throws NoteFault {
    return new Note(
        head.id(),
        head.text("title"),
        head.list("topics"),
        head.optionalList("about"),
        head.text("answer"),
        head.optionalList("cautions"),
        head.list("basis"),
        head.optionalList("questions"),
        body);
  }

  private static Map<?, ?> yaml(String name, String head) throws NoteFault {
    LoadSettings settings =
        LoadSettings.builder().setLabel(name).setMaxAliasesForCollections(0).build();
    try {
      Object read = new Load(settings).loadFromString(head);
      if (read instanceof Map<?, ?> map) {
        return map;
      }
      throw new NoteFault(name, "the head must be lines of 'field: value'");
    } catch (MarkedYamlEngineException fault) {
      throw new NoteFault(name, place(fault) + "the head is not YAML, " + fault.getProblem());
    } catch (YamlEngineException fault) {
      throw new NoteFault(name, "the head is not YAML");
    }
  }

  private static String place(MarkedYamlEngineException fault) {
    List<Integer> lines =
        fault.getProblemMark().map(m -> List.of(m.getLine() + 2)).orElse(List.of());
    return lines.isEmpty() ? "" : "line " + lines.get(0) + ", ";
  }
}
