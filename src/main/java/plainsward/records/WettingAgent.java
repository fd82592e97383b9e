package plainsward.records;

import java.util.Optional;

/**
 * What a label says of a wetting agent.
 *
 * @param rule whether it must, may or must not be added
 * @param kind what sort, such as {@code non-ionic surfactant}
 * @param strength its share of the spray, or its amount per volume
 */
public record WettingAgent(Rule rule, Optional<String> kind, Optional<Range> strength) {

  /** Tidies the kind. */
  public WettingAgent {
    kind = Names.remark(kind);
  }

  /** What the label says. */
  public enum Rule implements Word {
    /** It must be added. */
    REQUIRED("required"),
    /** It may be added. */
    ALLOWED("allowed"),
    /** It must not be added. */
    FORBIDDEN("forbidden");

    private final String word;

    Rule(String word) {
      this.word = word;
    }

    @Override
    public String word() {
      return word;
    }
  }
}
