/**
 * The job file. {@link fourpin.shop.file.JobReader} reads it; the forms state every key once, for
 * the reader, the JSON Schema and the documents alike.
 */
@NullMarked
package fourpin.shop.file;

import org.jspecify.annotations.NullMarked;
