package plainsward.terminal;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A screen as a picture: its rows and colours drawn as SVG. */
final class ScreenPicture {
  private static final Pattern CODE = Pattern.compile("\u001b\\[([0-9;]*)m");
  private static final double CELL = 8.4;
  private static final int ROW = 18;
  private static final int MARGIN = 16;
  private static final String INK = "#d7dae0";
  private static final Map<String, String> COLOURS =
      Map.of("30", "#3fb4b4", "130", "#e09a4c", "160", "#ff6b6b", "243", "#8f96a3");

  private final StringBuilder svg = new StringBuilder();

  private ScreenPicture() {}

  /**
   * The picture.
   *
   * @param screen the rows, with the escape sequences of a palette
   * @param columns how wide the screen is
   * @param title what the picture shows, for who can't see it
   */
  static String of(String screen, int columns, String title) {
    ScreenPicture picture = new ScreenPicture();
    List<String> rows = screen.lines().toList();
    long width = Math.round(2 * MARGIN + columns * CELL);
    int height = 2 * MARGIN + rows.size() * ROW;
    picture.svg.append(
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="%d" height="%d" viewBox="0 0 %d %d" role="img">
        <title>%s</title>
        <rect width="100%%" height="100%%" rx="8" fill="#16181d"/>
        <g font-family="DejaVu Sans Mono, Menlo, Consolas, monospace" font-size="14" fill="%s">
        """
            .formatted(width, height, width, height, escaped(title), INK));
    for (int i = 0; i < rows.size(); i++) {
      picture.row(rows.get(i), MARGIN + (i + 1) * ROW - 5);
    }
    return picture.svg.append("</g>\n</svg>\n").toString();
  }

  private void row(String row, int y) {
    Matcher code = CODE.matcher(row);
    String style = "";
    int at = 0;
    int column = 0;
    while (code.find()) {
      column = piece(row.substring(at, code.start()), column, y, style);
      style = style(code.group(1));
      at = code.end();
    }
    piece(row.substring(at), column, y, style);
  }

  /** One piece in one look; each stands at its own column, whatever the font's width. */
  private int piece(String text, int column, int y, String style) {
    int columns = text.codePointCount(0, text.length());
    if (!text.isBlank()) {
      double x = MARGIN + column * CELL;
      svg.append(
          "<text x=\"%.1f\" y=\"%d\" textLength=\"%.1f\" xml:space=\"preserve\"%s>%s</text>\n"
              .formatted(x, y, columns * CELL, style, escaped(text)));
    }
    return column + columns;
  }

  private static String style(String codes) {
    String bold = codes.equals("1") || codes.startsWith("1;") ? " font-weight=\"bold\"" : "";
    String colour = COLOURS.get(codes.substring(codes.lastIndexOf(';') + 1));
    return bold + (colour == null || !codes.contains("38;5") ? "" : " fill=\"" + colour + "\"");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
