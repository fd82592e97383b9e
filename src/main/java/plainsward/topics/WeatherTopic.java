package plainsward.topics;

import java.util.Optional;
import java.util.Set;
import plainsward.dosing.SprayWeather;
import plainsward.handbook.Note;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.Shown;
import plainsward.units.Units;

/** Whether it may be sprayed now: go, wait or no, with each reason. */
public final class WeatherTopic implements Topic {
  private static final Quantity LEAST_WIND = Quantity.of(3, Units.MILE_PER_HOUR);
  private static final Quantity MOST_WIND = Quantity.of(10, Units.MILE_PER_HOUR);
  private static final Quantity FAR_TOO_WINDY = Quantity.of(15, Units.MILE_PER_HOUR);
  private static final Quantity WARM = Quantity.of(80, Units.FAHRENHEIT);
  private static final Quantity HOT = Quantity.of(85, Units.FAHRENHEIT);
  private static final Quantity COLD = Quantity.of(50, Units.FAHRENHEIT);
  private static final Quantity FREEZING = Quantity.of(36, Units.FAHRENHEIT);

  private static final double PLAIN = 0.6;
  private static final Set<String> MEASURED =
      Set.of("wind", "speed", "temperature", "humidity", "rain_gap");
  private static final Set<String> GENERAL =
      Set.of("how", "hows", "why", "what", "whats", "which", "mean", "means", "difference");

  private static final String WATERS_IN =
      "a preventer is to be watered in, and a gentle rain does that. Wait only if so much is "
          + "coming that it runs off. (Common practice, no source.)";

  @Override
  public String code() {
    return "weather";
  }

  @Override
  public Reply reply(Request request) {
    Verdict verdict = new Verdict();
    Sheet sheet = new Sheet(request, "weather");
    if (isGeneral(request)) {
      return general(request, sheet);
    }
    wind(request, sheet, verdict);
    heat(request, sheet, verdict);
    night(request, verdict);
    air(request, sheet, verdict);
    rain(request, sheet, verdict);
    words(request, sheet, verdict);
    nearby(request, sheet);
    GrassWords.caution(request, sheet);
    if (verdict.isOpen()) {
      return general(request, sheet);
    }
    sheet.word("verdict", verdict.word());
    verdict.reasons().forEach(sheet::say);
    if (!verdict.isGo()) {
      sheet.sketch(DaySketch.hours(isHot(request)));
    }
    return sheet.answer(verdict.headline());
  }

  /** "How hot is too hot": not asked about this day, and answered by a note. */
  private static boolean isGeneral(Request request) {
    boolean measured = MEASURED.stream().anyMatch(request.turn()::has);
    return !measured
        && request.turn().hasWord(GENERAL)
        && Notes.best(request, request.turn().text(), Set.of("weather"), PLAIN).isPresent();
  }

  /** Nothing measurable was said: the nearest note, or what to look at. */
  private static Reply general(Request request, Sheet sheet) {
    Optional<Note> note = Notes.best(request, request.turn().text(), Set.of("weather"), 0.3);
    if (note.isPresent()) {
      Notes.tell(note.get(), sheet);
      if (note.get().id().equals(DaySketch.HOURS_NOTE)) {
        sheet.sketch(DaySketch.hours(isHot(request)));
      }
      return sheet.answer(note.get().answer());
    }
    sheet.say(
        "Go when the wind is a steady 3 to 10 mph, the air 50 to 85 °F, and the leaf dry. No rain "
            + "may be due within the label's rain-free hours.");
    return sheet.ask(
        "What are the wind, the temperature, and the hours until rain?", "wind", "temperature");
  }

