package plainsward.talk;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plainsward.reading.Fact;
import plainsward.reply.Understood;
import plainsward.topics.Known;

/**
 * How a talk stands when the next question comes, so that nothing stale is used unseen.
 *
 * @param known the lawn's pieces, the tank, the label's rate and the spray rate, by the contract's
 *     names; {@code said} is the user's own name for the lawn or the label, or empty, and for a
 *     piece told by its sides the words themselves
 * @param names the user's own names of lawns and labels
 * @param needs what was asked for and not yet told, by the contract's names
 */
public record Standing(List<Understood> known, Set<String> names, List<String> needs) {
  /** Nothing known, named or asked for. */
  public static final Standing NOTHING = new Standing(List.of(), Set.of(), List.of());

  private static final List<String> ROLES =
      List.of("area", "tank", "label_rate", "strength", "spray_rate");

  static Standing of(Memory memory, Pending pending) {
    List<Understood> known = new ArrayList<>();
    for (String role : ROLES) {
      for (Memory.Told told : memory.all(role)) {
        Fact fact = told.fact();
        Understood read = new Known(fact, "earlier").understood();
        String owner = fact.owner();
        String said = fact.value().isPresent() ? owner : (owner + " " + fact.said()).strip();
        known.add(new Understood(role, read.value(), read.high(), read.word(), said, read.from()));
      }
    }
    Set<String> names = new LinkedHashSet<>(memory.lawnNames());
    names.addAll(memory.labelNames());
    return new Standing(known, names, pending.needs());
  }
}
