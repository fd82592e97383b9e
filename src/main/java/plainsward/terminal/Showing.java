package plainsward.terminal;

import plainsward.reply.Reply;

/** How what is said in a conversation is written. */
interface Showing {

  /** A reply, and what of it is kept back. */
  Page page(Reply reply);

  /** A text of the program's own. */
  String own(String text);

  /** Whether people read it, so that words such as "help" mean this room. */
  default boolean isForPeople() {
    return true;
  }
}
