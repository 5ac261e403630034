/** The commands of the menu, one class each. */
package tenthmark.addin.menu.command;
