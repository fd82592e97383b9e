package plainsward.dosing;

/** A sum that must not be done: something given is missing, of the wrong kind or senseless. */
public final class NotDosable extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  /** What is the matter. */
  public enum Why {
    /** It is needed and was not given. */
    MISSING("is needed"),
    /** It is nought or less. */
    NOT_ABOVE_ZERO("must be more than 0"),
    /** It is less than nought. */
    BELOW_ZERO("must not be less than 0"),
    /** It measures something else than what is wanted. */
    WRONG_KIND("measures something else"),
    /** It is larger than makes sense. */
    TOO_LARGE("is larger than can be"),
    /** It lies outside what the formula is good for. */
    OUT_OF_RANGE("is outside what can be reckoned with"),
    /** What goes in does not fit. */
    DOES_NOT_FIT("leaves no room for what goes in"),
    /** The sides or corners make no piece of ground. */
    NO_SHAPE("makes no closed piece of ground");

    private final String words;

    Why(String words) {
      this.words = words;
    }

    /** The reason in a few words. */
    public String words() {
      return words;
    }
  }

  private final String name;
  private final Why why;

  /**
   * Names what is the matter.
   *
   * @param name what is not right, by the reply contract's name, such as {@code area}
   * @param why what is the matter with it
   */
  public NotDosable(String name, Why why) {
    super(name + " " + why.words());
    this.name = name;
    this.why = why;
  }

  /** What is not right. */
  public String name() {
    return name;
  }

  /** What is the matter with it. */
  public Why why() {
    return why;
  }
}
