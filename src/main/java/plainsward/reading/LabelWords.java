package plainsward.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/**
 * Reads what somebody tells of a label: waits, limits, grasses, gear, rates by use. It is only
 * asked where a label is being told, because "keep off for a day" means something else in a
 * question.
 */
public final class LabelWords {
  private static final int FAR = 9;
  private static final Quantity MILD = Quantity.of(70, Units.FAHRENHEIT);

  /** What a bare amount must be to answer the question for a field. */
  private static final Map<String, String> OPEN =
      Map.of(
          "rain-free", "time",
          "mow-after", "time",
          "water", "time",
          "seed-after", "time",
          "new-grass", "time",
          "reentry", "time",
          "interval", "time",
          "wind", "speed");

  private final Facts turn;
  private final List<Token> tokens;
  private final UnitSystem system;
  private final List<PhraseBook.Found<LabelBook.Cue>> cues;
  private final List<Detail> details = new ArrayList<>();
  private final Set<Integer> claimed = new HashSet<>();
  private final String open;

  private LabelWords(Facts turn, String open, UnitSystem system) {
    this.turn = turn;
    this.open = open;
    this.tokens = turn.tokens();
    this.system = system;
    this.cues = LabelBook.cues(tokens);
  }

  /**
   * What a turn tells of a label, in the order said.
   *
   * @param open the field that was asked for, which an amount alone answers; or empty
   */
  public static List<Detail> read(Facts turn, String open, UnitSystem system, LocalDate today) {
    LabelWords words = new LabelWords(turn, open, system);
    words.amounts(new Scanner(turn.tokens(), system, today).mentions());
    words.words();
    words.details.addAll(
        new LabelRates(turn, words.cues, words.claimed, open.equals("active")).details());
    words.details.addAll(new LabelNames(turn, words.cues, open).details());
    words.details.sort((a, b) -> Integer.compare(a.at(), b.at()));
    return List.copyOf(words.details);
  }

  /** The fields of a label that words are about, in a question as in telling. */
  public static Set<String> fields(Facts turn) {
    Set<String> fields = new HashSet<>();
    LabelBook.cues(turn.tokens()).forEach(cue -> fields.add(cue.meaning().field()));
    fields.removeAll(Set.of("use", "grass"));
    return fields;
  }

  private String said(int from, int to) {
    return turn.text().substring(tokens.get(from).start(), tokens.get(to - 1).end());
  }

  private void amounts(List<Mention> mentions) {
    for (Mention mention : mentions) {
      if (mention instanceof Mention.Wait wait) {
        wait(wait);
      } else if (mention instanceof Mention.Amount amount && !amount.said().implied()) {
        amount(amount.said());
      } else if (mention instanceof Mention.Bare bare) {
        bare(bare.number());
      } else if (mention instanceof Mention.Times times && !times.aYear()) {
        mowings(times.from(), times.to(), times.count());
      }
    }
    ordinalMowing();
  }

  private void wait(Mention.Wait wait) {
    boolean months = wait.unit() == Mention.Span.MONTHS;
    Quantity count = Quantity.of(wait.high().orElse(wait.low()), unit(wait.unit()));
    String field = field("time", wait.from(), wait.to());
    if (!field.isEmpty() && !field.equals("interval")) {
      String said = said(wait.from(), wait.to());
      timed(
          new Detail(field, "", Optional.of(count), Optional.empty(), months, wait.from(), said),
          wait.to());
    }
  }

  private static Unit unit(Mention.Span span) {
    return switch (span) {
      case DAYS -> Units.DAY;
      case WEEKS -> Unit.of("wk");
      case MONTHS -> Units.ONE;
    };
  }

  private void amount(Measured said) {
    String words = said(said.from(), said.to());
    if (said.is(Dimension.TEMPERATURE)) {
      temperature(said.low(), said.high(), said.from(), words);
    } else if (said.is(Dimension.SPEED)) {
      add(
          Detail.amount(
              "wind", said.high().orElse(said.low()), Optional.empty(), said.from(), words));
    } else if (said.is(Dimension.TIME)) {
      String field = field("time", said.from(), said.to());
      if (!field.isEmpty()) {
        Quantity longest = said.high().orElse(said.low());
        timed(Detail.amount(field, longest, Optional.empty(), said.from(), words), said.to());
      }
    } else if (said.is(Dimension.LENGTH) && !field("length", said.from(), said.to()).isEmpty()) {
      add(Detail.amount("water-in", said.low(), said.high(), said.from(), words));
    }
  }

  /** A limit above mild air is one of heat, another one of cold; a range has both. */
  private void temperature(Quantity low, Optional<Quantity> high, int at, String said) {
    if (high.isPresent()) {
      add(Detail.amount("cold", low, Optional.empty(), at, said));
      add(Detail.amount("heat", high.get(), Optional.empty(), at, said));
      return;
    }
    String field = low.compareTo(MILD) > 0 ? "heat" : "cold";
    add(Detail.amount(field, low, Optional.empty(), at, said));
  }

