package plainsward.topics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Calibration;
import plainsward.dosing.Catches;
import plainsward.dosing.Coverage;
import plainsward.dosing.LawnArea;
import plainsward.dosing.Nozzle;
import plainsward.dosing.Step;
import plainsward.dosing.Strength;
import plainsward.dosing.WalkSpeed;
import plainsward.dosing.Working;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** What a sprayer lays down: by a known area, by the clock, by flow and speed. */
public final class CalibrateTopic implements Topic {
  private static final Quantity LEAST = new Quantity(Ratio.of(1, 20), Units.GALLON_PER_THOUSAND);
  private static final String FLOW_ASKED =
      "How much comes out in a minute? Spray plain water into a bucket for a minute and measure it.";
  private static final Set<String> EACH = Set.of("each", "apiece", "per", "every");
  private static final Set<String> TOTAL = Set.of("total", "together", "combined", "all");

  @Override
  public String code() {
    return "calibrate";
  }

  @Override
  public Reply reply(Request request) {
    Sheet sheet = new Sheet(request, "calibrate");
    if (request.wants("nozzle_flow") && request.has("spray_rate")) {
      return flowWanted(request, sheet);
    }
    if (request.wants("walk_speed") && request.has("nozzle_flow") && request.has("spray_rate")) {
      return speedWanted(request, sheet);
    }
    if (asksSpeed(request) && request.turn().has("distance")) {
      Optional<Quantity> walked = speed(request, sheet);
      if (walked.isPresent()) {
        return sheet.answer("That is " + Shown.of(walked.get()) + ".");
      }
    }
    boolean told = request.turn().has("spray_rate") && !request.turn().has("catch_volume");
    if (told
        && !request.turn().has("old_spray_rate")
        && !request.turn().has("nozzle_flow")
        && !request.wants("nozzle_flow")
        && !request.wants("walk_speed")) {
      Quantity laid = request.amount("spray_rate").orElseThrow();
      String shown = sheet.figure("spray_rate", laid);
      String tank = request.turn().has("tank") ? fullTank(request, sheet, laid) : "";
      return sheet.answer("You lay down " + shown + "." + tank);
    }
    if (request.turn().has("old_spray_rate") && request.turn().has("spray_rate")) {
      return changed(request, sheet);
    }
    Optional<Quantity> flow = flow(request, sheet);
    if (flow.isPresent()) {
      return byFlow(request, sheet, flow.get());
    }
    return byArea(request, sheet);
  }

  /** The mix is still made for the old output: what goes down changes as the output does. */
  private static Reply changed(Request request, Sheet sheet) {
    Quantity now = request.amount("spray_rate").orElseThrow();
    Quantity before = request.amount("old_spray_rate").orElseThrow();
    Step times = Working.of("times", now).over(before).as(Units.ONE);
    sheet.steps(List.of(times)).figure("spray_rate", now);
    String many = Shown.number(times.result().value());
    sheet.caution("calibrate-first", "read-label");
    boolean more = now.compareTo(before) > 0;
    if (more) {
      sheet.caution("above-label");
    }
    sheet.say("Mix for the output that you measured, or put the sprayer right and measure again.");
    Optional<LabelRate> rate = LabelRate.of(request).filter(LabelRate::isPerArea);
    if (rate.isEmpty()) {
      return sheet.answer(
          "A mix made for the old output now puts down " + many + " times as much.");
    }
    Quantity meant = rate.get().low();
    Step laid = Working.of("applied_rate", meant).times(times.result()).as(meant.unit());
    Unit per = meant.unit().above().per(now.unit().above());
    Step right = Strength.ofRate(meant, now, per);
    sheet.steps(List.of(laid, right));
    return sheet.answer(
        "You lay down "
            + Shown.of(laid.result())
            + ", "
            + many
            + " times the "
            + Shown.of(meant)
            + " that it was mixed for. At "
            + Shown.of(now)
            + " mix "
            + Shown.notAbove(right.result())
            + ".");
  }

  private static boolean asksSpeed(Request request) {
    return request.wants("walk_speed")
        || request.wanted(Units.MILE_PER_HOUR).isPresent() && !request.has("nozzle_flow");
  }

  private static Unit unit(Request request, Quantity volume, Quantity ground) {
    for (Unit wanted : request.turnWanted()) {
      if (wanted.dimension().equals(Dimension.VOLUME_PER_AREA)) {
        return wanted;
      }
    }
    boolean metric = volume.unit().code().endsWith("L") || ground.unit().code().equals("m2");
    return metric ? Units.LITRE_PER_HUNDRED : Units.GALLON_PER_THOUSAND;
  }

