/** Drawings, one painting code with several outputs, and the packet composed of them. */
@NullMarked
package fourpin.sheets;

import org.jspecify.annotations.NullMarked;
