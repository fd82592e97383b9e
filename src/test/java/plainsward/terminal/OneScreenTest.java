package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import plainsward.reply.Reply;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** No reply to any of the sample questions is longer than a screen unless "more" was asked. */
class OneScreenTest {
  private static final Path DATA = Path.of("src/test/resources");
  private static final Pattern ASK = Pattern.compile("\"ask\": \"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final List<Reply> REPLIES = new ArrayList<>();

  @BeforeAll
  static void ask() throws IOException {
    List<String> questions = new ArrayList<>();
    questions.addAll(Files.readAllLines(DATA.resolve("benchmark/questions.txt")));
    for (String line : Files.readAllLines(DATA.resolve("handbook/wordings.jsonl"))) {
      Matcher ask = ASK.matcher(line);
      if (ask.find()) {
        questions.add(ask.group(1));
      }
    }
    assertTrue(questions.size() > 500, "the questions were not found");
    for (String question : questions) {
      Setting setting = new Setting(LocalDate.of(2026, 5, 1), UnitSystem.US);
      REPLIES.add(new Conversation(setting).answer(question));
    }
  }

  @Test
  void onTheScreenAtAnyWidth() {
    for (int columns : new int[] {40, 80, 120}) {
      ScreenText screen = new ScreenText(new Palette(false, false, true), columns, Hints.TALK);
      for (Reply reply : REPLIES) {
        Page page = screen.page(reply, false);
        assertTrue(page.shown().size() <= ScreenText.MOST_ROWS, page.text());
        for (String row : page.shown()) {
          assertTrue(LineBreaker.columns(row) <= columns, row);
        }
        String firstWord = reply.headline().split(" ", -1)[0];
        assertTrue(page.text().contains(firstWord), page.text());
      }
    }
  }

  @Test
  void asPlainText() {
    for (Reply reply : REPLIES) {
      Page page = PlainText.page(reply, false);
      int rows = 0;
      for (String line : page.shown()) {
        rows += Math.max(1, LineBreaker.lines(line, 80, 0).size());
      }
      assertTrue(rows <= ScreenText.MOST_ROWS, rows + " rows:\n" + page.text());
    }
  }

  /** The text of a single answer and of JSON: the dose, the sum and the cautions stay in it. */
  @Test
  void asTextWhereNoMoreCanBeAskedFor() {
    int cut = 0;
    for (Reply reply : REPLIES) {
      String text = PlainText.of(reply, Length.SCREENFUL);
      int rows = 0;
      for (String line : text.split("\n", -1)) {
        rows += Math.max(1, LineBreaker.lines(line, 80, 0).size());
      }
      assertTrue(rows <= ScreenText.MOST_ROWS, rows + " rows:\n" + text);
      assertTrue(text.startsWith(PlainText.of(reply, Length.WHOLE).split("\n", -1)[0]), text);
      reply.working().stream().limit(2).forEach(step -> assertTrue(text.contains(step), text));
      reply.cautions().stream()
          .limit(3)
          .forEach(caution -> assertTrue(text.contains(caution.text()), text));
      boolean whole = text.equals(PlainText.of(reply, Length.WHOLE));
      assertEquals(!whole, text.contains("add --more"), text);
      cut += whole ? 0 : 1;
    }
    System.out.printf("%d of %d texts keep something back%n", cut, REPLIES.size());
  }

  @Test
  void atEightyColumnsFewRepliesKeepAnythingBackAndWhatWasReadIsAlwaysShown() {
    ScreenText screen = new ScreenText(new Palette(false, false, true), 80, Hints.TALK);
    long cut =
        REPLIES.stream().filter(reply -> !screen.page(reply, false).rest().isEmpty()).count();
    System.out.printf("%d of %d replies keep something for more%n", cut, REPLIES.size());
    for (Reply reply : REPLIES) {
      boolean read = PlainText.of(reply, Length.WHOLE).contains("I read: ");
      assertEquals(read, screen.page(reply, false).text().contains("I read: "));
    }
  }
}
