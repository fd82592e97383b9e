package plainsward.reading;

/** Whether two words differ by one slip of the finger. */
final class Slip {
  private Slip() {}

  /** One letter more, one less, one other, or two neighbours swapped. */
  static boolean isOne(String a, String b) {
    int longer = a.length() - b.length();
    if (longer > 1 || longer < -1 || a.equals(b)) {
      return false;
    }
    int i = 0;
    while (i < a.length() && i < b.length() && a.charAt(i) == b.charAt(i)) {
      i++;
    }
    if (longer == 1) {
      return a.substring(i + 1).equals(b.substring(i));
    }
    if (longer == -1) {
      return a.substring(i).equals(b.substring(i + 1));
    }
    boolean swapped =
        i + 1 < a.length()
            && a.charAt(i) == b.charAt(i + 1)
            && a.charAt(i + 1) == b.charAt(i)
            && a.substring(i + 2).equals(b.substring(i + 2));
    return swapped || a.substring(i + 1).equals(b.substring(i + 1));
  }

  /** Whether at most so many letters are more, less or others; a swap counts as two. */
  static boolean areAtMost(int most, String a, String b) {
    if (Math.abs(a.length() - b.length()) > most) {
      return false;
    }
    int[] before = new int[b.length() + 1];
    for (int k = 0; k <= b.length(); k++) {
      before[k] = k;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] here = new int[b.length() + 1];
      here[0] = i;
      for (int k = 1; k <= b.length(); k++) {
        int other = before[k - 1] + (a.charAt(i - 1) == b.charAt(k - 1) ? 0 : 1);
        here[k] = Math.min(other, Math.min(before[k], here[k - 1]) + 1);
      }
      before = here;
    }
    return before[b.length()] <= most;
  }
}
