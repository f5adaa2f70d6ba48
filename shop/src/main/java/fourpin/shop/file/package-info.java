/**
 * The job file and the shop file. {@link fourpin.shop.file.JobReader} reads them; the forms state
 * every key once, for the reader, the JSON Schemas and the documents alike.
 */
@NullMarked
package fourpin.shop.file;

import org.jspecify.annotations.NullMarked;
