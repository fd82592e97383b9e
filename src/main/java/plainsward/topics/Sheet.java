package plainsward.topics;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.dosing.Step;
import plainsward.reply.Assumed;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.NoteLink;
import plainsward.reply.Reply;
import plainsward.reply.ReplyBuilder;
import plainsward.reply.Sketches;
import plainsward.safety.Cautions;
import plainsward.units.Dimension;
import plainsward.units.Quantity;
import plainsward.units.Ratio;
import plainsward.units.Shown;
import plainsward.units.Unit;
import plainsward.units.Units;

/** A reply in the making: it fits figures to the measure wanted and notes what was used. */
final class Sheet {
  private final Request request;
  private final String topic;
  private final ReplyBuilder reply;
  private final Map<Quantity, String> written = new HashMap<>();

  Sheet(Request request, String topic) {
    this.request = request;
    this.topic = topic;
    this.reply = new ReplyBuilder(Kind.ANSWER).topic(topic);
  }

  /** A figure, in the unit wanted where one of its kind is; gives it back as shown. */
  String figure(String name, Quantity value) {
    Quantity fitted = fitted(value);
    String shown = shown(name, fitted);
    reply.figure(Figure.of(name, fitted, shown));
    return shown;
  }

  /** A figure with the high end of its range. */
  String range(String name, Quantity low, Optional<Quantity> high) {
    if (high.isEmpty() || high.get().isSameAmount(low)) {
      return figure(name, low);
    }
    Quantity first = fitted(low);
    Quantity last = high.get().in(first.unit());
    String shown = Shown.range(first, last);
    reply.figure(Figure.of(name, first, last, shown));
    return shown;
  }

  private static String shown(String name, Quantity value) {
    boolean dose = name.startsWith("product") || name.startsWith("adjuvant");
    return dose ? Shown.notAbove(value) : Shown.of(value);
  }

  /** The amount in the unit wanted, or in one that makes it no tiny fraction. */
  Quantity fitted(Quantity value) {
    Optional<Unit> wanted = request.wanted(value.unit());
    if (wanted.isPresent() && !isTankful(value, wanted.get())) {
      return value.in(wanted.get());
    }
    Optional<Unit> smaller = smaller(value);
    return smaller.map(value::in).orElse(value);
  }

  /** A tank's volume stays in gallons though the product is wanted in ounces. */
  private static boolean isTankful(Quantity value, Unit wanted) {
    boolean large = value.unit().factor().compareTo(Ratio.of(9, 10)) >= 0;
    boolean small = wanted.factor().compareTo(Ratio.of(9, 10)) < 0;
    return value.dimension().equals(Dimension.VOLUME)
        && large
        && small
        && value.value().compareTo(Ratio.ONE) >= 0;
  }

  private static Optional<Unit> smaller(Quantity value) {
    if (value.value().compareTo(Ratio.ONE) >= 0 || value.signum() == 0) {
      return Optional.empty();
    }
    return switch (value.unit().code()) {
      case "[qt_us]", "[pt_us]" -> Optional.of(Units.FL_OZ);
      case "[qt_br]", "[pt_br]" -> Optional.of(Units.IMPERIAL_FL_OZ);
      case "L" -> Optional.of(Units.MILLILITRE);
      case "kg" -> Optional.of(Units.GRAM);
      default -> Optional.empty();
    };
  }

  /** The working, a line a step. */
  Sheet steps(List<Step> steps) {
    for (Step step : steps) {
      reply.work(step.line(written));
      written.putIfAbsent(step.result(), step.outcome());
    }
    return this;
  }

  /** A line of working of its own. */
  Sheet work(String line) {
    reply.work(line);
    return this;
  }

  /** Something taken as given. */
  Sheet assume(String name, Quantity value, String reason) {
    reply.assumed(new Assumed(name, value, reason));
    return this;
  }

  /** Cautions by id. */
  Sheet caution(String... ids) {
    for (String id : ids) {
      reply.caution(Cautions.of(id));
    }
    return this;
  }

  /** A paragraph. */
  Sheet say(String paragraph) {
    reply.say(paragraph);
    return this;
  }

  /** A next question. */
  Sheet suggest(String question) {
    reply.suggest(question);
    return this;
  }

  /** A note that it rests on. */
  Sheet note(NoteLink link) {
    reply.note(link);
    return this;
  }

  /** Another topic that it answers too. */
  Sheet alsoTopic(String code) {
    reply.topic(code);
    return this;
  }

  /** A date figure. */
  Sheet date(String name, java.time.LocalDate date) {
    reply.figure(Figure.of(name, date, Dates.shown(date)));
    return this;
  }

  /** A word figure. */
  Sheet word(String name, String word) {
    reply.figure(Figure.of(name, word, word));
    return this;
  }

  /** What there is to be drawn. */
  Sheet sketch(Sketches sketches) {
    reply.sketch(sketches);
    return this;
  }

  /** The answer, with what may be asked next. */
  Reply answer(String headline) {
    for (String question : NextSteps.after(topic, request)) {
      reply.suggest(question);
    }
    return reply.headline(headline).understood(Known.understood(request.used())).build();
  }

  /** The question to ask back, with what can be said already. */
  Reply ask(String question, String... needs) {
    for (String need : needs) {
      reply.need(need);
    }
    return reply
        .kind(Kind.ASK)
        .headline(question)
        .understood(Known.understood(request.used()))
        .build();
  }

  /** The refusal. */
  Reply decline(String headline) {
    return reply
        .kind(Kind.DECLINE)
        .headline(headline)
        .understood(Known.understood(request.used()))
        .build();
  }
}
