/** The three guards that stand before every reply: exposure, refusal, caution. */
package plainsward.safety;
