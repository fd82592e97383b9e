package plainsward.records;

import java.util.Set;
import plainsward.records.Amounts.Kind;

/** How a lawn stands in its file. */
final class LawnCodec implements Codec<Lawn> {
  /** The version that is written. */
  static final int VERSION = 1;

  private static final Set<String> FIELDS =
      Set.of(
          "version",
          "name",
          "area",
          "pieces",
          "grass",
          "notes",
          "trees",
          "waterNear",
          "vegetablesNear");

  @Override
  public Lawn read(Node file) {
    Node node = file.version(VERSION) == 0 ? OldVersions.lawn(file) : file;
    node.allow(FIELDS);
    return new Lawn(
        node.get("name").name(),
        node.optional("area", n -> Amounts.read(n, Kind.AREA)),
        node.list("pieces", LawnCodec::piece),
        node.optional("grass", Node::text),
        node.optional("notes", Node::text),
        node.optional("trees", Node::flag),
        node.optional("waterNear", Node::flag),
        node.optional("vegetablesNear", Node::flag));
  }

  private static Lawn.Piece piece(Node node) {
    node.allow(Set.of("name", "area"));
    return new Lawn.Piece(node.get("name").name(), Amounts.read(node.get("area"), Kind.AREA));
  }

  @Override
  public Tree tree(Lawn lawn) {
    return new Tree()
        .put("version", VERSION)
        .put("name", lawn.name())
        .put("area", lawn.area().map(Amounts::tree))
        .putIfAny("pieces", lawn.pieces().stream().map(LawnCodec::piece).toList())
        .put("grass", lawn.grass())
        .put("notes", lawn.notes())
        .put("trees", lawn.trees())
        .put("waterNear", lawn.waterNear())
        .put("vegetablesNear", lawn.vegetablesNear());
  }

  private static Tree piece(Lawn.Piece piece) {
    return new Tree().put("name", piece.name()).put("area", Amounts.tree(piece.area()));
  }

  @Override
  public String name(Lawn lawn) {
    return lawn.name();
  }

  @Override
  public String kind() {
    return "lawn";
  }
}
