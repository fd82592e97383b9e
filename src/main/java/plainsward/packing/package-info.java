/**
 * A step of the build, no room of the program and not in its jar: what javac leaves to be linked at
 * run time is made into plain classes, because linking is most of what one question costs from
 * cold.
 */
package plainsward.packing;
