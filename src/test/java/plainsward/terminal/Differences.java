package plainsward.terminal;

import java.util.List;

/** What differs between two texts, for a person to read. */
final class Differences {
  private static final int MOST = 40;

  private Differences() {}

  /**
   * The lines that differ, {@code -} the one that was expected and {@code +} the one that came,
   * with the line's number; empty where the texts are the same.
   */
  static String of(String expected, String came) {
    List<String> old = expected.lines().toList();
    List<String> now = came.lines().toList();
    int start = 0;
    while (start < Math.min(old.size(), now.size()) && old.get(start).equals(now.get(start))) {
      start++;
    }
    int oldEnd = old.size();
    int nowEnd = now.size();
    while (oldEnd > start && nowEnd > start && old.get(oldEnd - 1).equals(now.get(nowEnd - 1))) {
      oldEnd--;
      nowEnd--;
    }
    return part("- ", old, start, oldEnd) + part("+ ", now, start, nowEnd);
  }

  private static String part(String sign, List<String> lines, int start, int end) {
    StringBuilder part = new StringBuilder();
    for (int i = start; i < Math.min(end, start + MOST); i++) {
      part.append('\n').append(i + 1).append(' ').append(sign).append(lines.get(i));
    }
    return end > start + MOST ? part + "\n..." : part.toString();
  }
}
