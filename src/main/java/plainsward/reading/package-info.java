/** Text to facts: tokens, recognisers, the role each quantity plays, and what is asked. */
package plainsward.reading;
