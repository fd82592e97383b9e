package plainsward.handbook;

import java.util.Arrays;

/**
 * What stems count for, each once. A question has few, so that going through them is quicker than a
 * map of boxed numbers is.
 */
final class Boosts {
  private final int most;
  private String[] stems = new String[32];
  private float[] boosts = new float[32];
  private int count;

  /** Room for so many stems; more are left out. */
  Boosts(int most) {
    this.most = most;
  }

  /** Lets a stem count at least so much. */
  void raise(String stem, float boost) {
    for (int i = 0; i < count; i++) {
      if (stems[i].equals(stem)) {
        boosts[i] = Math.max(boosts[i], boost);
        return;
      }
    }
    if (count == most) {
      return;
    }
    if (count == stems.length) {
      stems = Arrays.copyOf(stems, 2 * count);
      boosts = Arrays.copyOf(boosts, 2 * count);
    }
    stems[count] = stem;
    boosts[count++] = boost;
  }

  int count() {
    return count;
  }

  String stem(int i) {
    return stems[i];
  }

  float boost(int i) {
    return boosts[i];
  }
}
