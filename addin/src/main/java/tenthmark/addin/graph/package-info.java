/** The graph that the menu draws of points, with the line fitted to them. */
package tenthmark.addin.graph;
