package plainsward.talk;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plainsward.reading.JsonLines;
import plainsward.reply.Figure;
import plainsward.reply.Reply;
import plainsward.units.Quantity;
import plainsward.units.UnitSystem;

/**
 * Holds one conversation and tells what is wrong with it. An expectation names a turn and its kind
 * (or "ask|unsure"), and may name a figure with its value, date or word, a {@code topic}, a {@code
 * caution}, words that its text {@code says} or {@code lacks}, a line of how it {@code works}, what
 * is asked for ({@code needs}), a day that it {@code draws}, words of a caution ({@code warns}),
 * the one question that it {@code suggests} or one that it leaves {@code unsuggested}, or a figure
 * that must not be there ({@code none}).
 */
final class TalkCheck {
  private TalkCheck() {}

  /** A conversation under these units on this day. */
  static Conversation conversation(String units, String today) {
    UnitSystem system = UnitSystem.valueOf(units.toUpperCase(Locale.ROOT));
    return new Conversation(new Setting(LocalDate.parse(today), system));
  }

  /** The faults of a conversation; none where it goes as wanted. */
  static List<String> faults(JsonLines.Line line) {
    Conversation talk = conversation(line.text("units"), line.text("today"));
    List<Reply> replies = new ArrayList<>();
    try {
      line.texts("turns").forEach(turn -> replies.add(talk.answer(turn)));
    } catch (RuntimeException thrown) {
      return List.of("turn " + (replies.size() + 1) + " threw " + thrown);
    }
    List<String> faults = new ArrayList<>();
    for (Map<String, Object> wanted : line.objects("expect")) {
      Reply reply = replies.get((Integer) wanted.get("turn") - 1);
      if (!isAsWanted(reply, wanted)) {
        faults.add("wanted " + wanted + ", got " + told(reply));
      }
    }
    return faults;
  }

  /** A reply in short, for messages. */
  static String told(Reply reply) {
    List<String> figures = reply.figures().stream().map(TalkCheck::told).toList();
    List<String> cautions = reply.cautions().stream().map(c -> c.id()).toList();
    return reply.kind().word()
        + " "
        + reply.topics()
        + " "
        + figures
        + " needs "
        + reply.needs()
        + " cautions "
        + cautions
        + " \""
        + reply.headline()
        + "\"";
  }

  private static String told(Figure figure) {
    return figure.name()
        + figure.value().map(v -> " " + v).orElse("")
        + figure.high().map(v -> ".." + v).orElse("")
        + figure.date().map(d -> " " + d).orElse("")
        + figure.word().map(w -> " " + w).orElse("");
  }

  private static boolean isAsWanted(Reply reply, Map<String, Object> wanted) {
    return List.of(((String) wanted.get("kind")).split("\\|")).contains(reply.kind().word())
        && (!wanted.containsKey("needs") || reply.needs().contains(wanted.get("needs")))
        && (!wanted.containsKey("topic") || reply.topics().contains(wanted.get("topic")))
        && (!wanted.containsKey("says") || text(reply).contains((String) wanted.get("says")))
        && (!wanted.containsKey("lacks") || !text(reply).contains((String) wanted.get("lacks")))
        && (!wanted.containsKey("works") || reply.working().contains(wanted.get("works")))
        && (!wanted.containsKey("suggests")
            || reply.suggest().equals(List.of(wanted.get("suggests"))))
        && (!wanted.containsKey("unsuggested")
            || !reply.suggest().contains(wanted.get("unsuggested")))
        && (!wanted.containsKey("draws") || drawn(reply).contains((String) wanted.get("draws")))
        && (!wanted.containsKey("warns") || warned(reply).contains((String) wanted.get("warns")))
        && (!wanted.containsKey("none") || reply.figure((String) wanted.get("none")).isEmpty())
        && (!wanted.containsKey("caution")
            || reply.cautions().stream().anyMatch(c -> c.id().equals(wanted.get("caution"))))
        && (!wanted.containsKey("figure") || hasFigure(reply, wanted));
  }

  private static String text(Reply reply) {
    return reply.headline() + "\n" + String.join("\n", reply.body());
  }

  /** The days that are drawn, a line each. */
  private static String drawn(Reply reply) {
    StringBuilder days = new StringBuilder();
    reply
        .sketches()
        .days()
        .forEach(d -> days.append(d.day()).append(' ').append(d.what()).append('\n'));
    return days.toString();
  }

  private static String warned(Reply reply) {
    return String.join("\n", reply.cautions().stream().map(c -> c.text()).toList());
  }

  private static boolean hasFigure(Reply reply, Map<String, Object> wanted) {
    String unit = (String) wanted.get("unit");
    return reply
        .figure((String) wanted.get("figure"))
        .filter(f -> isSame(f.value(), wanted.get("value"), unit))
        .filter(f -> isSame(f.high(), wanted.get("high"), unit))
        .filter(f -> isText(f.date().map(LocalDate::toString), wanted.get("date")))
        .filter(f -> isText(f.word(), wanted.get("word")))
        .isPresent();
  }

  private static boolean isSame(Optional<Quantity> figure, Object wanted, String unit) {
    if (wanted == null) {
      return figure.isEmpty();
    }
    Quantity amount = Quantity.of((String) wanted, unit);
    return figure
        .filter(f -> f.dimension().equals(amount.dimension()))
        .map(f -> f.isSameAmount(amount))
        .orElse(false);
  }

  private static boolean isText(Optional<String> text, Object wanted) {
    return wanted == null || text.map(wanted::equals).orElse(false);
  }
}
