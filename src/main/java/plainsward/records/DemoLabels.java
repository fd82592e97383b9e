package plainsward.records;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;

/** The invented labels that ship with the program, for trying it out; none is a product. */
public final class DemoLabels {
  private static final List<String> FILES =
      List.of(
          "demo-metric-triclopyr",
          "demo-preventer-granule",
          "demo-ready-spray",
          "demo-sedge-powder",
          "demo-three-way",
          "demo-weed-and-feed");

  private DemoLabels() {}

  /** All of them, by name. */
  public static List<Label> all() {
    return FILES.stream().map(DemoLabels::read).toList();
  }

  private static Label read(String name) {
    String file = "corpus/labels/" + name + ".json";
    try (InputStream in = DemoLabels.class.getClassLoader().getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException(file + ": the label is missing");
      }
      return LabelReader.read(Json.read(in.readAllBytes()));
    } catch (IOException fault) {
      throw new UncheckedIOException(file + ": " + fault.getMessage(), fault);
    }
  }
}
