package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/**
 * The picture in the README is the screen as it is now. With {@code -Dscreens=write} it is drawn
 * anew instead.
 */
class ScreenPictureTest {
  private static final Path PICTURE = Path.of("src/site/screen.svg");
  private static final int COLUMNS = 80;
  private static final String SAID =
      "my lawn is 90 by 50 ft less a 20 by 30 deck. label says 1.5 oz per thousand, 2 gal pump";

  @Test
  void thePictureIsTheScreen() throws Exception {
    Setting setting = new Setting(LocalDate.of(2026, 5, 2), UnitSystem.US, Optional.empty());
    ScreenText screen = new ScreenText(new Palette(true, false, true), COLUMNS, Hints.TALK);
    String page = screen.page(Ran.REAL.apply(setting).answer(SAID), false).text();
    String typed = screen.own(TalkReader.PROMPT + SAID);
    String drawn = ScreenPicture.of(typed + "\n\n" + page, COLUMNS, "A question and its answer");
    if ("write".equals(System.getProperty("screens"))) {
      Files.createDirectories(PICTURE.getParent());
      Files.writeString(PICTURE, drawn);
    } else {
      assertEquals("", Differences.of(Files.readString(PICTURE), drawn));
    }
  }
}
