/** The record table that the menu writes. */
package tenthmark.addin.table;
