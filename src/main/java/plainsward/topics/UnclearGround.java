package plainsward.topics;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;

/**
 * Two areas of which nobody said whether one is a part of the other, or a size by comparison: asked
 * about, never added or guessed.
 */
public final class UnclearGround {
  private UnclearGround() {}

  /** The question back, where the areas of this turn leave it open; else nothing. */
  public static Optional<Reply> check(Request request) {
    if (request.turn().has("told_part")) {
      return part(request);
    }
    if (request.says("size-compared") && !request.has("area") && !request.has("shape")) {
      return Optional.of(
          new Sheet(request, "mix")
              .ask(
                  "How many square feet is that, or how long and wide in steps? What it is as big as "
                      + "is too rough for a dose.",
                  "area"));
    }
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

  /** "the front is a third of 9k": whether that third or all of it is to be treated. */
  private static Optional<Reply> part(Request request) {
    Ratio part = request.turn().first("told_part").orElseThrow().amount().value();
    return Ground.of(request)
        .map(
            whole ->
                new Sheet(request, "mix")
                    .ask(
                        "Which is to be treated: the whole "
                            + Shown.of(whole)
                            + ", or the part of it, "
                            + Shown.of(whole.times(part))
                            + "?",
                        "area"));
  }
}
