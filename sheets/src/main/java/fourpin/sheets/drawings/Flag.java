package fourpin.sheets.drawings;

import fourpin.casework.Box;

/**
 * The place of a finding, to be drawn on a view. @param label as the list of findings numbers it
 */
public record Flag(String label, Box spot) {}
