/**
 * The way in and out: the command line, one question, the batch, the conversation, and a reply as
 * screen text or JSON. The only room that knows of the terminal.
 */
package plainsward.terminal;
