/** The conversation: what is remembered, what is asked back, follow-ups and corrections. */
package plainsward.talk;
