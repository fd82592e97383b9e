package plainsward.terminal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import plainsward.reply.Kind;
import plainsward.reply.Reply;
import plainsward.reply.Telling;

/**
 * Chooses what of a reply stands on one screen, and keeps the rest for "more". What is cut first is
 * what is missed least: links to notes, long sums, the end of a long text. What was read stays, so
 * that a misreading is seen; in an emergency every caution stays.
 */
final class Fit {
  private static final int MOST_CAUTIONS = 4;
  private static final int FEW_CAUTIONS = 2;
  private static final int MANY_STEPS = 8;
  private static final int SOME_STEPS = 6;
  private static final int FEW_STEPS = 4;
  private static final int LEAST_STEPS = 2;
  private static final int SHORT_BODY = 8;
  private static final int WIDEST_ROW = 74;

  private final Map<Line.Part, List<Laid>> shown = new EnumMap<>(Line.Part.class);
  private final Map<Line.Part, List<Laid>> rest = new EnumMap<>(Line.Part.class);
  private final Function<Line, Laid> lay;
  private final Hints hints;
  private boolean joined;

  private Fit(Function<Line, Laid> lay, Hints hints) {
    this.lay = lay;
    this.hints = hints;
  }

  /**
   * Fits lines to a screen.
   *
   * @param lay lays a line out
   * @param rows how many rows there are, at least 3
   */
  static Page page(Reply reply, List<Line> lines, Function<Line, Laid> lay, Hints hints, int rows) {
    Fit fit = new Fit(lay, hints);
    lines.forEach(line -> add(fit.shown, lay.apply(line)));
    if (reply.kind() != Kind.EMERGENCY && !hints.sumStays()) {
      fit.fewCautions(MOST_CAUTIONS);
    }
    while (height(fit.shown) > fit.room(rows) && fit.shrunk(reply)) {
      continue;
    }
    return fit.page(rows);
  }

  /** All lines, one part after the other. */
  static List<String> rows(List<Laid> lines) {
    Map<Line.Part, List<Laid>> parts = new EnumMap<>(Line.Part.class);
    lines.forEach(line -> add(parts, line));
    return rows(parts);
  }

  private static void add(Map<Line.Part, List<Laid>> parts, Laid line) {
    parts.computeIfAbsent(line.line().part(), part -> new ArrayList<>()).add(line);
  }

  /** The hint takes two rows of the screen where something is kept back. */
  private int room(int rows) {
    return rest.isEmpty() ? rows : rows - 2;
  }

  private boolean fewCautions(int most) {
    List<Laid> cautions = shown.getOrDefault(Line.Part.CAUTIONS, List.of());
    if (cautions.size() <= most + 1) {
      return false;
    }
    List<Laid> late = rest.getOrDefault(Line.Part.CAUTIONS, List.of());
    keep(Line.Part.CAUTIONS, most + 1);
    rest.get(Line.Part.CAUTIONS).addAll(late.stream().skip(1).toList());
    return true;
  }

  /** Cuts the next thing that is missed least; false where nothing is left to cut. */
  private boolean shrunk(Reply reply) {
    if (reply.kind() == Kind.EMERGENCY || reply.telling() == Telling.THE_SUM) {
      return later(Line.Part.NOTES) || later(Line.Part.NEXT);
    }
    return later(Line.Part.NOTES)
        || hints.sumStays() && gentlyShrunk()
        || fewSteps(FEW_STEPS)
        || shorterBody(SHORT_BODY)
        || fewSteps(LEAST_STEPS)
        || later(Line.Part.DRAWING)
        || later(Line.Part.WORKING)
        || later(Line.Part.FIGURES)
        || later(Line.Part.NEXT)
        || fewCautions(FEW_CAUTIONS)
        || shorterBody(0);
  }

  /** Where no more can be asked for, the sum is kept as long as it may. */
  private boolean gentlyShrunk() {
    return later(Line.Part.NEXT)
        || fewCautions(MOST_CAUTIONS)
        || joinedSteps()
        || fewSteps(MANY_STEPS)
        || shorterBody(SHORT_BODY)
        || fewSteps(SOME_STEPS);
  }

  private boolean later(Line.Part part) {
    if (!shown.containsKey(part)) {
      return false;
    }
    List<Laid> kept = rest.getOrDefault(part, List.of());
    List<Laid> all = new ArrayList<>(shown.remove(part));
    all.removeIf(line -> line.line().look() == Line.Look.HINT);
    all.addAll(kept.stream().filter(line -> !line.isTitle() || all.isEmpty()).toList());
    rest.put(part, all);
    return true;
  }

