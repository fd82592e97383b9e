package plainsward.terminal;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.util.Objects;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import plainsward.trade.PackedClasses;

/**
 * Loads the program's classes out of one file in the jar that holds those that an answer needs: the
 * usual loader looks up, opens and describes each class anew, which took a third of the time of a
 * first answer. A second thread loads them from the last one on, so that the two meet in the
 * middle. No class is initialized there, since two threads that did so in different orders could
 * wait for each other. Libraries come from the usual loader.
 */
final class QuickLoader extends ClassLoader {
  private static final String OWN = "plainsward.";

  static {
    registerAsParallelCapable();
  }

  private final ZipFile jar;
  private final PackedClasses classes;

  private QuickLoader(ZipFile jar, byte[] bytes) {
    super("quick", QuickLoader.class.getClassLoader());
    this.jar = jar;
    this.classes = new PackedClasses(bytes);
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
    byte[] bytes = bytes(jar, PackedClasses.FILE);
    if (bytes == null) {
      jar.close();
      return null;
    }
    QuickLoader loader = new QuickLoader(jar, bytes);
    if (Runtime.getRuntime().availableProcessors() > 1) {
      Thread ahead = new Thread(() -> loader.classes.fromTheLast(loader::link), "ahead");
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
    ByteBuffer packed = classes.find(name);
    if (packed != null) {
      return defineClass(name, packed, null);
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

  /** Loads a class and, by asking for its constructors, has it verified. */
  private void link(String name) {
    try {
      Objects.requireNonNull(loadClass(name, false).getDeclaredConstructors());
    } catch (ClassNotFoundException | LinkageError nothingLost) {
      // Whoever needs the class loads it, and tells what is wrong with it.
    }
  }
}