  private void bare(Numeral number) {
    String said = said(number.from(), number.to());
    if (mowings(number.from(), number.to(), number.low().ceiling().intValue())) {
      return;
    }
    boolean metric = system == UnitSystem.METRIC;
    boolean wind = !field("speed", number.from(), number.to()).isEmpty();
    boolean known = details.stream().anyMatch(d -> d.field().matches("heat|cold"));
    boolean air =
        known && follows("above|below|under|over|than|hotter|colder", number.from())
            || !field("temperature", number.from(), number.to()).isEmpty();
    if (wind) {
      Quantity speed = new Quantity(number.low(), metric ? Unit.of("km/h") : Units.MILE_PER_HOUR);
      add(Detail.amount("wind", speed, Optional.empty(), number.from(), said));
    } else if (open.equals("heat") || air) {
      Quantity degrees = new Quantity(number.low(), metric ? Units.CELSIUS : Units.FAHRENHEIT);
      temperature(degrees, Optional.empty(), number.from(), said);
    } else if (open.equals("rain-free")) {
      Quantity hours = new Quantity(number.low(), Units.HOUR);
      add(Detail.amount("rain-free", hours, Optional.empty(), number.from(), said));
    }
  }

  /** Whether such a word stands right before a place. */
  private boolean follows(String words, int at) {
    return at > 0 && tokens.get(at - 1).norm().matches(words);
  }

  /** "mowed 3 times" of new grass. */
  private boolean mowings(int from, int to, int count) {
    boolean grass =
        open.equals("new-grass") || !LabelBook.of(cues, "new-grass", "seed-after").isEmpty();
    boolean mown = grass && near(from, to, "mow");
    if (mown) {
      add(
          Detail.amount(
              "new-grass-mowings",
              Quantity.of(count, Units.ONE),
              Optional.empty(),
              from,
              said(from, to)));
    }
    return mown;
  }

  private void ordinalMowing() {
    List<String> ordinals = List.of("first", "second", "third", "fourth", "fifth");
    for (int i = 0; i + 1 < tokens.size(); i++) {
      int count = ordinals.indexOf(tokens.get(i).norm()) + 1;
      if (count > 0 && tokens.get(i + 1).norm().startsWith("mow")) {
        mowings(i, i + 1, count);
      }
    }
  }

  private boolean near(int from, int to, String stem) {
    for (int i = Math.max(0, from - 3); i < Math.min(tokens.size(), to + 3); i++) {
      if (tokens.get(i).norm().startsWith(stem)) {
        return true;
      }
    }
    return false;
  }

  private void timed(Detail detail, int to) {
    if (!detail.field().startsWith("mow")) {
      boolean depth = detail.field().equals("water") && near(to - 4, to, "within");
      add(depth ? detail.as("water-in-within") : detail);
      return;
    }
    boolean[] sides = sides(to);
    if (sides[0]) {
      add(detail.as("mow-before"));
    }
    if (sides[1] || !sides[0]) {
      add(detail.as("mow-after"));
    }
  }

  /** Whether "before" and "after" stand behind an amount; "before you mow" is a wait after. */
  private boolean[] sides(int to) {
    boolean[] sides = new boolean[2];
    for (int i = to; i < Math.min(tokens.size(), to + 3); i++) {
      Token token = tokens.get(i);
      if (token.endsSentence() || token.is(",")) {
        break;
      }
      boolean ofMowing =
          i + 2 < tokens.size()
              && (tokens.get(i + 1).norm().startsWith("mow")
                  || tokens.get(i + 2).norm().startsWith("mow"));
      sides[0] |= token.is("before") && !ofMowing;
      sides[1] |= token.is("after") && !ofMowing;
    }
    return sides;
  }

  private void add(Detail detail) {
    details.add(detail);
    claimed.add(detail.at());
  }

  /** The field whose words stand nearest to an amount, else the one that was asked for. */
  private String field(String takes, int from, int to) {
    int best = FAR;
    String field = "";
    for (PhraseBook.Found<LabelBook.Cue> cue : cues) {
      int gap = cue.meaning().takes().equals(takes) ? gap(cue, from, to) : FAR;
      if (gap < best) {
        best = gap;
        field = cue.meaning().field();
      }
    }
    boolean answer = field.isEmpty() && OPEN.getOrDefault(open, "").equals(takes);
    return answer ? open : field;
  }

  private int gap(PhraseBook.Found<LabelBook.Cue> cue, int from, int to) {
    if (cue.from() < to && from < cue.to()) {
      return 0;
    }
    boolean before = cue.to() <= from;
    int first = before ? cue.to() : to;
    int last = before ? from : cue.from();
    int gap = last - first + (before ? 0 : 1);
    for (int i = first; i < last; i++) {
      if (tokens.get(i).endsSentence()) {
        return FAR;
      }
      gap += tokens.get(i).is(",") ? 4 : tokens.get(i).is("and") || tokens.get(i).is("but") ? 2 : 0;
    }
    return gap;
  }

  /** Fields that are words alone. */
  private void words() {
    for (PhraseBook.Found<LabelBook.Cue> cue :
        LabelBook.of(cues, "form", "state", "wetting-agent", "reentry", "gear")) {
      LabelBook.Cue meant = cue.meaning();
      boolean first =
          details.stream()
              .noneMatch(d -> d.field().equals(meant.field()) && d.item().equals(meant.item()));
      if (!meant.item().isEmpty() && first) {
        details.add(
            Detail.word(meant.field(), meant.item(), cue.from(), said(cue.from(), cue.to())));
      }
    }
  }
}
