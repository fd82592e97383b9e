package plainsward.terminal;

import java.nio.file.Path;
import java.util.Optional;
import org.jline.keymap.KeyMap;
import org.jline.reader.Binding;
import org.jline.reader.Buffer;
import org.jline.reader.History;
import org.jline.reader.LineReader;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.Reference;
import org.jline.terminal.Terminal;
import org.jline.utils.InfoCmp;

/** Sets the line reader up: what the keys do while a turn is typed. */
final class TalkReader {
  /** What stands before the cursor. */
  static final String PROMPT = "ask: ";

  /** How many columns of a row are not for typed words. */
  static final int MARGIN = PROMPT.length() + 1;

  private static final int HISTORY = 1000;
  private static final String TAKE = "take-the-grey-words";

  private TalkReader() {}

  /**
   * A reader of turns.
   *
   * @param history what was typed before
   * @param kept its file; empty where nothing is kept
   * @param marks marks quantities while they are typed; empty where nothing but words is shown
   */
  static LineReader on(
      Terminal terminal,
      Answering talk,
      History history,
      Optional<Path> kept,
      Optional<QuantityHighlighter> marks) {
    LineReaderBuilder builder =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .appName("plainsward")
            .parser(new WholeLine())
            .history(history)
            .completer(new NameCompleter(() -> talk.standing().names()))
            .variable(LineReader.HISTORY_SIZE, HISTORY)
            .variable(LineReader.HISTORY_FILE_SIZE, HISTORY)
            .variable(LineReader.SECONDARY_PROMPT_PATTERN, "")
            .variable(LineReader.BELL_STYLE, "none")
            .option(LineReader.Option.CASE_INSENSITIVE, true)
            .option(LineReader.Option.CASE_INSENSITIVE_SEARCH, true)
            .option(LineReader.Option.DISABLE_EVENT_EXPANSION, true)
            .option(LineReader.Option.DISABLE_HIGHLIGHTER, marks.isEmpty());
    kept.ifPresent(file -> builder.variable(LineReader.HISTORY_FILE, file));
    marks.ifPresent(builder::highlighter);
    LineReader reader = builder.build();
    marks.ifPresent(shown -> suggest(reader, shown.suggestions()));
    return reader;
  }

  /** Shows in grey what is likely to come; the right arrow takes it. */
  private static void suggest(LineReader reader, Suggestions suggestions) {
    reader.setAutosuggestion(LineReader.SuggestionType.TAIL_TIP);
    reader.getWidgets().put(TAKE, () -> take(reader, suggestions));
    KeyMap<Binding> keys = reader.getKeyMaps().get(LineReader.MAIN);
    String right = KeyMap.key(reader.getTerminal(), InfoCmp.Capability.key_right);
    keys.bind(new Reference(TAKE), right, "\u001b[C", "\u001bOC", KeyMap.ctrl('F'));
  }

  private static boolean take(LineReader reader, Suggestions suggestions) {
    Buffer buffer = reader.getBuffer();
    if (buffer.cursor() < buffer.length()) {
      return buffer.move(1) > 0;
    }
    buffer.write(suggestions.after(buffer.toString()));
    return true;
  }
}
