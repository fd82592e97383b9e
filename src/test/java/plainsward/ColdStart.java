package plainsward;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * How long one question takes from cold, whole processes compared with an empty program on the same
 * JVM in the same run, one after the other in turns. Arguments: the jar ({@code
 * target/plainsward.jar}), how often (11), and what stands before each command ({@code chrt -f 10},
 * say, so that other work on the machine does not count).
 */
final class ColdStart {
  private static final String SUM = "4,000 sq ft at 1.5 fl oz per thousand, 2 gallon sprayer";
  private static final String BOOK = "how do I get rid of clover without hurting my lawn?";
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final File NOTHING = new File("/dev/null");
  private static final String MAIN = "plainsward.terminal.Main";

  /** What the launcher of the image gives for one question. */
  private static final List<String> QUICK =
      List.of(
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseG1GC",
          "-XX:+UnlockDiagnosticVMOptions",
          "-XX:ArchiveRelocationMode=0",
          "-XX:-UsePerfData",
          "-Dplainsward.ready=true");

  private final List<String> before;
  private final Map<String, List<String>> commands = new LinkedHashMap<>();

  private ColdStart(List<String> before) {
    this.before = before;
  }

  /** Measures and prints milliseconds and how many times the empty program that is. */
  public static void main(String[] args) throws IOException, InterruptedException {
    String jar = args.length > 0 ? args[0] : "target/plainsward.jar";
    int runs = args.length > 1 ? Integer.parseInt(args[1]) : 11;
    ColdStart start =
        new ColdStart(Arrays.asList(args).subList(Math.min(2, args.length), args.length));
    Path folder = Files.createTempDirectory("cold-start");
    start.prepare(jar, folder);
    start.measure(runs);
  }

  private void prepare(String jar, Path folder) throws IOException, InterruptedException {
    Path source =
        Files.writeString(
            folder.resolve("Empty.java"), "class Empty { public static void main(String[] a) {} }");
    run(
        List.of(
            JAVA.resolveSibling("javac").toString(), "-d", folder.toString(), source.toString()),
        source.toFile());
    String archive = folder.resolve("plainsward.jsa").toString();
    Path both = Files.writeString(folder.resolve("both.txt"), SUM + "\n" + BOOK + "\n");
    String list = folder.resolve("classes.txt").toString();
    run(java(QUICK, "-XX:DumpLoadedClassList=" + list, "-cp", jar, MAIN), both.toFile());
    String shared = "-XX:SharedArchiveFile=" + archive;
    run(
        java(QUICK, "-Xshare:dump", "-XX:SharedClassListFile=" + list, shared, "-cp", jar),
        NOTHING);
    commands.put("empty program", java(List.of(), "-cp", folder.toString(), "Empty"));
    commands.put("sum, archive", java(QUICK, shared, "-cp", jar, MAIN, SUM));
    commands.put("handbook, archive", java(QUICK, shared, "-cp", jar, MAIN, BOOK));
    commands.put("sum, bare jar", java(List.of(), "-jar", jar, SUM));
    commands.put("handbook, bare jar", java(List.of(), "-jar", jar, BOOK));
  }

  private static List<String> java(List<String> options, String... more) {
    List<String> command = new ArrayList<>(List.of(JAVA.toString()));
    command.addAll(options);
    command.addAll(List.of(more));
    return command;
  }

  private void measure(int runs) throws IOException, InterruptedException {
    Map<String, long[]> times = new LinkedHashMap<>();
    commands.keySet().forEach(name -> times.put(name, new long[runs]));
    for (int i = 0; i < runs; i++) {
      for (Map.Entry<String, List<String>> each : commands.entrySet()) {
        List<String> command = new ArrayList<>(before);
        command.addAll(each.getValue());
        times.get(each.getKey())[i] = run(command, NOTHING);
      }
    }
    double empty = median(times.get("empty program"));
    times.forEach(
        (name, all) ->
            System.out.printf(
                Locale.ROOT,
                "%-20s %6.0f ms  %5.1f times%n",
                name,
                median(all),
                median(all) / empty));
  }

  private static double median(long[] nanos) {
    long[] sorted = nanos.clone();
    Arrays.sort(sorted);
    return sorted[sorted.length / 2] / (double) TimeUnit.MILLISECONDS.toNanos(1);
  }

  /** Nanoseconds from start to end of a process. */
  private static long run(List<String> command, File input)
      throws IOException, InterruptedException {
    long start = System.nanoTime();
    Process process =
        new ProcessBuilder(command)
            .redirectInput(input)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    int status = process.waitFor();
    long nanos = System.nanoTime() - start;
    if (status != 0) {
      throw new IllegalStateException(command + " ended with " + status);
    }
    return nanos;
  }
}
