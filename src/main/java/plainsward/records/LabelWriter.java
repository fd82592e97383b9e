package plainsward.records;

import java.util.Optional;
import plainsward.units.Quantity;

/** Writes a label file, of this version. */
final class LabelWriter {
  private LabelWriter() {}

  static Tree tree(Label label) {
    return new Tree()
        .put("version", LabelReader.VERSION)
        .put("invented", label.invented() ? Optional.of(true) : Optional.empty())
        .put("name", label.name())
        .put("form", label.form().map(Word::word))
        .put("state", label.state().map(Word::word))
        .putIfAny("actives", label.actives().stream().map(LabelWriter::active).toList())
        .putIfAny("rates", label.rates().stream().map(LabelWriter::rate).toList())
        .put("sprayVolume", label.sprayVolume().map(Amounts::tree))
        .put("wettingAgent", label.wettingAgent().map(LabelWriter::wettingAgent))
        .putIfAny("season", season(label.season()))
        .putIfAny("weather", weather(label.weather()))
        .putIfAny("care", care(label.care()))
        .putIfAny("seeding", seeding(label.seeding()))
        .putIfAny("grasses", grasses(label.grasses()))
        .put("reentry", label.reentry().map(LabelWriter::reentry))
        .putIfAny("gear", label.gear())
        .put("remark", label.remark());
  }

  private static Optional<Tree> amount(Optional<Quantity> quantity) {
    return quantity.map(Amounts::tree);
  }

  private static Tree active(Label.Active active) {
    return new Tree().put("name", active.name()).put("strength", amount(active.strength()));
  }

  private static Tree rate(Rate rate) {
    return new Tree()
        .put("for", rate.use())
        .addAll(Amounts.tree(rate.amount()))
        .put("taken", rate.taken() ? Optional.of(true) : Optional.empty());
  }

  private static Tree wettingAgent(WettingAgent agent) {
    return new Tree()
        .put("rule", agent.rule().word())
        .put("kind", agent.kind())
        .put("strength", agent.strength().map(Amounts::tree));
  }

  private static Tree season(Label.Season season) {
    return new Tree()
        .put("interval", season.interval().map(Amounts::tree))
        .put("applications", season.applications())
        .put("amount", amount(season.amount()));
  }

  private static Tree weather(Label.Weather weather) {
    return new Tree()
        .put("rainFree", amount(weather.rainFree()))
        .put("windMost", amount(weather.windMost()))
        .put("heatMost", amount(weather.heatMost()))
        .put("coldLeast", amount(weather.coldLeast()));
  }

  private static Tree care(Label.Care care) {
    return new Tree()
        .put("mowBefore", amount(care.mowBefore()))
        .put("mowAfter", amount(care.mowAfter()))
        .put("waterAfter", amount(care.waterAfter()))
        .put("waterIn", amount(care.waterIn()))
        .put("waterInWithin", amount(care.waterInWithin()));
  }

  private static Tree seeding(Label.Seeding seeding) {
    return new Tree()
        .put("seedAfter", seeding.seedAfter().map(Amounts::tree))
        .put("newGrassAfter", seeding.newGrassAfter().map(Amounts::tree))
        .put("newGrassMowings", seeding.newGrassMowings());
  }

  private static Tree grasses(Label.Grasses grasses) {
    return new Tree().putIfAny("allows", grasses.allows()).putIfAny("harms", grasses.harms());
  }

  private static Tree reentry(Label.Reentry reentry) {
    return new Tree()
        .put("untilDry", reentry.untilDry() ? Optional.of(true) : Optional.empty())
        .put("time", amount(reentry.time()));
  }
}
