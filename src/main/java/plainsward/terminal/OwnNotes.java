package plainsward.terminal;

import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import plainsward.handbook.Handbook;

/**
 * The notes that are searched: those that come with the program, and a folder of the user's own.
 */
final class OwnNotes {
  private static final int MOST_TOLD = 5;

  private OwnNotes() {}

  /**
   * The notes, with what is wrong with a file of the user's told in a sentence each.
   *
   * @param folder the user's folder, where one was named
   * @param messages where the sentences go
   * @param plain whether nothing may move on the screen
   * @throws Unreadable where there is no such folder or it can't be read
   */
  static Handbook with(Optional<Path> folder, Out messages, boolean plain) throws Unreadable {
    if (folder.isEmpty()) {
      return Handbook.shipped();
    }
    if (!Files.isDirectory(folder.get())) {
      throw new Unreadable("There is no folder " + folder.get() + " of notes.");
    }
    Handbook both = read(folder.get(), messages, plain);
    tell(both.refused(), messages);
    return both;
  }

  private static Handbook read(Path folder, Out messages, boolean plain) throws Unreadable {
    try (Waiting waiting =
        Waiting.on(messages, "reading your notes", !plain, Console::isErrorTerminal)) {
      return Handbook.shipped().plus(folder, waiting::at);
    } catch (UncheckedIOException refused) {
      throw new Unreadable("The folder " + folder + " of notes can't be read.");
    }
  }

  private static void tell(List<String> refused, Out messages) {
    for (String fault : refused.subList(0, Math.min(MOST_TOLD, refused.size()))) {
      messages.line("A note is left out: " + CleanText.line(fault));
    }
    int more = refused.size() - MOST_TOLD;
    if (more > 0) {
      messages.line(
          "And " + more + (more == 1 ? " more note is" : " more notes are") + " left out.");
    }
    messages.flush();
  }
}
