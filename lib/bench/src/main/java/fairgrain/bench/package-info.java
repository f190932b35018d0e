/** How long the library takes. Speed is measured here, never asserted in tests. */
@NullMarked
package fairgrain.bench;

import org.jspecify.annotations.NullMarked;
