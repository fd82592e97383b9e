package plainsward.terminal;

import java.util.List;
import org.jline.reader.CompletingParsedLine;
import org.jline.reader.ParsedLine;
import org.jline.reader.Parser;

/** Takes what is typed as it is: quotes, backslashes and apostrophes mean nothing. */
final class WholeLine implements Parser {

  @Override
  public ParsedLine parse(String line, int cursor, ParseContext context) {
    return new Whole(line, cursor);
  }

  @Override
  public boolean isEscapeChar(char c) {
    return false;
  }

  /** The line as a single word. */
  private record Whole(String line, int cursor) implements CompletingParsedLine {

    @Override
    public String word() {
      return line;
    }

    @Override
    public int wordCursor() {
      return cursor;
    }

    @Override
    public int wordIndex() {
      return 0;
    }

    @Override
    public List<String> words() {
      return List.of(line);
    }

    @Override
    public CharSequence escape(CharSequence candidate, boolean complete) {
      return candidate;
    }

    @Override
    public int rawWordCursor() {
      return cursor;
    }

    @Override
    public int rawWordLength() {
      return line.length();
    }
  }
}
