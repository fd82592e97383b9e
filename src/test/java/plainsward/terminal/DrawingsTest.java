package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import plainsward.reply.Reply;

/**
 * Every drawing at three widths, its ASCII twin and its sentence, compared to the letter with
 * {@code src/test/resources/terminal/drawings.txt}; {@code -Dscreens=write} writes it anew.
 */
class DrawingsTest {
  private static final Path KEPT = Path.of("src/test/resources/terminal/drawings.txt");
  private static final int[] WIDTHS = {40, 80, 120};

  private static Map<String, Drawing> drawings() {
    Map<String, Drawing> drawings = new LinkedHashMap<>();
    for (Loads.Load load : Loads.of(SampleReplies.mix())) {
      drawings.put(load.isPart() ? "tank in part" : "tank", new TankDrawing(load, 4));
    }
    drawings.put("lawn", new LawnDrawing(SampleReplies.lawn().sketches().pieces()));
    drawings.put("days", new DayStrip(SampleReplies.days().sketches()));
    drawings.put("hours", new HoursStrip(SampleReplies.hours().sketches().hours()));
    return drawings;
  }

  @Test
  void everyDrawingIsAsItsFileShows() throws IOException {
    StringBuilder all = new StringBuilder();
    drawings()
        .forEach(
            (name, drawing) -> {
              for (int width : WIDTHS) {
                all.append("== ").append(name).append(", ").append(width).append('\n');
                drawing.rows(new Ink(false), width).forEach(row -> all.append(row).append('\n'));
              }
              all.append("== ").append(name).append(", ASCII\n");
              drawing.rows(new Ink(true), 80).forEach(row -> all.append(row).append('\n'));
              all.append("== ").append(name).append(", in words\n");
              all.append(drawing.sentence()).append('\n');
            });
    if ("write".equals(System.getProperty("screens"))) {
      Files.writeString(KEPT, all);
    }
    assertEquals(Files.readString(KEPT), all.toString());
  }

  @Test
  void noDrawingIsWiderThanTheScreenAndItsTwinIsAsciiAlone() {
    drawings()
        .forEach(
            (name, drawing) -> {
              for (int width = 40; width <= 120; width++) {
                for (String row : drawing.rows(new Ink(false), width)) {
                  assertTrue(LineBreaker.columns(row) <= width, name + " " + width + ": " + row);
                }
                String rows = String.join("\n", drawing.rows(new Ink(true), width));
                String twin = new Palette(false, true, true).shown(rows);
                assertTrue(twin.chars().allMatch(c -> c == '\n' || c >= ' ' && c < 0x7f), twin);
              }
            });
  }

  @Test
  void aReplyIsDrawnOnAScreenAndToldInWordsWithoutOne() {
    for (Reply reply : List.of(SampleReplies.lawn(), SampleReplies.days(), SampleReplies.hours())) {
      Page drawn =
          new ScreenText(new Palette(false, false, true), 80, Hints.TALK).page(reply, false);
      Page told =
          new ScreenText(new Palette(false, false, false), 80, Hints.TALK).page(reply, false);
      String plain = PlainText.of(reply, Length.WHOLE);
      assertTrue(drawn.text().contains("▒") || drawn.text().contains("S·"), drawn.text());
      assertTrue(told.text().chars().noneMatch(c -> c == '▒'), told.text());
      assertTrue(
          plain.contains("The pieces: ")
              || plain.contains("The days: ")
              || plain.contains("A usual day by the hour: "),
          plain);
    }
  }
}
