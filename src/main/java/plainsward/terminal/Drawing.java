package plainsward.terminal;

import java.util.List;

/** Something that is quicker looked at than read. */
interface Drawing {

  /**
   * The drawing, row by row, none wider than the width; nothing where there is no room for it.
   *
   * @param ink what it is drawn with
   * @param width how many columns there are, at least 40
   */
  List<String> rows(Ink ink, int width);

  /** The same in words. */
  String sentence();
}
