package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** Puts together what was said in pieces: lists, crooked edges, three sides of a trapezoid. */
final class Assembler {
  private static final Set<String> DENIED = Set.of("dont", "not", "havent", "isnt", "never");
  private static final Set<String> NO = Set.of("no");
  private static final Set<String> OF_PARTS = Set.of("part_of", "strength");
  private static final Set<String> OWNING = Set.of("have", "own", "got", "an", "do", "dont");
  private static final int BACK = 6;
  private static final Set<String> OLD = Set.of("last", "old");
  private static final Set<String> USES = Set.of("uses", "used", "runs", "does", "puts", "sprays");
  private static final Set<String> OTHERS =
      Set.of("buddy", "neighbor", "friend", "brother", "dad", "uncle", "cousin", "guy", "everyone");
  private static final Set<String> ROUND = Set.of("circle", "round", "circular", "moon");
  private static final Set<String> GROUND = Set.of("area", "shape", "test_area");
  private static final Set<String> LENGTHS =
      Set.of("length", "distance", "swath", "side", "height", "rainfall");
  private static final Set<String> CALIBRATING =
      Set.of("nozzle_flow", "walk_speed", "walk_time", "shape");
  private static final Map<String, String> FORMS =
      Map.of(
          "triangle",
          "triangle",
          "triangular",
          "triangle",
          "trapezoid",
          "trapezoid",
          "trapezium",
          "trapezoid",
          "oval",
          "ellipse",
          "ellipse",
          "ellipse",
          "elliptical",
          "ellipse",
          "circular",
          "circle",
          "circle",
          "circle");
  private static final Set<String> CHANGED =
      Set.of(
          "went",
          "goes",
          "gone",
          "changed",
          "change",
          "moved",
          "dropped",
          "rose",
          "came",
          "jumped",
          "fell",
          "raised",
          "lowered",
          "switched");
  private static final Set<String> REPLACING =
      Set.of("but", "wait", "scratch", "oops", "whoops", "correction");
  private static final int MOST_BETWEEN = 4;
  private final Passage passage;
  private final Unit usual;

  Assembler(Passage passage) {
    this.passage = passage;
    this.usual = passage.system() == UnitSystem.METRIC ? Units.METRE : Units.FOOT;
  }

  List<Fact> assembled(List<Fact> facts) {
    List<Fact> all = new ArrayList<>(facts);
    all.replaceAll(this::unlisted);
    changes(all);
    all.replaceAll(this::eachTwice);
    new RatePieces(passage).join(all);
    halfCircles(all);
    String form = form();
    if (!form.isEmpty()) {
      reshape(all, form);
    }
    corrections(all);
    new SprayerFacts(passage).join(all);
    new UsedUp(passage).join(all);
    if (passage.hasWord(Triggers.JUGS)) {
      new Jugs(passage).join(all);
    }
    new CoverPairs(passage).join(all);
    new BottlePairs(passage).join(all);
    new PricePairs(passage).join(all);
    new InTank(passage).join(all);
    new Dials(passage).join(all);
    new CountedFacts(passage).join(all);
    offsets(all);
    longAndWide(all);
    new AreaLists(passage).join(all);
    all.removeIf(this::isDenied);
    alsoLeftOut(all);
    onlyPieceIsLawn(all);
    replacedByBut(all);
    oldRates(all);
    new Beside(passage).join(all);
    comparisons(all);
    return all;
  }

  /** What is taken back, and what is a part or the rest of something told. */
  private void corrections(List<Fact> all) {
    if (all.isEmpty()) {
      return;
    }
    if (passage.hasWord(Triggers.PIECES)) {
      new Packets(passage).join(all);
    }
    if (all.size() < 2) {
      return;
    }
    if (passage.hasWord(Triggers.TAKEN_BACK) || passage.hasWord(NO)) {
      new Corrected(passage).join(all);
    }
    if (!Facts.named(all, OF_PARTS).isEmpty()) {
      new Parts(passage).join(all);
    }
    if (passage.hasWord(Triggers.USED)) {
      new MixLeft(passage).join(all);
    }
    if (passage.hasWord(Triggers.ASKS)) {
      new Takes(passage).join(all);
    }
  }

