package plainsward.packing;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import plainsward.trade.PackedClasses;

/**
 * Gathers the classes that an answer needs into one file, in the order that they are first asked
 * for, by answering questions in a class loader that takes notes. Run by the build with two
 * arguments: the folder of the compiled classes, and the file of the questions, a line each. {@link
 * PackedClasses} says what the file looks like, and {@code terminal.QuickLoader} reads it.
 */
public final class ClassGatherer {
  /** Classes that hold so much text that they are better read when they are wanted. */
  private static final int LARGE = 100_000;

  private static final String OWN = "plainsward.";

  private ClassGatherer() {}

  /** Writes the list; see the class. */
  public static void main(String[] args) throws Exception {
    if (args.length != 2) {
      throw new IllegalArgumentException("CLASSES-FOLDER QUESTIONS-FILE were expected");
    }
    Path classes = Path.of(args[0]);
    Path file = classes.resolve(PackedClasses.FILE);
    Files.deleteIfExists(file);
    Path nowhere = classes.resolveSibling("no-records");
    Set<String> names = new LinkedHashSet<>();
    for (String question : Files.readAllLines(Path.of(args[1]))) {
      try (Noting loader = new Noting(classes.toUri().toURL(), names)) {
        answer(loader, "--home", nowhere.toString(), question);
      }
    }
    Map<String, byte[]> gathered = new LinkedHashMap<>();
    for (String name : names) {
      Path from = classes.resolve(name.replace('.', '/') + ".class");
      if (Files.exists(from) && Files.size(from) < LARGE) {
        gathered.put(name, Files.readAllBytes(from));
      }
    }
    Files.write(file, PackedClasses.packed(gathered));
  }

  /** Runs the program's own way in on a command line. */
  private static void answer(ClassLoader loader, String... words)
      throws ReflectiveOperationException {
    Class<?> main = loader.loadClass("plainsward.terminal.Main");
    Class<?> around = loader.loadClass("plainsward.terminal.Surroundings");
    Method real = around.getDeclaredMethod("real");
    real.setAccessible(true);
    Method run =
        main.getDeclaredMethod(
            "run", String[].class, InputStream.class, PrintStream.class, PrintStream.class, around);
    run.setAccessible(true);
    PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream());
    InputStream nothing = new ByteArrayInputStream(new byte[0]);
    try {
      Object status = run.invoke(null, words, nothing, nowhere, nowhere, real.invoke(null));
      if (!Integer.valueOf(0).equals(status)) {
        throw new IllegalStateException("no answer to " + String.join(" ", words));
      }
    } catch (InvocationTargetException fault) {
      throw new IllegalStateException(fault.getCause());
    }
  }

  /** Loads the program's classes itself, others where this class's own come from. */
  private static final class Noting extends URLClassLoader {
    private final Set<String> names;

    Noting(URL classes, Set<String> names) {
      super(new URL[] {classes}, ClassGatherer.class.getClassLoader());
      this.names = names;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      names.add(name);
      if (!name.startsWith(OWN)) {
        return super.loadClass(name, resolve);
      }
      synchronized (getClassLoadingLock(name)) {
        Class<?> known = findLoadedClass(name);
        return known == null ? findClass(name) : known;
      }
    }

    @Override
    public URL getResource(String name) {
      URL own = findResource(name);
      return own == null ? super.getResource(name) : own;
    }
  }
}
