package plainsward.talk;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plainsward.reading.Ask;
import plainsward.reading.Facts;

/** Decides what a turn is about: what is asked in so many words, and what the facts add up to. */
final class Chooser extends TurnCues {
  /** Amounts that go with words: weather, waits, distances. */
  private static final Set<String> BESIDE_DOSES =
      Set.of(
          "wind",
          "temperature",
          "humidity",
          "rain_gap",
          "time",
          "elapsed",
          "interval",
          "times",
          "setback",
          "height",
          "rainfall",
          "label_limit",
          "number",
          "length",
          "soil_temperature",
          "speed",
          "proposed_wait",
          "season_limit",
          "applied_count");

  private static final Set<String> NOW = Set.of("now", "yet", "today", "already");

  private static final Set<String> DOSES =
      Set.of("mix", "strength", "coverage", "convert", "spread", "feed", "buy", "calibrate");

  private final Diary diary;
  private final SumChooser sums;

  Chooser(Facts turn, Memory memory, Diary diary) {
    super(turn, memory);
    this.diary = diary;
    this.sums = new SumChooser(turn, memory);
  }

  /** The topics, the first the main one; empty where nothing is asked and nothing adds up. */
  List<String> topics() {
    Set<String> topics = new LinkedHashSet<>();
    boolean air = any("wind", "temperature", "humidity") && !sums.isConversion();
    boolean elsewhere = turn.asks("timing") || turn.says("drifted") && !turn.asks("weather");
    if (air && !elsewhere) {
      topics.add("weather");
    }
    if (!air && isAgainNow()) {
      return List.of("repeat");
    }
    String sum = sums.topic();
    List<String> advice = advice();
    boolean wordsOnly =
        !advice.isEmpty()
            && (!hasDoseFacts() && DOSES.contains(sum) && !asksKnownDose() && !asksRate()
                || sum.equals("repeat") && isIdleRepeat());
    if (!sum.isEmpty() && !wordsOnly) {
      topics.add(sum);
    }
    if (topics.isEmpty()) {
      advice.stream().limit(2).forEach(topics::add);
    } else {
      turn.asks().stream()
          .filter(a -> !SUMS.contains(a.topic()) && a.weight() >= LOUD)
          .filter(a -> !(sum.equals("repeat") && a.topic().equals("weather")))
          .map(Ask::topic)
          .limit(2)
          .forEach(topics::add);
    }
    return List.copyOf(topics);
  }

  /** The topics that are asked in words, loudest first. */
  private List<String> advice() {
    return turn.asks().stream()
        .filter(a -> !SUMS.contains(a.topic()))
        .map(Ask::topic)
        .distinct()
        .toList();
  }

  /** "how many oz of weed killer per gallon for dandelions": an amount of product is wanted. */
  private boolean asksRate() {
    return (turn.asks("mix") || turn.asks("strength")) && has("wanted") && wantsProduct();
  }

  /** Whether "again" is asked with no day and no interval, so that words answer it better. */
  private boolean isIdleRepeat() {
    return !any("interval", "day", "last_applied", "season_limit", "applied_count")
        && !memory.has("interval")
        && !memory.has("last_applied")
        && (turn.asks("progress")
            || turn.asks("keep-off")
            || turn.asks("seed")
            || turn.asks().get(0).topic().equals("lawn-care"))
        && diary.isEmpty();
  }

  /** "can i go now", where the day of the last spraying and the label's wait are told. */
  private boolean isAgainNow() {
    return turn.asks("weather")
        && turn.says("permission")
        && turn.hasWord(NOW)
        && !turn.says("rain-soon")
        && memory.has("interval")
        && memory.has("last_applied");
  }

  /** Whether a figure of a dose that is known is asked for: "and how much water in each?". */
  private boolean asksKnownDose() {
    boolean known = memory.has("label_rate") || memory.has("strength");
    return known
        && turn.asks().stream().anyMatch(a -> a.topic().equals("mix") && !a.want().isEmpty());
  }

  private boolean hasDoseFacts() {
    return turn.all().stream()
        .anyMatch(
            f ->
                (f.value().isPresent() || !f.sides().isEmpty())
                    && !BESIDE_DOSES.contains(f.name()));
  }
}
