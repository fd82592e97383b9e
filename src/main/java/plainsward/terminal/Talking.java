package plainsward.terminal;

import plainsward.reply.Reply;
import plainsward.talk.Conversation;
import plainsward.talk.Standing;

/**
 * A real conversation.
 *
 * @param talk the conversation
 */
record Talking(Conversation talk) implements Answering {

  @Override
  public Reply answer(String said) {
    return talk.answer(said);
  }

  @Override
  public Standing standing() {
    return talk.standing();
  }
}
