package plainsward.safety;

import java.util.List;
import java.util.Locale;

/**
 * What a word may be in a sentence that tells of a mishap. The words stand in the table {@code
 * exposure}; what the parts mean together stands in {@link Mishaps}.
 */
enum Part {
  // what is done or felt
  SWALLOW,
  GRAB,
  TOUCH,
  BREATHE,
  FAINT,
  ILL,
  SORE,
  LOCAL,
  ACHE,
  DOWN,
  ENTER,
  FALL,
  SPILL,
  // how something comes upon somebody: at once, by running, by the wind or in any other way
  HIT,
  POUR,
  DRIFT,
  STRIKE,
  // what it may come upon
  EYE,
  MOUTH,
  BODY,
  CLOTHES,
  FOOD,
  WATER,
  PERSON,
  ANIMAL,
  ME,
  // who, besides
  CHILD,
  SELF,
  OTHER,
  FISH,
  // of what
  STUFF,
  GEAR,
  VESSEL,
  IT,
  LOTS,
  SPRAYED,
  PLANT,
  THING,
  MACHINE,
  SAFE,
  // little words
  OWN,
  THE,
  PREP,
  INTO,
  OPENS,
  BE,
  IF,
  CAN,
  BREAK,
  ORDER;

  /** Its place in a set of parts. */
  final long bit = 1L << ordinal();

  /** The part of this name in the tables, whatever the case. */
  static Part named(String name) {
    return valueOf(name.toUpperCase(Locale.ROOT));
  }

  /** A set of parts. */
  static long set(Part... parts) {
    long set = 0;
    for (Part part : parts) {
      set |= part.bit;
    }
    return set;
  }

  /** A set of parts by their names; names that are no part are left out. */
  static long set(List<String> names, String besides) {
    long set = 0;
    for (String name : names) {
      set |= name.equals(besides) ? 0 : named(name).bit;
    }
    return set;
  }
}
