package plainsward.terminal;

/** The way in. */
public final class Main {
  private Main() {}

  /**
   * Runs the program.
   *
   * @param args the words after the program's name
   */
  public static void main(String[] args) {
    System.out.println("plainsward");
  }
}
