/**
 * Benchmarks and runs against published results; run by {@code trials/run}, never part of the
 * tests.
 */
@NullMarked
package fourpin.trials;

import org.jspecify.annotations.NullMarked;
