package plainsward.terminal;

import java.time.LocalDate;
import org.jline.reader.Highlighter;
import org.jline.reader.LineReader;
import org.jline.utils.AttributedString;
import org.jline.utils.AttributedStringBuilder;
import org.jline.utils.AttributedStyle;
import plainsward.reading.Marks;
import plainsward.units.UnitSystem;

/**
 * Marks what is understood as a quantity while it is typed, and has the reader show in grey what is
 * likely to come next.
 *
 * @param suggestions what is likely to come next
 * @param units the measures taken where nothing tells
 * @param today the day that dates are reckoned from
 * @param palette tells whether the marks are coloured or underlined
 */
record QuantityHighlighter(
    Suggestions suggestions, UnitSystem units, LocalDate today, Palette palette)
    implements Highlighter {
  private static final int TEAL = 30;

  /** Keeps the reader from cutting the grey words at their first space. */
  private static final char UNBROKEN = '\u00a0';

  @Override
  public AttributedString highlight(LineReader reader, String buffer) {
    reader.setTailTip(tip(reader, buffer));
    AttributedStyle mark =
        palette.isColourful()
            ? AttributedStyle.DEFAULT.foreground(TEAL)
            : AttributedStyle.DEFAULT.underline();
    AttributedStringBuilder marked = new AttributedStringBuilder();
    int done = 0;
    for (Marks.Stretch found : Marks.quantities(buffer, units, today)) {
      marked.append(buffer.substring(done, found.start()));
      marked.styled(mark, buffer.substring(found.start(), found.end()));
      done = found.end();
    }
    return marked.append(buffer.substring(done)).toAttributedString();
  }

  /** No more than the rest of the row; none after a dash, which the reader takes for an option. */
  private String tip(LineReader reader, String buffer) {
    int free = reader.getTerminal().getWidth() - LineBreaker.columns(buffer) - TalkReader.MARGIN;
    boolean dashed = buffer.lastIndexOf('-') > buffer.lastIndexOf(' ');
    String tip = dashed || palette.isAscii() ? "" : suggestions.after(buffer);
    boolean fits = LineBreaker.columns(tip) <= free;
    return fits ? tip.replace(' ', UNBROKEN) : "";
  }
}
