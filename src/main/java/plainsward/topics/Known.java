package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reply.Understood;
import plainsward.units.Quantity;

/**
 * A fact with where it came from.
 *
 * @param fact what is known
 * @param from {@code question}, {@code earlier}, {@code saved} or {@code label}
 */
public record Known(Fact fact, String from) {

  /** Its amount; for a range the low end. */
  public Quantity amount() {
    return fact.amount();
  }

  /** The high end of a range. */
  public Optional<Quantity> high() {
    return fact.high();
  }

  /** Whether its words leave this open. */
  public boolean leavesOpen(String what) {
    return fact.leavesOpen(what);
  }

  /** It as the reply tells it. */
  public Understood understood() {
    return new Understood(name(), fact.value(), fact.high(), word(), fact.said() + about(), from);
  }

  private String name() {
    return switch (fact.name()) {
      case "test_area", "minus", "area_option" -> "area";
      case "minus_shape", "test_shape" -> "shape";
      case "volume" -> "tank";
      case "label_active" -> "active";
      case "year_amount" -> "season_limit";
      case "seed_wait", "mow_wait", "water_wait", "water_in", "water_in_within" -> "label_limit";
      case "grass_allowed", "grass_harmed" -> "grass";
      case "planned", "day" -> "last_applied";
      default -> fact.name();
    };
  }

  /** What a limit of the label is about, behind its amount. */
  private String about() {
    String what = fact.name().equals("label_limit") ? fact.word().orElse("") : fact.name();
    return switch (what) {
      case "rain-free" -> " without rain";
      case "re-entry" -> " off the lawn";
      case "wind" -> fact.name().equals("label_limit") ? " of wind" : "";
      case "heat", "cold" -> " of air";
      case "mow_wait" -> " without mowing";
      case "water_wait" -> " without watering";
      case "water_in" -> " of water";
      case "water_in_within" -> " to water it in";
      case "seed_wait" -> " before seeding";
      default -> "";
    };
  }

  private Optional<String> word() {
    if (fact.name().startsWith("minus")) {
      return Optional.of(Understood.LEFT_OUT);
    }
    return fact.date().isPresent() ? fact.date().map(Object::toString) : fact.word();
  }

  /** All of several. */
  public static List<Understood> understood(List<Known> all) {
    return all.stream().map(Known::understood).toList();
  }
}
