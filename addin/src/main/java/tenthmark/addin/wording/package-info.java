/** The texts of the menu and its windows. */
package tenthmark.addin.wording;
