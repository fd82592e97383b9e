package plainsward.terminal;

/** A fault of the program's own, in one sentence that a bug report can quote. */
final class Fault {
  private Fault() {}

  /** The sentence, with the kind of fault and the first place of ours that it passed. */
  static String sentence(Throwable fault) {
    String place = "";
    for (StackTraceElement frame : fault.getStackTrace()) {
      if (frame.getClassName().startsWith("plainsward.")) {
        place = " at " + frame.getClassName() + ":" + frame.getLineNumber();
        break;
      }
    }
    return "The program itself failed on this one ("
        + fault.getClass().getSimpleName()
        + place
        + "); please report it.";
  }
}
