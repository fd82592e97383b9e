package plainsward.terminal;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plainsward.reply.Kind;
import plainsward.reply.Reply;

/**
 * A reply for a terminal: wrapped, painted, and never more than a screen of it. What there is no
 * room for, the least needed first, is kept for "more".
 */
final class ScreenText {
  /** The most rows that are written at once. */
  static final int MOST_ROWS = 40;

  private static final int MOST_CAUTIONS = 4;
  private static final List<Line.Part> LEAST_NEEDED =
      List.of(
          Line.Part.NOTES,
          Line.Part.WORKING,
          Line.Part.GIVEN,
          Line.Part.FIGURES,
          Line.Part.NEXT,
          Line.Part.BODY);

  private final Palette palette;
  private final int width;
  private final String moreHint;

  /**
   * A screen.
   *
   * @param columns the terminal's width
   * @param moreHint tells how to see what was kept back
   */
  ScreenText(Palette palette, int columns, String moreHint) {
    this.palette = palette;
    this.width = LineBreaker.fitting(columns);
    this.moreHint = moreHint;
  }

  /** A paragraph of the program's own, wrapped line by line. */
  String own(String text) {
    List<String> lines = new ArrayList<>();
    for (String line : text.split("\n", -1)) {
      int indent = line.length() - line.stripLeading().length();
      lines.addAll(LineBreaker.lines(palette.shown(line), width, indent + 2));
    }
    return String.join("\n", lines);
  }

  /** Three sentences at most. */
  Page brief(Reply reply) {
    return new Page(List.of(own(BriefText.of(reply))), List.of());
  }

  /** The reply. */
  Page page(Reply reply) {
    Map<Line.Part, List<String>> shown = new EnumMap<>(Line.Part.class);
    Map<Line.Part, List<String>> rest = new EnumMap<>(Line.Part.class);
    int cautions = 0;
    for (Line line : ReplyLines.of(reply, palette::gauge)) {
      if (line.look() == Line.Look.CAUTION) {
        cautions++;
      }
      boolean kept = cautions <= MOST_CAUTIONS || reply.kind() == Kind.EMERGENCY;
      boolean later = line.look() == Line.Look.CAUTION && !kept;
      add(later ? rest : shown, line);
    }
    while (rows(shown) > room(rest) && dropped(shown, rest)) {
      continue;
    }
    return page(shown, rest);
  }

  private void add(Map<Line.Part, List<String>> parts, Line line) {
    List<String> lines = parts.computeIfAbsent(line.part(), p -> new ArrayList<>());
    boolean parted = line.look() == Line.Look.TITLE && !lines.isEmpty();
    if (parted) {
      lines.add("");
    }
    for (String row : LineBreaker.lines(palette.shown(line.text()), width, line.hang())) {
      lines.add(palette.painted(line.look(), row));
    }
  }

  /** A reply's own rows: the hint takes two of the screen where something is kept back. */
  private static int room(Map<Line.Part, List<String>> rest) {
    return rest.isEmpty() ? MOST_ROWS : MOST_ROWS - 2;
  }

  private static int rows(Map<Line.Part, List<String>> parts) {
    int blank = Math.max(0, parts.size() - 1);
    return parts.values().stream().mapToInt(List::size).sum() + blank;
  }

  /** Keeps the least needed part back; false where there is none left. */
  private static boolean dropped(
      Map<Line.Part, List<String>> shown, Map<Line.Part, List<String>> rest) {
    Optional<Line.Part> least = LEAST_NEEDED.stream().filter(shown::containsKey).findFirst();
    least.ifPresent(part -> rest.put(part, shown.remove(part)));
    return least.isPresent();
  }

  private Page page(Map<Line.Part, List<String>> shown, Map<Line.Part, List<String>> rest) {
    List<String> lines = joined(shown);
    List<String> kept = joined(rest);
    if (lines.size() > MOST_ROWS - 2) {
      int cut = kept.isEmpty() && lines.size() <= MOST_ROWS ? lines.size() : MOST_ROWS - 2;
      List<String> late = new ArrayList<>(lines.subList(cut, lines.size()));
      late.addAll(kept);
      kept = late;
      lines = new ArrayList<>(lines.subList(0, cut));
    }
    if (!kept.isEmpty()) {
      lines.add("");
      lines.add(palette.painted(Line.Look.QUIET, moreHint));
    }
    return new Page(lines, kept);
  }

  private static List<String> joined(Map<Line.Part, List<String>> parts) {
    List<String> lines = new ArrayList<>();
    for (List<String> part : parts.values()) {
      if (!lines.isEmpty()) {
        lines.add("");
      }
      lines.addAll(part);
    }
    return lines;
  }
}
