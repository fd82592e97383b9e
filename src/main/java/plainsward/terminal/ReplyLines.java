package plainsward.terminal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import plainsward.reply.Caution;
import plainsward.reply.Figure;
import plainsward.reply.Kind;
import plainsward.reply.NoteLink;
import plainsward.reply.Reply;
import plainsward.reply.Sketches;
import plainsward.reply.Telling;

/** A reply as lines, part by part, the number first; what comes from data is made harmless here. */
final class ReplyLines {
  private static final Set<Kind> URGENT = EnumSet.of(Kind.EMERGENCY, Kind.DECLINE);

  private final Reply reply;
  private final List<Line> lines = new ArrayList<>();

  private ReplyLines(Reply reply) {
    this.reply = reply;
  }

  /** All lines of a reply, drawings in words. */
  static List<Line> of(Reply reply) {
    return of(reply, Pen.WORDS);
  }

  /**
   * All lines of a reply.
   *
   * @param pen draws, or tells in words
   */
  static List<Line> of(Reply reply, Pen pen) {
    ReplyLines made = new ReplyLines(reply);
    made.headline();
    if (reply.telling() != Telling.THE_SUM) {
      made.lines.addAll(LoadTable.of(reply, pen));
      made.drawings(pen);
      made.body();
      made.figures();
    }
    if (!URGENT.contains(reply.kind())) {
      made.working();
      made.given();
    }
    made.cautions();
    made.notes();
    made.next();
    return made.lines;
  }

  private void headline() {
    Line.Look look = URGENT.contains(reply.kind()) ? Line.Look.ALARM : Line.Look.STRONG;
    String text = CleanText.line(reply.headline());
    if (!text.isBlank()) {
      lines.add(new Line(Line.Part.HEADLINE, look, text, 0));
    }
  }

  private void drawings(Pen pen) {
    Sketches sketches = reply.sketches();
    if (!sketches.pieces().isEmpty()) {
      lines.addAll(pen.lines(Line.Part.DRAWING, new LawnDrawing(sketches.pieces())));
    }
    if (!sketches.days().isEmpty()) {
      lines.addAll(pen.lines(Line.Part.DRAWING, new DayStrip(sketches)));
    }
    if (!sketches.hours().isEmpty()) {
      lines.addAll(pen.lines(Line.Part.DRAWING, new HoursStrip(sketches.hours())));
    }
  }

  private void body() {
    for (String paragraph : reply.body()) {
      for (String line : CleanText.paragraphs(paragraph).split("\n", -1)) {
        lines.add(Line.of(Line.Part.BODY, line));
      }
    }
  }

  /** Figures that stand in no sentence and in no table. */
  private void figures() {
    String told = reply.headline() + "\n" + String.join("\n", reply.body());
    boolean table = !Loads.of(reply).isEmpty();
    for (Figure figure : reply.figures()) {
      boolean shown = told.contains(figure.shown()) || table && LoadTable.holds(figure.name());
      if (!shown && reply.kind() == Kind.ANSWER) {
        String name = Names.words(figure.name());
        lines.add(Line.of(Line.Part.FIGURES, CleanText.line(name + ": " + figure.shown())));
      }
    }
  }

  private void working() {
    if (!reply.working().isEmpty()) {
      lines.add(Line.title(Line.Part.WORKING, "How it was worked out"));
      reply.working().forEach(step -> item(Line.Part.WORKING, Line.Look.PLAIN, step));
    }
  }

  private void given() {
    List<String> given = GivenWords.of(reply);
    if (!given.isEmpty()) {
      lines.add(Line.title(Line.Part.GIVEN, "Taken as given"));
      given.forEach(line -> item(Line.Part.GIVEN, Line.Look.PLAIN, line));
    }
  }

  private void cautions() {
    if (!reply.cautions().isEmpty()) {
      lines.add(Line.title(Line.Part.CAUTIONS, "Take care"));
      for (Caution caution : reply.cautions()) {
        item(Line.Part.CAUTIONS, Line.Look.CAUTION, "- " + caution.text());
      }
    }
  }

  private void notes() {
    if (!reply.notes().isEmpty()) {
      List<String> titles = reply.notes().stream().map(NoteLink::title).toList();
      String line = "From the handbook: " + String.join("; ", titles);
      lines.add(new Line(Line.Part.NOTES, Line.Look.QUIET, CleanText.line(line), 2));
    }
  }

  private void next() {
    if (!reply.suggest().isEmpty()) {
      String line = "Next, you could ask: " + CleanText.line(reply.suggest().get(0));
      lines.add(new Line(Line.Part.NEXT, Line.Look.QUIET, line, 2));
    }
  }

  private void item(Line.Part part, Line.Look look, String text) {
    lines.add(Line.item(part, look, CleanText.line(text)));
  }
}
