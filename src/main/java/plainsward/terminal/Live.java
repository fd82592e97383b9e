package plainsward.terminal;

import java.util.List;
import java.util.Optional;
import org.jline.terminal.Terminal;
import org.jline.utils.AttributedString;
import org.jline.utils.Status;

/** What changes on the screen beside the talk: the row of what is known, and the grey words. */
final class Live implements AutoCloseable {
  private final Terminal terminal;
  private final Answering talk;
  private final Palette palette;
  private final Suggestions suggestions;
  private final Optional<Status> status;

  /** The row at the foot of a terminal, and the grey words after the cursor. */
  Live(Terminal terminal, Answering talk, Palette palette, Suggestions suggestions) {
    this.terminal = terminal;
    this.talk = talk;
    this.palette = palette;
    this.suggestions = suggestions;
    this.status = Optional.ofNullable(Status.getStatus(terminal));
  }

  /** Shows what is known after a turn, and what is likely to be asked next. */
  void refresh(Optional<String> next) {
    suggestions.next(next);
    List<AttributedString> rows =
        KnownLine.of(talk.standing().known(), terminal.getWidth() - 1).stream()
            .map(row -> palette.painted(Line.Look.QUIET, palette.shown(row)))
            .map(AttributedString::fromAnsi)
            .toList();
    status.ifPresent(below -> below.update(rows));
  }

  @Override
  public void close() {
    status.ifPresent(Status::close);
  }
}
