package plainsward.records;

/** How a label stands in its file. */
final class LabelCodec implements Codec<Label> {
  @Override
  public Label read(Node node) {
    return LabelReader.read(node);
  }

  @Override
  public Tree tree(Label label) {
    return LabelWriter.tree(label);
  }

  @Override
  public String name(Label label) {
    return label.name();
  }

  @Override
  public String kind() {
    return "label";
  }
}
