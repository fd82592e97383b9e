package plainsward.reading;

import java.util.List;
import java.util.Set;
import plainsward.trade.MeasureWords;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/** "quart is 45 bucks", "got the quart bottle": a size without a number is one container of it. */
final class BareSizes {
  private static final Set<String> BEFORE =
      Set.of("the", "my", "got", "have", "bought", "this", "that", "and", "so", "same");
  private static final Set<String> COSTS =
      Set.of("is", "costs", "cost", "runs", "was", "for", "at");
  private static final Set<String> VESSELS = Set.of("jug", "bottle", "container");

  private final Passage passage;

  BareSizes(Passage passage) {
    this.passage = passage;
  }

  /** Adds the container, where none is told and money or a vessel shows what the size is. */
  void join(List<Fact> all) {
    boolean held = all.stream().anyMatch(fact -> fact.name().equals("container"));
    if (held) {
      return;
    }
    boolean money = !Facts.named(all, Set.of("price")).isEmpty();
    for (int i = 0; i < passage.tokens().size(); i++) {
      boolean alone =
          passage.in(i, Triggers.SIZES)
              && (i == 0
                  || passage.in(i - 1, BEFORE)
                  || !passage.isWord(i - 1) && !passage.isNumber(i - 1));
      boolean sold = passage.in(i + 1, VESSELS) || money && passage.in(i + 1, COSTS);
      if (alone && sold) {
        String size = passage.word(i);
        Unit unit = MeasureWords.shipped().find(size).orElseThrow().in(passage.system());
        all.removeIf(fact -> passage.in(fact.at(), Set.of(size)));
        all.add(Fact.of("container", Quantity.of(1, unit), size, i));
        return;
      }
    }
  }
}
