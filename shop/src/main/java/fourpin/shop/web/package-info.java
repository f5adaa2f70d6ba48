/** The pages: what a browser asks, and what it is answered. Every figure on them is the plan's. */
@NullMarked
package fourpin.shop.web;

import org.jspecify.annotations.NullMarked;
