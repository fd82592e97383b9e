package plainsward.talk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plainsward.reply.Figure;
import plainsward.reply.Reply;
import plainsward.units.Quantity;

/**
 * The same job in many wordings takes the same product, or is asked about: never another amount.
 * {@code -Dmetamorphic=N} takes another number of wordings.
 */
@Tag("metamorphic")
class MetamorphicTest {
  private static final int WORDINGS = Integer.getInteger("metamorphic", 20_000);
  private static final double MOST_ASKED = 0.10;
  private static final int SHOWN = Integer.getInteger("metamorphic.shown", 12);

  /** How the wordings of one kind went. */
  private static final class Tally {
    int all;
    int asked;
    int wrong;
  }

  @Test
  void everyWordingOfAJobTakesTheSameProductOrAsks() {
    Random random = new Random(20260501);
    Map<String, Tally> kinds = new TreeMap<>();
    Map<String, String> wrong = new TreeMap<>();
    List<String> asked = new ArrayList<>();
    for (int i = 0; i < WORDINGS; i++) {
      Wording wording = Wording.of(random);
      Tally tally = kinds.computeIfAbsent(wording.kind(), k -> new Tally());
      tally.all++;
      Reply reply = answered(wording);
      if (reply.figure("product_total").isEmpty()) {
        tally.asked++;
        asked.add(wording.turns() + " -> " + TalkCheck.told(reply));
      } else if (!isProduct(reply.figure("product_total").get(), wording.product())) {
        tally.wrong++;
        wrong.put(
            wording.turns().toString(), wording.product() + " but got " + TalkCheck.told(reply));
      }
    }
    kinds.forEach(
        (kind, n) ->
            System.out.printf(
                "%-22s %5d wordings, %5d right, %4d asked, %3d wrong%n",
                kind, n.all, n.all - n.asked - n.wrong, n.asked, n.wrong));
    System.out.printf(
        "all %d, right %d, asked %d, wrong %d%n",
        WORDINGS, WORDINGS - asked.size() - wrong.size(), asked.size(), wrong.size());
    asked.stream().limit(SHOWN).forEach(text -> System.out.println("  asked: " + text));
    assertTrue(wrong.isEmpty(), () -> told(wrong));
    assertTrue(asked.size() <= WORDINGS * MOST_ASKED, "too many are asked back");
  }

  private static Reply answered(Wording wording) {
    Conversation talk = TalkCheck.conversation("us", "2026-05-01");
    Reply reply = null;
    for (String turn : wording.turns()) {
      reply = talk.answer(turn);
    }
    return reply;
  }

  private static boolean isProduct(Figure figure, Quantity product) {
    return figure
        .value()
        .filter(v -> v.dimension().equals(product.dimension()))
        .filter(v -> v.isSameAmount(product))
        .isPresent();
  }

  private static String told(Map<String, String> wrong) {
    StringBuilder all = new StringBuilder(wrong.size() + " wrong:\n");
    wrong.entrySet().stream()
        .limit(60)
        .forEach(e -> all.append(e.getKey()).append(" -> ").append(e.getValue()).append('\n'));
    return all.toString();
  }
}
