package tenthmark.addin.window;

/** Where a control stands in its window, in the office's units that grow with the font. */
public record Place(int x, int y, int width, int height) {}
