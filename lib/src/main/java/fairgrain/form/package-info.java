/**
 * Input as a maker writes it: each block is declared once, as a form, and is read, checked, described and sketched from that.
 *
 * <p>A form of two keys, the second of which may be left out:
 *
 * <pre>{@code
 * final class GrooveForm extends Form<Groove> {
 *     private final Field<Length> depth = length("depth", Groove.DEPTH, "how deep the groove is cut");
 *     private final Field<Length> width = length("width", Groove.WIDTH, "how wide it is cut")
 *             .or("1/4 in", "a common cutter");
 *
 *     GrooveForm() {
 *         super("groove", "A groove along the inner edge of a frame.");
 *     }
 *
 *     @Override
 *     protected Groove build(Entries entries) {
 *         return new Groove(entries.get(depth), entries.get(width));
 *     }
 * }
 * }</pre>
 *
 * <p>{@code new GrooveForm().read(node, in)} gives the groove, or null with the reasons in {@code in.problems()}; what was
 * taken for granted is in {@code in.taken()}.
 */
@NullMarked
package fairgrain.form;

import org.jspecify.annotations.NullMarked;
