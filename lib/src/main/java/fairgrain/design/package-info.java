/** A whole piece: its parts as a design file names them, the tables it draws on, and the review that asks every question of it. */
@NullMarked
package fairgrain.design;

import org.jspecify.annotations.NullMarked;
