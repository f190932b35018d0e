/** Strict CSV: a table is read whole, or refused with every bad row named by file and line. */
@NullMarked
package fairgrain.table;

import org.jspecify.annotations.NullMarked;
