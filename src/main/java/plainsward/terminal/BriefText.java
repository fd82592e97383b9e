package plainsward.terminal;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import plainsward.reply.Caution;
import plainsward.reply.Kind;
import plainsward.reply.Reply;

/**
 * A reply to be read aloud on the phone: three sentences at most. The first two of what it says,
 * then the caution that matters most; for a question back, the question. For whoever sits at the
 * phone, what to ask next and what to write down stand under it.
 */
final class BriefText {
  private static final int MOST = 3;
  private static final int MOST_FIGURES = 3;
  private static final Pattern SENTENCE_END =
      Pattern.compile("(?<=[.!?][\"”’)]?)\\s+(?=[\"“(]?[A-Z0-9])");

  private BriefText() {}

  /** The sentences, then what to ask next and what to write down, a paragraph each. */
  static List<String> paragraphs(Reply reply) {
    List<String> paragraphs = new ArrayList<>(List.of(of(reply)));
    if (reply.kind() != Kind.ASK && !reply.suggest().isEmpty()) {
      paragraphs.add("Ask next: " + CleanText.line(reply.suggest().get(0)));
    }
    String record = record(reply);
    if (!record.isEmpty()) {
      paragraphs.add("Write down: " + record + ".");
    }
    return paragraphs;
  }

  private static String record(Reply reply) {
    if (reply.kind() == Kind.EMERGENCY) {
      return "the time, the name on the label, who or what it touched, and what was done";
    }
    Set<String> facts = new LinkedHashSet<>(GivenWords.read(reply));
    reply.figures().stream()
        .limit(MOST_FIGURES)
        .map(figure -> Names.words(figure.name()) + ": " + figure.shown())
        .forEach(facts::add);
    return CleanText.line(String.join("; ", facts));
  }

  /** The sentences, in one paragraph. */
  static String of(Reply reply) {
    List<String> said = new ArrayList<>(sentences(reply.headline()));
    if (reply.kind() != Kind.ANSWER) {
      reply.body().forEach(paragraph -> said.addAll(sentences(paragraph)));
    }
    List<String> brief = new ArrayList<>(said.subList(0, Math.min(MOST, said.size())));
    Optional<String> caution = reply.kind() == Kind.ASK ? Optional.empty() : caution(reply, brief);
    if (caution.isPresent() && brief.size() == MOST) {
      brief.remove(MOST - 1);
    }
    caution.ifPresent(brief::add);
    return String.join(" ", brief);
  }

  /**
   * The caution that matters most and was not said yet: where an amount of product is told that the
   * label decides, else what the reply puts first.
   */
  private static Optional<String> caution(Reply reply, List<String> said) {
    List<String> told = said.subList(0, Math.min(MOST - 1, said.size()));
    boolean dose = reply.figures().stream().anyMatch(f -> f.name().startsWith("product"));
    String first = "";
    for (Caution caution : reply.cautions()) {
      String sentence = sentences(caution.text()).get(0);
      boolean label = caution.id().equals("read-label");
      if (label && dose) {
        return Optional.of(sentence);
      }
      boolean named = label && String.join(" ", told).contains("label");
      if (first.isEmpty() && !named && !SaidAlready.in(sentence, told)) {
        first = sentence;
      }
    }
    return first.isEmpty() ? Optional.empty() : Optional.of(first);
  }

  /** The sentences of a text, at least one, however empty. */
  static List<String> sentences(String text) {
    return List.of(SENTENCE_END.split(CleanText.line(text).strip(), -1));
  }
}
