/**
 * The words that the checker reads, in every language, and how headings are made of them. No other
 * package that reads sheets holds a word of any language.
 */
package tenthmark.checker.reading.words;
