/**
 * What a file states, field by field, for faces that let a maker change it. The fields follow the
 * forms that the readers follow, so that no key is described twice.
 */
@NullMarked
package fourpin.shop.fields;

import org.jspecify.annotations.NullMarked;
