package plainsward.packing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.SimpleRemapper;

/** Rewritten classes do what they did before. */
class PlainClassesTest {
  @TempDir Path folder;

  @BeforeEach
  void aCopyOfTheClass() throws Exception {
    Path classes =
        Path.of(Lambdas.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path room = Path.of("plainsward", "packing");
    Files.createDirectories(folder.resolve(room));
    try (Stream<Path> files = Files.list(classes.resolve(room))) {
      for (Path file :
          files.filter(f -> f.getFileName().toString().startsWith("Lambdas")).toList()) {
        Files.copy(file, folder.resolve(room).resolve(file.getFileName().toString()));
      }
    }
  }

  @Test
  void whatIsRewrittenTellsTheSame() throws Exception {
    PlainClasses.main(new String[] {folder.toString()});
    assertEquals(new Lambdas().get(), told());
  }

  @Test
  void noLambdaIsLeft() throws IOException {
    PlainClasses.main(new String[] {folder.toString()});
    for (Map.Entry<String, byte[]> file : files().entrySet()) {
      String inside = new String(file.getValue(), StandardCharsets.ISO_8859_1);
      assertFalse(inside.contains("LambdaMetafactory.metafactory"), file.getKey());
    }
    assertTrue(files().keySet().stream().anyMatch(f -> f.contains(LambdaClass.MARK)));
  }

  @Test
  void aSecondRunChangesNothing() throws IOException {
    PlainClasses.main(new String[] {folder.toString()});
    List<String> once = digests();
    PlainClasses.main(new String[] {folder.toString()});
    assertEquals(once, digests());
  }

  @Test
  void whatAnEarlierRunMadeAndNobodyNamesIsDeleted() throws IOException {
    PlainClasses.main(new String[] {folder.toString()});
    List<String> once = digests();
    Path stale = folder.resolve("plainsward/packing/Lambdas$$LambdasOld.class");
    Files.copy(folder.resolve("plainsward/packing/Lambdas$$Lambdas.class"), stale);
    assertNotSame(once, digests());
    rename(stale);
    PlainClasses.main(new String[] {folder.toString()});
    assertEquals(once, digests());
  }

  @Test
  void whatAnEarlierRunMadeOfAClassThatIsGoneIsDeleted() throws IOException {
    PlainClasses.main(new String[] {folder.toString()});
    Path stale = folder.resolve("plainsward/packing/Lambdas$$Lambdas.class");
    for (String file : files().keySet()) {
      if (!folder.resolve(file).equals(stale)) {
        Files.delete(folder.resolve(file));
      }
    }
    PlainClasses.main(new String[] {folder.toString()});
    assertEquals(List.of(), digests());
  }

  /** Gives the class in a file the name of the file. */
  private static void rename(Path file) throws IOException {
    ClassWriter writer = new ClassWriter(0);
    new ClassReader(Files.readAllBytes(file))
        .accept(
            new ClassRemapper(
                writer,
                new SimpleRemapper(
                    Opcodes.ASM9,
                    "plainsward/packing/Lambdas$$Lambdas",
                    "plainsward/packing/Lambdas$$LambdasOld")),
            0);
    Files.write(file, writer.toByteArray());
  }

  private List<String> digests() throws IOException {
    return files().entrySet().stream()
        .map(e -> e.getKey() + " " + Arrays.hashCode(e.getValue()))
        .toList();
  }

  private Map<String, byte[]> files() throws IOException {
    Map<String, byte[]> files = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        files.put(folder.relativize(file).toString(), Files.readAllBytes(file));
      }
    }
    return files;
  }

  /** What the class in the folder tells, loaded apart from the one on the class path. */
  private String told() throws Exception {
    URL[] places = {folder.toUri().toURL()};
    try (URLClassLoader loader = new URLClassLoader(places, ClassLoader.getPlatformClassLoader())) {
      var maker = loader.loadClass(Lambdas.class.getName()).getDeclaredConstructor();
      maker.setAccessible(true);
      return ((Supplier<?>) maker.newInstance()).get().toString();
    }
  }
}
