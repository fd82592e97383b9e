package plainsward.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plainsward.reply.Kind;

/**
 * Every conversation of {@code transcripts-demo} goes to the letter as it stands there. With {@code
 * -Dtranscripts.write=true} the replies are written anew instead; read the difference before it is
 * kept.
 */
class TranscriptsTest {
  private static final Path FOLDER = Path.of("transcripts-demo");
  private static final Path TOPICS = Path.of("src/test/resources/handbook/topics.txt");
  private static final int FEWEST = 14;
  private static final Path README = Path.of("README.md");
  private static final Pattern SHOWN =
      Pattern.compile("<!-- (transcripts-demo/\\S+) -->\\n(.*?)<!-- end -->", Pattern.DOTALL);
  private static final boolean WRITE = Boolean.getBoolean("transcripts.write");

  static List<Path> pages() throws IOException {
    try (Stream<Path> all = Files.list(FOLDER)) {
      return all.filter(f -> f.toString().endsWith(".md")).sorted().toList();
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void theConversationGoesAsItStands(Path page, @TempDir Path home) throws Exception {
    String kept = Files.readString(page);
    String replayed = new Replay(home).of(Transcript.read(kept)).written();
    if (WRITE) {
      Files.writeString(page, replayed);
    } else {
      assertEquals("", Differences.of(kept, replayed), page + " goes another way now");
    }
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("pages")
  void aPageTellsWhatItShowsAndHoldsATalk(Path page) throws IOException {
    Transcript transcript = Transcript.read(Files.readString(page));
    assertTrue(transcript.shows().matches("[A-Z].{20,}\\."), transcript.shows());
    assertTrue(transcript.sittings().stream().mapToInt(s -> s.turns().size()).sum() >= 2);
  }

  @Test
  void everyTopicAndEveryKindOfReplyIsShown(@TempDir Path homes) throws Exception {
    Set<String> topics = new TreeSet<>(Files.readAllLines(TOPICS));
    Set<String> kinds =
        Arrays.stream(Kind.values()).map(Kind::name).collect(Collectors.toCollection(TreeSet::new));
    for (Path page : pages()) {
      Replay replay = new Replay(Files.createTempDirectory(homes, "home"));
      replay.of(Transcript.read(Files.readString(page)));
      topics.removeAll(replay.topics());
      kinds.removeAll(replay.kinds());
    }
    assertTrue(pages().size() >= FEWEST);
    assertEquals(Set.of(), topics, "topics that no transcript shows");
    assertEquals(Set.of(), kinds, "kinds of reply that no transcript shows");
  }

  /** The talk between the two comments of the README is one of the pages, without its head. */
  @Test
  void theReadmeShowsOneAsItStands() throws IOException {
    String readme = Files.readString(README);
    Matcher shown = SHOWN.matcher(readme);
    assertTrue(shown.find(), "no transcript in the README");
    String page = Files.readString(Path.of(shown.group(1)));
    String talk = "\n" + page.substring(page.indexOf("\n> ") + 1) + "\n";
    if (WRITE) {
      Files.writeString(
          README, readme.substring(0, shown.start(2)) + talk + readme.substring(shown.end(2)));
    } else {
      assertEquals("", Differences.of(talk, shown.group(2)), "the README shows an older talk");
    }
  }
}
