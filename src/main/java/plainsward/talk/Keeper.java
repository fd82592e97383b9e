package plainsward.talk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.NotDosable;
import plainsward.reading.Fact;
import plainsward.records.Label;
import plainsward.records.Lawn;
import plainsward.records.RecordBook;
import plainsward.records.RecordFault;
import plainsward.topics.Ground;
import plainsward.units.DimensionMismatch;
import plainsward.units.Shown;

/**
 * Carries what was told of labels, lawns and sprayers between the memory of a talk and the saved
 * records. A fault of the disk is told in a sentence; the talk goes on.
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

  /** The saved records, where there are any. */
  Optional<RecordBook> book() {
    return book;
  }

  /** What could not be read or saved since this was last asked, a sentence each. */
  List<String> troubles() {
    List<String> told = List.copyOf(troubles);
    troubles.clear();
    return told;
  }

  /** Does what may fail with a fault of the disk, and remembers the fault. */
  void guarded(Runnable work) {
    try {
      work.run();
    } catch (RecordFault fault) {
      troubles.add(fault.getMessage());
    } catch (IllegalArgumentException unfit) {
      troubles.add("That could not be saved: " + unfit.getMessage() + ".");
    }
  }

  /** Puts the saved labels, lawns and sprayers into an empty memory. */
  void recall(Memory memory) {
    if (book.isEmpty()) {
      return;
    }
    guarded(
        () -> {
          troubles.addAll(book.get().problems());
          book.get().labels().forEach(label -> recall(memory, label));
          book.get().lawns().forEach(lawn -> recall(memory, lawn));
          book.get()
              .sprayers()
              .forEach(s -> memory.sprayerCards().put(Memory.key(s.name()), s, SAVED));
          if (memory.sprayerCards().names().size() == 1) {
            memory.sprayerCards().names().forEach(memory::chooseSprayer);
          }
        });
  }

  /** Puts a saved label into a memory. */
  static void recall(Memory memory, Label label) {
    String name = Memory.key(label.name());
    memory.labelCards().put(name, label, SAVED);
    LabelFacts.doses(label).forEach(fact -> memory.label(name, fact, SAVED));
  }

  /** Puts a saved lawn into a memory. */
  static void recall(Memory memory, Lawn lawn) {
    String name = Memory.key(lawn.name());
    memory.lawnCards().put(name, lawn, SAVED);
    List<Fact> ground = new ArrayList<>();
    if (lawn.pieces().isEmpty()) {
      lawn.area().ifPresent(a -> ground.add(Fact.of("area", a, Shown.of(a), 0).of(name)));
    }
    lawn.pieces()
        .forEach(p -> ground.add(Fact.of("area", p.area(), Shown.of(p.area()), 0).of(name)));
    if (!ground.isEmpty()) {
      memory.lawn(name, ground, SAVED);
    }
  }

  /** Saves the labels, lawns and sprayers that were told in this turn. */
  void keep(Memory memory, int turn) {
    if (book.isEmpty()) {
      return;
    }
    memory.labelCards().changedIn(turn).forEach(label -> guarded(() -> book.get().save(label)));
    lawnsTold(memory, turn);
    memory.lawnCards().changedIn(turn).forEach(lawn -> guarded(() -> book.get().save(lawn)));
    memory
        .sprayerCards()
        .changedIn(turn)
        .forEach(sprayer -> guarded(() -> book.get().save(sprayer)));
  }

  /** Carries the ground of the lawns that was told in this turn into their cards. */
  private static void lawnsTold(Memory memory, int turn) {
    for (String name : memory.lawnNames()) {
      List<Memory.Told> ground = memory.lawn(name);
      if (ground.stream().anyMatch(t -> t.turn() == turn)) {
        Lawn lawn = memory.lawnCards().get(name).orElseGet(() -> Lawn.named(name));
        ground(ground).ifPresent(a -> memory.lawnCards().put(name, lawn.withArea(a), turn));
      }
    }
  }

  private static Optional<plainsward.units.Quantity> ground(List<Memory.Told> told) {
    try {
      return Ground.together(told.stream().map(Memory.Told::fact).toList())
          .filter(area -> area.signum() > 0);
    } catch (NotDosable | DimensionMismatch noGround) {
      return Optional.empty();
    }
  }

  /** Makes the saved records as they were before what is taken back was told. */
  void restore(Memory before, Memory after) {
    if (book.isEmpty()) {
      return;
    }
    forget(gone(after.labelCards().names(), before.labelCards().names()), Set.of());
    forget(Set.of(), gone(after.lawnCards().names(), before.lawnCards().names()));
    gone(after.sprayerCards().names(), before.sprayerCards().names())
        .forEach(name -> guarded(() -> book.get().forgetSprayer(name)));
    changed(before.labelCards(), after.labelCards())
        .forEach(label -> guarded(() -> book.get().save(label)));
    changed(before.lawnCards(), after.lawnCards())
        .forEach(lawn -> guarded(() -> book.get().save(lawn)));
    changed(before.sprayerCards(), after.sprayerCards())
        .forEach(sprayer -> guarded(() -> book.get().save(sprayer)));
  }

  private static Set<String> gone(Set<String> after, Set<String> before) {
    Set<String> added = new java.util.LinkedHashSet<>(after);
    added.removeAll(before);
    return added;
  }

  private static <T> List<T> changed(Cards<T> before, Cards<T> after) {
    return before.names().stream()
        .filter(name -> !before.get(name).equals(after.get(name)))
        .flatMap(name -> before.get(name).stream())
        .toList();
  }

  /** Forgets saved labels and lawns; the log keeps its entries. */
  void forget(Iterable<String> labels, Iterable<String> lawns) {
    if (book.isPresent()) {
      labels.forEach(name -> guarded(() -> book.get().forgetLabel(name)));
      lawns.forEach(name -> guarded(() -> book.get().forgetLawn(name)));
    }
  }
}
