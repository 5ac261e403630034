/** Windows of labels, lists and buttons, usable by keyboard alone and named for screen readers. */
package tenthmark.addin.window;
