package plainsward.records;

import java.nio.file.Path;

/**
 * A copy of the program in a process of its own: writes until it is stopped or has written enough,
 * and prints a line for each write that it was told is saved.
 */
final class Writer {
  private Writer() {}

  /**
   * Arguments: the home, the writer's own name, how many writes, and {@code log} or {@code all}.
   */
  public static void main(String[] arguments) {
    RecordBook book = RecordBook.open(Path.of(arguments[0]));
    String name = arguments[1];
    int count = Integer.parseInt(arguments[2]);
    boolean all = arguments[3].equals("all");
    for (int i = 0; i < count; i++) {
      String id = book.append(LogEntry.of(Samples.MAY, "jug").withWho(name + i)).id();
      tell("log " + id);
      if (all) {
        book.save(Samples.fullLabel("jug").change().remark(String.valueOf(i)).label());
        tell("label " + i);
        book.save(Lawn.named(name + " " + i).withArea(Samples.sqFt(1 + i)));
        tell("lawn " + name + " " + i);
      }
    }
    tell("end");
  }

  private static void tell(String line) {
    System.out.println(line);
    System.out.flush();
  }
}
