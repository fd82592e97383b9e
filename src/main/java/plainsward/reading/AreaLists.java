package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Units;

/** Areas to be worked out side by side: "2, 3 and 4 thousand", "2,000 to 8,000 by 1,000". */
final class AreaLists {
  private static final Set<String> LOTS = Set.of("lot", "property", "parcel", "plot", "place");
  private static final Set<String> REST = Set.of("rest", "remaining", "remainder", "left");
  private static final int MOST_OPTIONS = 12;
  private static final Ratio SMALLEST = Ratio.of(100);
  private static final Set<String> AND = Set.of("and", "plus", "+", "&", "another", "also");
  private static final Set<String> ADDED =
      Set.of("both", "total", "together", "altogether", "lawns", "plus", "but", "combined");
  private static final Set<String> PLACES =
      Set.of("front", "back", "side", "strip", "rear", "verge", "slope", "boulevard", "corner");
  private static final Set<String> STEP = Set.of("by", "every", "step", "steps");

  /** Made when first wanted: few questions list areas. */
  private static final class Thousands {
    static final Pattern SAID = Pattern.compile("(?i)[0-9. ]+ ?(k|thousand).*");
  }

  private static final Set<String> OTHER = Set.of("other", "remaining", "next", "last", "another");
  private static final Set<String> GROUNDS = Set.of("minus", "area");
  private static final Set<String> OF = Set.of("of");
  private static final Set<String> LEFT = Set.of("left", "remaining", "more", "still");
  private static final Set<String> GO = Set.of("go", "do", "finish", "spray");
  private static final Set<String> DID =
      Set.of("did", "done", "sprayed", "treated", "covered", "finished");
  private static final Set<String> TO_COVER = Set.of("cover", "treat", "spray", "do");

  private final Passage passage;

  AreaLists(Passage passage) {
    this.passage = passage;
  }

  /** Puts together what belongs together. */
  void join(List<Fact> all) {
    likeLabel(all);
    added(all);
    partOf(all);
    otherToDo(all);
    spaced(all);
    steps(all);
    options(all);
    apart(all);
  }

  /** "3,800 + 2,600 + 900": what is added to an area is one, however small. */
  private void added(List<Fact> all) {
    for (int i = 1; i < all.size(); i++) {
      Fact area = all.get(i - 1);
      Fact number = all.get(i);
      int end = passage.end(area);
      boolean plus = passage.in(end, Set.of("+")) && number.at() == end + 1;
      boolean named =
          passage.in(number.at() - 1, PLACES)
              && passage.in(number.at() - 2, AND)
              && number.at() - end <= 3;
      boolean sum =
          area.name().equals("area")
              && area.value().isPresent()
              && number.name().equals("number")
              && number.high().isEmpty()
              && (plus || named)
              && number.amount().value().compareTo(SMALLEST) >= 0;
      if (sum) {
        Quantity more = new Quantity(number.amount().value(), area.amount().unit());
        all.set(i, number.as("area").with(more, Optional.empty()).doubting(area.doubts()));
      }
    }
  }

  /** "did 2k of the 7k, the rest at 1.1": the part is off the whole, or all that is meant. */
  private void partOf(List<Fact> all) {
    for (int i = 0; i + 1 < all.size(); i++) {
      Fact part = all.get(i);
      Fact whole = all.get(i + 1);
      int of = passage.end(part);
      boolean joined =
          part.name().equals("area")
              && whole.name().equals("area")
              && part.value().isPresent()
              && whole.value().isPresent()
              && passage.in(of, Set.of("of"))
              && whole.at() - of <= 2
              && part.amount().compareTo(whole.amount()) < 0;
      boolean ofLot = isLawnItself(whole) && passage.in(passage.end(part), LOTS);
      if (isLawnOfIt(part) || isLawnOfIt(whole) || ofLot) {
        Fact lawn = isLawnOfIt(part) ? part : whole;
        all.removeIf(f -> f.name().equals("area") && f != lawn);
        return;
      }
      if (joined && passage.hasWord(REST)) {
        all.set(i, part.as("minus").of(""));
        all.set(i + 1, whole.of(""));
      } else if (joined) {
        all.remove(i + 1);
      }
    }
  }

