package plainsward.records;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVRecord;

/**
 * The columns of a table of lawns.
 *
 * @param places where each column stands
 * @param areaUnit the unit in the area column's heading, as in {@code area (sq ft)}
 * @param unknown headings that mean nothing here
 */
record LawnColumns(Map<String, Integer> places, Optional<String> areaUnit, List<String> unknown) {
  private static final Pattern WITH_UNIT = Pattern.compile("(?:area|size) ?[(\\[](.+)[)\\]]");
  private static final Map<String, String> MEANING =
      Map.ofEntries(
          Map.entry("name", "name"),
          Map.entry("lawn", "name"),
          Map.entry("area", "area"),
          Map.entry("size", "area"),
          Map.entry("unit", "unit"),
          Map.entry("piece", "piece"),
          Map.entry("grass", "grass"),
          Map.entry("notes", "notes"),
          Map.entry("trees", "trees"),
          Map.entry("water near", "water near"),
          Map.entry("vegetables near", "vegetables near"));

  /** The columns of a heading; one without a name or an area is refused. */
  static LawnColumns of(CSVRecord heading) {
    Map<String, Integer> places = new HashMap<>();
    List<String> unknown = new ArrayList<>();
    Optional<String> unit = Optional.empty();
    for (int i = 0; i < heading.size(); i++) {
      String key = Names.key(heading.get(i)).replace('_', ' ');
      Matcher withUnit = WITH_UNIT.matcher(key);
      if (withUnit.matches()) {
        unit = Optional.of(withUnit.group(1));
        key = "area";
      }
      String meaning = MEANING.get(key);
      if (meaning == null || places.putIfAbsent(meaning, i) != null) {
        unknown.add(heading.get(i));
      }
    }
    require(places, "name");
    require(places, "area");
    return new LawnColumns(places, unit, unknown);
  }

  private static void require(Map<String, Integer> places, String column) {
    if (!places.containsKey(column)) {
      throw FieldFault.saying("line 1", "a column \"" + column + "\" was expected, found none");
    }
  }

  /** A row's cell; none where it is blank or missing. */
  Optional<String> cell(CSVRecord row, String column) {
    Integer place = places.get(column);
    boolean there = place != null && place < row.size() && !row.get(place).isBlank();
    return there ? Optional.of(row.get(place)) : Optional.empty();
  }
}
