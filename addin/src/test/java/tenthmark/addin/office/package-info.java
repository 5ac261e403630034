/** A real headless Calc for tests, with a throwaway profile. */
package tenthmark.addin.office;
