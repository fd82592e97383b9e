package plainsward.topics;

import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Unit;

/**
 * A limit that the label in hand gives. One that was told for a kept label says what it is about;
 * one that is told in a question is known by its unit alone.
 */
final class LabelLimit {
  private LabelLimit() {}

  /**
   * The limit about something, or one of this kind of unit that doesn't say what it is about.
   *
   * @param about such as {@code heat} or {@code rain-free}
   */
  static Optional<Quantity> of(Request request, String about, Unit like) {
    return named(request, about)
        .or(() -> request.find("label_limit", k -> isUnnamed(k, like)).map(Known::amount));
  }

  /** The limit that a kept label gives about something. */
  static Optional<Quantity> named(Request request, String about) {
    return told(request, about).map(Known::amount);
  }

  /** The limit that a kept label gives about something, with where it is from. */
  static Optional<Known> told(Request request, String about) {
    return request.find("label_limit", k -> isAbout(k, about));
  }

  private static boolean isAbout(Known known, String about) {
    return known.fact().word().equals(Optional.of(about)) && known.fact().value().isPresent();
  }

  private static boolean isUnnamed(Known known, Unit like) {
    return known.fact().word().isEmpty()
        && known.fact().value().isPresent()
        && known.amount().dimension().equals(like.dimension());
  }

  /** Whether the label says to keep off until the spray is dry. */
  static boolean isUntilDry(Request request) {
    return request
        .find("label_limit", k -> k.fact().word().equals(Optional.of("until-dry")))
        .isPresent();
  }
}
