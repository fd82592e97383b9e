package plainsward.records;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Optional;
import plainsward.units.Quantity;

/** Things for tests. */
final class Samples {
  static final LocalDate MAY = LocalDate.of(2026, 5, 1);

  private Samples() {}

  /** A label that has a value in every field. */
  static Label fullLabel(String name) {
    return Label.named(name)
        .form(Label.Form.CONCENTRATE)
        .state(Label.State.LIQUID)
        .active("2,4-D", Optional.of(Quantity.of("24.5", "%")))
        .active("dicamba", Optional.empty())
        .rate(
            new Rate(
                new Range(fl("1.2"), fl("1.8")), Optional.of("whole lawn, \"cool\" grasses; é")))
        .rate(Rate.of(Quantity.of("1.5", "[foz_us]/[gal_us]"), "spots"))
        .rate(Rate.of(Quantity.of("2", "%"), "edges"))
        .sprayVolume(
            new Range(
                Quantity.of("1", "[gal_us]/(1000.[sft_i])"),
                Quantity.of("2", "[gal_us]/(1000.[sft_i])")))
        .wettingAgent(
            new WettingAgent(
                WettingAgent.Rule.REQUIRED,
                Optional.of("non-ionic surfactant"),
                Optional.of(Range.of(Quantity.of("0.25", "%")))))
        .interval(Period.ofDays(30))
        .applicationsPerYear(2)
        .amountPerYear(fl("3"))
        .weather(
            new Label.Weather(
                Optional.of(Quantity.of("6", "h")),
                Optional.of(Quantity.of("10", "[mi_i]/h")),
                Optional.of(Quantity.of("85", "[degF]")),
                Optional.of(Quantity.of("-2.5", "Cel"))))
        .care(
            new Label.Care(
                Optional.of(Quantity.of("2", "d")),
                Optional.of(Quantity.of("36", "h")),
                Optional.of(Quantity.of("1", "d")),
                Optional.of(Quantity.of("0.5", "[in_i]")),
                Optional.of(Quantity.of("3", "d"))))
        .seeding(
            new Label.Seeding(
                Optional.of(Period.ofMonths(4)), Optional.of(Period.ofWeeks(4)), Optional.of(3)))
        .grasses(List.of("tall fescue"), List.of("centipedegrass"))
        .reentry(new Label.Reentry(true, Optional.of(Quantity.of("12", "h"))))
        .gear("gloves")
        .gear("long sleeves")
        .remark("line one\nline two")
        .invented()
        .label();
  }

  static Quantity fl(String perThousand) {
    return Quantity.of(perThousand, "[foz_us]/(1000.[sft_i])");
  }

  static Quantity sqFt(long many) {
    return Quantity.of(String.valueOf(many), "[sft_i]");
  }

  static Quantity flOz(String many) {
    return Quantity.of(many, "[foz_us]");
  }

  static LogEntry entry(LocalDate day, String lawn, String label) {
    return LogEntry.of(day, label).on(lawn);
  }
}
