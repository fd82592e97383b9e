package plainsward.terminal;

import plainsward.reply.Reply;
import plainsward.talk.Standing;

/** One conversation as this room sees it: a turn in, a reply out. */
@FunctionalInterface
interface Answering {

  /** The reply to one turn. */
  Reply answer(String said);

  /** How the talk stands when the next turn comes. */
  default Standing standing() {
    return Standing.NOTHING;
  }
}
