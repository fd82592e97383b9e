package plainsward.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plainsward.units.UnitSystem;

class MarksTest {

  private static String marked(String typed) {
    StringBuilder marked = new StringBuilder();
    int done = 0;
    for (Marks.Stretch found : Marks.quantities(typed, UnitSystem.US, LocalDate.of(2026, 5, 1))) {
      marked.append(typed, done, found.start()).append('[');
      marked.append(typed, found.start(), found.end()).append(']');
      done = found.end();
    }
    return marked.append(typed.substring(done)).toString();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "how much for 4,000 sq ft in a 2 gal | how much for [4,000 sq ft] in a [2 gal]",
        "label says 1.5 fl oz per 1,000 sq ft | label says [1.5 fl oz per 1,000 sq ft]",
        "it is 40 by 60 ft less the house | it is [40 by 60 ft] less the house",
        "half a gallon left | [half a gallon] left",
        "my dog is 7 | my dog is 7",
        "kills clover | kills clover"
      })
  void quantitiesAreMarkedAndNothingElse(String typed, String marked) {
    assertEquals(marked, marked(typed));
  }

  @Test
  void textThatIsTooLongOrReplacedByLongerSignsIsNotMarked() {
    assertEquals(List.of(), Marks.quantities("1 gal ".repeat(500), UnitSystem.US, LocalDate.MIN));
    assertEquals(List.of(), Marks.quantities("", UnitSystem.US, LocalDate.MIN));
  }
}