  private static void wind(Request request, Sheet sheet, Verdict verdict) {
    Optional<Quantity> wind =
        request.turn().has("wind") ? request.amount("wind") : request.amount("speed");
    if (wind.isEmpty()) {
      return;
    }
    Quantity top = request.get("wind").flatMap(Known::high).orElse(wind.get());
    Quantity limit = LabelLimit.of(request, "wind", Units.MILE_PER_HOUR).orElse(MOST_WIND);
    String said = Shown.of(top);
    if (top.compareTo(limit) > 0) {
      String whose =
          limit.equals(MOST_WIND)
              ? "about " + Shown.of(MOST_WIND)
              : "the label's " + Shown.of(limit);
      String line = "A wind of " + said + " is over " + whose + ": it carries the spray away.";
      if (top.compareTo(FAR_TOO_WINDY) >= 0 || !limit.equals(MOST_WIND)) {
        verdict.no(line);
      } else {
        verdict.hold(line);
      }
      sheet.caution("wind", "drift-plants");
    } else if (top.compareTo(LEAST_WIND) < 0) {
      verdict.hold(
          "With less than 3 mph the air can lie still in an inversion and drift anywhere; wait for "
              + "a light, steady breeze.");
      sheet.caution("inversion");
    } else {
      verdict.go(
          "A wind of "
              + said
              + " is within 3 to 10 mph, if it is steady and blows away from tender plants.");
      sheet.caution("wind");
    }
  }

  private static void heat(Request request, Sheet sheet, Verdict verdict) {
    Optional<Quantity> air = request.amount("temperature");
    if (air.isEmpty()) {
      return;
    }
    Quantity limit = LabelLimit.of(request, "heat", Units.FAHRENHEIT).orElse(HOT);
    String said = Shown.of(air.get());
    if (air.get().compareTo(limit) > 0) {
      verdict.no(
          "At "
              + said
              + " it is too hot: over "
              + Shown.of(limit)
              + " broadleaf sprays turn to vapor and the grass is hurt. Wait for a cooler morning "
              + "or evening.");
      sheet.caution("heat");
    } else if (air.get().compareTo(WARM) > 0) {
      verdict.go(
          "At "
              + said
              + " it is warm: go early, and not if it climbs past "
              + Shown.of(limit)
              + ".");
      sheet.caution("heat");
    } else {
      cold(request, sheet, verdict, air.get());
    }
  }

  private static void cold(Request request, Sheet sheet, Verdict verdict, Quantity air) {
    Optional<Quantity> limit = LabelLimit.named(request, "cold");
    String said = Shown.of(air);
    if (limit.isPresent() && air.compareTo(limit.get()) < 0) {
      verdict.no("At " + said + " it is colder than the label's " + Shown.of(limit.get()) + ".");
      sheet.caution("cold");
    } else if (air.compareTo(FREEZING) < 0) {
      verdict.no("At " + said + " nothing grows: the weeds won't take it up.");
      sheet.caution("cold");
    } else if (air.compareTo(COLD) < 0) {
      verdict.hold(
          "At "
              + said
              + " weeds take it up slowly; most labels want it warmer, and weeds that grow.");
      sheet.caution("cold");
    } else {
      verdict.go("At " + said + " it is neither too hot nor too cold.");
    }
  }

  private static void night(Request request, Verdict verdict) {
    if (!request.turn().has("night_temperature")) {
      return;
    }
    Quantity night = request.amount("night_temperature").orElseThrow();
    if (night.compareTo(FREEZING) < 0) {
      verdict.hold("Nights at " + Shown.of(night) + " bring frost: wait for milder ones.");
    } else if (night.compareTo(COLD) < 0) {
      verdict.go(
          "With nights at "
              + Shown.of(night)
              + " it works slowly: spray in the middle of the day, when it is warmest. (Common "
              + "practice, no source.)");
    }
  }

  private static boolean isHot(Request request) {
    return request.says("hot")
        || request.amount("temperature").filter(air -> air.compareTo(WARM) > 0).isPresent();
  }

