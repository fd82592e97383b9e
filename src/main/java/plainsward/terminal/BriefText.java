package plainsward.terminal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plainsward.reply.Kind;
import plainsward.reply.Reply;

/**
 * A reply to be read aloud on the phone: three sentences at most. The first two of what it says,
 * then the caution that matters most; for a question back, the question.
 */
final class BriefText {
  private static final int MOST = 3;
  private static final Pattern SENTENCE_END =
      Pattern.compile("(?<=[.!?][\"”’)]?)\\s+(?=[\"“(]?[A-Z0-9])");

  private BriefText() {}

  /** The sentences, in one paragraph. */
  static String of(Reply reply) {
    List<String> said = new ArrayList<>(sentences(reply.headline()));
    if (reply.kind() != Kind.ANSWER) {
      reply.body().forEach(paragraph -> said.addAll(sentences(paragraph)));
    }
    Optional<String> caution =
        reply.kind() == Kind.ASK
            ? Optional.empty()
            : reply.cautions().stream().findFirst().map(c -> sentences(c.text()).get(0));
    int room = caution.isPresent() ? MOST - 1 : MOST;
    List<String> brief = new ArrayList<>(said.subList(0, Math.min(room, said.size())));
    caution.ifPresent(brief::add);
    return String.join(" ", brief);
  }

  /** The sentences of a text, at least one, however empty. */
  static List<String> sentences(String text) {
    return List.of(SENTENCE_END.split(CleanText.line(text).strip(), -1));
  }
}
