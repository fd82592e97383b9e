package plainsward.safety;

import java.util.Set;

/**
 * Hears what came upon somebody: a body, clothes, food, an animal or open water, met directly
 * ("soaked my sleeve") or by way of "on", "into", "down" ("went down her back").
 */
final class Upon {
  private static final long TARGETS =
      Part.set(
          Part.EYE,
          Part.MOUTH,
          Part.BODY,
          Part.CLOTHES,
          Part.FOOD,
          Part.WATER,
          Part.PERSON,
          Part.ANIMAL,
          Part.ME);
  private static final long OWNERS = Part.set(Part.OWN, Part.PERSON, Part.ANIMAL, Part.BODY);
  private static final long OF_WHAT = Part.set(Part.STUFF, Part.IT);
  private static final long ANY_WAY = Part.set(Part.HIT, Part.POUR, Part.DRIFT, Part.SPILL);
  private static final long STRONG = Part.set(Part.HIT, Part.POUR);

  /** What makes another word of the one before: a hand sprayer, the kids' toys. */
  private static final long HARMLESS_NEXT = Part.set(Part.PLANT, Part.THING, Part.MACHINE);

  private static final int MOST_BETWEEN = 7;
  private static final int MOST_OWNERS = 5;

  private final Marked marked;
  private final Set<String> signs;

  Upon(Marked marked, Set<String> signs) {
    this.marked = marked;
    this.signs = signs;
  }

  /** Takes an act for what something came upon, where it may be that. */
  void hear(Mishaps.Act target) {
    boolean may = (target.part().bit & TARGETS) != 0 && !marked.is(target.to(), HARMLESS_NEXT);
    if (may && isMet(target)) {
      boolean animal =
          target.part() == Part.ANIMAL || marked.is(target.from() - 1, Part.ANIMAL.bit);
      signs.add(animal && target.part() != Part.WATER ? "animal" : sign(target.part()));
    }
  }

  private static String sign(Part part) {
    return switch (part) {
      case EYE -> "eye";
      case MOUTH, FOOD -> "swallowed";
      case WATER -> "spill";
      default -> "skin";
    };
  }

  private boolean isMet(Mishaps.Act target) {
    int i = target.from() - 1;
    int left = MOST_OWNERS;
    while (left > 0 && marked.is(i, OWNERS)) {
      i--;
      left--;
    }
    boolean worn = target.part() != Part.CLOTHES || i < target.from() - 1;
    if (marked.is(i, Part.INTO.bit) && worn) {
      return target.part() == Part.WATER ? isOpenTo(i) && isWay(i, ANY_WAY) : isBrought(i);
    }
    boolean named = target.part() != Part.FOOD || marked.hasAround(i, OF_WHAT | Part.GEAR.bit);
    boolean met =
        marked.is(i, Part.HIT.bit)
            || marked.is(i, Part.STRIKE.bit) && marked.before(i, OF_WHAT, MOST_BETWEEN) >= 0;
    return met && target.part() != Part.WATER && named && isReal(i);
  }

  /** Into or down it, not along or beside it. */
  private boolean isOpenTo(int preposition) {
    return marked.is(preposition, Part.OPENS.bit);
  }

  /** "granules down her back", "it is on my hands", "it splashed up on him". */
  private boolean isBrought(int preposition) {
    int i = preposition - 1;
    while (marked.is(i, Part.OWN.bit | Part.BE.bit | Part.INTO.bit) && !marked.is(i, OF_WHAT)) {
      i--;
    }
    return marked.is(i, OF_WHAT) && isReal(i) || isWay(preposition, ANY_WAY);
  }

  private boolean isWay(int preposition, long ways) {
    int way = marked.before(preposition, ways, MOST_BETWEEN);
    return way >= 0
        && isReal(way)
        && (marked.is(way, STRONG) && !marked.is(way, Part.WATER.bit)
            || marked.before(preposition, OF_WHAT | Part.GEAR.bit, 3 * MOST_BETWEEN) >= 0);
  }

  /** Neither supposed nor told to do, nor of rain, sweat or paint. */
  private boolean isReal(int at) {
    int doer = marked.doer(at);
    int order = marked.before(at + 1, Part.ORDER.bit, MOST_BETWEEN);
    boolean other =
        marked.hasAround(at, Part.SAFE.bit) && !marked.hasAround(at, OF_WHAT)
            || marked.is(doer, Part.SAFE.bit)
            || order >= 0 && marked.doer(order) < 0;
    return !other && !marked.isSupposed(at, doer);
  }
}
