package plainsward.terminal;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.List;
import java.util.Optional;
import plainsward.FuzzText;
import plainsward.reply.Caution;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.NoteLink;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.reply.Understood;
import plainsward.units.Quantity;

/** Whatever stands in a reply, lines fit, no word is lost, and no control byte gets out. */
public final class ScreenFuzz {
  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for. */
  public static void fuzzerTestOneInput(byte[] data) {
    String text = FuzzText.of(data);
    int width = LineBreaker.fitting(data.length == 0 ? 0 : data[0] & 0xff);
    broken(CleanText.line(text), width, data.length % 12);
    ScreenCheck.harmless(CleanText.line(text));
    ScreenCheck.harmless(CleanText.paragraphs(text));
    ScreenCheck.show(reply(text));
  }

  private static void broken(String line, int width, int hang) {
    List<String> lines = LineBreaker.lines(line, width, hang);
    for (String one : lines) {
      if (LineBreaker.columns(one) > width) {
        throw new AssertionError(LineBreaker.columns(one) + " columns: " + one);
      }
    }
    String before = bare(line);
    String after = bare(String.join("", lines));
    if (!before.equals(after)) {
      throw new AssertionError("lost: " + before + " became " + after);
    }
  }

  /** The text without spaces of any width. */
  private static String bare(String text) {
    StringBuilder bare = new StringBuilder();
    text.codePoints().filter(c -> !Character.isWhitespace(c)).forEach(bare::appendCodePoint);
    return bare.toString();
  }

  private static Reply reply(String text) {
    return new ReplyBuilder(Kind.ANSWER)
        .topic("mix")
        .headline(text)
        .say(text)
        .figure(Figure.of("product_total", Quantity.of("1", "[foz_us]"), text))
        .work(text)
        .understood(
            List.of(
                new Understood(
                    "weed",
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(text),
                    text,
                    "question")))
        .caution(new Caution("read-label", text))
        .note(new NoteLink("n", text))
        .suggest(text)
        .build();
  }
}
