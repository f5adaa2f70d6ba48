/**
 * Pages of text, tables and drawings, laid out and written as a tagged PDF.
 *
 * <p>A {@link fourpin.sheets.pages.Booklet} says what is to be read; {@code Layout} breaks it into
 * leaves of the same marks that drawings are made of; {@link fourpin.sheets.pages.PdfWriter} puts
 * them into a file. Nothing here knows furniture.
 */
@NullMarked
package fourpin.sheets.pages;

import org.jspecify.annotations.NullMarked;
