package plainsward.reply;

import java.util.Locale;

/** The six kinds of reply. */
public enum Kind {
  /** Everything needed was there: given, remembered, saved, or openly assumed. */
  ANSWER,
  /** Something that must not be guessed is missing. */
  ASK,
  /** The thing asked for must not be done. */
  DECLINE,
  /** Somebody or something may have been exposed, or something spilled. */
  EMERGENCY,
  /** Something was remembered, saved, logged or forgotten. */
  DONE,
  /** Not understood, or outside the trade. */
  UNSURE;

  private final String word = name().toLowerCase(Locale.ROOT);

  /** The word of the reply contract. */
  public String word() {
    return word;
  }
}
