/** What one reply is, as plain data; the screen and the JSON are two views of it. */
package plainsward.reply;
