/** How a design is told: one form for each block of a design file, which reads it, and names every error with its place. */
@NullMarked
package fairgrain.entry;

import org.jspecify.annotations.NullMarked;
