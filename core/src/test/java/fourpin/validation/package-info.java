/** What Fourpin works out, beside what others have published: {@code docs/validation.md}. */
@NullMarked
package fourpin.validation;

import org.jspecify.annotations.NullMarked;
