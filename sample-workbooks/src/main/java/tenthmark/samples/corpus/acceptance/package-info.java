/**
 * Tables drawn to be read once, at the end; nobody who works on the reader looks at them before.
 */
package tenthmark.samples.corpus.acceptance;
