package plainsward.terminal;

import plainsward.reply.Reply;

/** One conversation as this room sees it: a turn in, a reply out. */
@FunctionalInterface
interface Answering {

  /** The reply to one turn. */
  Reply answer(String said);
}
