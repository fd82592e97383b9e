package plainsward.records;

import java.time.Period;
import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * What the user copied from a product's label. Everything but the name may be unknown; unknown is
 * never the same as "no limit".
 *
 * @param name the user's own name for it
 * @param form how it is sold
 * @param state dry or liquid
 * @param actives its active ingredients
 * @param rates its rates by use
 * @param sprayVolume finished spray per area
 * @param wettingAgent whether a wetting agent goes with it
 * @param season how often and how much in a year
 * @param weather what weather it wants
 * @param care mowing and watering about it
 * @param seeding waits before and after seeding
 * @param grasses the grasses that it names
 * @param reentry when people may walk there again
 * @param gear what to wear, an item each
 * @param remark anything else
 * @param invented whether it is a demonstration and no product
 */
public record Label(
    String name,
    Optional<Form> form,
    Optional<State> state,
    List<Active> actives,
    List<Rate> rates,
    Optional<Range> sprayVolume,
    Optional<WettingAgent> wettingAgent,
    Season season,
    Weather weather,
    Care care,
    Seeding seeding,
    Grasses grasses,
    Optional<Reentry> reentry,
    List<String> gear,
    Optional<String> remark,
    boolean invented) {

  /** Tidies the texts and copies the lists; an unfit name is refused. */
  public Label {
    name = Names.checked("label", name);
    actives = List.copyOf(actives);
    rates = List.copyOf(rates);
    gear = List.copyOf(gear);
    remark = Names.remark(remark);
  }

  /** How a product is sold. */
  public enum Form implements Word {
    /** To be mixed with water. */
    CONCENTRATE("concentrate"),
    /** To be used as it is. */
    READY_TO_USE("ready-to-use"),
    /** To be spread dry. */
    GRANULE("granule");

    private final String word;

    Form(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /** Whether a product is weighed or measured in a cup. */
  public enum State implements Word {
    /** Weighed. */
    DRY("dry"),
    /** Measured by volume. */
    LIQUID("liquid");

    private final String word;

    State(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }

  /**
   * An active ingredient.
   *
   * @param name its ISO common name
   * @param strength its share, or mass per volume
   */
  public record Active(String name, Optional<Quantity> strength) {}

  /**
   * How often and how much.
   *
   * @param interval the least wait between applications
   * @param applications the most applications a year, 0 where there may be none
   * @param amount the most product per area a year
   */
  public record Season(
      Optional<Period> interval, Optional<Integer> applications, Optional<Quantity> amount) {}

  /**
   * The weather that it wants.
   *
   * @param rainFree time without rain afterwards
   * @param windMost the highest wind
   * @param heatMost the highest air temperature
   * @param coldLeast the lowest air temperature
   */
  public record Weather(
      Optional<Quantity> rainFree,
      Optional<Quantity> windMost,
      Optional<Quantity> heatMost,
      Optional<Quantity> coldLeast) {}

  /**
   * Mowing and watering.
   *
   * @param mowBefore time since the last mowing
   * @param mowAfter time until the next mowing
   * @param waterAfter time until watering
   * @param waterIn depth of water that must follow
   * @param waterInWithin time in which it must follow
   */
  public record Care(
      Optional<Quantity> mowBefore,
      Optional<Quantity> mowAfter,
      Optional<Quantity> waterAfter,
      Optional<Quantity> waterIn,
      Optional<Quantity> waterInWithin) {}

  /**
   * Waits about seeding.
   *
   * @param seedAfter from the application to seeding
   * @param newGrassAfter from seeding or sprouting to the application
   * @param newGrassMowings mowings of the new grass before the application
   */
  public record Seeding(
      Optional<Period> seedAfter,
      Optional<Period> newGrassAfter,
      Optional<Integer> newGrassMowings) {}

  /**
   * The grasses that the label names.
   *
   * @param allows where it may be used
   * @param harms where it must not
   */
  public record Grasses(List<String> allows, List<String> harms) {

    /** Copies the lists. */
    public Grasses {
      allows = List.copyOf(allows);
      harms = List.copyOf(harms);
    }
  }

  /**
   * When people and animals may be there again.
   *
   * @param untilDry not before the spray has dried
   * @param time how long to wait
   */
  public record Reentry(boolean untilDry, Optional<Quantity> time) {}

  /** A label of which only the name is known, to be filled in. */
  public static LabelBuilder named(String name) {
    return new LabelBuilder(name);
  }

  /** A builder that starts from this label. */
  public LabelBuilder change() {
    return new LabelBuilder(this);
  }

  /** Whether the product is weighed: dry, or a granule. */
  public boolean isDry() {
    return state.equals(Optional.of(State.DRY)) || form.equals(Optional.of(Form.GRANULE));
  }

  /** The rates of one basis. */
  public List<Rate> rates(Rate.Basis basis) {
    return rates.stream().filter(r -> r.basis() == basis).toList();
  }
}
