package plainsward.safety;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plainsward.reading.Facts;
import plainsward.reading.PhraseBook;
import plainsward.reading.PhraseColumn;
import plainsward.reading.Token;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.trade.Row;
import plainsward.trade.Rows;

/**
 * The first guard: people, animals, eyes, skin, breathing, swallowing, fumes and spills, wherever
 * in a question they stand. What was planned for or is long past is no emergency; with any doubt it
 * is one ("what do I do if my kid drank some" tells what happened). What to do rests on the
 * published advice named in the table {@code first-aid}.
 */
public final class Exposure {
  private static final Set<String> NOW =
      Set.of("just", "now", "help", "right", "happened", "hes", "shes", "im");
  private static final List<Row> ROWS = PhraseColumn.EXPOSURE.rows();
  private static final PhraseBook<Heard> BOOK =
      PhraseBook.of(PhraseColumn.EXPOSURE, n -> Heard.of(ROWS.get(n)));
  private static final List<Row> ADVICE = Rows.of("first-aid");
  private static final Set<String> CALMING = Set.of("long-past", "planning", "unrelated");
  private static final Set<String> OF_NO_PERSON = Set.of("animal", "spill", "water");
  private static final Set<String> SYMPTOMS = Set.of("breathed", "fumes", "collapsed");
  private static final String ABROAD =
      "Outside the United States, call your own poison help line or a doctor.";

  /**
   * What a phrase tells.
   *
   * @param sign of what it is a sign by itself, or empty
   * @param part the part it plays beside other words, or null where it is a sign
   */
  private record Heard(String sign, Part part) {
    static Heard of(Row row) {
      String sign = row.optional("sign").orElse("");
      return new Heard(sign, sign.isEmpty() ? Part.named(row.text("part")) : null);
    }

    boolean isHarmless() {
      return sign.equals("unrelated");
    }
  }

  private static final String LATER =
      "Your sum can wait: ask it again once everyone is looked after.";
  private static final Set<String> OF_SUMS = Set.of("label_rate", "strength", "area");

  private Exposure() {}

  /** What to do now, where somebody or something may have been exposed; else nothing. */
  public static Optional<Reply> check(Facts turn) {
    Set<String> signs = signs(turn.tokens());
    Set<String> calming = new HashSet<>(signs);
    calming.retainAll(CALMING);
    signs.removeAll(CALMING);
    boolean happened = signs.remove("happened");
    boolean person = signs.remove("person");
    if (happened && (signs.contains("swallowed") || signs.contains("animal"))) {
      calming.remove("planning");
    }
    if (signs.isEmpty() || !calming.isEmpty() && !isNow(turn.tokens())) {
      return Optional.empty();
    }
    boolean sum = OF_SUMS.stream().anyMatch(turn::has);
    return Optional.of(reply(signs, person, sum));
  }

  /** A phrase that touches a harmless one ("burned the lawn") does not count. */
  private static Set<String> signs(List<Token> tokens) {
    List<PhraseBook.Found<Heard>> found = BOOK.find(tokens);
    Set<String> signs = new HashSet<>();
    List<Mishaps.Act> acts = new ArrayList<>();
    for (PhraseBook.Found<Heard> f : found) {
      Heard heard = f.meaning();
      if (!heard.isHarmless() && !isCovered(f, found)) {
        if (heard.part() == null) {
          signs.add(heard.sign());
        } else {
          acts.add(new Mishaps.Act(heard.part(), f.from(), f.to()));
        }
      }
    }
    if (!acts.isEmpty()) {
      Mishaps.hear(tokens, acts, signs);
    }
    return signs;
  }

  private static boolean isCovered(
      PhraseBook.Found<Heard> one, List<PhraseBook.Found<Heard>> found) {
    for (PhraseBook.Found<Heard> other : found) {
      if (other.meaning().isHarmless() && other.from() < one.to() && one.from() < other.to()) {
        return true;
      }
    }
    return false;
  }

  /** Words that say it is happening, however the rest is put. */
  private static boolean isNow(List<Token> tokens) {
    return tokens.stream().anyMatch(t -> NOW.contains(t.norm()))
        && tokens.stream().noneMatch(t -> t.is("if") || t.is("case") || t.is("never"));
  }

  private static Reply reply(Set<String> signs, boolean isPersonNamed, boolean isSumAsked) {
    ReplyBuilder reply = new ReplyBuilder(Kind.EMERGENCY).topic("exposure");
    List<Row> rows = new ArrayList<>();
    for (Row row : ADVICE) {
      if (signs.contains(row.text("sign"))) {
        rows.add(row);
      }
    }
    boolean person = signs.stream().anyMatch(s -> !OF_NO_PERSON.contains(s));
    boolean onlyAnimal =
        signs.contains("animal") && !personBeside(signs) && !(person && isPersonNamed);
    if (onlyAnimal) {
      rows.removeIf(r -> !OF_NO_PERSON.contains(r.text("sign")));
    }
    reply.headline(rows.get(0).text("headline"));
    for (int i = 0; i < rows.size(); i++) {
      if (i > 0) {
        reply.say(rows.get(i).text("headline"));
      }
      rows.get(i).texts("steps").forEach(reply::say);
      rows.get(i).texts("cautions").forEach(id -> reply.caution(Cautions.of(id)));
    }
    if (person && !onlyAnimal) {
      reply.caution(Cautions.of("poison-help"));
      reply.say(ABROAD);
    }
    if (isSumAsked) {
      reply.say(LATER);
    }
    return reply.build();
  }

  /** Whether a person is exposed besides the animal; an animal's own symptoms do not tell. */
  private static boolean personBeside(Set<String> signs) {
    return signs.stream()
        .anyMatch(
            s -> !OF_NO_PERSON.contains(s) && !SYMPTOMS.contains(s) && !s.equals("swallowed"));
  }
}
