package plainsward.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The grasses and active ingredients that somebody says a label names. */
final class LabelNames {
  private final Facts turn;
  private final List<Token> tokens;
  private final List<PhraseBook.Found<LabelBook.Cue>> cues;
  private final String open;

  LabelNames(Facts turn, List<PhraseBook.Found<LabelBook.Cue>> cues, String open) {
    this.open = open;
    this.turn = turn;
    this.tokens = turn.tokens();
    this.cues = cues;
  }

  List<Detail> details() {
    List<Detail> details = new ArrayList<>();
    for (Fact grass : turn.of("grass")) {
      standing(grass.at())
          .ifPresent(
              allowed ->
                  details.add(
                      Detail.word(
                          "grass-" + allowed,
                          grass.word().orElseThrow(),
                          grass.at(),
                          grass.said())));
    }
    if (open.equals("active") || !LabelBook.of(cues, "active").isEmpty()) {
      for (Fact active : turn.of("active")) {
        details.add(Detail.word("active", active.word().orElseThrow(), active.at(), active.said()));
      }
    }
    return details;
  }

  /**
   * Whether a grass is allowed or harmed: by the nearest such words before it, else after it. In
   * "not for use on" the second cue says nothing of its own.
   */
  private Optional<String> standing(int at) {
    String before = "";
    String after = "";
    int denied = -1;
    for (PhraseBook.Found<LabelBook.Cue> cue : LabelBook.of(cues, "grass")) {
      boolean alike = sameSentence(Math.min(cue.from(), at), Math.max(cue.from(), at));
      boolean still = cue.from() <= denied;
      if (alike && cue.to() <= at && !still) {
        before = cue.meaning().item();
        denied = before.equals("harms") ? cue.to() : -1;
      } else if (alike && cue.from() > at && after.isEmpty() && onlyGrasses(at, cue.from())) {
        after = cue.meaning().item();
      }
    }
    String found = before.isEmpty() ? after : before;
    String asked = open.startsWith("grass-") ? open.substring("grass-".length()) : "";
    String standing = found.isEmpty() ? asked : found;
    return standing.isEmpty() ? Optional.empty() : Optional.of(standing);
  }

  /** In "St." nothing ends. */
  private boolean sameSentence(int from, int to) {
    return tokens.subList(from, to).stream().noneMatch(t -> t.endsSentence() && t.tag().isEmpty());
  }

  private boolean onlyGrasses(int from, int to) {
    return tokens.subList(from, to).stream()
        .allMatch(t -> t.tag().equals("grass") || t.norm().matches("and|or|,|is|are"));
  }
}
