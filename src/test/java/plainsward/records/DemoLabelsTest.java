package plainsward.records;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The published schema and the program agree on what a label file is. */
class DemoLabelsTest {
  private static final Path FOLDER = Path.of("corpus/labels");
  private static final JsonSchema SCHEMA = schema();

  private static JsonSchema schema() {
    try {
      return JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
          .getSchema(Files.readString(FOLDER.resolve("label.schema.json")));
    } catch (IOException fault) {
      throw new java.io.UncheckedIOException(fault);
    }
  }

  static List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(f -> !f.endsWith("label.schema.json")).sorted().toList();
    }
  }

  private static List<String> faults(String json) {
    return SCHEMA.validate(json, InputFormat.JSON).stream().map(Object::toString).toList();
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachDemoLabelFitsThePublishedSchema(Path file) throws IOException {
    assertEquals(List.of(), faults(Files.readString(file)));
  }

  @ParameterizedTest
  @MethodSource("files")
  void eachDemoLabelIsReadAndWrittenAgainWithoutLoss(Path file) {
    Label label = RecordBook.readLabel(file);
    String written = LabelWriter.tree(label).text();
    assertEquals(List.of(), faults(written));
    assertEquals(label, LabelReader.read(Json.read(written.getBytes(UTF_8))));
  }

  private static final java.nio.charset.Charset UTF_8 = java.nio.charset.StandardCharsets.UTF_8;

  @ParameterizedTest
  @MethodSource("files")
  void eachDemoLabelIsMarkedAsInvented(Path file) {
    Label label = RecordBook.readLabel(file);
    assertTrue(label.invented());
    assertTrue(label.remark().orElseThrow().startsWith("Invented for demonstration"));
  }

  @Test
  void allDemoLabelsShipWithTheProgram() throws IOException {
    assertEquals(files().stream().map(RecordBook::readLabel).toList(), DemoLabels.all());
    assertTrue(DemoLabels.all().size() >= 5);
  }

  @Test
  void aLabelWithEveryFieldFitsTheSchema() {
    assertEquals(List.of(), faults(LabelWriter.tree(Samples.fullLabel("full")).text()));
    assertEquals(List.of(), faults(LabelWriter.tree(Label.named("bare").label()).text()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "{\"version\":1}",
        "{\"version\":1,\"name\":\" \"}",
        "{\"version\":1,\"name\":\"x\",\"rates\":[{\"amount\":\"lots\",\"unit\":\"%\"}]}",
        "{\"version\":1,\"name\":\"x\",\"rates\":[{\"amount\":0,\"unit\":\"%\"}]}",
        "{\"version\":1,\"name\":\"x\",\"rates\":[{\"amount\":1,\"unit\":\"[gal_us]\"}]}",
        "{\"version\":1,\"name\":\"x\",\"rates\":[{\"amount\":1,\"unit\":\"oz\"}]}",
        "{\"version\":1,\"name\":\"x\",\"form\":\"powder\"}",
        "{\"version\":1,\"name\":\"x\",\"sesaon\":{}}",
        "{\"version\":1,\"name\":\"x\",\"season\":{\"applications\":-1}}",
        "{\"version\":1,\"name\":\"x\",\"season\":{\"interval\":{\"amount\":1.5,\"unit\":\"d\"}}}",
        "{\"version\":1,\"name\":\"x\",\"gear\":\"gloves\"}",
        "{\"version\":1,\"name\":\"x\",\"weather\":{\"windMost\":{\"amount\":5,\"unit\":\"h\"}}}"
      })
  void whatTheProgramRefusesTheSchemaRefuses(String json) {
    assertFalse(faults(json).isEmpty());
    org.junit.jupiter.api.Assertions.assertThrows(
        FieldFault.class, () -> LabelReader.read(Json.read(json.getBytes(UTF_8))));
  }
}
