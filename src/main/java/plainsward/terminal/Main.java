package plainsward.terminal;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import plainsward.trade.Pack;

/** The way in. */
public final class Main {
  /** Every question got a reply. */
  static final int GOOD = 0;

  /** The program failed, or something can't be read. */
  static final int FAULT = 1;

  /** The command line makes no sense. */
  static final int WRONG_USE = 2;

  private Main() {}

  /**
   * Runs the program and ends the process with its status.
   *
   * @param args the words after the program's name
   */
  public static void main(String[] args) throws Exception {
    QuickLoader quick = System.getProperty(Pack.READY) == null ? QuickLoader.open() : null;
    if (quick == null) {
      begin(args);
    } else {
      Class<?> same = quick.loadClass(Main.class.getName());
      same.getMethod("begin", String[].class).invoke(null, (Object) args);
    }
  }

  /** Runs the program in the class loader that this class is from; else as {@link #main}. */
  public static void begin(String[] args) {
    PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), false);
    PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true);
    System.exit(run(Arguments.asTyped(args), System.in, out, err, Surroundings.real()));
  }

  /**
   * Runs the program.
   *
   * @param args the words after the program's name
   * @param in where questions come from
   * @param out where replies go, as UTF-8
   * @param err where messages about the run itself go, as UTF-8
   * @param around what the program finds around itself
   * @return the exit status: 0 when every question got a reply of any kind, 1 for a fault of the
   *     program's own or unreadable input, 2 for wrong usage
   */
  static int run(
      String[] args, InputStream in, PrintStream out, PrintStream err, Surroundings around) {
    Out messages = new Out(err);
    try {
      Choices choices = ChoiceReader.read(args);
      return new Session(choices, around, in, out, messages).run();
    } catch (WrongUse wrong) {
      messages.line(CleanText.line(wrong.getMessage()) + " \"plainsward --help\" tells more.");
      return WRONG_USE;
    } catch (Unreadable broken) {
      messages.line(CleanText.line(broken.getMessage()));
      return FAULT;
    } catch (RuntimeException | StackOverflowError fault) {
      messages.line(Fault.sentence(fault));
      return FAULT;
    } finally {
      messages.flush();
    }
  }
}
