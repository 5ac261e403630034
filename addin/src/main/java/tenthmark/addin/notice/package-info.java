/** What tells people without the extension or without Java why a workbook shows them errors. */
package tenthmark.addin.notice;