  /** "did 6k already, will it do the other 7k", "did 3k and have 4k to go": the later alone. */
  private void otherToDo(List<Fact> all) {
    if (all.size() < 2) {
      return;
    }
    List<Fact> grounds = Facts.named(all, GROUNDS);
    if (grounds.size() != 2 || grounds.get(0).value().isEmpty()) {
      return;
    }
    Fact done = grounds.get(0);
    Fact rest = grounds.get(1);
    boolean left = passage.in(rest.at() - 1, OTHER) || isToGo(passage.end(rest));
    boolean did = passage.before(done.at(), 3, DID) || done.name().equals("minus");
    if (did && left && rest.name().equals("area") && !passage.in(passage.end(done), OF)) {
      all.remove(done);
      all.replaceAll(f -> f.equals(rest) ? f.doubting(List.of()) : f);
    }
  }

  /** "4k to go", "5k left". */
  private boolean isToGo(int end) {
    return passage.in(end, LEFT) || passage.in(end, Set.of("to")) && passage.in(end + 1, GO);
  }

  /** "6k is lawn", said beside a lot's own size. */
  private boolean isLawnItself(Fact area) {
    int is = passage.end(area);
    return area.name().equals("area")
        && area.value().isPresent()
        && passage.in(is, Set.of("is", "are", "in", "as"))
        && passage.in(is + 1, Set.of("lawn", "grass", "turf"));
  }

  /** "9,200 sq ft of it lawn": all else of the property is none. */
  private boolean isLawnOfIt(Fact area) {
    int of = passage.end(area);
    int noun = passage.in(of + 2, Set.of("is", "are", "s", "as", "in")) ? of + 3 : of + 2;
    return area.name().equals("area")
        && area.value().isPresent()
        && passage.in(of, Set.of("of"))
        && passage.in(of + 1, Set.of("it", "that", "which", "them"))
        && passage.in(noun, Set.of("lawn", "grass", "turf"));
  }

  /** "50 ml for 50 m2, I need to cover 80": ground in the label's own measure. */
  private void likeLabel(List<Fact> all) {
    for (int i = 0; i < all.size(); i++) {
      Fact number = all.get(i);
      boolean covered =
          number.name().equals("number")
              && number.value().isPresent()
              && number.high().isEmpty()
              && passage.in(number.at() - 1, TO_COVER);
      for (int k = 0; covered && k < i; k++) {
        Fact rate = all.get(k);
        boolean metres =
            rate.name().equals("label_rate")
                && rate.amount()
                    .unit()
                    .below()
                    .filter(u -> u.single().equals(Units.SQUARE_METRE))
                    .isPresent();
        if (metres) {
          Quantity area = new Quantity(number.amount().value(), Units.SQUARE_METRE);
          all.set(i, number.as("area").with(area, Optional.empty()).doubting(List.of("square")));
          covered = false;
        }
      }
    }
  }

  /** "for 2, 3 and 4 thousand": each is an area of its own, to be worked out side by side. */
  private void options(List<Fact> all) {
    for (int i = all.size() - 1; i > 0; i--) {
      Fact last = all.get(i);
      boolean listed =
          last.name().equals("area") && last.value().isPresent() && isSmallNumber(all.get(i - 1));
      if (!listed || !Thousands.SAID.matcher(last.said()).matches()) {
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

  /** "areas 300 400 500 sq ft": large numbers side by side before an area are areas as well. */
  private void spaced(List<Fact> all) {
    for (int i = all.size() - 1; i > 0; i--) {
      Fact area = all.get(i);
      Fact before = all.get(i - 1);
      boolean listed =
          area.name().equals("area")
              && area.value().isPresent()
              && before.name().equals("number")
              && before.value().isPresent()
              && before.amount().value().compareTo(SMALLEST) >= 0
              && passage.end(before) == area.at();
      if (listed) {
        Quantity amount = new Quantity(before.amount().value(), area.amount().unit());
        all.set(i - 1, before.as("area").with(amount, Optional.empty()).doubting(area.doubts()));
      }
    }
  }

  /**
   * Two areas in two sentences that nothing joins may be a lawn and its part, or two lawns: the
   * second is in doubt, since to add them up would be a guess.
   */
  private void apart(List<Fact> all) {
    List<Fact> areas =
        all.stream()
            .filter(f -> f.name().equals("area") && f.value().isPresent() && f.owner().isEmpty())
            .toList();
    if (areas.size() != 2 || passage.hasWord(ADDED)) {
      return;
    }
    Fact second = areas.get(1);
    boolean joined =
        passage.isOneSentence(areas.get(0).at(), second.at())
            || passage.before(second.at(), 3, AND);
    if (!joined) {
      List<String> doubts = new ArrayList<>(second.doubts());
      doubts.add("beside");
      all.replaceAll(f -> f.equals(second) ? f.doubting(doubts) : f);
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
}
