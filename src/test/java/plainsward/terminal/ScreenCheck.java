package plainsward.terminal;

import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.util.List;
import java.util.regex.Pattern;
import plainsward.reply.Reply;

/** Shows a reply in every way there is, and holds each to what a screen may be sent. */
final class ScreenCheck {
  private static final Pattern PAINT = Pattern.compile("\u001b\\[[0-9;]{1,16}m");
  private static final List<Palette> PALETTES =
      List.of(new Palette(true, false, true), new Palette(false, true, false));

  private ScreenCheck() {}

  /** An error where anything shown could steer a terminal, or is no JSON. */
  static void show(Reply reply) {
    for (Palette palette : PALETTES) {
      for (int columns : new int[] {1, 40, 77, 500}) {
        ScreenText screen = new ScreenText(palette, columns, Hints.TALK);
        Page page = screen.page(reply, false);
        harmless(PAINT.matcher(page.text()).replaceAll(""));
        harmless(PAINT.matcher(String.join("\n", page.rest())).replaceAll(""));
        harmless(PAINT.matcher(screen.page(reply, true).text()).replaceAll(""));
      }
    }
    harmless(PlainText.of(reply, Length.WHOLE));
    harmless(PlainText.of(reply, Length.SHORT));
    json(JsonLine.of(reply, Length.WHOLE));
  }

  /** An error where the text holds a control byte, an override or half a pair. */
  static void harmless(String text) {
    text.codePoints()
        .forEach(
            c -> {
              int type = Character.getType(c);
              boolean bad =
                  type == Character.CONTROL && c != '\n'
                      || type == Character.FORMAT
                      || type == Character.SURROGATE;
              if (bad) {
                throw new AssertionError("U+" + Integer.toHexString(c) + " in " + text);
              }
            });
  }

  /** An error where it is not one JSON value on one line whose texts are harmless. */
  static void json(String line) {
    if (line.indexOf('\n') >= 0 || line.indexOf('\r') >= 0) {
      throw new AssertionError("more than a line: " + line);
    }
    try (JsonParser json = ReplyJson.FACTORY.createParser(line)) {
      while (json.nextToken() != null) {
        if (json.currentToken().isScalarValue()) {
          harmless(json.getText());
        }
      }
    } catch (IOException broken) {
      throw new AssertionError(line, broken);
    }
  }
}
