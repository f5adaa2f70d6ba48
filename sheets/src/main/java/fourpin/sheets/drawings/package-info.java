/**
 * Drawings of cases, panels and layouts, each a view of the plan that computes no figure of its
 * own.
 */
@NullMarked
package fourpin.sheets.drawings;

import org.jspecify.annotations.NullMarked;
