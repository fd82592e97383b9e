package plainsward;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The packed program opens no network socket and writes nothing outside its home folder, whichever
 * way it is called: seen by tracing its system calls, where a tracer is there, and by running it
 * where no network is, where that can be had.
 */
class OfflineIT {
  private static final String SUM = "4,000 sq ft at 1.5 fl oz per thousand, 2 gallon sprayer";
  private static final String BOOK = "how do I get rid of clover without hurting my lawn?";
  private static final String BATCH =
      "{\"turns\":[\"40 by 60 at 2 oz per thousand\",\"and 6,000?\"]}\n{\"turns\":[\""
          + BOOK
          + "\"]}\n";
  private static final String TALK =
      "the blue jug says 1.5 oz per thousand, every 30 days\n"
          + "the back lawn is 4,000 sq ft\n"
          + "I sprayed the back lawn with the blue jug today\n"
          + BOOK
          + "\n";

  @TempDir Path folder;

  private Traced traced(String input, String... words) throws Exception {
    Assumptions.assumeTrue(Traced.isPossible(), "no jar was packed, or nothing may be traced here");
    Traced run = Traced.run(folder, input, words);
    assertTrue(run.count() > 20, "hardly anything was traced");
    assertEquals(List.of(), run.socketsUsed());
    return run;
  }

  /** Where no home was chosen nothing at all may be written, nor any socket opened. */
  private void writesNothing(Traced run) {
    assertEquals(List.of(), run.sockets());
    assertEquals(List.of(), run.writesOutside(folder.resolve("nowhere")));
  }

  @Test
  void oneQuestionOpensNoSocketAndWritesNothing() throws Exception {
    Traced sum = traced("", SUM);
    assertTrue(sum.out().contains("6 fl oz"), sum.out());
    writesNothing(sum);
    writesNothing(traced("", "--json", BOOK));
  }

  @Test
  void aBatchOpensNoSocketAndWritesNothing() throws Exception {
    Traced batch = traced(BATCH, "--batch");
    assertEquals(2, batch.out().lines().count(), batch.out());
    writesNothing(batch);
  }

  /**
   * The JVM's own library for locking files brings its network library along, and that one opens
   * three sockets as it is loaded to see which protocols there are, and closes them. So a talk that
   * keeps something is held to this: no socket is used.
   */
  @Test
  void aTalkWritesOnlyWithinItsHome() throws Exception {
    Path home = folder.resolve("kept");
    Traced talk = traced(TALK, "--home", home.toString());
    assertTrue(talk.out().contains("clover"), talk.out());
    assertEquals(List.of(), talk.writesOutside(home));
    assertTrue(Files.isDirectory(home), "the talk kept nothing, so this shows nothing");
    assertFalse(talk.writesOutside(folder.resolve("nowhere")).isEmpty());
  }

  @Test
  void allIsAnsweredWhereThereIsNoNetwork() throws Exception {
    List<String> alone = List.of("unshare", "--net", "--map-root-user");
    boolean can =
        Files.exists(Path.of("target", "plainsward.jar"))
            && Traced.works("unshare", "--net", "--map-root-user", "true");
    Assumptions.assumeTrue(can, "no jar was packed, or no namespace without a network can be had");
    assertTrue(Traced.plain(alone, folder, "", SUM).contains("6 fl oz"));
    assertEquals(2, Traced.plain(alone, folder, BATCH, "--batch").lines().count());
    assertTrue(Traced.plain(alone, folder, TALK).contains("clover"));
  }
}
