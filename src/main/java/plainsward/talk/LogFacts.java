package plainsward.talk;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.records.Label;
import plainsward.records.LogEntry;
import plainsward.topics.Known;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** What the log tells of the label and the lawns spoken of, as facts that dates are made from. */
final class LogFacts {
  private final Memory memory;
  private final Diary diary;
  private final LocalDate today;
  private final Map<String, List<Known>> known = new HashMap<>();

  LogFacts(Memory memory, Diary diary, LocalDate today) {
    this.memory = memory;
    this.diary = diary;
    this.today = today;
  }

  /**
   * The last day, how often this year, and the label's interval and cap where no label is in hand.
   * Nothing where another caller asks who has named no lawn and no label yet.
   */
  Map<String, List<Known>> facts() {
    String label = memory.chosenLabel();
    Set<String> lawns = memory.chosenLawns();
    if (memory.isStranger() && label.isEmpty() && lawns.isEmpty()) {
      return Map.of();
    }
    diary.last(lawns, label).ifPresent(last -> of(last, lawns, label));
    return known;
  }

  private void of(LogEntry last, Set<String> lawns, String inHand) {
    add(Fact.of("last_applied", last.date(), "the log", 0).worded(where(last)));
    String label = inHand.isEmpty() && !isUnnamed(last) ? Memory.key(last.label()) : inHand;
    long count = diary.count(lawns, label, today.getYear());
    add(Fact.of("applied_count", Quantity.number(Ratio.of(count)), "the log", 0));
    Optional<Label> card = inHand.isEmpty() ? memory.labelCards().get(label) : Optional.empty();
    card.ifPresent(
        told ->
            LabelFacts.doses(told).stream()
                .filter(f -> f.name().matches("interval|season_limit"))
                .filter(f -> !memory.has(f.name()))
                .forEach(this::add));
  }

  private static String where(LogEntry last) {
    String lawn = last.lawn().map(l -> "the " + l + " lawn").orElse("the lawn");
    return isUnnamed(last) ? lawn : lawn + ", with the " + last.label();
  }

  private static boolean isUnnamed(LogEntry entry) {
    return entry.label().equals(Diary.UNNAMED);
  }

  private void add(Fact fact) {
    known.put(fact.name(), List.of(new Known(fact, "saved")));
  }
}