  /** What is held against something else: days of lawns, rates that were taken, what went down. */
  private void comparisons(List<Fact> all) {
    if (passage.hasWord(Triggers.PER_ASKED)) {
      new PerAsked(passage).join(all);
    }
    if (Facts.named(all, Triggers.DAYS).size() > 1) {
      new DatedLawns(passage).join(all);
    }
    if (Facts.named(all, Triggers.RATES).size() == 2) {
      new ToldRates(passage).join(all);
    }
    if (!Facts.named(all, Triggers.PRODUCT).isEmpty()) {
      new Laid(passage).join(all);
    }
  }

  /** "I don't have an acre" gives no area. */
  private boolean isDenied(Fact fact) {
    return fact.name().equals("area")
        && passage.before(fact.at(), 3, DENIED)
        && passage.before(fact.at(), 3, OWNING);
  }

  /**
   * "less a 40x60 barn and a 30x30 garden": what goes on after what is left out is left out too.
   */
  private void alsoLeftOut(List<Fact> all) {
    for (int i = 1; i < all.size(); i++) {
      Fact before = all.get(i - 1);
      Fact here = all.get(i);
      boolean goesOn =
          before.name().startsWith("minus")
              && here.name().equals("shape")
              && passage.in(here.at() - 1, Set.of("a", "an", "the"))
              && passage.in(here.at() - 2, Set.of("and", ",", "plus"))
              && here.at() - passage.end(before) <= MOST_BETWEEN;
      if (goesOn) {
        all.set(i, here.as("minus_shape"));
      }
    }
  }

  /** "round bed 28 ft across" alone is no piece to leave out, unless earlier words gave a lawn. */
  private static void onlyPieceIsLawn(List<Fact> all) {
    boolean other = all.stream().anyMatch(f -> GROUND.contains(f.name()));
    for (int i = 0; i < all.size(); i++) {
      Fact fact = all.get(i);
      if (fact.name().equals("minus_shape") && !other) {
        all.set(i, fact.as("shape").doubting(List.of("left-out")));
      } else if (fact.name().equals("test_shape")) {
        all.set(i, fact.as("shape"));
      }
    }
  }

  /** "paced 12k but the map says 11,200": the later figure stands. */
  private void replacedByBut(List<Fact> all) {
    List<Fact> areas =
        all.stream().filter(f -> f.name().equals("area") && f.owner().isEmpty()).toList();
    for (int i = 1; i < areas.size(); i++) {
      Fact earlier = areas.get(i - 1);
      Fact later = areas.get(i);
      for (int t = earlier.at(); t < later.at(); t++) {
        if (passage.in(t, REPLACING)) {
          all.remove(earlier);
        }
      }
    }
  }

  /**
   * A rate of another year or another product gives way to what this label says; of several years
   * the latest counts.
   */
  private void oldRates(List<Fact> all) {
    List<Fact> rates = new ArrayList<>();
    List<Fact> kept = new ArrayList<>();
    for (Fact fact : all) {
      if (fact.name().equals("label_rate")) {
        rates.add(fact);
        boolean old =
            passage.before(fact.at(), BACK, OLD) || isGivenUp(fact.at()) || isAnothers(fact.at());
        kept.addAll(old ? List.of() : List.of(fact));
      }
    }
    if (rates.size() > 1 && !kept.isEmpty()) {
      rates.removeAll(latest(kept, all));
      all.removeAll(rates);
    }
  }

  /** The rates that no year stands before, else those of the latest year. */
  private List<Fact> latest(List<Fact> rates, List<Fact> all) {
    List<Fact> latest = new ArrayList<>();
    int newest = 0;
    for (Fact rate : rates) {
      int year = year(rate.at(), all);
      int order = year == 0 ? Integer.MAX_VALUE : year;
      if (order > newest) {
        latest.clear();
        newest = order;
      }
      latest.addAll(order == newest ? List.of(rate) : List.of());
    }
    return latest;
  }

