package plainsward.records;

import java.time.Period;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;

/** A label told bit by bit; each method sets one thing and gives the builder back. */
public final class LabelBuilder {
  private String name;
  private Optional<Label.Form> form = Optional.empty();
  private Optional<Label.State> state = Optional.empty();
  private final List<Label.Active> actives = new ArrayList<>();
  private final List<Rate> rates = new ArrayList<>();
  private Optional<Range> sprayVolume = Optional.empty();
  private Optional<WettingAgent> wettingAgent = Optional.empty();
  private Label.Season season = LabelReader.NO_SEASON;
  private Label.Weather weather = LabelReader.NO_WEATHER;
  private Label.Care care = LabelReader.NO_CARE;
  private Label.Seeding seeding = LabelReader.NO_SEEDING;
  private Label.Grasses grasses = LabelReader.NO_GRASSES;
  private Optional<Label.Reentry> reentry = Optional.empty();
  private final List<String> gear = new ArrayList<>();
  private Optional<String> remark = Optional.empty();
  private boolean invented;

  LabelBuilder(String name) {
    this.name = name;
  }

  LabelBuilder(Label from) {
    name = from.name();
    form = from.form();
    state = from.state();
    actives.addAll(from.actives());
    rates.addAll(from.rates());
    sprayVolume = from.sprayVolume();
    wettingAgent = from.wettingAgent();
    season = from.season();
    weather = from.weather();
    care = from.care();
    seeding = from.seeding();
    grasses = from.grasses();
    reentry = from.reentry();
    gear.addAll(from.gear());
    remark = from.remark();
    invented = from.invented();
  }

  /** Another name. */
  public LabelBuilder name(String own) {
    name = own;
    return this;
  }

  /** How it is sold. */
  public LabelBuilder form(Label.Form sold) {
    form = Optional.of(sold);
    return this;
  }

  /** Dry or liquid. */
  public LabelBuilder state(Label.State is) {
    state = Optional.of(is);
    return this;
  }

  /** One more active ingredient. */
  public LabelBuilder active(String isoName, Optional<Quantity> strength) {
    actives.add(new Label.Active(isoName, strength));
    return this;
  }

  /** All active ingredients, in place of those there were. */
  public LabelBuilder actives(List<Label.Active> all) {
    actives.clear();
    actives.addAll(all);
    return this;
  }

  /** One more rate; it takes the place of a rate for the same use with the same basis. */
  public LabelBuilder rate(Rate rate) {
    rates.removeIf(r -> r.use().equals(rate.use()) && r.basis() == rate.basis());
    rates.add(rate);
    return this;
  }

  /** Finished spray per area. */
  public LabelBuilder sprayVolume(Range perArea) {
    sprayVolume = Optional.of(perArea);
    return this;
  }

  /** What it says of a wetting agent. */
  public LabelBuilder wettingAgent(WettingAgent agent) {
    wettingAgent = Optional.of(agent);
    return this;
  }

  /** The least wait between applications. */
  public LabelBuilder interval(Period wait) {
    season = new Label.Season(Optional.of(wait), season.applications(), season.amount());
    return this;
  }

  /** The most applications a year. */
  public LabelBuilder applicationsPerYear(int most) {
    season = new Label.Season(season.interval(), Optional.of(most), season.amount());
    return this;
  }

  /** The most product per area a year. */
  public LabelBuilder amountPerYear(Quantity perArea) {
    season = new Label.Season(season.interval(), season.applications(), Optional.of(perArea));
    return this;
  }

  /** Rain-free time. */
  public LabelBuilder rainFree(Quantity time) {
    weather =
        new Label.Weather(
            Optional.of(time), weather.windMost(), weather.heatMost(), weather.coldLeast());
    return this;
  }

  /** The highest wind. */
  public LabelBuilder windMost(Quantity speed) {
    weather =
        new Label.Weather(
            weather.rainFree(), Optional.of(speed), weather.heatMost(), weather.coldLeast());
    return this;
  }

  /** The highest air temperature. */
  public LabelBuilder heatMost(Quantity temperature) {
    weather =
        new Label.Weather(
            weather.rainFree(), weather.windMost(), Optional.of(temperature), weather.coldLeast());
    return this;
  }

  /** All of the weather. */
  public LabelBuilder weather(Label.Weather wanted) {
    weather = wanted;
    return this;
  }

  /** Mowing and watering. */
  public LabelBuilder care(Label.Care about) {
    care = about;
    return this;
  }

  /** Seeding waits. */
  public LabelBuilder seeding(Label.Seeding waits) {
    seeding = waits;
    return this;
  }

  /** The grasses that it names. */
  public LabelBuilder grasses(List<String> allows, List<String> harms) {
    grasses = new Label.Grasses(allows, harms);
    return this;
  }

  /** When people may be there again. */
  public LabelBuilder reentry(Label.Reentry when) {
    reentry = Optional.of(when);
    return this;
  }

  /** One more thing to wear. */
  public LabelBuilder gear(String item) {
    gear.add(item);
    return this;
  }

  /** Anything else. */
  public LabelBuilder remark(String text) {
    remark = Optional.of(text);
    return this;
  }

  /** Marks it as a demonstration and no product. */
  public LabelBuilder invented() {
    invented = true;
    return this;
  }

  /** The label as told so far. */
  public Label label() {
    return new Label(
        name,
        form,
        state,
        actives,
        rates,
        sprayVolume,
        wettingAgent,
        season,
        weather,
        care,
        seeding,
        grasses,
        reentry,
        gear,
        remark,
        invented);
  }
}
