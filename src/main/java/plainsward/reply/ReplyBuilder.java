package plainsward.reply;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Puts a reply together; cautions, needs and topics are kept once, in the order first given. */
public final class ReplyBuilder {
  private Kind kind;
  private final Set<String> topics = new LinkedHashSet<>();
  private String headline = "";
  private final List<String> body = new ArrayList<>();
  private final Map<String, Figure> figures = new LinkedHashMap<>();
  private final Set<String> working = new LinkedHashSet<>();
  private final Map<String, Assumed> assumed = new LinkedHashMap<>();
  private final Set<String> needs = new LinkedHashSet<>();
  private final List<Understood> understood = new ArrayList<>();
  private final Map<String, Caution> cautions = new LinkedHashMap<>();
  private final Map<String, NoteLink> notes = new LinkedHashMap<>();
  private final Set<String> suggest = new LinkedHashSet<>();
  private Sketches sketches = Sketches.NONE;
  private Telling telling = Telling.WHOLE;

  /** Starts a reply of a kind. */
  public ReplyBuilder(Kind kind) {
    this.kind = kind;
  }

  /** Starts from a reply that is there, to add to it. */
  public static ReplyBuilder from(Reply reply) {
    ReplyBuilder made = new ReplyBuilder(reply.kind());
    made.topics.addAll(reply.topics());
    made.headline = reply.headline();
    made.body.addAll(reply.body());
    reply.figures().forEach(made::figure);
    made.working.addAll(reply.working());
    reply.assumed().forEach(made::assumed);
    made.needs.addAll(reply.needs());
    made.understood.addAll(reply.understood());
    reply.cautions().forEach(made::caution);
    reply.notes().forEach(made::note);
    made.suggest.addAll(reply.suggest());
    made.sketches = reply.sketches();
    made.telling = reply.telling();
    return made;
  }

  /** Sets the kind. */
  public ReplyBuilder kind(Kind changed) {
    kind = changed;
    return this;
  }

  /** Adds a topic. */
  public ReplyBuilder topic(String code) {
    topics.add(code);
    return this;
  }

  /** Sets the headline. */
  public ReplyBuilder headline(String sentence) {
    headline = sentence;
    return this;
  }

  /** The headline so far. */
  public String headline() {
    return headline;
  }

  /** Adds a paragraph; an empty one is left out. */
  public ReplyBuilder say(String paragraph) {
    if (!paragraph.isBlank()) {
      body.add(paragraph.strip());
    }
    return this;
  }

  /** Adds a figure; a second of the same name is left out. */
  public ReplyBuilder figure(Figure figure) {
    figures.putIfAbsent(figure.name(), figure);
    return this;
  }

  /** Adds a line of working, once. */
  public ReplyBuilder work(String line) {
    working.add(line);
    return this;
  }

  /** Adds something taken as given, once a name. */
  public ReplyBuilder assumed(Assumed taken) {
    assumed.putIfAbsent(taken.name(), taken);
    return this;
  }

  /** Adds something that is asked for. */
  public ReplyBuilder need(String name) {
    needs.add(name);
    return this;
  }

  /** Adds what was understood. */
  public ReplyBuilder understood(Collection<Understood> all) {
    understood.addAll(all);
    return this;
  }

  /** Adds a caution, once an id. */
  public ReplyBuilder caution(Caution caution) {
    cautions.putIfAbsent(caution.id(), caution);
    return this;
  }

  /** Puts a caution in the place of the one of its id. */
  public ReplyBuilder cautionInstead(Caution caution) {
    cautions.put(caution.id(), caution);
    return this;
  }

  /** Adds a note that it rests on. */
  public ReplyBuilder note(NoteLink link) {
    notes.putIfAbsent(link.id(), link);
    return this;
  }

  /** Adds a next question. */
  public ReplyBuilder suggest(String question) {
    suggest.add(question);
    return this;
  }

  /** Takes the next questions away. */
  public ReplyBuilder suggestNothing() {
    suggest.clear();
    return this;
  }

  /** Adds what there is to be drawn. */
  public ReplyBuilder sketch(Sketches more) {
    sketches = sketches.and(more);
    return this;
  }

  /** Tells so much of it. */
  public ReplyBuilder telling(Telling much) {
    telling = much;
    return this;
  }

  /** The reply. */
  public Reply build() {
    return new Reply(
        kind,
        List.copyOf(topics),
        headline,
        body,
        List.copyOf(figures.values()),
        List.copyOf(working),
        List.copyOf(assumed.values()),
        List.copyOf(needs),
        understood,
        List.copyOf(cautions.values()),
        List.copyOf(notes.values()),
        List.copyOf(suggest),
        sketches,
        telling);
  }
}