  private static Reply byArea(Request request, Sheet sheet) {
    Optional<LawnArea> ground = Ground.test(request);
    Optional<Quantity> volume = caught(request, sheet);
    if (ground.isEmpty() && volume.isEmpty() || isHowTo(request)) {
      return sheet.ask(
          "Spray plain water on a measured piece, say 20 by 50 ft, and tell me the sides and how "
              + "much water it took.",
          "test_area",
          "catch_volume");
    }
    if (ground.isEmpty()) {
      return sheet.ask(Asking.question("test_area"), "test_area");
    }
    if (volume.isEmpty() && request.has("walk_time")) {
      return sheet.ask(FLOW_ASKED, "nozzle_flow");
    }
    if (volume.isEmpty()) {
      return sheet.ask(Asking.question("catch_volume"), "catch_volume");
    }
    sheet.steps(ground.get().steps());
    Quantity area = ground.get().area();
    Step rate = Calibration.onArea(volume.get(), area, unit(request, volume.get(), area));
    if (rate.result().compareTo(LEAST) < 0) {
      return ofProduct(sheet, volume.get(), area);
    }
    return told(request, sheet, rate);
  }

  /** "How do I calibrate it?" after a dose: the lawn and the tank of the dose are no test. */
  private static boolean isHowTo(Request request) {
    boolean tested = request.has("catch_volume") || request.has("test_area");
    boolean told = !request.turnWanted().isEmpty();
    for (Fact fact : request.turn().all()) {
      told |= fact.value().isPresent() || !fact.sides().isEmpty();
    }
    return !tested && !told;
  }

  /** So little on so much ground was no spray: what of the product went down. */
  private static Reply ofProduct(Sheet sheet, Quantity volume, Quantity area) {
    boolean metric = volume.unit().code().endsWith("L");
    Unit unit = metric ? Units.ML_PER_HUNDRED : Units.FL_OZ_PER_THOUSAND;
    Step rate = Working.of("applied_rate", volume).over(area).as(unit);
    String shown = sheet.steps(List.of(rate)).figure("converted", rate.result());
    sheet.caution("read-label");
    return sheet.answer("If that was product, you put down " + shown + ".");
  }

  /** The water used; the mean of several runs. */
  private static Optional<Quantity> caught(Request request, Sheet sheet) {
    List<Quantity> runs = new ArrayList<>();
    request.all("listed_volume").forEach(k -> runs.add(k.amount()));
    request.all("catch_volume").forEach(k -> runs.add(k.amount()));
    if (runs.size() > 1) {
      Catches catches = Catches.of(runs);
      sheet.steps(catches.steps());
      return Optional.of(catches.average());
    }
    return runs.stream()
        .findFirst()
        .or(() -> request.amount("product_amount"))
        .or(() -> ofTank(request, "volume"))
        .or(() -> ofTank(request, "spray_volume"))
        .or(() -> ofTank(request, "tank"));
  }

  /** What is in the tank, or the part of it that went out. */
  private static Optional<Quantity> ofTank(Request request, String role) {
    Optional<Quantity> all = request.amount(role);
    return request.turn().has("tank_part")
        ? all.map(q -> q.times(request.amount("tank_part").orElseThrow().value()))
        : all;
  }

  private static Optional<Quantity> flow(Request request, Sheet sheet) {
    if (request.has("nozzle_flow")) {
      return request.amount("nozzle_flow");
    }
    boolean clock =
        request.has("catch_volume")
            && request.has("catch_time")
            && (request.has("walk_speed") || request.has("walk_time"));
    if (!clock) {
      return Optional.empty();
    }
    Step flow =
        Nozzle.flow(
            caught(request, sheet).orElseThrow(),
            request.amount("catch_time").orElseThrow(),
            Unit.of("[gal_us]/min"));
    sheet.steps(List.of(flow)).figure("nozzle_flow", flow.result());
    return Optional.of(flow.result());
  }

  private static Reply byFlow(Request request, Sheet sheet, Quantity flow) {
    Optional<LawnArea> ground = Ground.test(request);
    Optional<Quantity> clock =
        request
            .amount("walk_time")
            .or(
                () ->
                    request.turn().has("catch_volume")
                        ? Optional.empty()
                        : request.amount("catch_time"));
    if (clock.isPresent() && ground.isPresent()) {
      Quantity area = ground.get().area();
      Quantity time = clock.get();
      return told(request, sheet, Calibration.byClock(flow, time, area, unit(request, flow, area)));
    }
    Optional<Quantity> speed = speed(request, sheet);
    Optional<Quantity> swath = request.amount("spacing").or(() -> request.amount("swath"));
    if (speed.isEmpty()) {
      return sheet.ask(Asking.question("walk_speed"), "walk_speed");
    }
    if (swath.isEmpty()) {
      return sheet.ask(Asking.question("swath"), "swath");
    }
    boolean boom = !request.has("spacing") && request.has("nozzle_count") && isEach(request);
    Quantity all = boom ? flow.times(request.amount("nozzle_count").orElseThrow().value()) : flow;
    Quantity area = Quantity.of(1, Units.ACRE);
    Unit unit = perAcre(request) ? Units.GALLON_PER_ACRE : unit(request, flow, area);
    return told(request, sheet, Calibration.atSpeed(all, speed.get(), swath.get(), unit));
  }

