package plainsward.terminal;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import plainsward.trade.PackedWords;

/**
 * Loads the program's classes out of one file in the jar that holds those that an answer needs: the
 * usual loader looks up, opens and describes each class anew, which took a third of the time of a
 * first answer. A second thread loads them from the last one on, so that the two meet in the
 * middle. No class is initialized there, since two threads that did so in different orders could
 * wait for each other. Libraries come from the usual loader.
 *
 * <p>The file has four bytes each for where the names of the classes begin (a line each) and where
 * {@link PackedWords} of them do, and for each class and behind the last where it begins; then the
 * classes.
 */
final class QuickLoader extends ClassLoader {
  /** The file in the jar. */
  static final String FILE = "plainsward/terminal/quick.bin";

  private static final String OWN = "plainsward.";
  private static final int NAMES = 0;
  private static final int WORDS = 4;
  private static final int STARTS = 8;

  static {
    registerAsParallelCapable();
  }

  private final ZipFile jar;
  private final byte[] bytes;
  private final PackedWords words;

  private QuickLoader(ZipFile jar, byte[] bytes) {
    super("quick", QuickLoader.class.getClassLoader());
    this.jar = jar;
    this.bytes = bytes;
    this.words = new PackedWords(bytes, four(WORDS));
  }

  /**
   * A loader that has begun to load, or null where the program does not run from a jar in which the
   * build put such a file.
   */
  static QuickLoader open() throws IOException {
    String path = System.getProperty("java.class.path");
    if (!path.endsWith(".jar") || path.contains(File.pathSeparator)) {
      return null;
    }
    ZipFile jar = new ZipFile(path);
    byte[] bytes = bytes(jar, FILE);
    if (bytes == null) {
      jar.close();
      return null;
    }
    QuickLoader loader = new QuickLoader(jar, bytes);
    if (Runtime.getRuntime().availableProcessors() > 1) {
      Thread ahead = new Thread(loader::fromTheLast, "ahead");
      ahead.setDaemon(true);
      ahead.start();
    }
    return loader;
  }

  private static byte[] bytes(ZipFile jar, String name) throws IOException {
    ZipEntry entry = jar.getEntry(name);
    if (entry == null) {
      return null;
    }
    try (InputStream in = jar.getInputStream(entry)) {
      return in.readAllBytes();
    }
  }

  /** Straight from the jar, without the address of each file that the usual loader makes. */
  @Override
  public InputStream getResourceAsStream(String name) {
    try {
      ZipEntry entry = jar.getEntry(name);
      return entry == null ? super.getResourceAsStream(name) : jar.getInputStream(entry);
    } catch (IOException fault) {
      return super.getResourceAsStream(name);
    }
  }

  @Override
  protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
    if (!name.startsWith(OWN)) {
      return super.loadClass(name, resolve);
    }
    synchronized (getClassLoadingLock(name)) {
      Class<?> known = findLoadedClass(name);
      return known == null ? findClass(name) : known;
    }
  }

  @Override
  protected Class<?> findClass(String name) throws ClassNotFoundException {
    int number = words.find(name);
    if (number != PackedWords.NONE) {
      int start = four(STARTS + 4 * number);
      return defineClass(name, bytes, start, four(STARTS + 4 * number + 4) - start);
    }
    try {
      byte[] whole = bytes(jar, name.replace('.', '/') + ".class");
      if (whole == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, whole, 0, whole.length);
    } catch (IOException fault) {
      throw new ClassNotFoundException(name, fault);
    }
  }

  /** Loads all classes, the last needed first. */
  private void fromTheLast() {
    int end = four(WORDS) - 1;
    int first = four(NAMES);
    while (end > first) {
      int start = end;
      while (start > first && bytes[start - 1] != '\n') {
        start--;
      }
      link(new String(bytes, start, end - start, StandardCharsets.US_ASCII));
      end = start - 1;
    }
  }

  /** Loads a class and, by asking for its constructors, has it verified. */
  private void link(String name) {
    try {
      Objects.requireNonNull(loadClass(name, false).getDeclaredConstructors());
    } catch (ClassNotFoundException | LinkageError nothingLost) {
      // Whoever needs the class loads it, and tells what is wrong with it.
    }
  }

  private int four(int at) {
    return bytes[at] << 24
        | (bytes[at + 1] & 0xFF) << 16
        | (bytes[at + 2] & 0xFF) << 8
        | bytes[at + 3] & 0xFF;
  }
}
