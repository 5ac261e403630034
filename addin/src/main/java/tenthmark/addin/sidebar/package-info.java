/**
 * The deck in Calc's sidebar: what the selected cell is, and what the checker finds. The office
 * asks for its panels when the deck is opened for the first time, and starts no Java before.
 */
package tenthmark.addin.sidebar;