  /** The year that stands shortly before, as in "in 2021 it said 2 oz", and is no measure; or 0. */
  private int year(int at, List<Fact> all) {
    for (int i = at - 1; i >= 0 && i >= at - BACK; i--) {
      if (isYear(passage.word(i)) && !isMeasured(i, all)) {
        return Integer.parseInt(passage.word(i));
      }
    }
    return 0;
  }

  private static boolean isYear(String word) {
    boolean four = word.length() == 4 && (word.startsWith("19") || word.startsWith("20"));
    return four && Character.isDigit(word.charAt(2)) && Character.isDigit(word.charAt(3));
  }

  private static boolean isMeasured(int at, List<Fact> all) {
    for (Fact fact : all) {
      if (fact.at() == at && !fact.name().equals("number")) {
        return true;
      }
    }
    return false;
  }

  /** "my buddy uses 2 oz per thousand". */
  private boolean isAnothers(int at) {
    return passage.before(at, 3, USES) && passage.before(at, 5, OTHERS);
  }

  /** "I used to use 2 oz per thousand". */
  private boolean isGivenUp(int at) {
    for (int i = at - 1; i > 0 && i > at - 6; i--) {
      if (passage.word(i).equals("to") && passage.word(i - 1).equals("used")) {
        return true;
      }
    }
    return false;
  }

