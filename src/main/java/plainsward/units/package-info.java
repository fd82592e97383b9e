/** Quantities with units: exact values, exact conversion, no guessing between dimensions. */
package plainsward.units;
