/** The shop sheet: a review turned into blocks, and the blocks written out. */
@NullMarked
package fairgrain.sheet;

import org.jspecify.annotations.NullMarked;
