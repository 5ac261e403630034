/** The worksheet functions as a Calc extension. */
package tenthmark.addin;
