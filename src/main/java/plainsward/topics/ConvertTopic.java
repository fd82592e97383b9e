package plainsward.topics;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.dosing.Step;
import plainsward.dosing.Working;
import plainsward.reading.Fact;
import plainsward.reply.Reply;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.UnitSystem;
import plainsward.units.Units;

/** One measure in another. */
public final class ConvertTopic implements Topic {
  private static final Set<String> NO_AMOUNT =
      Set.of("number", "wanted", "analysis", "season_limit", "applied_count");

  private static final Set<String> RATE = Set.of("rate", "dose");

  @Override
  public String code() {
    return "convert";
  }

  @Override
  public Reply reply(Request request) {
    return RateCheck.isAsked(request) ? new RateCheck(request).reply() : converted(request);
  }

  private static Reply converted(Request request) {
    Sheet sheet = new Sheet(request, "convert");
    List<Unit> wanted = request.turnWanted();
    List<Fact> amounts = amounts(request);
    if (wanted.isEmpty() && amounts.size() == 2 && areKindsOfOunce(amounts)) {
      return new NoteTopic("words").reply(request);
    }
    if (wanted.isEmpty() && amounts.size() == 2 && alike(amounts)) {
      return compared(sheet, amounts.get(0).amount(), amounts.get(1).amount());
    }
    if (wanted.isEmpty() && amounts.size() == 2 && request.asks().size() > 0) {
      return new NoteTopic("words").reply(request);
    }
    if (wanted.size() > 1 && wanted.stream().distinct().count() == 1 && amounts.isEmpty()) {
      return new NoteTopic("words").reply(request);
    }
    if (request.turn().has("strength") && request.turn().has("label_rate")) {
      return strengthAndRate(request, sheet);
    }
    if (wanted.isEmpty() && isReckoned(request)) {
      Quantity rate = request.turn().first("label_rate").orElseThrow().amount();
      sheet.caution("read-label");
      return sheet.answer("That is " + sheet.figure("converted", rate) + ".");
    }
    Optional<Fact> said = amount(request, wanted);
    if (said.isEmpty()) {
      return sheet.ask("What amount do you want converted, and into what?", "area");
    }
    Quantity amount = said.get().amount();
    Optional<Unit> into =
        wanted.stream()
            .filter(u -> u.dimension().equals(amount.dimension()))
            .reduce((first, second) -> second)
            .or(() -> ounceKind(amount, wanted))
            .or(() -> other(amount));
    if (into.isEmpty()) {
      return sheet.ask("Into what unit?", "area");
    }
    return told(request, sheet, said.get(), amount, into.get());
  }

  /** "32 oz bottle covers 16000, what rate is that": the reader has put it together. */
  private static boolean isReckoned(Request request) {
    boolean rate = request.turn().has("container") || request.turn().hasWord(RATE);
    return rate && request.turn().has("label_rate");
  }

  /** So much per gallon against so much per 1,000 sq ft: the sprayer's output joins the two. */
  private static Reply strengthAndRate(Request request, Sheet sheet) {
    Quantity rate = request.turn().first("label_rate").orElseThrow().amount();
    Quantity strength = request.turn().first("strength").orElseThrow().amount();
    Step laid =
        Working.of("applied_rate", strength).times(Sprayer.rate(request, sheet)).as(rate.unit());
    sheet.steps(List.of(laid)).figure("converted", laid.result());
    boolean same = laid.result().isSameAmount(rate);
    sheet.caution("read-label");
    return sheet.answer(
        (same ? "Yes, at that output: " : "No: ")
            + Shown.of(strength)
            + " puts down "
            + Shown.of(laid.result())
            + (same ? "." : ", against " + Shown.of(rate) + ".")
            + " They are the same only where a gallon does 1,000 sq ft.");
  }

  private static List<Fact> amounts(Request request) {
    return request.turn().all().stream()
        .filter(f -> f.value().isPresent() && !NO_AMOUNT.contains(f.name()))
        .toList();
  }

  /** "Is a fluid ounce the same as an ounce": kinds are asked about, not amounts. */
  private static boolean areKindsOfOunce(List<Fact> two) {
    return two.stream().filter(f -> f.leavesOpen("ounce")).count() == 1
        && two.get(0).amount().isSameAmount(two.get(1).amount());
  }

  private static boolean alike(List<Fact> two) {
    return two.get(0).amount().dimension().equals(two.get(1).amount().dimension());
  }

  /** Whether two amounts are the same, and how far apart. */
  private static Reply compared(Sheet sheet, Quantity first, Quantity second) {
    Quantity converted = first.in(second.unit());
    sheet.figure("converted", converted);
    sheet.work(Shown.of(first) + " = " + Shown.of(converted));
    Ratio apart = converted.ratioTo(second).minus(Ratio.ONE);
    double percent = Math.abs(apart.toDouble()) * 100;
    String verdict =
        apart.signum() == 0 ? "Yes, the same" : percent < 3 ? "Yes, near enough" : "No";
    return sheet.answer(
        verdict
            + ": "
            + Shown.of(first)
            + " is "
            + Shown.of(converted)
            + ", against "
            + Shown.of(second)
            + ".");
  }

