/** The sums of the trade: pure arithmetic over quantities, each with its working as values. */
package plainsward.dosing;
