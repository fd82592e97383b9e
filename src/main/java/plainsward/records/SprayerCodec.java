package plainsward.records;

import java.util.Set;
import plainsward.records.Amounts.Kind;

/** How a sprayer stands in its file. */
final class SprayerCodec implements Codec<Sprayer> {
  /** The version that is written. */
  static final int VERSION = 1;

  private static final Set<String> FIELDS =
      Set.of("version", "name", "tank", "sprayRate", "calibrated", "held");

  @Override
  public Sprayer read(Node file) {
    Node node = file.version(VERSION) == 0 ? OldVersions.sprayer(file) : file;
    node.allow(FIELDS);
    return new Sprayer(
        node.get("name").name(),
        node.optional("tank", n -> Amounts.read(n, Kind.VOLUME)),
        node.optional("sprayRate", n -> Amounts.read(n, Kind.SPRAY_RATE)),
        node.optional("calibrated", Node::date),
        node.optional("held", SprayerCodec::held));
  }

  private static Sprayer.Held held(Node node) {
    node.allow(Set.of("product", "date"));
    return new Sprayer.Held(node.get("product").name(), node.optional("date", Node::date));
  }

  @Override
  public Tree tree(Sprayer sprayer) {
    return new Tree()
        .put("version", VERSION)
        .put("name", sprayer.name())
        .put("tank", sprayer.tank().map(Amounts::tree))
        .put("sprayRate", sprayer.sprayRate().map(Amounts::tree))
        .put("calibrated", sprayer.calibrated())
        .put("held", sprayer.held().map(SprayerCodec::held));
  }

  private static Tree held(Sprayer.Held held) {
    return new Tree().put("product", held.product()).put("date", held.day());
  }

  @Override
  public String name(Sprayer sprayer) {
    return sprayer.name();
  }

  @Override
  public String kind() {
    return "sprayer";
  }
}
