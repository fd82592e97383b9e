package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** Puts together what was said in pieces: lists, crooked edges, three sides of a trapezoid. */
final class Assembler {
  private static final Pattern THOUSANDS = Pattern.compile("(?i)[0-9. ]+ ?(k|thousand).*");
  private static final Set<String> GROUND = Set.of("area", "shape", "test_area");
  private static final Set<String> LENGTHS =
      Set.of("length", "distance", "swath", "side", "height", "rainfall");
  private static final Quantity THOUSAND = Quantity.of(1000, Units.SQUARE_FOOT);
  private static final int MOST_OPTIONS = 12;
  private static final Set<String> LOW = Set.of("low", "lowest", "min", "minimum", "least");
  private static final Set<String> RATES = Set.of("label_rate", "strength");
  private static final Set<String> STEP = Set.of("by", "every", "step", "steps");
  private static final Set<String> PER = Set.of("per", "/", "each", "every");
  private static final Set<String> TANKS =
      Set.of("tank", "sprayer", "rig", "backpack", "knapsack", "skid");
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
  private final Passage passage;
  private final Unit usual;

  Assembler(Passage passage) {
    this.passage = passage;
    this.usual = passage.system() == UnitSystem.METRIC ? Units.METRE : Units.FOOT;
  }

  List<Fact> assembled(List<Fact> facts) {
    List<Fact> all = new ArrayList<>(facts);
    all.replaceAll(this::unlisted);
    all.replaceAll(this::eachTwice);
    shares(all);
    String form = form();
    if (!form.isEmpty()) {
      reshape(all, form);
    }
    perThousand(all);
    leftInTank(all);
    new CoverPairs(passage).join(all);
    new PricePairs(passage).join(all);
    new CountedFacts(passage).join(all);
    lowEnd(all);
    walking(all);
    offsets(all);
    longAndWide(all);
    steps(all);
    options(all);
    all.removeIf(this::isDenied);
    onlyPieceIsLawn(all);
    replacedByBut(all);
    oldRates(all);
    minutesAndSeconds(all);
    bagBeside(all);
    return all;
  }

  /** "2.75 per 1,000 as the max and 1.8 as the low": the low end of the label's range. */
  private void lowEnd(List<Fact> all) {
    for (Fact low : List.copyOf(all)) {
      boolean named =
          low.name().equals("number")
              && low.value().isPresent()
              && (passage.after(low.at() + 1, 3, LOW) || passage.before(low.at(), 2, LOW));
      for (int i = 0; named && i < all.size(); i++) {
        Fact rate = all.get(i);
        boolean below =
            RATES.contains(rate.name())
                && rate.high().isEmpty()
                && low.amount().value().compareTo(rate.amount().value()) < 0;
        if (below) {
          Quantity end = new Quantity(low.amount().value(), rate.amount().unit());
          all.set(i, rate.with(end, Optional.of(rate.amount())));
          all.remove(low);
          return;
        }
      }
    }
  }

  /** "what is that per 1000": no piece of ground, but what is asked for; so it was a test. */
  private void perThousand(List<Fact> all) {
    boolean asked =
        all.removeIf(
            f ->
                f.name().equals("area")
                    && f.value().isPresent()
                    && f.amount().isSameAmount(THOUSAND)
                    && passage.in(f.at() - 1, PER));
    if (!asked) {
      return;
    }
    List<Fact> thrown =
        all.stream()
            .filter(f -> f.name().equals("product_amount") && isOf(f, Dimension.MASS))
            .toList();
    boolean ground = all.stream().anyMatch(f -> GROUND.contains(f.name()));
    if (thrown.size() == 1 && ground) {
      all.replaceAll(f -> f.equals(thrown.get(0)) ? f.as("test_amount") : f);
    }
  }

  private static boolean isOf(Fact fact, Dimension dimension) {
    return fact.value().isPresent() && fact.amount().dimension().equals(dimension);
  }

