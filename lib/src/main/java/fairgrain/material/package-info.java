/** Woods and sheet goods: what the tables say of each, with its source, and how its figures convert. */
@NullMarked
package fairgrain.material;

import org.jspecify.annotations.NullMarked;
