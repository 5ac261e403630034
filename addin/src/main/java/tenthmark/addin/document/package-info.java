/** A spreadsheet that is open in Calc, as the commands of the menu read and change it. */
package tenthmark.addin.document;
