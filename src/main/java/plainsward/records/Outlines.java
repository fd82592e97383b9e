package plainsward.records;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.units.Quantity;

/**
 * Lawns of a GeoJSON text (RFC 7946), a format whose coordinates are longitude and latitude. A
 * feature's {@code name} is the lawn's; features of one name are pieces of one lawn. Areas are in
 * square metres. What is no area (points, lines) is refused.
 */
final class Outlines {
  private static final int MOST_FEATURES = 1000;

  private final String otherwise;
  private final Map<String, Lawn> lawns = new LinkedHashMap<>();

  private Outlines(String otherwise) {
    this.otherwise = otherwise;
  }

  /** The lawns; {@code otherwise} is the name of one without a name. */
  static List<Lawn> read(Node root, String otherwise) {
    if (root.has("crs")) {
      throw FieldFault.saying("crs", "only longitude and latitude (WGS 84) can be read");
    }
    Outlines outlines = new Outlines(otherwise);
    outlines.take(root);
    if (outlines.lawns.isEmpty()) {
      throw root.get("features").expected("at least one outline");
    }
    return List.copyOf(outlines.lawns.values());
  }

  private void take(Node node) {
    Object type = node.get("type").value();
    if ("FeatureCollection".equals(type)) {
      List<Node> features = node.get("features").items();
      if (features.size() > MOST_FEATURES) {
        throw FieldFault.saying("features", "there are more than " + MOST_FEATURES);
      }
      features.forEach(this::feature);
    } else if ("Feature".equals(type)) {
      feature(node);
    } else {
      add(otherwise, Optional.empty(), area(node));
    }
  }

  private void feature(Node node) {
    if (!"Feature".equals(node.get("type").value())) {
      throw node.get("type").expected("\"Feature\"");
    }
    Node told = node.get("properties");
    boolean any = told.value() != null;
    String name =
        (any ? told.optional("name", Node::name) : Optional.<String>empty()).orElse(otherwise);
    Optional<String> grass = any ? told.optional("grass", Node::text) : Optional.empty();
    add(name, grass, area(node.get("geometry")));
  }

  private void add(String name, Optional<String> grass, Quantity area) {
    Lawn before = lawns.get(Names.key(name));
    Lawn lawn = before == null ? Lawn.named(name).withArea(area) : joined(before, area);
    lawns.put(Names.key(name), grass.map(lawn::withGrass).orElse(lawn));
  }

  private static Lawn joined(Lawn before, Quantity area) {
    Lawn lawn =
        before.pieces().isEmpty()
            ? before.withPiece("piece 1", before.area().orElseThrow())
            : before;
    return lawn.withPiece("piece " + (lawn.pieces().size() + 1), area);
  }

  private static Quantity area(Node geometry) {
    List<Node> polygons = new ArrayList<>();
    collect(geometry, polygons);
    if (polygons.isEmpty()) {
      throw geometry.expected("at least one outline");
    }
    return Polygon.area(polygons);
  }

  private static void collect(Node geometry, List<Node> polygons) {
    Node type = geometry.get("type");
    if ("Polygon".equals(type.value())) {
      polygons.add(geometry.get("coordinates"));
    } else if ("MultiPolygon".equals(type.value())) {
      polygons.addAll(geometry.get("coordinates").items());
    } else if ("GeometryCollection".equals(type.value())) {
      geometry.get("geometries").items().forEach(part -> collect(part, polygons));
    } else {
      throw type.expected("\"Polygon\" or \"MultiPolygon\"");
    }
  }
}
