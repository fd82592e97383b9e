package plainsward.terminal;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plainsward.units.UnitSystem;

/**
 * Reads the command line. Written by hand because a library for it takes twice as long to load as
 * the whole of an empty program. Options may stand anywhere; {@code --} ends them; an argument with
 * a space or a digit after its dash ("-5 degrees tonight") belongs to the question.
 */
final class ChoiceReader {
  private final String[] args;
  private int at;
  private final List<String> words = new ArrayList<>();
  private Choices.Way asked = Choices.Way.CONVERSATION;
  private boolean batch;
  private Optional<String> batchFile = Optional.empty();
  private UnitSystem units = UnitSystem.US;
  private Optional<LocalDate> today = Optional.empty();
  private Optional<Path> home = Optional.empty();
  private Optional<Path> notes = Optional.empty();
  private boolean json;
  private boolean plain;
  private Length length = Length.SCREENFUL;

  private ChoiceReader(String[] args) {
    this.args = args;
  }

  /**
   * The choices that these words make.
   *
   * @throws WrongUse where they make none, naming the word that is wrong
   */
  static Choices read(String[] args) throws WrongUse {
    ChoiceReader reader = new ChoiceReader(args);
    reader.all();
    return reader.choices();
  }

  private void all() throws WrongUse {
    boolean options = true;
    while (at < args.length) {
      String word = args[at++];
      if (options && word.equals("--")) {
        options = false;
      } else if (options && isOption(word)) {
        option(word);
      } else {
        words.add(word);
      }
    }
  }

  private static boolean isOption(String word) {
    boolean dashed = word.startsWith("-") && word.length() > 1;
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    return dashed
        && !Character.isDigit(word.charAt(1))
        && word.charAt(1) != '.'
        && name.chars().noneMatch(Character::isWhitespace);
  }

  private void option(String word) throws WrongUse {
    int equals = word.indexOf('=');
    String name = equals < 0 ? word : word.substring(0, equals);
    Optional<String> value =
        equals < 0 ? Optional.empty() : Optional.of(word.substring(equals + 1));
    if (!valued(name, value)) {
      bare(name);
      if (value.isPresent()) {
        throw new WrongUse(name + " takes no value.");
      }
    }
  }

  private boolean valued(String name, Optional<String> value) throws WrongUse {
    switch (name) {
      case "--batch" -> batch(value);
      case "--units" -> units = units(needed(name, value, "us, metric or imperial"));
      case "--today" -> today = Optional.of(date(needed(name, value, "a date, YYYY-MM-DD")));
      case "--home" -> home = Optional.of(path(name, needed(name, value, "a folder")));
      case "--notes" -> notes = Optional.of(path(name, needed(name, value, "a folder")));
      default -> {
        return false;
      }
    }
    return true;
  }

  private void bare(String name) throws WrongUse {
    switch (name) {
      case "--json" -> json = true;
      case "--plain" -> plain = true;
      case "--brief" -> length = Length.SHORT;
      case "--more" -> length = Length.WHOLE;
      case "--help", "-h" -> asked = Choices.Way.HELP;
      case "--version" -> asked = Choices.Way.VERSION;
      default -> throw new WrongUse(unknown(name));
    }
  }

  /** The file is optional: the next word, unless that is an option. */
  private void batch(Optional<String> value) {
    batch = true;
    Optional<String> file = value;
    if (file.isEmpty() && at < args.length && !isOption(args[at]) && !args[at].equals("--")) {
      file = Optional.of(args[at++]);
    }
    batchFile = file.filter(f -> !f.equals("-"));
  }

  private String needed(String name, Optional<String> value, String what) throws WrongUse {
    if (value.isPresent()) {
      return value.get();
    }
    if (at >= args.length || isOption(args[at])) {
      throw new WrongUse(name + " needs " + what + " after it.");
    }
    return args[at++];
  }

  private static UnitSystem units(String word) throws WrongUse {
    for (UnitSystem system : UnitSystem.values()) {
      if (system.word().equals(word.toLowerCase(Locale.ROOT))) {
        return system;
      }
    }
    throw new WrongUse("--units takes us, metric or imperial, not " + quoted(word) + ".");
  }

  private static LocalDate date(String word) throws WrongUse {
    try {
      return LocalDate.parse(word);
    } catch (DateTimeException notADate) {
      throw new WrongUse("--today takes a date such as 2026-05-01, not " + quoted(word) + ".");
    }
  }

  private static Path path(String name, String word) throws WrongUse {
    try {
      return Path.of(word);
    } catch (InvalidPathException notAPath) {
      throw new WrongUse(name + " takes a folder, not " + quoted(word) + ".");
    }
  }

  private static String unknown(String name) {
    String near = Nearest.to(name, Option.names()).map(n -> " Did you mean " + n + "?").orElse("");
    return "There is no option " + quoted(name) + "." + near;
  }

  private static String quoted(String word) {
    String line = CleanText.line(word);
    return "\"" + (line.length() > 60 ? line.substring(0, 60) + "…" : line) + "\"";
  }

  private Choices choices() throws WrongUse {
    if (batch && !words.isEmpty()) {
      throw new WrongUse(
          "--batch reads its questions from a file or standard input, so "
              + quoted(String.join(" ", words))
              + " can't be asked beside it.");
    }
    return new Choices(
        way(), String.join(" ", words), batchFile, units, today, home, notes, json, plain, length);
  }

  private Choices.Way way() {
    if (asked != Choices.Way.CONVERSATION) {
      return asked;
    }
    if (batch) {
      return Choices.Way.BATCH;
    }
    return words.isEmpty() ? Choices.Way.CONVERSATION : Choices.Way.QUESTION;
  }
}
