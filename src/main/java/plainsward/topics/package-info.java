/** One class per topic of the contract: what it needs, which sums it calls for, and its words. */
package plainsward.topics;
