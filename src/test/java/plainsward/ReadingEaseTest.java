package plainsward;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Whatever a person is shown asks for at most the eighth school grade ({@link ReadingGrade}), text
 * by text where it is long enough for the formula, and file by file. Words of the trade, which no
 * shorter one replaces, stand in {@code reading-ease/trade-words.txt} and count as short.
 */
class ReadingEaseTest {
  private static final double HARDEST = 8.0;
  private static final int LONG_ENOUGH = 12;
  private static final Pattern TRADE = trade();

  private static Pattern trade() {
    try {
      return Pattern.compile(
          Files.readAllLines(Path.of("src/test/resources/reading-ease/trade-words.txt")).stream()
              .filter(line -> !line.startsWith("#") && !line.isBlank())
              .map(Pattern::quote)
              .collect(Collectors.joining("|", "\\b(?:", ")\\b")),
          Pattern.CASE_INSENSITIVE);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static double grade(String text) {
    return ReadingGrade.of(TRADE.matcher(text).replaceAll("term"));
  }

  @Test
  void tablesReadEasily() throws IOException {
    assertEasy(FixedTexts.ofTables());
  }

  @Test
  void notesReadEasily() throws IOException {
    assertEasy(FixedTexts.ofNotes());
  }

  @Test
  void helpReadsEasily() throws IOException {
    assertEasy(FixedTexts.ofScreen());
  }

  @Test
  void sentencesInTheCodeReadEasily() throws IOException {
    assertEasy(FixedTexts.ofCode());
  }

  private static void assertEasy(List<FixedTexts.Text> texts) {
    List<String> hard = new ArrayList<>();
    Map<String, StringBuilder> byPlace = new LinkedHashMap<>();
    for (FixedTexts.Text text : texts) {
      byPlace
          .computeIfAbsent(text.place(), p -> new StringBuilder())
          .append(text.text())
          .append(".\n\n");
      if (text.text().split("\\s+").length >= LONG_ENOUGH && grade(text.text()) > HARDEST) {
        hard.add(told(text.place(), text.text()));
      }
    }
    byPlace.forEach(
        (place, all) -> {
          if (grade(all.toString()) > HARDEST) {
            hard.add(told("all of " + place, all.toString()));
          }
        });
    assertEquals("", String.join("\n", hard), hard.size() + " texts are too hard");
  }

  private static String told(String place, String text) {
    String start = text.length() > 300 ? text.substring(0, 300) + " ..." : text;
    return String.format(Locale.ROOT, "%.1f %s: %s", grade(text), place, start.replace("\n", " "));
  }
}
