package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;

/**
 * What can be chosen on the command line, as the file {@code options.txt} tells it. Help, the man
 * page and the shells' completions are made of the same lines.
 *
 * @param name the option with its dashes
 * @param takes what it takes, in brackets where that may be left out; empty where it takes nothing
 * @param does what it does
 */
record Option(String name, String takes, String does) {
  private static final String SPLIT = " | ";
  private static final int INDENT = 35;

  /** All options, in the order in which help tells them. */
  static List<Option> all() {
    List<Option> all = new ArrayList<>();
    for (String line : Texts.of("options.txt").split("\n", -1)) {
      if (line.startsWith("-")) {
        all.add(read(line));
      }
    }
    return all;
  }

  private static Option read(String line) {
    int first = line.indexOf(SPLIT);
    int last = line.lastIndexOf(SPLIT);
    if (first < 0) {
      throw new IllegalStateException("options.txt: \"" + line + "\" has too few parts");
    }
    boolean has = last >= first + SPLIT.length();
    String takes = has ? line.substring(first + SPLIT.length(), last).strip() : "";
    return new Option(
        line.substring(0, first).strip(), takes, line.substring(last + SPLIT.length()));
  }

  /** The names of those that begin with two dashes and a letter. */
  static List<String> names() {
    return all().stream().filter(Option::isNamed).map(Option::name).toList();
  }

  /** Whether it has a name of its own, and is not the bare dashes. */
  boolean isNamed() {
    return name.length() > 2;
  }

  /** What it takes, without brackets. */
  String value() {
    return takes.startsWith("[") ? takes.substring(1, takes.length() - 1) : takes;
  }

  /** The words to choose from, where it takes one of a few. */
  List<String> choices() {
    return takes.indexOf('|') < 0 ? List.of() : List.of(value().split("\\|", -1));
  }

  /** Its line of help: what to type, and from column 35 on what that does. */
  String line() {
    String typed = "  " + (takes.isEmpty() ? name : name + " " + takes);
    return typed + " ".repeat(Math.max(1, INDENT - typed.length())) + does;
  }
}
