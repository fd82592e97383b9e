package plainsward.talk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plainsward.reading.Ask;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.topics.Known;
import plainsward.topics.Request;

/** Puts what is remembered and what was just said together as what a topic answers. */
final class Requests {
  /** Of more than so many of a kind none is compared with each other one, which would take long. */
  private static final int MANY = 50;

  private final Memory memory;
  private final Keeper keeper;
  private final Setting setting;
  private final int turn;

  Requests(Memory memory, Keeper keeper, Setting setting, int turn) {
    this.memory = memory;
    this.keeper = keeper;
    this.setting = setting;
    this.turn = turn;
  }

  /** The request of a turn; what is asked is its own, or what was asked before it. */
  Request of(Facts facts, List<Ask> asks) {
    return new Request(
        facts, known(facts), asks, setting.units(), setting.today(), setting.handbook());
  }

  private Map<String, List<Known>> known(Facts facts) {
    Map<String, List<Known>> known = new LinkedHashMap<>();
    for (String name : memory.names()) {
      List<Known> all = new ArrayList<>();
      for (Memory.Told told : memory.all(name)) {
        all.add(known(told));
      }
      known.put(name, List.copyOf(all));
    }
    known.putAll(new LogFacts(memory, keeper.diary(), setting.today()).facts());
    Map<String, List<Known>> more = new LinkedHashMap<>();
    for (Fact fact : facts.all()) {
      String name = fact.name();
      if (!memory.has(name) || name.equals("wanted")) {
        List<Known> here = more.get(name);
        if (here == null) {
          here = new ArrayList<>(known.getOrDefault(name, List.of()));
          more.put(name, here);
        }
        Known said = new Known(fact, "question");
        if (here.size() > MANY || !here.contains(said)) {
          here.add(said);
        }
      }
    }
    more.forEach((name, all) -> known.put(name, List.copyOf(all)));
    return known;
  }

  private Known known(Memory.Told told) {
    boolean label =
        !told.fact().owner().isEmpty() && told.fact().owner().equals(memory.chosenLabel());
    String from =
        told.turn() == turn
            ? "question"
            : told.turn() == Keeper.SAVED && keeper.book().isPresent()
                ? "saved"
                : label ? "label" : "earlier";
    return new Known(told.fact(), from);
  }
}
