/** The least that a worksheet function in Java can be, to measure ours beside it. */
package tenthmark.addin.bare;
