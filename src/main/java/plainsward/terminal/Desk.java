package plainsward.terminal;

import java.time.LocalDate;
import java.util.Optional;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** Opens conversations as the command line chose; the only place that makes a setting. */
final class Desk {
  private final Choices choices;
  private final Surroundings around;

  Desk(Choices choices, Surroundings around) {
    this.choices = choices;
    this.around = around;
  }

  /** A conversation with nothing remembered, as chosen on the command line. */
  Answering open() {
    return open(Optional.empty(), Optional.empty());
  }

  /** The same, but for a date and measures of its own. */
  Answering open(Optional<LocalDate> today, Optional<UnitSystem> units) {
    LocalDate date = today.or(choices::today).orElseGet(() -> LocalDate.now(around.clock()));
    return around.opening().apply(new Setting(date, units.orElse(choices.units())));
  }
}
