package plainsward.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;

/** What the recognisers find in a text, as amounts with places, whatever role they play. */
final class PeerReading {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  /**
   * One amount.
   *
   * @param value the value, in the unit
   * @param unit its code; {@code 1} for a bare number
   * @param from its first character in the cleaned text
   * @param to the place after its last
   */
  record Found(Ratio value, String unit, int from, int to) {}

  private final List<Token> tokens;
  private final List<Found> found = new ArrayList<>();

  private PeerReading(String text) {
    String cleaned = Cleaner.clean(text);
    this.tokens = Spelling.shipped().mended(Tokens.joined(Tokenizer.tokens(cleaned)));
  }

  /** The amounts with units, the prices and the waits. */
  static List<Found> amounts(String text) {
    PeerReading reading = new PeerReading(text);
    new Scanner(reading.tokens, UnitSystem.US, TODAY).mentions().forEach(reading::take);
    return reading.found;
  }

  /** The numbers, read one after the other, whether or not a unit follows. */
  static List<Found> numbers(String text) {
    PeerReading reading = new PeerReading(text);
    NumeralReader numerals = new NumeralReader(reading.tokens);
    int i = 0;
    while (i < reading.tokens.size()) {
      Optional<Numeral> numeral = numerals.at(i);
      numeral.ifPresent(n -> reading.add(n.low(), n.high(), "1", n.from(), n.to()));
      i = numeral.map(Numeral::to).filter(to -> to > 0).orElse(i + 1);
    }
    return reading.found;
  }

  private void take(Mention mention) {
    if (mention instanceof Mention.Amount amount) {
      take(amount.said(), mention);
    } else if (mention instanceof Mention.Rate rate) {
      take(rate.top(), mention);
      rate.volume().ifPresent(v -> take(v, mention));
      rate.area().ifPresent(a -> take(a, mention));
    } else if (mention instanceof Mention.Bare bare) {
      add(bare.number().low(), bare.number().high(), "1", mention.from(), mention.to());
    } else if (mention instanceof Mention.Piece piece) {
      piece.sides().forEach(side -> add(side, mention));
    } else if (mention instanceof Mention.Price price) {
      add(price.money(), mention);
      price.high().ifPresent(high -> add(high, mention));
    } else if (mention instanceof Mention.Wait wait) {
      String unit = wait.unit().name();
      Optional<Ratio> high = wait.high().map(Ratio::of);
      add(Ratio.of(wait.low()), high, unit, mention.from(), mention.to());
    }
  }

  private void take(Measured measured, Mention mention) {
    if (!measured.implied()) {
      add(measured.low(), mention);
      measured.high().ifPresent(high -> add(high, mention));
      measured.dry().ifPresent(dry -> add(measured.low().value(), dry, mention));
    }
  }

  private void add(Quantity amount, Mention mention) {
    add(amount.value(), amount.unit(), mention);
  }

  private void add(Ratio value, Unit unit, Mention mention) {
    add(value, Optional.empty(), unit.code(), mention.from(), mention.to());
  }

  private void add(Ratio low, Optional<Ratio> high, String unit, int from, int to) {
    int start = tokens.get(from).start();
    int end = tokens.get(Math.min(to, tokens.size()) - 1).end();
    found.add(new Found(low, unit, start, end));
    high.ifPresent(h -> found.add(new Found(h, unit, start, end)));
  }
}
