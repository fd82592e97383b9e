package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;

/** Two areas of which nobody said whether one is a part of the other: asked about, never added. */
public final class UnclearGround {
  private UnclearGround() {}

  /** The question back, where the areas of this turn leave it open; else nothing. */
  public static Optional<Reply> check(Request request) {
    List<Fact> areas = request.turn().of("area");
    boolean open = areas.size() == 2 && areas.get(1).leavesOpen("beside");
    if (!open) {
      return Optional.empty();
    }
    Quantity first = areas.get(0).amount();
    Quantity second = areas.get(1).amount();
    return Optional.of(
        new Sheet(request, "mix")
            .ask(
                "Which area is to be treated: "
                    + Shown.of(first)
                    + ", "
                    + Shown.of(second)
                    + ", or both together, "
                    + Shown.of(first.plus(second))
                    + "?",
                "area"));
  }
}
