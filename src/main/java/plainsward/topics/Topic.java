package plainsward.topics;

import plainsward.reply.Reply;

/** One thing that people ask about. */
public interface Topic {
  /** The contract's code. */
  String code();

  /** The reply: an answer, or the question to ask back. */
  Reply reply(Request request);
}
