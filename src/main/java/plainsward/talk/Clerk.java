package plainsward.talk;

import java.util.List;
import java.util.Optional;
import plainsward.reading.Fact;
import plainsward.reading.Facts;
import plainsward.reply.Reply;

/**
 * What has to do with the records: files, the log, labels, sprayers and lawns, each at its desk.
 */
final class Clerk {
  private final Memory memory;
  private final Keeper keeper;
  private final Setting setting;
  private final int turn;

  Clerk(Memory memory, Keeper keeper, Setting setting, int turn) {
    this.memory = memory;
    this.keeper = keeper;
    this.setting = setting;
    this.turn = turn;
  }

  /**
   * The reply to a turn that asks the records or tells something for them alone, or nothing.
   *
   * @param logBefore whether the reply before told what is in the log
   */
  Optional<Reply> hear(Facts facts, List<Fact> tied, boolean logBefore) {
    Diary diary = keeper.diary();
    return new FileDesk(memory, keeper, setting)
        .hear(facts)
        .or(() -> new LogDesk(memory, diary, setting.today()).hear(facts, logBefore))
        .or(() -> new AgainDesk(memory, diary, setting.today()).hear(facts))
        .or(() -> new SeasonDesk(memory, diary, setting.today()).hear(facts))
        .or(() -> new LabelQuestion(memory).hear(facts))
        .or(() -> new LabelDesk(memory, setting, turn).hear(facts, tied))
        .or(() -> new SprayerDesk(memory, setting.today(), turn).hear(facts, tied))
        .or(() -> new LawnDesk(memory, turn).hear(facts, tied));
  }

  /** The reply to a turn that tells of a spraying, or takes one back, or nothing. */
  Optional<Reply> logged(Facts facts, List<Fact> tied) {
    return new Logger(memory, keeper.diary(), setting.today(), turn).hear(facts, tied);
  }

  /** The refusal of a dose that the log, or a label's list of grasses, stands against. */
  Optional<Reply> against(Facts facts, List<String> topics) {
    return new DoseGuard(memory, keeper.diary(), setting.today())
        .check(facts, topics)
        .or(() -> new JobNotes(memory, setting.today()).harmed(topics));
  }
}
