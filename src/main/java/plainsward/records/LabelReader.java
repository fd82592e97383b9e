package plainsward.records;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.records.Amounts.Kind;

/** Reads a label file, of this version or of an older one. */
final class LabelReader {
  /** The version that is written. */
  static final int VERSION = 1;

  static final Label.Season NO_SEASON =
      new Label.Season(Optional.empty(), Optional.empty(), Optional.empty());
  static final Label.Weather NO_WEATHER =
      new Label.Weather(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  static final Label.Care NO_CARE =
      new Label.Care(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
  static final Label.Seeding NO_SEEDING =
      new Label.Seeding(Optional.empty(), Optional.empty(), Optional.empty());
  static final Label.Grasses NO_GRASSES = new Label.Grasses(List.of(), List.of());

  private static final Set<String> FIELDS =
      Set.of(
          "version",
          "invented",
          "name",
          "form",
          "state",
          "actives",
          "rates",
          "sprayVolume",
          "wettingAgent",
          "season",
          "weather",
          "care",
          "seeding",
          "grasses",
          "reentry",
          "gear",
          "remark");
  private static final int MOST_APPLICATIONS = 52;

  private LabelReader() {}

  static Label read(Node file) {
    Node node = file.version(VERSION) == 0 ? OldVersions.label(file) : file;
    node.allow(FIELDS);
    return new Label(
        node.get("name").name(),
        node.optional("form", n -> n.word(Label.Form.values())),
        node.optional("state", n -> n.word(Label.State.values())),
        node.list("actives", LabelReader::active),
        node.list("rates", LabelReader::rate),
        node.optional("sprayVolume", n -> Amounts.range(n, Kind.SPRAY_RATE)),
        node.optional("wettingAgent", LabelReader::wettingAgent),
        node.optional("season", LabelReader::season).orElse(NO_SEASON),
        node.optional("weather", LabelReader::weather).orElse(NO_WEATHER),
        node.optional("care", LabelReader::care).orElse(NO_CARE),
        node.optional("seeding", LabelReader::seeding).orElse(NO_SEEDING),
        node.optional("grasses", LabelReader::grasses).orElse(NO_GRASSES),
        node.optional("reentry", LabelReader::reentry),
        node.list("gear", Node::text),
        node.optional("remark", Node::text),
        node.optional("invented", Node::flag).orElse(false));
  }

  private static Label.Active active(Node node) {
    node.allow(Set.of("name", "strength"));
    return new Label.Active(
        node.get("name").name(), node.optional("strength", n -> Amounts.read(n, Kind.STRENGTH)));
  }

  private static Rate rate(Node node) {
    node.allow(Set.of("for", "amount", "high", "unit", "taken"));
    return new Rate(
        Amounts.ends(node, Kind.RATE),
        node.optional("for", Node::text),
        node.optional("taken", Node::flag).orElse(false));
  }

  private static WettingAgent wettingAgent(Node node) {
    node.allow(Set.of("rule", "kind", "strength"));
    return new WettingAgent(
        node.get("rule").word(WettingAgent.Rule.values()),
        node.optional("kind", Node::text),
        node.optional("strength", n -> Amounts.range(n, Kind.RATE)));
  }

  private static Label.Season season(Node node) {
    node.allow(Set.of("interval", "applications", "amount"));
    return new Label.Season(
        node.optional("interval", Amounts::wait),
        node.optional("applications", n -> n.whole(0, MOST_APPLICATIONS)),
        node.optional("amount", n -> Amounts.read(n, Kind.PER_AREA)));
  }

  private static Label.Weather weather(Node node) {
    node.allow(Set.of("rainFree", "windMost", "heatMost", "coldLeast"));
    return new Label.Weather(
        node.optional("rainFree", n -> Amounts.read(n, Kind.TIME)),
        node.optional("windMost", n -> Amounts.read(n, Kind.SPEED)),
        node.optional("heatMost", n -> Amounts.read(n, Kind.TEMPERATURE)),
        node.optional("coldLeast", n -> Amounts.read(n, Kind.TEMPERATURE)));
  }

  private static Label.Care care(Node node) {
    node.allow(Set.of("mowBefore", "mowAfter", "waterAfter", "waterIn", "waterInWithin"));
    return new Label.Care(
        node.optional("mowBefore", n -> Amounts.read(n, Kind.TIME)),
        node.optional("mowAfter", n -> Amounts.read(n, Kind.TIME)),
        node.optional("waterAfter", n -> Amounts.read(n, Kind.TIME)),
        node.optional("waterIn", n -> Amounts.read(n, Kind.DEPTH)),
        node.optional("waterInWithin", n -> Amounts.read(n, Kind.TIME)));
  }

  private static Label.Seeding seeding(Node node) {
    node.allow(Set.of("seedAfter", "newGrassAfter", "newGrassMowings"));
    return new Label.Seeding(
        node.optional("seedAfter", Amounts::wait),
        node.optional("newGrassAfter", Amounts::wait),
        node.optional("newGrassMowings", n -> n.whole(1, 20)));
  }

  private static Label.Grasses grasses(Node node) {
    node.allow(Set.of("allows", "harms"));
    return new Label.Grasses(node.list("allows", Node::name), node.list("harms", Node::name));
  }

  private static Label.Reentry reentry(Node node) {
    node.allow(Set.of("untilDry", "time"));
    return new Label.Reentry(
        node.optional("untilDry", Node::flag).orElse(false),
        node.optional("time", n -> Amounts.read(n, Kind.TIME)));
  }
}