  private static Reply told(Request request, Sheet sheet, Fact said, Quantity amount, Unit into) {
    Quantity converted = amount.in(into);
    sheet.figure("converted", converted);
    sheet.work(Shown.of(amount) + " = " + Shown.of(converted));
    doubts(request, sheet, said, amount, into);
    return sheet.answer(Shown.of(amount) + " is " + Shown.of(converted) + ".");
  }

  private static void doubts(Request request, Sheet sheet, Fact said, Quantity amount, Unit into) {
    if (said.leavesOpen("ounce") || into.equals(Units.FL_OZ)) {
      sheet.caution("ounce-kind");
      sheet.say("That is liquid measure; a dry product's ounces must be weighed.");
    }
    boolean gallon = amount.unit().code().startsWith("[gal") || into.code().startsWith("[gal");
    if (gallon && (request.units() != UnitSystem.US || said.leavesOpen("gallon"))) {
      sheet.caution("gallon-kind");
      Unit twin = amount.unit().equals(Units.GALLON) ? Units.IMPERIAL_GALLON : Units.GALLON;
      if (amount.dimension().equals(Dimension.VOLUME)) {
        String kind = twin.equals(Units.GALLON) ? "US" : "imperial";
        sheet.say(
            "With "
                + kind
                + " gallons it would be "
                + Shown.of(new Quantity(amount.value(), twin).in(into))
                + ".");
      }
    }
  }

  /** The amount to convert: said in this turn, else a bare number with the first unit wanted. */
  private static Optional<Fact> amount(Request request, List<Unit> wanted) {
    Optional<Fact> said =
        request.turn().all().stream()
            .filter(f -> f.value().isPresent() && !NO_AMOUNT.contains(f.name()))
            .filter(
                f ->
                    wanted.isEmpty()
                        || wanted.stream()
                            .anyMatch(
                                u -> u.dimension().equals(f.amount().dimension()) || isOunce(u, f)))
            .findFirst();
    if (said.isPresent()) {
      return said;
    }
    Optional<Fact> number = request.turn().first("number");
    if (!wanted.isEmpty()) {
      Ratio value =
          number.filter(n -> wanted.size() > 1).map(n -> n.amount().value()).orElse(Ratio.ONE);
      boolean pair = wanted.size() > 1;
      return pair
          ? Optional.of(Fact.of("converted", new Quantity(value, from(wanted)), "", 0))
          : Optional.empty();
    }
    return Optional.empty();
  }

  /** "how many ounces in a gallon": one of the larger unit in the smaller. */
  private static Unit from(List<Unit> wanted) {
    return wanted.get(0);
  }

  private static boolean isOunce(Unit unit, Fact fact) {
    return unit.equals(Units.FL_OZ) && fact.amount().dimension().equals(Dimension.MASS);
  }

  private static Optional<Unit> ounceKind(Quantity amount, List<Unit> wanted) {
    boolean ounces = wanted.stream().anyMatch(u -> u.equals(Units.FL_OZ));
    return ounces && amount.dimension().equals(Dimension.MASS)
        ? Optional.of(Units.OUNCE)
        : Optional.empty();
  }

  /** The usual counterpart where no unit was named. */
  private static Optional<Unit> other(Quantity amount) {
    return switch (amount.unit().code()) {
      case "[gal_us]", "[gal_br]" -> Optional.of(Units.LITRE);
      case "L" -> Optional.of(Units.GALLON);
      case "[foz_us]", "[tbs_us]", "[tsp_us]", "[qt_us]", "[pt_us]", "[cup_us]" ->
          Optional.of(Units.MILLILITRE);
      case "mL" -> Optional.of(Units.FL_OZ);
      case "[acr_us]", "m2", "har", "[syd_i]" -> Optional.of(Units.SQUARE_FOOT);
      case "[sft_i]" -> Optional.of(Units.SQUARE_METRE);
      case "[degF]" -> Optional.of(Units.CELSIUS);
      case "Cel" -> Optional.of(Units.FAHRENHEIT);
      case "[gal_us]/[acr_us]" -> Optional.of(Units.GALLON_PER_THOUSAND);
      case "%" -> Optional.of(Units.FL_OZ_PER_GALLON);
      case "[foz_us]/[gal_us]", "[tbs_us]/[gal_us]", "[tsp_us]/[gal_us]", "mL/L" ->
          Optional.of(Units.PERCENT);
      case "[lb_av]" -> Optional.of(Units.KILOGRAM);
      case "kg" -> Optional.of(Units.POUND);
      default -> Optional.empty();
    };
  }
}
