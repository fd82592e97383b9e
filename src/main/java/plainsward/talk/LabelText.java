package plainsward.talk;

import java.time.Period;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.records.Label;
import plainsward.records.Range;
import plainsward.records.Rate;
import plainsward.records.WettingAgent;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** A label in words, a line for each thing that it says. */
final class LabelText {
  private final Map<String, String> lines = new LinkedHashMap<>();

  private LabelText() {}

  /** What a label says, by field, in the order of the interview. */
  static Map<String, String> lines(Label label) {
    LabelText text = new LabelText();
    text.what(label);
    text.season(label.season());
    text.weather(label.weather());
    text.care(label);
    text.rest(label);
    return text.lines;
  }

  /** All of it, joined. */
  static String whole(Label label) {
    return String.join("; ", lines(label).values());
  }

  /** The lines of some fields. */
  static List<String> of(Label label, Collection<String> fields) {
    List<String> told = new ArrayList<>();
    lines(label)
        .forEach(
            (field, line) -> {
              if (fields.contains(field)) {
                told.add(line);
              }
            });
    return told;
  }

  /** A cap in words. */
  static String cap(int most) {
    return (most == 0 ? "none" : String.valueOf(most)) + " a year";
  }

  /** A wait in words. */
  static String wait(Period wait) {
    long months = wait.toTotalMonths();
    long count = months > 0 ? months : wait.getDays();
    return count + (months > 0 ? " month" : " day") + (count == 1 ? "" : "s");
  }

  private void what(Label label) {
    List<String> kind = new ArrayList<>();
    label.form().ifPresent(f -> kind.add(f.word().replace('-', ' ')));
    label.state().filter(s -> !kind.contains("granule")).ifPresent(s -> kind.add(s.word()));
    put("form", kind);
    List<String> actives = label.actives().stream().map(LabelText::active).toList();
    if (!actives.isEmpty()) {
      lines.put("active", "active: " + String.join(", ", actives));
    }
    put("rate", label.rates().stream().map(LabelText::rate).toList());
    label
        .sprayVolume()
        .ifPresent(range -> lines.put("spray-volume", "in " + range(range) + " of spray"));
    label.wettingAgent().ifPresent(agent -> lines.put("wetting-agent", agent(agent)));
  }

  private void put(String field, List<String> words) {
    if (!words.isEmpty()) {
      lines.put(field, String.join(", ", words));
    }
  }

  private void put(String field, String before, Optional<Quantity> amount, String after) {
    amount.ifPresent(q -> lines.put(field, (before + Shown.of(q) + after).strip()));
  }

  private static String active(Label.Active active) {
    return active.name() + active.strength().map(s -> " " + Shown.of(s)).orElse("");
  }

  private static String rate(Rate rate) {
    return range(rate.amount()) + rate.use().map(use -> " for " + use).orElse("");
  }

  private static String range(Range range) {
    return range.isRange() ? Shown.range(range.low(), range.high()) : Shown.of(range.low());
  }

  private static String agent(WettingAgent agent) {
    String rule =
        switch (agent.rule()) {
          case REQUIRED -> "wetting agent needed";
          case ALLOWED -> "wetting agent allowed";
          case FORBIDDEN -> "no wetting agent";
        };
    return rule
        + agent.kind().map(k -> ": " + k).orElse("")
        + agent.strength().map(s -> " at " + range(s)).orElse("");
  }

  private void season(Label.Season season) {
    season.interval().ifPresent(w -> lines.put("interval", wait(w) + " between"));
    season
        .applications()
        .ifPresent(
            most -> lines.put("applications", most == 0 ? cap(most) : "at most " + cap(most)));
    put("year-amount", "at most ", season.amount(), " a year");
  }

  private void weather(Label.Weather weather) {
    put("rain-free", "", weather.rainFree(), " without rain");
    put("wind", "wind up to ", weather.windMost(), "");
    put("heat", "not above ", weather.heatMost(), "");
    put("cold", "not below ", weather.coldLeast(), "");
  }

  private void care(Label label) {
    Label.Care care = label.care();
    put("mow-before", "no mowing for ", care.mowBefore(), " before");
    put("mow-after", "no mowing for ", care.mowAfter(), " after");
    put("water", "no watering for ", care.waterAfter(), " after");
    put("water-in", "water in with ", care.waterIn(), "");
    put("water-in-within", "watered in within ", care.waterInWithin(), "");
    Label.Seeding seeding = label.seeding();
    seeding.seedAfter().ifPresent(w -> lines.put("seed-after", "seed after " + wait(w)));
    seeding
        .newGrassAfter()
        .ifPresent(w -> lines.put("new-grass", "new grass only after " + wait(w)));
    seeding
        .newGrassMowings()
        .ifPresent(n -> lines.put("new-grass-mowings", "new grass only after " + n + " mowings"));
  }

  private void rest(Label label) {
    if (!label.grasses().allows().isEmpty()) {
      lines.put("grass-allows", "for " + String.join(", ", label.grasses().allows()));
    }
    if (!label.grasses().harms().isEmpty()) {
      lines.put("grass-harms", "not on " + String.join(", ", label.grasses().harms()));
    }
    label.reentry().ifPresent(r -> lines.put("reentry", reentry(r)));
    if (!label.gear().isEmpty()) {
      lines.put("gear", "wear " + String.join(", ", label.gear()));
    }
    label.remark().ifPresent(r -> lines.put("remark", r));
  }

  private static String reentry(Label.Reentry reentry) {
    String time = reentry.time().map(t -> "keep off for " + Shown.of(t)).orElse("");
    if (!reentry.untilDry()) {
      return time;
    }
    return time.isEmpty() ? "keep off until dry" : time + ", and until dry";
  }
}
