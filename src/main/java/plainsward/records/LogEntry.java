package plainsward.records;

import java.time.LocalDate;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * One application, as the log remembers it.
 *
 * @param id what tells it from all others; empty until it is appended
 * @param date the day
 * @param label the label's name
 * @param lawn the lawn's name
 * @param product how much product
 * @param area how much ground
 * @param sprayer the sprayer's name
 * @param weather the weather, in words
 * @param who who did it
 * @param remark anything else
 */
public record LogEntry(
    String id,
    LocalDate date,
    String label,
    Optional<String> lawn,
    Optional<Quantity> product,
    Optional<Quantity> area,
    Optional<String> sprayer,
    Optional<String> weather,
    Optional<String> who,
    Optional<String> remark) {

  /** Tidies the texts; unfit names are refused. */
  public LogEntry {
    label = Names.checked("label", label);
    lawn = lawn.map(l -> Names.checked("lawn", l));
    sprayer = sprayer.map(s -> Names.checked("sprayer", s));
    weather = Names.remark(weather);
    who = Names.remark(who);
    remark = Names.remark(remark);
    if (date.getYear() < 1900 || date.getYear() > 2999) {
      throw new IllegalArgumentException("a date between 1900 and 2999 was expected: " + date);
    }
  }

  /** An application of which the day and the label are known. */
  public static LogEntry of(LocalDate date, String label) {
    return new LogEntry(
        "",
        date,
        label,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  /** The same on another day, to be appended anew. */
  public LogEntry at(LocalDate day) {
    return new LogEntry("", day, label, lawn, product, area, sprayer, weather, who, remark);
  }

  /** The entry with the lawn. */
  public LogEntry on(String lawnName) {
    return new LogEntry(
        id, date, label, Optional.of(lawnName), product, area, sprayer, weather, who, remark);
  }

  /** The entry with the amount of product. */
  public LogEntry withProduct(Quantity amount) {
    return new LogEntry(
        id, date, label, lawn, Optional.of(amount), area, sprayer, weather, who, remark);
  }

  /** The entry with the ground. */
  public LogEntry withArea(Quantity ground) {
    return new LogEntry(
        id, date, label, lawn, product, Optional.of(ground), sprayer, weather, who, remark);
  }

  /** The entry with the sprayer. */
  public LogEntry withSprayer(String name) {
    return new LogEntry(
        id, date, label, lawn, product, area, Optional.of(name), weather, who, remark);
  }

  /** The entry with the weather. */
  public LogEntry withWeather(String words) {
    return new LogEntry(
        id, date, label, lawn, product, area, sprayer, Optional.of(words), who, remark);
  }

  /** The entry with who did it. */
  public LogEntry withWho(String person) {
    return new LogEntry(
        id, date, label, lawn, product, area, sprayer, weather, Optional.of(person), remark);
  }

  /** The entry with a remark. */
  public LogEntry withRemark(String text) {
    return new LogEntry(
        id, date, label, lawn, product, area, sprayer, weather, who, Optional.of(text));
  }

  /** The entry with its id. */
  LogEntry withId(String given) {
    return new LogEntry(given, date, label, lawn, product, area, sprayer, weather, who, remark);
  }
}
