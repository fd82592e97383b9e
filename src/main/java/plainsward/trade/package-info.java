/** The trade tables: measures and their spellings, weeds, grasses, active ingredients, cues. */
package plainsward.trade;
