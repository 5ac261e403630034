/** Twins of correct workbooks with the mistakes that students make. */
package tenthmark.samples.corpus.mistaken;
