/**
 * The handbook: notes on weeds, spraying and lawns, indexed in the build and searched in people's
 * own words. Nothing outside this room knows that Lucene is behind it.
 */
package plainsward.handbook;
