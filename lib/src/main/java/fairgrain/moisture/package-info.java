/**
 * Air, and the moisture it gives to and takes from a slab: sorption, humidity indoors, diffusion, finishes. Doubles in
 * SI units (K, Pa, m, s, kg), humidity and moisture content as fractions; no species is known here.
 */
@NullMarked
package fairgrain.moisture;

import org.jspecify.annotations.NullMarked;
