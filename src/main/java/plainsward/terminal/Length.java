package plainsward.terminal;

/** How much of a reply's text is told. */
enum Length {
  /** Three sentences to say. */
  SHORT,
  /** What takes no more than a screen. */
  SCREENFUL,
  /** All of it. */
  WHOLE
}
