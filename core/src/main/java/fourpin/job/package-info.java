/** The job as the maker states it, and the settings. Nothing is computed here. */
@NullMarked
package fourpin.job;

import org.jspecify.annotations.NullMarked;
