package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Positive;
import org.junit.jupiter.api.Test;
import plainsward.units.Quantity;
import plainsward.units.Ratio;

/** Whatever is done to a file, reading it gives a thing or one sentence, and nothing else. */
class MutationTest {
  private static final int MUTATIONS = 3000;
  private static final String[] PIECES = {
    "null",
    "{}",
    "[]",
    "-1",
    "0",
    "1e40",
    "\"\"",
    "\"1/3\"",
    "true",
    "\"[foz_us]\"",
    "\"%\"",
    "\"(\"",
    "\"1.\"",
    "\"/\"",
    "\"2026-13-01\"",
    "\"\\ud800\"",
    "\u0000",
    ",",
    "\""
  };
  private final Random random = new Random(7);

  private void mutate(String what, String original, Consumer<Node> reader) {
    int refused = 0;
    for (int i = 0; i < MUTATIONS; i++) {
      String text = mutated(original);
      try {
        reader.accept(Json.read(text.getBytes(StandardCharsets.UTF_8)));
      } catch (FieldFault fault) {
        refused++;
        assertFalse(fault.getMessage().contains("\n"), fault.getMessage());
      } catch (RuntimeException other) {
        throw new AssertionError(what + ": " + text, other);
      }
    }
    assertTrue(refused > MUTATIONS / 4, what + ": only " + refused + " were refused");
  }

  /** A text with one to three pieces of it replaced, left out or doubled. */
  private String mutated(String original) {
    String text = original;
    for (int i = random.nextInt(3); i >= 0; i--) {
      List<Integer> edges = edges(text);
      int from = edges.get(random.nextInt(edges.size()));
      int to = edges.get(random.nextInt(edges.size()));
      String cut = text.substring(Math.min(from, to), Math.max(from, to));
      String piece = random.nextInt(4) == 0 ? cut + cut : PIECES[random.nextInt(PIECES.length)];
      text = text.substring(0, Math.min(from, to)) + piece + text.substring(Math.max(from, to));
      if (text.length() > 4 * original.length()) {
        return text.substring(0, original.length());
      }
    }
    return text;
  }

  /** Places beside quotes, brackets, commas and colons, close together so that cuts stay small. */
  private List<Integer> edges(String text) {
    List<Integer> edges = new ArrayList<>(List.of(0));
    int start = random.nextInt(Math.max(1, text.length()));
    for (int i = start; i < text.length() && edges.size() < 12; i++) {
      if ("\"[]{},: ".indexOf(text.charAt(i)) >= 0) {
        edges.add(i);
      }
    }
    if (edges.size() > 2 && random.nextInt(10) > 0) {
      edges.remove(0);
    }
    return edges;
  }

  @Test
  void ofALabel() {
    mutate("label", LabelWriter.tree(Samples.fullLabel("jug")).line(), LabelReader::read);
  }

  @Test
  void ofAnOldLabel() throws IOException {
    Path old = Path.of("src/test/resources/records/version0/labels/jug.json");
    mutate("old label", Files.readString(old), LabelReader::read);
  }

  @Test
  void ofALawnAndASprayer() {
    LawnCodec lawns = new LawnCodec();
    Lawn lawn = Lawn.named("x").withPiece("a", Samples.sqFt(4)).withTrees(true).withGrass("rye");
    mutate("lawn", lawns.tree(lawn).line(), lawns::read);
    SprayerCodec sprayers = new SprayerCodec();
    Sprayer sprayer =
        Sprayer.named("x").withTank(Quantity.of("4", "L")).withHeld("jug", Samples.MAY);
    mutate("sprayer", sprayers.tree(sprayer).line(), sprayers::read);
  }

  @Test
  void ofALineOfTheLog() {
    LogEntry entry =
        Samples.entry(Samples.MAY, "front", "jug")
            .withProduct(Samples.flOz("6"))
            .withArea(Samples.sqFt(4000))
            .withId("e1");
    mutate("log", LogLine.tree(entry).line(), node -> LogLine.read(node, 1));
  }

  @Test
  void ofAnOutline() {
    String outline =
        "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":"
            + "{\"name\":\"a\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
            + "[[[0,0],[1,0],[1,1],[0,1],[0,0]],[[0.2,0.2],[0.4,0.2],[0.4,0.4],[0.2,0.2]]]}}]}";
    mutate("outline", outline, node -> Outlines.read(node, "lawn"));
  }

  @Test
  void ofATableOfLawns() {
    String table = "name,area,unit,piece,trees\n\"front\",\"4,000\",sq ft,a,yes\nback,5 acre,,,\n";
    for (int i = 0; i < MUTATIONS; i++) {
      String text = mutated(table);
      try {
        assertTrue(LawnTable.read("x", text).lawns().size() <= 20);
      } catch (FieldFault refused) {
        assertFalse(refused.getMessage().isBlank());
      }
    }
  }

  @Property(tries = 500)
  void anyAmountIsReadAsItWasWritten(@ForAll @Positive long above, @ForAll @Positive long below) {
    Quantity amount = new Quantity(Ratio.of(above, below), plainsward.units.Units.FL_OZ);
    Node written = Json.read(Amounts.tree(amount).line().getBytes(StandardCharsets.UTF_8));
    assertEquals(amount, Amounts.read(written, Amounts.Kind.PRODUCT));
  }
}
