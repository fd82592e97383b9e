package plainsward.terminal;

import java.util.Locale;

/** A word that is meant for this room and not for the conversation. */
enum LocalWord {
  /** Leave. */
  QUIT,
  /** Show examples. */
  HELP,
  /** Show what did not fit on the screen. */
  MORE,
  /** None of them: a turn of the conversation. */
  NONE;

  /** Which one a line is, if it is nothing else. */
  static LocalWord of(String line) {
    return switch (line.strip().toLowerCase(Locale.ROOT)) {
      case "quit", "exit", "bye", "goodbye", "q" -> QUIT;
      case "help", "?" -> HELP;
      case "more" -> MORE;
      default -> NONE;
    };
  }

  /** Whether it means to leave. */
  boolean isQuit() {
    return this == QUIT;
  }
}
