package fairgrain.design;

import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.fixing.Fastening;
import fairgrain.fixing.Fixed;
import fairgrain.fixing.Member;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Two parts that are fixed to each other, as far as it was said.
 *
 * @param of the part that is fastened; empty if nothing is known of how it moves
 * @param to what it is fastened to
 * @param between the outermost fixings, or over the whole width of the joint
 * @param by how; empty if not said, or if a size of it is missing
 * @param missing what was not said
 * @param isBack whether it tells how a solid back is held to its case
 */
public record FixedPart(
        String name,
        Optional<Member> of,
        Optional<Member> to,
        Optional<Length> between,
        Optional<Fastening> by,
        List<Missing> missing,
        boolean isBack)
        implements Part {
    public FixedPart {
        missing = List.copyOf(missing);
    }

    @Override
    public List<Question<?>> questions(Design design) {
        if (!missing.isEmpty() || of.isEmpty() || to.isEmpty() || between.isEmpty() || by.isEmpty()) {
            return List.of(new Unasked(
                    name, "does the fixing let the wood move", missing, Evidence.of(Fixed.SOURCE), Set.of()));
        }
        return List.of(new Fixed(name, of.get(), to.get(), between.get(), by.get(), design.setting()));
    }
}
