/**
 * Writes the parts of the extension that follow from the function catalogue: interface definition,
 * UNO interface, its implementation, configuration and function reference.
 */
package tenthmark.addin.generator;
