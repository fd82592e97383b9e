package plainsward.terminal;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;

/**
 * Writes what a system keeps beside the program: the man page and the completions of three shells,
 * all made of the options. Run by the build with three arguments: the man page's frame, the version
 * and the folder to write into.
 */
public final class OptionFiles {
  private OptionFiles() {}

  /** Writes the files; see the class. */
  public static void main(String[] args) throws IOException {
    if (args.length != 3) {
      throw new IllegalArgumentException("FRAME VERSION FOLDER were expected");
    }
    Path folder = Path.of(args[2]);
    Completions completions = new Completions();
    write(folder, "man/man1/plainsward.1", manPage(Files.readString(Path.of(args[0])), args[1]));
    write(folder, "bash-completion/completions/plainsward", completions.bash());
    write(folder, "zsh/vendor-completions/_plainsward", completions.zsh());
    write(folder, "fish/vendor_completions.d/plainsward.fish", completions.fish());
  }

  private static void write(Path folder, String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** The frame with the options and the version in their places. */
  static String manPage(String frame, String version) {
    String options =
        Option.all().stream().map(OptionFiles::entry).collect(Collectors.joining("\n"));
    return frame.replace("{options}", options).replace("{version}", version);
  }

  private static String entry(Option option) {
    String takes = option.takes().isEmpty() ? "" : " \\fI" + roff(option.takes()) + "\\fR";
    return ".TP\n\\fB" + roff(option.name()) + "\\fR" + takes + "\n" + roff(option.does()) + ".";
  }

  /** A dash that is typed stands as such, and a backslash is none of roff's. */
  private static String roff(String text) {
    return text.replace("\\", "\\e").replace("-", "\\-").replace("'", "\\(aq");
  }
}
