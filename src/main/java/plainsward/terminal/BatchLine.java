package plainsward.terminal;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import plainsward.units.UnitSystem;

/**
 * One line of a batch.
 *
 * @param id the id as JSON, to be handed back; empty where the line has none
 * @param turns what is asked, turn by turn
 * @param today the date to reckon from, where the line has one
 * @param units the measures, where the line has some
 */
record BatchLine(
    Optional<String> id,
    List<String> turns,
    Optional<LocalDate> today,
    Optional<UnitSystem> units) {

  /** Keeps the turns as they are. */
  BatchLine {
    turns = List.copyOf(turns);
  }

  /**
   * Reads a line: an object of JSON where it starts with a brace, else a question.
   *
   * @throws Unreadable where the object is not well-formed, saying what is wrong
   */
  static BatchLine read(String line) throws Unreadable {
    if (!startsWithBrace(line)) {
      return new BatchLine(Optional.empty(), List.of(line), Optional.empty(), Optional.empty());
    }
    try (JsonParser json = ReplyJson.FACTORY.createParser(line)) {
      return new BatchLineReader(json).read();
    } catch (JsonProcessingException broken) {
      throw new Unreadable("The line is not well-formed JSON" + place(broken) + ".");
    } catch (IOException broken) {
      throw new Unreadable("The line can't be read.");
    }
  }

  private static boolean startsWithBrace(String line) {
    int start = 0;
    while (start < line.length() && line.charAt(start) <= ' ') {
      start++;
    }
    return start < line.length() && line.charAt(start) == '{';
  }

  private static String place(JsonProcessingException broken) {
    boolean known = broken.getLocation() != null && broken.getLocation().getColumnNr() > 0;
    return known ? " at column " + broken.getLocation().getColumnNr() : "";
  }
}
