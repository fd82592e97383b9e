package plainsward.terminal;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import plainsward.FuzzClock;
import plainsward.FuzzText;
import plainsward.reply.Reply;
import plainsward.talk.Conversation;
import plainsward.talk.Setting;
import plainsward.units.UnitSystem;

/** Any talk of up to three turns gets its replies in time, and they can be shown everywhere. */
public final class TurnFuzz {
  private static final LocalDate TODAY = LocalDate.of(2026, 5, 1);
  private static final int MOST_TURNS = 3;

  @FuzzTest
  void fuzz(byte[] data) {
    fuzzerTestOneInput(data);
  }

  /** One input, by the name that the fuzzer looks for; a line break and a bar part the turns. */
  public static void fuzzerTestOneInput(byte[] data) {
    UnitSystem system =
        UnitSystem.values()[
            data.length == 0 ? 0 : ((data[0] >> 3) & 3) % UnitSystem.values().length];
    String[] turns = FuzzText.of(data).split("\n\\|", MOST_TURNS);
    long limit = 50L * turns.length;
    FuzzClock.within(limit, () -> answers(turns, system));
    answers(turns, system).forEach(ScreenCheck::show);
  }

  private static List<Reply> answers(String[] turns, UnitSystem system) {
    Conversation talk = new Conversation(new Setting(TODAY, system));
    List<Reply> replies = new ArrayList<>();
    for (String turn : turns) {
      replies.add(talk.answer(turn));
    }
    return replies;
  }
}
