package plainsward.trade;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/**
 * What the build has packed, which lies in the jar twice: in a class as text, a letter for each
 * byte, since a class comes out of a class-data archive with no file opened and nothing inflated;
 * and in files, since without an archive such a class takes longer than they do.
 */
public final class Pack {
  /**
   * The property that is set where the Java machine has the classes ready in an archive, so that
   * all had better come from there.
   */
  public static final String READY = "plainsward.ready";

  /** The file that has the names of all others, a line each. */
  public static final String NAMES = "names-of-all";

  private final String folder;
  private final Pieces pieces;
  private final boolean ready = System.getProperty(READY) != null;
  private final Map<String, Integer> numbers = new HashMap<>();

  /** The texts of a class. */
  public interface Pieces {
    /**
     * The pieces of one thing, to be joined: of 0 the names of all things, a line each; of n those
     * of the nth thing.
     */
    String[] of(int number);
  }

  /**
   * What was packed; nothing, where the build did not do it.
   *
   * @param folder the folder of the files on the class path, with a slash behind it
   * @param pieces the class
   */
  public Pack(String folder, Pieces pieces) {
    this.folder = folder;
    this.pieces = pieces;
    byte[] all = ready ? bytes(0) : file(NAMES);
    String names = all == null ? "" : new String(all, StandardCharsets.ISO_8859_1);
    int from = 0;
    for (int end = names.indexOf('\n'); end >= 0; end = names.indexOf('\n', from)) {
      numbers.put(names.substring(from, end), numbers.size() + 1);
      from = end + 1;
    }
  }

  /** Whether there is a thing of this name. */
  public boolean has(String name) {
    return numbers.containsKey(name)
        || !ready && Pack.class.getClassLoader().getResource(folder + name) != null;
  }

  /**
   * The bytes of a thing.
   *
   * @throws UncheckedIOException where there is none of this name
   */
  public byte[] bytes(String name) {
    byte[] found = ready && numbers.containsKey(name) ? bytes(numbers.get(name)) : file(name);
    if (found == null) {
      throw new UncheckedIOException(new FileNotFoundException(folder + name));
    }
    return found;
  }

  /** The bytes of a file of the folder, or null where there is none. */
  private byte[] file(String name) {
    try (InputStream in = Pack.class.getClassLoader().getResourceAsStream(folder + name)) {
      return in == null ? null : in.readAllBytes();
    } catch (IOException fault) {
      throw new UncheckedIOException("the program's own file can't be read: " + name, fault);
    }
  }

  private byte[] bytes(int number) {
    String[] parts = pieces.of(number);
    int size = 0;
    for (String part : parts) {
      size += part.length();
    }
    byte[] bytes = new byte[size];
    int at = 0;
    for (String part : parts) {
      byte[] letters = part.getBytes(StandardCharsets.ISO_8859_1);
      System.arraycopy(letters, 0, bytes, at, letters.length);
      at += letters.length;
    }
    return bytes;
  }
}
