/** Tables drawn by somebody who has seen neither the reader nor its rules nor its words. */
package tenthmark.samples.corpus.last;
