/** Everyday tables of first-year labs, drawn by somebody who has not seen how they are read. */
package tenthmark.samples.corpus.finale;
