package plainsward.terminal;

import java.util.List;
import java.util.Optional;
import plainsward.reply.Kind;
import plainsward.reply.Reply;

/**
 * The turns of one conversation with a person: a few words mean this room (help, more, save this
 * talk, leave), all others go to the conversation.
 */
final class Turns {
  private static final int MORE_ROWS = ScreenText.MOST_ROWS - 2;
  private static final Page NOTHING = new Page(List.of(), List.of());

  private final Answering talk;
  private final Showing showing;
  private final TalkFile file;
  private Page page = NOTHING;

  /**
   * A conversation.
   *
   * @param showing how replies are written
   * @param file takes the talk down, to be saved where that is wanted
   */
  Turns(Answering talk, Showing showing, TalkFile file) {
    this.talk = talk;
    this.showing = showing;
    this.file = file;
  }

  /**
   * What is said to a turn.
   *
   * @param text what is to be shown, empty where there is nothing
   * @param leaves whether the talk is over
   * @param isGood whether the turn got its reply
   * @param next the next step that the reply names
   */
  record Told(String text, boolean leaves, boolean isGood, Optional<String> next) {

    private static Told of(String text) {
      return new Told(text, false, true, Optional.empty());
    }
  }

  /** Hears one turn; never throws for anything typed. */
  Told hear(String said) {
    if (said.isBlank()) {
      return Told.of("");
    }
    LocalWord word = LocalWord.of(said);
    if (word == LocalWord.QUIT) {
      return new Told("", true, true, Optional.empty());
    }
    return switch (showing.isForPeople() ? word : LocalWord.NONE) {
      case HELP -> Told.of(showing.own(HelpText.examples()));
      case MORE -> Told.of(more());
      case SAVE -> Told.of(showing.own(CleanText.line(file.save())));
      default -> answer(said);
    };
  }

  /** The rest of the last reply, a screen at a time. */
  private String more() {
    if (page.rest().isEmpty()) {
      return showing.own("That was all of it.");
    }
    page = page.turned(MORE_ROWS);
    return page.rest().isEmpty()
        ? page.text()
        : page.text() + "\n\n" + showing.own(Hints.TALK.more());
  }

  private Told answer(String said) {
    if (LocalWord.isFresh(said)) {
      file.begin();
    }
    page = NOTHING;
    try {
      Reply reply = talk.answer(said);
      page = showing.page(reply);
      file.add(said, PlainText.of(reply, Length.WHOLE));
      boolean urgent = reply.kind() == Kind.EMERGENCY;
      Optional<String> next = reply.suggest().stream().filter(step -> !urgent).findFirst();
      return new Told(page.text(), false, true, next);
    } catch (RuntimeException | StackOverflowError fault) {
      return new Told(showing.own(Fault.sentence(fault)), false, false, Optional.empty());
    }
  }
}
