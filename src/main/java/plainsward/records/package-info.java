/** What outlives a talk: labels, lawns, sprayers and the log, in files that survive anything. */
package plainsward.records;
