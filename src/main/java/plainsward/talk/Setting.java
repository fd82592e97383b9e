package plainsward.talk;

import java.time.LocalDate;
import plainsward.units.UnitSystem;

/**
 * What a conversation reckons with from outside.
 *
 * @param today the date that replies reckon from
 * @param units the measures taken where a question does not tell
 */
public record Setting(LocalDate today, UnitSystem units) {}
