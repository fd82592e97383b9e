package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ExportTest {
  private static final Instant MADE = Instant.parse("2026-05-01T12:00:00Z");
  private static final LogEntry ENTRY =
      Samples.entry(Samples.MAY, "front, by the road", "jug \"blue\"")
          .withProduct(Samples.flOz("6.5"))
          .withArea(Samples.sqFt(4000))
          .withRemark("line one\nline two | *bold*")
          .withId("e1");

  @Test
  void theLogAsCsvIsReadBackCellByCell() throws IOException {
    String csv = LogTable.csv(List.of(ENTRY, LogEntry.of(Samples.MAY, "can").withId("e2")));
    assertTrue(csv.startsWith("date,lawn,label,product,product unit,"));
    assertEquals(2 + 1, csv.split("\r\n").length);
    try (CSVParser parser =
        CSVParser.parse(new StringReader(csv), CSVFormat.RFC4180.builder().setHeader().get())) {
      List<CSVRecord> rows = parser.getRecords();
      assertEquals(2, rows.size());
      assertEquals("front, by the road", rows.get(0).get("lawn"));
      assertEquals("jug \"blue\"", rows.get(0).get("label"));
      assertEquals("6.5", rows.get(0).get("product"));
      assertEquals("[foz_us]", rows.get(0).get("product unit"));
      assertEquals("line one\nline two | *bold*", rows.get(0).get("remark"));
      assertEquals("", rows.get(1).get("area"));
      assertTrue(rows.stream().allMatch(r -> r.size() == 12));
    }
  }

  @Test
  void theLogAsMarkdownIsATableWhoseCellsShowTheTextAsItIs() {
    String markdown = LogTable.markdown(List.of(ENTRY));
    List<String> lines = markdown.lines().toList();
    assertEquals(5, lines.size());
    assertEquals(
        "| 2026-05-01 | front, by the road | jug \"blue\" | 6.5 fl oz | 4,000 sq ft |  |  |  |"
            + " line one line two \\| \\*bold\\* |",
        lines.get(4));
  }

  private static final NextDate NEXT =
      new NextDate(
          "the long strip; by the pond, öäü 🌱 and a very long name indeed",
          "jug\\2",
          Samples.MAY,
          Period.ofMonths(1),
          LocalDate.of(2026, 6, 1));

  @Test
  void anIndependentReaderReadsTheCalendar() {
    String text = DateCalendar.text(List.of(NEXT), MADE);
    ICalendar calendar = Biweekly.parse(text).first();
    assertEquals(ICalVersion.V2_0, calendar.getVersion());
    assertTrue(calendar.validate(ICalVersion.V2_0).isEmpty());
    VEvent event = calendar.getEvents().get(0);
    assertEquals("Earliest day again: jug\\2 on " + NEXT.lawn(), event.getSummary().getValue());
    assertFalse(event.getDateStart().getValue().hasTime());
    assertEquals(1, event.getDateStart().getValue().getRawComponents().getDate());
    assertEquals(6, event.getDateStart().getValue().getRawComponents().getMonth());
    assertTrue(event.getDescription().getValue().contains("wait of 1 month is over"));
  }

  @Test
  void calendarLinesEndInCrLfAndAreFoldedAt75OctetsBetweenCharacters() {
    String text = DateCalendar.text(List.of(NEXT, NEXT), MADE);
    assertEquals(text, text.replaceAll("(?<!\r)\n", ""));
    assertTrue(text.endsWith("END:VCALENDAR\r\n"));
    for (String line : text.split("\r\n")) {
      byte[] octets = line.getBytes(StandardCharsets.UTF_8);
      assertTrue(octets.length <= 75, line);
      assertEquals(line, new String(octets, StandardCharsets.UTF_8));
    }
    assertTrue(text.contains("\r\n "));
    assertTrue(text.replace("\r\n ", "").contains("by the pond\\, öäü 🌱"));
    assertTrue(text.replace("\r\n ", "").contains("strip\\; by"));
    assertTrue(text.replace("\r\n ", "").contains("jug\\\\2"));
  }

  @Test
  void theSameDatesGiveTheSameEntriesSoThatReadingThemAgainDoublesNothing() {
    NextDate later =
        new NextDate(
            NEXT.lawn(), NEXT.label(), NEXT.earliest(), NEXT.interval(), LocalDate.of(2026, 7, 1));
    assertEquals(uid(NEXT), uid(later));
  }

  private static String uid(NextDate next) {
    return Biweekly.parse(DateCalendar.text(List.of(next), MADE))
        .first()
        .getEvents()
        .get(0)
        .getUid()
        .getValue();
  }

  @Test
  void everythingIsOneJsonText() throws IOException {
    RecordBook book = RecordBook.inMemory();
    DemoLabels.all().forEach(book::save);
    book.save(Lawn.named("front").withArea(Samples.sqFt(4000)));
    book.save(Sprayer.named("can"));
    book.append(ENTRY);
    book.append(LogEntry.of(Samples.MAY, "can"));
    book.undoLast();
    JsonNode json = new ObjectMapper().readTree(WholeBook.json(book));
    assertEquals(DemoLabels.all().size(), json.get("labels").size());
    assertEquals("front", json.at("/lawns/0/name").asText());
    assertEquals("can", json.at("/sprayers/0/name").asText());
    assertEquals(6.5, json.at("/log/0/product/amount").asDouble());
    assertEquals("can", json.at("/undone/0/label").asText());
  }

  @Test
  void aTextFileIsWrittenWholeOrToldWhyNot(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("new/log.csv");
    TextFile.write(file, "a\r\n");
    TextFile.write(file, "b\r\n");
    assertEquals("b\r\n", Files.readString(file));
    RecordFault fault =
        assertThrows(RecordFault.class, () -> TextFile.write(file.resolve("x.csv"), "a"));
    assertEquals(RecordFault.Why.NOT_A_FOLDER, fault.why());
  }
}