  /** Delta T: how fast drops dry, from temperature and humidity (Stull 2011). */
  private static void air(Request request, Sheet sheet, Verdict verdict) {
    if (!request.has("humidity") || !request.has("temperature")) {
      return;
    }
    Quantity air = request.amount("temperature").orElseThrow();
    SprayWeather weather = SprayWeather.of(air, request.amount("humidity").orElseThrow());
    sheet.figure("wet_bulb", weather.wetBulb().in(air.unit()));
    sheet.figure("delta_t", weather.deltaT());
    sheet.steps(weather.steps());
    double delta = weather.deltaT().value().toDouble();
    if (delta > 10) {
      verdict.no("Delta T is above 10 °C: drops dry up before they reach the leaf.");
    } else if (delta > 8) {
      verdict.hold("Delta T is 8 to 10 °C, which is marginal: drops dry fast.");
    } else if (delta < 2) {
      verdict.hold("Delta T is below 2 °C: drops hang in the air and drift.");
    } else {
      verdict.go("Delta T is within the usual 2 to 8 °C.");
    }
  }

  private static void rain(Request request, Sheet sheet, Verdict verdict) {
    Optional<Quantity> gap =
        request.turn().has("rain_gap") ? request.amount("rain_gap") : Optional.empty();
    if (gap.isEmpty()) {
      return;
    }
    sheet.caution("rain");
    if (ProductKind.of(request) == ProductKind.PRE) {
      verdict.go("Rain in " + Shown.of(gap.get()) + ": " + WATERS_IN);
      return;
    }
    Optional<Quantity> free = LabelLimit.of(request, "rain-free", Units.HOUR);
    if (free.isEmpty()) {
      boolean soon = gap.get().compareTo(Quantity.of(6, Units.HOUR)) < 0;
      String line =
          "Rain is due in "
              + Shown.of(gap.get())
              + ". The label's rain-free hours decide: look for \"rainfast\" or \"do not apply if rain\".";
      if (soon) {
        verdict.hold(line);
      } else {
        verdict.go(line);
      }
    } else if (gap.get().compareTo(free.get()) < 0) {
      verdict.no(
          "Rain in "
              + Shown.of(gap.get())
              + " is sooner than the label's "
              + Shown.of(free.get())
              + ": it would wash off.");
    } else {
      verdict.go(
          "Rain in " + Shown.of(gap.get()) + " leaves the label's " + Shown.of(free.get()) + ".");
    }
  }

  private static void words(Request request, Sheet sheet, Verdict verdict) {
    if (request.says("calm")) {
      verdict.hold(
          "Dead calm, above all near dusk or dawn, can be an inversion; wait for a light breeze.");
      sheet.caution("inversion");
    }
    if (request.says("windy")) {
      verdict.hold("If it is windy or gusty, wait: a steady 3 to 10 mph is the usual limit.");
      sheet.caution("wind");
    }
    if (request.says("rain-soon")) {
      if (ProductKind.of(request) == ProductKind.PRE) {
        verdict.go("Rain that is due soon: " + WATERS_IN);
      } else {
        verdict.hold(
            "Only if the label's rain-free hours fit in before the rain; if in doubt, wait.");
      }
      sheet.caution("rain");
    }
    if (request.says("dew")) {
      verdict.hold(
          "A spray wants a dry leaf: wait until the dew has dried. Granules that must stick to the leaf want it damp.");
      sheet.caution("wet-leaf");
    }
    if (request.says("frost")) {
      verdict.hold("After a frost wait for some mild days, until the weeds grow again.");
      sheet.caution("cold");
    }
    if (request.says("drought")) {
      verdict.hold(
          "Grass that wilts from drought is easily hurt and weeds take up little: water first, and wait.");
      sheet.caution("drought");
    }
    if (request.says("hot")) {
      verdict.hold(
          "In heat over about 85 °F broadleaf sprays turn to vapor and hurt the grass: wait until it is cooler.");
      sheet.caution("heat");
    }
  }

  private static void nearby(Request request, Sheet sheet) {
    if (request.says("tender-near")) {
      sheet.caution("drift-plants", "food-plants");
      sheet.say(
          "Tomatoes, grapes, roses and beans close by are the first to be hurt by drift and vapor: keep well away, wind blowing from them to you.");
    }
  }
}
