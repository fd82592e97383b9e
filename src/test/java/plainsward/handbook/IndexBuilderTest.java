package plainsward.handbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class IndexBuilderTest {
  private static final String SYNONYMS = "corpus/tables/synonyms.json";

  @Test
  void theSameNotesMakeTheSameBytes(@TempDir Path folder) throws Exception {
    Path notes = Files.createDirectory(folder.resolve("notes"));
    Path own = Path.of("src/test/resources/handbook/own-notes/gate-code.md");
    Files.copy(own, notes.resolve("gate-code.md"));
    Path first = folder.resolve("first");
    Path second = folder.resolve("second");
    buildAfresh(notes, first);
    buildAfresh(notes, second);
    List<String> names = names(first);
    assertTrue(names.size() >= 5, names::toString);
    assertEquals(names, names(second));
    for (String name : names) {
      assertArrayEquals(
          Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
    }
  }

  /** Builds as the build does: with classes that nothing has used yet, Lucene's above all. */
  private static void buildAfresh(Path notes, Path into) throws Exception {
    List<URL> path = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      path.add(Path.of(entry).toUri().toURL());
    }
    ClassLoader parent = ClassLoader.getPlatformClassLoader();
    try (URLClassLoader fresh = new URLClassLoader(path.toArray(URL[]::new), parent)) {
      Method main = fresh.loadClass(IndexBuilder.class.getName()).getMethod("main", String[].class);
      main.invoke(null, (Object) new String[] {notes.toString(), SYNONYMS, into.toString()});
    }
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void brokenNotesStopTheBuildAndAreAllNamed(@TempDir Path folder) throws Exception {
    Files.writeString(folder.resolve("one.md"), "no head");
    Files.writeString(folder.resolve("two.md"), "---\nid: two\n---\nbody");
    String[] args = {folder.toString(), SYNONYMS, folder.resolve("index").toString()};
    IllegalArgumentException fault =
        assertThrows(IllegalArgumentException.class, () -> IndexBuilder.main(args));
    assertTrue(fault.getMessage().contains("one.md: a head between two lines"));
    assertTrue(fault.getMessage().contains("two.md: field 'title': it is missing"));
  }

  @Test
  void theWrongNumberOfArgumentsIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> IndexBuilder.main(new String[0]));
  }
}
