package plainsward.talk;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.records.Label;
import plainsward.records.LabelBuilder;
import plainsward.records.Lawn;
import plainsward.records.Range;
import plainsward.records.Rate;
import plainsward.records.RecordBook;
import plainsward.records.RecordFault;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/**
 * Carries what was told of named labels and lawns, and the log, between the memory of a talk and
 * the saved records. A fault of the disk is told in a sentence; the talk goes on.
 */
final class Keeper {
  /** The turn that saved facts are from: before the first. */
  static final int SAVED = 0;

  private final Optional<RecordBook> book;
  private final Diary diary;
  private final List<String> troubles = new ArrayList<>();

  Keeper(Optional<RecordBook> book) {
    this.book = book;
    this.diary = new Diary(book, this::guarded);
  }

  /** The log. */
  Diary diary() {
    return diary;
  }

  /** What could not be read or saved since this was last asked, a sentence each. */
  List<String> troubles() {
    List<String> told = List.copyOf(troubles);
    troubles.clear();
    return told;
  }

  private void guarded(Runnable work) {
    try {
      work.run();
    } catch (RecordFault fault) {
      troubles.add(fault.getMessage());
    } catch (IllegalArgumentException unfit) {
      troubles.add("That could not be saved: " + unfit.getMessage() + ".");
    }
  }

  /** Puts the saved labels and lawns into an empty memory. */
  void recall(Memory memory) {
    if (book.isEmpty()) {
      return;
    }
    guarded(
        () -> {
          troubles.addAll(book.get().problems());
          book.get().labels().forEach(label -> recall(memory, label));
          book.get().lawns().forEach(lawn -> recall(memory, lawn));
        });
  }

  private static void recall(Memory memory, Label label) {
    for (Rate rate : label.rates()) {
      boolean perArea = rate.basis() == Rate.Basis.AREA;
      Quantity low = rate.amount().low();
      Fact fact = Fact.of(perArea ? "label_rate" : "strength", low, Shown.of(low), 0);
      Optional<Quantity> high =
          rate.amount().isRange() ? Optional.of(rate.amount().high()) : Optional.empty();
      memory.label(label.name(), fact.with(low, high).of(label.name()), SAVED);
    }
    label.season().interval().ifPresent(wait -> recall(memory, label.name(), wait));
    label
        .season()
        .applications()
        .ifPresent(
            most -> {
              Quantity cap = Quantity.number(Ratio.of(most));
              Fact fact = Fact.of("season_limit", cap, most + " a year", 0);
              memory.label(label.name(), fact.of(label.name()), SAVED);
            });
  }

  private static void recall(Memory memory, String label, Period wait) {
    boolean months = wait.toTotalMonths() > 0;
    long count = months ? wait.toTotalMonths() : wait.getDays();
    Quantity amount = Quantity.of(count, months ? Units.ONE : Units.DAY);
    String said = count + (months ? " months" : " days");
    Fact fact = Fact.of("interval", amount, said, 0).worded(months ? "months" : "days");
    memory.label(label, fact.of(label), SAVED);
  }

  private static void recall(Memory memory, Lawn lawn) {
    List<Fact> ground = new ArrayList<>();
    lawn.area().ifPresent(a -> ground.add(Fact.of("area", a, Shown.of(a), 0).of(lawn.name())));
    lawn.pieces()
        .forEach(p -> ground.add(Fact.of("area", p.area(), Shown.of(p.area()), 0).of(lawn.name())));
    if (!ground.isEmpty()) {
      memory.lawn(lawn.name(), ground, SAVED);
    }
  }

  /** Saves the labels and lawns that were told in this turn. */
  void keep(Memory memory, int turn) {
    if (book.isEmpty()) {
      return;
    }
    for (String name : memory.labelNames()) {
      if (memory.label(name).values().stream().anyMatch(t -> t.turn() == turn)) {
        guarded(() -> book.get().save(label(name, memory.label(name))));
      }
    }
    for (String name : memory.lawnNames()) {
      List<Memory.Told> ground = memory.lawn(name);
      boolean told = ground.stream().anyMatch(t -> t.turn() == turn);
      boolean plain = ground.stream().allMatch(t -> t.fact().name().equals("area"));
      if (told && plain) {
        guarded(() -> book.get().save(lawn(name, ground)));
      }
    }
  }

  private Label label(String name, Map<String, Memory.Told> facts) {
    LabelBuilder label =
        book.get().label(name).map(Label::change).orElseGet(() -> Label.named(name));
    for (Memory.Told told : facts.values()) {
      Fact fact = told.fact();
      switch (fact.name()) {
        case "label_rate", "strength" -> {
          Quantity low = fact.amount();
          label.rate(new Rate(new Range(low, fact.high().orElse(low)), Optional.empty()));
        }
        case "interval" -> label.interval(period(fact));
        case "season_limit" ->
            label.applicationsPerYear(fact.amount().value().ceiling().intValue());
        default -> {
          // The rest of a label is told in files.
        }
      }
    }
    return label.label();
  }

  private static Period period(Fact wait) {
    int count = wait.amount().value().ceiling().intValue();
    if (wait.word().orElse("days").equals("months")) {
      return Period.ofMonths(count);
    }
    return wait.amount().unit().equals(Unit.of("wk"))
        ? Period.ofWeeks(count)
        : Period.ofDays(count);
  }

  private Lawn lawn(String name, List<Memory.Told> ground) {
    Quantity area =
        ground.stream().map(t -> t.fact().amount()).reduce(Quantity::plus).orElseThrow();
    return book.get().lawn(name).orElseGet(() -> Lawn.named(name)).withArea(area);
  }
}
