/**
 * The checker, run on a copy of the open spreadsheet. It is a program of its own that the extension
 * ships, so that its libraries stay out of the office and it can be given up at any time.
 */
package tenthmark.addin.checking;
