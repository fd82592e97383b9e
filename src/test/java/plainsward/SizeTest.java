package plainsward;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * The main code stays small enough to read: lines of files and of methods, signature to closing
 * brace. Main code is always formatted, so that a method of a class in a file of its own begins
 * with two spaces, of a nested one with four, and ends with a brace under its first letter.
 */
class SizeTest {
  private static final Path MAIN = Path.of("src", "main", "java");

  /** Methods or files that may be longer, each with its reason. */
  private static final Map<String, String> EXCEPTIONS =
      Map.of("CostComparison#rate", "four forms of a price side by side; to be split");

  private record Sized(String name, int lines) {}

  @Test
  void filesAreShort() {
    assertShort("files", files(), 120, 300, 500);
  }

  @Test
  void methodsAreShort() {
    assertShort("methods", methods(), 6, 20, 40);
  }

  @Test
  void methodsAreCountedFromSignatureToClosingBrace() {
    List<String> source =
        List.of(
            "class A {",
            "  @Override",
            "  public int one() {",
            "    return 1;",
            "  }",
            "",
            "  static final List<String> TWO =",
            "      List.of(",
            "          \"x\");",
            "",
            "  private static Map<String, Integer> three(",
            "      int a, int b) {",
            "    if (a > b) {",
            "      return null;",
            "    }",
            "    return Map.of();",
            "  }",
            "",
            "  private enum B {",
            "    C {",
            "      int d() {",
            "        return 4;",
            "      }",
            "    };",
            "  }",
            "}");
    assertEquals(
        List.of(new Sized("A#one", 3), new Sized("A#three", 7), new Sized("A#d", 3)),
        methods("A", source));
  }

  private static void assertShort(String what, List<Sized> all, int median, int p90, int most) {
    List<Integer> lines = all.stream().map(Sized::lines).sorted().toList();
    System.out.printf(
        "%s %d: median %d, p90 %d, most %d%n",
        what, lines.size(), at(lines, 50), at(lines, 90), lines.get(lines.size() - 1));
    assertTrue(at(lines, 50) <= median, "the median " + what + " are over " + median);
    assertTrue(at(lines, 90) <= p90, "a tenth of the " + what + " are over " + p90);
    List<Sized> over =
        all.stream().filter(s -> s.lines > most && !EXCEPTIONS.containsKey(s.name)).toList();
    assertTrue(over.isEmpty(), () -> what + " over " + most + " lines: " + over);
  }

  private static int at(List<Integer> sorted, int percent) {
    return sorted.get((sorted.size() - 1) * percent / 100);
  }

  private static List<Path> sources() {
    try (Stream<Path> all = Files.walk(MAIN)) {
      List<Path> sources = new ArrayList<>(all.filter(SizeTest::isSource).toList());
      Collections.sort(sources);
      assertTrue(sources.size() > 100, "the sources were not found");
      return sources;
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static boolean isSource(Path file) {
    return file.toString().endsWith(".java") && !file.endsWith("package-info.java");
  }

  private static List<String> lines(Path file) {
    try {
      return Files.readAllLines(file);
    } catch (IOException fault) {
      throw new UncheckedIOException(fault);
    }
  }

  private static List<Sized> files() {
    return sources().stream()
        .map(f -> new Sized(f.getFileName().toString(), lines(f).size()))
        .toList();
  }

  private static List<Sized> methods() {
    List<Sized> all = new ArrayList<>();
    for (Path file : sources()) {
      all.addAll(methods(file.getFileName().toString().replace(".java", ""), lines(file)));
    }
    return all;
  }

  /** The methods with a body: a signature may run over several lines before its brace. */
  private static List<Sized> methods(String type, List<String> source) {
    List<Sized> all = new ArrayList<>();
    for (int i = 0; i < source.size(); i++) {
      int open = signatureEnd(source, i);
      if (open >= 0) {
        int close = close(source, i, open);
        all.add(new Sized(type + "#" + name(source.get(i)), close - i + 1));
        i = close;
      }
    }
    return all;
  }

  private static final Pattern SIGNATURE =
      Pattern.compile(
          "^( {2}| {4}| {6})((public|protected|private|static|final|abstract|synchronized|default)"
              + " )*(<.*> )?[A-Za-z][\\w.<>\\[\\], ?]*(\\(.*)?$");
  private static final Pattern TYPE =
      Pattern.compile(".*\\b(class|interface|enum|record|new|return|throw|else)\\b.*");

  /** The line of the brace that opens the body, or -1 where no method begins here. */
  private static int signatureEnd(List<String> source, int from) {
    String line = source.get(from);
    String before = line.contains("(") ? line.substring(0, line.indexOf('(')) : line;
    boolean signature =
        line.contains("(")
            && SIGNATURE.matcher(line).matches()
            && !TYPE.matcher(before).matches()
            && !before.contains("=")
            && (before.trim().contains(" ") || before.trim().matches("[A-Z]\\w*"));
    for (int i = from; signature && i < source.size(); i++) {
      String end = source.get(i);
      if (end.endsWith("{") || end.endsWith("{}")) {
        return i;
      }
      if (end.endsWith(";") || end.isBlank()) {
        return -1;
      }
    }
    return -1;
  }

  private static int close(List<String> source, int from, int open) {
    if (source.get(open).endsWith("{}")) {
      return open;
    }
    String line = source.get(from);
    String brace = line.substring(0, line.length() - line.stripLeading().length()) + "}";
    int i = open + 1;
    while (!source.get(i).equals(brace)) {
      i++;
    }
    return i;
  }

  private static String name(String signature) {
    String before = signature.substring(0, signature.indexOf('('));
    return before.substring(before.lastIndexOf(' ') + 1);
  }
}
