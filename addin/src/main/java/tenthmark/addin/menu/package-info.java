/**
 * The menu and the toolbar in Calc. A command is one class here or below that implements {@link
 * tenthmark.addin.menu.Command}, its line in {@code src/main/menu/commands.txt}, its title in the
 * texts of every language, and its two icons.
 */
package tenthmark.addin.menu;
