package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The colours by the contrast formula of WCAG 2.1, on a black and on a white ground. */
class PaletteTest {
  private static final int[] STEPS = {0, 95, 135, 175, 215, 255};

  @Test
  void everyColourStandsOutFromBlackAndFromWhite() {
    for (Line.Look look : Line.Look.values()) {
      int at = Palette.code(look).indexOf("38;5;");
      if (at >= 0) {
        double light = luminance(Integer.parseInt(Palette.code(look).substring(at + 5)));
        double onWhite = 1.05 / (light + 0.05);
        double onBlack = (light + 0.05) / 0.05;
        assertTrue(onWhite > 3.5 && onBlack > 3.5, look + ": " + onWhite + ", " + onBlack);
      }
    }
  }

  /** Relative luminance of one of the 256 colours: a cube of 216, then 24 greys. */
  private static double luminance(int colour) {
    if (colour >= 232) {
      int grey = 8 + 10 * (colour - 232);
      return linear(grey);
    }
    int cube = colour - 16;
    return 0.2126 * linear(STEPS[cube / 36])
        + 0.7152 * linear(STEPS[cube / 6 % 6])
        + 0.0722 * linear(STEPS[cube % 6]);
  }

  private static double linear(int value) {
    double part = value / 255.0;
    return part <= 0.03928 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }
}