  /** Puts the steps of a long sum side by side, as many as a row takes. */
  private boolean joinedSteps() {
    List<Laid> steps = shown.getOrDefault(Line.Part.WORKING, List.of());
    if (joined || steps.size() <= FEW_STEPS) {
      return false;
    }
    joined = true;
    List<Laid> rows = new ArrayList<>(List.of(steps.get(0)));
    StringBuilder row = new StringBuilder();
    for (Laid step : steps.subList(1, steps.size())) {
      String text = step.line().text().strip();
      if (row.length() > 0 && row.length() + text.length() > WIDEST_ROW) {
        rows.add(lay.apply(Line.item(Line.Part.WORKING, Line.Look.PLAIN, row.toString())));
        row.setLength(0);
      }
      row.append(row.length() == 0 ? "" : "; ").append(text);
    }
    rows.add(lay.apply(Line.item(Line.Part.WORKING, Line.Look.PLAIN, row.toString())));
    shown.put(Line.Part.WORKING, rows);
    return true;
  }

  /** Keeps but the first steps of a long sum, and says how many more there are. */
  private boolean fewSteps(int most) {
    List<Laid> steps = shown.getOrDefault(Line.Part.WORKING, List.of());
    boolean hinted = rest.containsKey(Line.Part.WORKING);
    int written = steps.size() - 1 - (hinted ? 1 : 0);
    if (written <= most + (hinted ? 0 : 1)) {
      return false;
    }
    later(Line.Part.WORKING);
    shown.put(Line.Part.WORKING, rest.remove(Line.Part.WORKING));
    int more = shown.get(Line.Part.WORKING).size() - 1 - most;
    keep(Line.Part.WORKING, most + 1);
    String hint = "… " + (joined ? "" : more + " ") + "more steps" + hints.steps();
    add(shown, lay.apply(Line.item(Line.Part.WORKING, Line.Look.HINT, hint)));
    return true;
  }

  /** Keeps the first so many lines of a titled part; the rest stands under the same title. */
  private void keep(Line.Part part, int count) {
    List<Laid> all = shown.get(part);
    List<Laid> late = new ArrayList<>(List.of(all.get(0)));
    late.addAll(all.subList(count, all.size()));
    rest.put(part, late);
    shown.put(part, new ArrayList<>(all.subList(0, count)));
  }

  /** Keeps the last paragraph back, unless the text is short already. */
  private boolean shorterBody(int least) {
    List<Laid> body = shown.getOrDefault(Line.Part.BODY, List.of());
    if (body.isEmpty() || height(body) - body.get(body.size() - 1).height() < least) {
      return false;
    }
    rest.computeIfAbsent(Line.Part.BODY, part -> new ArrayList<>())
        .add(0, body.remove(body.size() - 1));
    while (!body.isEmpty() && body.get(body.size() - 1).line().text().isBlank()) {
      body.remove(body.size() - 1);
    }
    if (body.isEmpty()) {
      shown.remove(Line.Part.BODY);
    }
    return true;
  }

  private Page page(int rows) {
    List<String> lines = new ArrayList<>(rows(shown));
    List<String> kept = new ArrayList<>(rows(rest));
    int most = kept.isEmpty() ? rows : rows - 2;
    if (height(shown) > most) {
      int cut = Math.max(1, lines.size() - (height(shown) - (rows - 2)));
      kept.addAll(0, lines.subList(cut, lines.size()));
      lines = new ArrayList<>(lines.subList(0, cut));
    }
    if (!kept.isEmpty()) {
      lines.add("");
      lines.addAll(lay.apply(new Line(Line.Part.NEXT, Line.Look.QUIET, hints.more(), 0)).rows());
    }
    return new Page(lines, kept);
  }

  private static int height(Map<Line.Part, List<Laid>> parts) {
    int height = Math.max(0, parts.size() - 1);
    for (List<Laid> part : parts.values()) {
      height += height(part);
    }
    return height;
  }

  private static int height(List<Laid> lines) {
    int height = 0;
    for (int i = 0; i < lines.size(); i++) {
      height += lines.get(i).height() + (i > 0 && lines.get(i).isTitle() ? 1 : 0);
    }
    return height;
  }

  private static List<String> rows(Map<Line.Part, List<Laid>> parts) {
    List<String> rows = new ArrayList<>();
    for (List<Laid> part : parts.values()) {
      boolean first = true;
      for (Laid line : part) {
        if (!rows.isEmpty() && (first || line.isTitle())) {
          rows.add("");
        }
        rows.addAll(line.rows());
        first = false;
      }
    }
    return rows;
  }
}
