/** The window that explains a cell. */
package tenthmark.addin.explaining;
