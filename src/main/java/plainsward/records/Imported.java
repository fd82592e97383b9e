package plainsward.records;

import java.util.List;

/**
 * What was read of a file of lawns.
 *
 * @param lawns the lawns that could be read
 * @param problems a sentence for each that could not, and for anything that was passed over
 */
public record Imported(List<Lawn> lawns, List<String> problems) {

  /** Copies the lists. */
  public Imported {
    lawns = List.copyOf(lawns);
    problems = List.copyOf(problems);
  }
}