  /** "the tank has 12 gal left of 25": what is left is in the tank, and 25 is its size. */
  private void leftInTank(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact left = all.get(i);
      boolean inTank =
          left.name().equals("content_left")
              && (passage.before(left.at(), 5, TANKS)
                  || passage.after(passage.end(left), 8, TANKS));
      if (!inTank) {
        continue;
      }
      all.set(i, left.as("left_in_tank"));
      int next = passage.end(left);
      next = passage.in(next, Set.of("left", "remaining")) ? next + 1 : next;
      int size = next + 1;
      if (passage.in(next, Set.of("of"))) {
        Unit unit = left.amount().unit();
        all.replaceAll(
            f ->
                f.name().equals("number") && f.at() == size
                    ? f.as("tank").with(new Quantity(f.amount().value(), unit), f.high())
                    : f);
      }
    }
  }

  /** Beside a nozzle's flow or spacing a speed is how fast one goes. */
  private static void walking(List<Fact> all) {
    boolean boom =
        all.stream().anyMatch(f -> f.name().equals("nozzle_flow") || f.name().equals("spacing"));
    if (boom) {
      all.replaceAll(f -> f.name().equals("speed") ? f.as("walk_speed") : f);
    }
  }

  /** "2,4-D 24%, mecoprop 7%": what a product is made of is no strength to mix at. */
  private void shares(List<Fact> all) {
    List<Fact> shares = all.stream().filter(this::isShare).toList();
    if (shares.size() > 1) {
      all.replaceAll(fact -> shares.contains(fact) ? fact.as("active_share") : fact);
    }
  }

  private boolean isShare(Fact fact) {
    return fact.name().equals("strength")
        && fact.amount().unit().equals(Units.PERCENT)
        && fact.at() > 0
        && passage.tokens().get(fact.at() - 1).tag().equals("active");
  }

  /** "for 2, 3 and 4 thousand": each is an area of its own, to be worked out side by side. */
  private void options(List<Fact> all) {
    for (int i = all.size() - 1; i > 0; i--) {
      Fact last = all.get(i);
      boolean thousands = last.name().equals("area") && THOUSANDS.matcher(last.said()).matches();
      if (!thousands || last.value().isEmpty()) {
        continue;
      }
      int k = i - 1;
      while (k >= 0 && isSmallNumber(all.get(k)) && joined(all.get(k), all.get(k + 1))) {
        Quantity area =
            new Quantity(all.get(k).amount().value().times(Ratio.of(1000)), last.amount().unit());
        all.set(k, all.get(k).as("area_option").with(area, Optional.empty()));
        k--;
      }
      if (k < i - 1) {
        all.set(i, last.as("area_option"));
      }
    }
  }

  /** "Bag is 24-0-10, 40 lb": a weight right beside the three numbers is the bag's. */
  private static void bagBeside(List<Fact> all) {
    boolean bag = all.stream().anyMatch(f -> f.name().equals("bag"));
    for (int i = 1; i < all.size() && !bag; i++) {
      boolean weight =
          all.get(i - 1).name().equals("analysis")
              && all.get(i).name().equals("product_amount")
              && all.get(i).amount().dimension().equals(Dimension.MASS)
              && all.get(i).at() - all.get(i - 1).at() <= 6;
      if (weight) {
        all.set(i, all.get(i).as("bag"));
        bag = true;
      }
    }
  }

  /** "1 min 50" and "1 minute 50 seconds" are one time. */
  private void minutesAndSeconds(List<Fact> all) {
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact minutes = all.get(i);
      Fact more = all.get(i + 1);
      boolean time =
          minutes.value().map(v -> v.unit().equals(Unit.of("min"))).orElse(false)
              && Set.of("min", "mins", "minute", "minutes", "and")
                  .contains(passage.word(more.at() - 1))
              && more.at() - minutes.at() <= 3;
      if (!time || more.value().isEmpty()) {
        continue;
      }
      Ratio part = more.amount().value();
      boolean seconds =
          more.amount().unit().equals(Units.SECOND)
              || more.name().equals("number") && part.compareTo(Ratio.of(60)) < 0;
      if (seconds) {
        Ratio sum = minutes.amount().value().times(Ratio.of(60)).plus(part);
        all.set(i, minutes.with(new Quantity(sum, Units.SECOND), Optional.empty()));
        all.remove(i + 1);
      }
    }
  }

  /** "from 2,000 to 8,000 by 1,000": the areas from the one to the other, step by step. */
  private void steps(List<Fact> all) {
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact range = all.get(i);
      Fact step = all.get(i + 1);
      boolean joined =
          range.name().equals("area")
              && range.high().isPresent()
              && step.at() == passage.end(range) + 1
              && passage.in(passage.end(range), STEP)
              && (step.name().equals("area") || step.name().equals("number"))
              && step.value().isPresent();
      if (joined) {
        Ratio size = step.amount().value();
        List<Fact> options = new ArrayList<>();
        Ratio at = range.amount().value();
        while (size.signum() > 0
            && at.compareTo(range.high().get().value()) <= 0
            && options.size() < MOST_OPTIONS) {
          Quantity area = new Quantity(at, range.amount().unit());
          options.add(range.as("area_option").with(area, Optional.empty()));
          at = at.plus(size);
        }
        all.remove(i + 1);
        all.remove(i);
        all.addAll(i, options);
      }
    }
  }

  private static boolean isSmallNumber(Fact fact) {
    return fact.name().equals("number") && fact.amount().value().compareTo(Ratio.of(100)) < 0;
  }

  private boolean joined(Fact first, Fact second) {
    for (int t = first.at() + 1; t < second.at(); t++) {
      if (!Set.of(",", "and", "or", "&").contains(passage.word(t))) {
        return false;
      }
    }
    return true;
  }

  /** "I don't have an acre" gives no area. */
  private boolean isDenied(Fact fact) {
    return fact.name().equals("area")
        && passage.before(fact.at(), 3, Set.of("dont", "not", "havent", "isnt", "never"))
        && passage.before(fact.at(), 3, Set.of("have", "own", "got", "an", "do", "dont"));
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
        if (passage.word(t).equals("but")) {
          all.remove(earlier);
        }
      }
    }
  }

  /** A rate of another year or another product gives way to what this label says. */
  private void oldRates(List<Fact> all) {
    List<Fact> rates = all.stream().filter(f -> f.name().equals("label_rate")).toList();
    for (Fact rate : rates) {
      boolean old =
          passage.before(
              rate.at(),
              6,
              Set.of("used", "last", "2019", "2020", "2021", "2022", "2023", "2024", "2025"));
      if (rates.size() > 1 && old) {
        all.remove(rate);
      }
    }
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
      if (fact.name().equals("shape") && reshapes(form, fact)) {
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
      all.add(shape(form, inOrder(used), words, used.get(0).at()));
    }
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

  private static Fact shape(String form, List<Quantity> sides, String said, int at) {
    return new Fact(
        "shape",
        Optional.empty(),
        Optional.empty(),
        Optional.of(form),
        Optional.empty(),
        sides,
        said,
        at,
        List.of(),
        "");
  }

  /** "55 feet long 38 feet wide" is a rectangle, whatever else it is for. */
  private void longAndWide(List<Fact> all) {
    List<Fact> lengths = all.stream().filter(Assembler::isLength).toList();
    if (lengths.size() != 2) {
      return;
    }
    boolean words =
        passage.tokens().stream().anyMatch(t -> t.is("long"))
            && passage.tokens().stream().anyMatch(t -> t.is("wide"));
    boolean calibrating = all.stream().anyMatch(f -> CALIBRATING.contains(f.name()));
    if (!words || calibrating) {
      return;
    }
    all.removeAll(lengths);
    Fact first = lengths.get(0);
    List<Quantity> sides = List.of(first.amount(), lengths.get(1).amount());
    all.add(shape("rectangle", sides, first.said() + ", " + lengths.get(1).said(), first.at()));
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
        all.add(shape("offsets", sides, passage.said(i, passage.tokens().size()), i));
        return;
      }
    }
  }
}