  /** Whether the flow was told of each tip of a boom, and not of all together. */
  private static boolean isEach(Request request) {
    return request.turn().hasWord(EACH) && !request.turn().hasWord(TOTAL);
  }

  private static boolean perAcre(Request request) {
    return request.turnWanted().isEmpty() && request.has("spacing")
        || request.turn().tokens().stream().anyMatch(t -> t.is("acre") || t.is("acres"));
  }

  private static Optional<Quantity> speed(Request request, Sheet sheet) {
    if (request.has("walk_speed")) {
      return request.amount("walk_speed");
    }
    Optional<Quantity> time =
        request
            .amount("walk_time")
            .or(() -> request.amount("time"))
            .or(() -> request.amount("catch_time"));
    Optional<Quantity> distance = request.amount("distance");
    if (time.isEmpty() || distance.isEmpty()) {
      return Optional.empty();
    }
    Step speed = WalkSpeed.of(distance.get(), time.get(), Units.MILE_PER_HOUR);
    sheet.steps(List.of(speed)).figure("walk_speed", speed.result());
    return Optional.of(speed.result());
  }

  private static Reply flowWanted(Request request, Sheet sheet) {
    Optional<Quantity> speed = speed(request, sheet);
    Optional<Quantity> swath = request.amount("spacing").or(() -> request.amount("swath"));
    if (speed.isEmpty() || swath.isEmpty()) {
      String need = speed.isEmpty() ? "walk_speed" : "swath";
      return sheet.ask(Asking.question(need), need);
    }
    Step flow =
        Calibration.flowFor(
            request.amount("spray_rate").orElseThrow(),
            speed.get(),
            swath.get(),
            Unit.of("[gal_us]/min"));
    String shown = sheet.steps(List.of(flow)).figure("nozzle_flow", flow.result());
    return sheet.answer(
        "Each tip must give " + shown + caughtIn(request, sheet, flow.result()) + ".");
  }

  /** What a cup under the tip should hold after the time that was told. */
  private static String caughtIn(Request request, Sheet sheet, Quantity flow) {
    Optional<Quantity> time =
        request.amount("catch_time").or(() -> request.amount("time")).filter(t -> t.signum() > 0);
    if (time.isEmpty()) {
      return "";
    }
    Step caught = Working.of("catch_volume", flow).times(time.get()).as(Units.FL_OZ);
    return ": "
        + sheet.steps(List.of(caught)).figure("catch_volume", caught.result())
        + " in "
        + Shown.of(time.get());
  }

  private static Reply speedWanted(Request request, Sheet sheet) {
    Optional<Quantity> swath = request.amount("spacing").or(() -> request.amount("swath"));
    if (swath.isEmpty()) {
      return sheet.ask(Asking.question("swath"), "swath");
    }
    Step speed =
        Calibration.speedFor(
            request.amount("spray_rate").orElseThrow(),
            request.amount("nozzle_flow").orElseThrow(),
            swath.get(),
            Units.MILE_PER_HOUR);
    String shown = sheet.steps(List.of(speed)).figure("walk_speed", speed.result());
    return sheet.answer("Go " + shown + ".");
  }

  /** How far a full tank goes, and what it takes where the label's rate is known. */
  private static String fullTank(Request request, Sheet sheet, Quantity rate) {
    Coverage full = Coverage.ofSpray(request.amount("tank").orElseThrow(), rate);
    String area = sheet.steps(full.steps()).figure("area_per_fill", full.area());
    sheet.figure("area_covered", full.area());
    return " A full tank covers " + area + "." + FullTank.product(request, sheet, full.area());
  }

  private static Reply told(Request request, Sheet sheet, Step rate) {
    String shown = sheet.steps(List.of(rate)).figure("spray_rate", rate.result());
    StringBuilder line = new StringBuilder("You lay down " + shown + ".");
    boolean tank =
        request.has("tank") && request.has("catch_volume")
            || request.has("tank") && request.has("nozzle_flow");
    if (tank) {
      line.append(fullTank(request, sheet, rate.result()));
    }
    sheet.say("Measure again when tip, pressure, pace or walker changes.");
    sheet.suggest("How much goes in my tank at that output?");
    return sheet.answer(line.toString());
  }
}