  /** "output went from 1.0 to 1.3": no range but a change, and what it came to counts. */
  private void changes(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact fact = all.get(i);
      boolean changed =
          fact.high().isPresent()
              && (passage.before(fact.at(), 2, CHANGED)
                  || passage.before(fact.at(), 3, CHANGED)
                      && passage.in(fact.at() - 1, Set.of("from")));
      if (changed) {
        all.set(i, fact.with(fact.high().get(), Optional.empty()));
        all.add(i, fact.as("old_" + fact.name()).with(fact.amount(), Optional.empty()));
        i++;
      }
    }
  }

  /** "half circle 50 ft across", "semicircle". */
  private void halfCircles(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact fact = all.get(i);
      boolean round =
          fact.name().endsWith("shape") && fact.word().orElse("").equals("circle") && isHalved();
      if (round) {
        all.set(i, fact.worded("semicircle"));
      }
    }
  }

  private boolean isHalved() {
    for (int i = 0; i < passage.tokens().size(); i++) {
      int next = passage.in(i + 1, Set.of("-", "a")) ? i + 2 : i + 1;
      boolean half = passage.in(i, Set.of("half", "semi")) && passage.in(next, ROUND);
      if (half || passage.in(i, Set.of("semicircle", "semicircular"))) {
        return true;
      }
    }
    return false;
  }

  private String form() {
    return passage.tokens().stream()
        .map(t -> FORMS.getOrDefault(t.norm(), ""))
        .filter(f -> !f.isEmpty())
        .findFirst()
        .orElse("");
  }

  private Fact unlisted(Fact fact) {
    if (!fact.name().equals("listed")) {
      return fact;
    }
    boolean area = fact.amount().dimension().equals(Dimension.AREA);
    return fact.as(area ? "area" : "listed_volume");
  }

  /** "sides are 450 each": a plural lawn name with "each" counts twice. */
  private Fact eachTwice(Fact fact) {
    boolean plural = fact.owner().endsWith("sides") || fact.owner().endsWith("strips");
    int end = fact.at() + 1;
    boolean each = passage.after(end, 4, Set.of("each", "apiece"));
    return fact.name().equals("area") && plural && each
        ? fact.with(fact.amount().times(Ratio.of(2)), Optional.empty()).worded("each-twice")
        : fact;
  }

  private void reshape(List<Fact> all, String form) {
    List<Fact> lengths = all.stream().filter(Assembler::isLength).toList();
    for (int i = 0; i < all.size(); i++) {
      Fact fact = all.get(i);
      if (fact.name().equals("shape") && reshapes(form, fact) && isNamed(form, fact, all)) {
        all.set(i, fact.worded(form));
        return;
      }
    }
    int wanted = form.equals("trapezoid") ? 3 : form.equals("circle") ? 1 : 2;
    List<Quantity> sides = new ArrayList<>(lengths.stream().map(Fact::amount).toList());
    List<Fact> used = new ArrayList<>(lengths);
    for (Fact fact : all) {
      if (fact.name().equals("number") && sides.size() < wanted && fact.value().isPresent()) {
        sides.add(new Quantity(fact.amount().value(), usual));
        used.add(fact);
      }
    }
    if (sides.size() == wanted || (form.equals("triangle") && sides.size() == 3)) {
      all.removeAll(used);
      String words = String.join(", ", used.stream().map(Fact::said).toList());
      all.add(Fact.shape(form, inOrder(used), words, used.get(0).at()));
    }
  }

  /**
   * Of several pieces the one that the form's word stands beside: "30x50, plus a triangle 20x30".
   */
  private boolean isNamed(String form, Fact piece, List<Fact> all) {
    if (Facts.named(all, Set.of("shape")).size() < 2) {
      return true;
    }
    for (int i = piece.at() - 1; i >= Math.max(0, piece.at() - MOST_BETWEEN); i--) {
      if (form.equals(FORMS.get(passage.word(i)))) {
        return true;
      }
    }
    int end = passage.end(piece);
    return form.equals(FORMS.get(passage.word(end)))
        || form.equals(FORMS.get(passage.word(end + 1)));
  }

  private List<Quantity> inOrder(List<Fact> used) {
    return used.stream()
        .sorted((a, b) -> Integer.compare(a.at(), b.at()))
        .map(
            f ->
                f.amount().dimension().equals(Dimension.LENGTH)
                    ? f.amount()
                    : new Quantity(f.amount().value(), usual))
        .toList();
  }

  private static boolean reshapes(String form, Fact fact) {
    int sides = fact.sides().size();
    return switch (form) {
      case "triangle" -> sides == 2 || sides == 3;
      case "ellipse" -> sides == 2;
      case "trapezoid" -> sides == 3;
      default -> false;
    };
  }

  private static boolean isLength(Fact fact) {
    return LENGTHS.contains(fact.name())
        && fact.value().isPresent()
        && fact.amount().dimension().equals(Dimension.LENGTH);
  }

  /** "55 feet long 38 feet wide" is a rectangle, whatever else it is for. */
  private void longAndWide(List<Fact> all) {
    List<Fact> lengths = all.stream().filter(Assembler::isLength).toList();
    if (lengths.size() != 2) {
      return;
    }
    boolean words = passage.hasWord(Set.of("long", "of")) && passage.hasWord(Set.of("wide"));
    boolean calibrating = all.stream().anyMatch(f -> CALIBRATING.contains(f.name()));
    if (!words || calibrating) {
      return;
    }
    all.removeAll(lengths);
    Fact first = lengths.get(0);
    List<Quantity> sides = List.of(first.amount(), lengths.get(1).amount());
    all.add(
        Fact.shape("rectangle", sides, first.said() + ", " + lengths.get(1).said(), first.at()));
  }

  /** "across every 10 foot: 22 25 31": widths measured at even steps. */
  private void offsets(List<Fact> all) {
    for (int i = 0; i < passage.tokens().size(); i++) {
      if (!passage.word(i).equals("every")) {
        continue;
      }
      int place = i + 1;
      Optional<Fact> step = all.stream().filter(f -> f.at() == place && isLength(f)).findFirst();
      List<Fact> widths =
          all.stream().filter(f -> f.name().equals("number") && f.at() > place).toList();
      if (step.isPresent() && widths.size() >= 3) {
        List<Quantity> sides = new ArrayList<>(List.of(step.get().amount()));
        Unit unit = step.get().amount().unit();
        widths.forEach(w -> sides.add(new Quantity(w.amount().value(), unit)));
        all.removeAll(widths);
        all.removeIf(f -> f.at() < place && f.name().equals("number"));
        all.add(Fact.shape("offsets", sides, passage.said(i, passage.tokens().size()), i));
        return;
      }
    }
  }
}
