package plainsward.reply;

import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * A piece of ground as it was told, to be drawn.
 *
 * @param shape {@code rectangle}, {@code circle} (its width), {@code radius}, {@code ellipse},
 *     {@code triangle}, {@code trapezoid} (the two equal-running sides, then the height), {@code
 *     offsets} (the spacing, then the widths) or {@code area}
 * @param sides its lengths; none for {@code area}
 * @param area its area, for {@code area}
 * @param isLeftOut whether it is taken off and not treated
 * @param said the words themselves
 */
public record Piece(
    String shape, List<Quantity> sides, Optional<Quantity> area, boolean isLeftOut, String said) {

  /** Copies the sides, so that a piece never changes. */
  public Piece {
    sides = List.copyOf(sides);
  }
}
