package fairgrain.design;

import fairgrain.finding.Question;
import fairgrain.fixing.Flat;
import fairgrain.fixing.Member;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/**
 * A board that cups, free or held flat.
 *
 * @param fromPith of its face
 * @param mayCup empty where a frame holds it flat
 */
public record HeldFlat(String name, Member.Across wood, Length width, Length fromPith, Optional<Length> mayCup)
        implements Part {
    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(new Flat(name, wood, width, fromPith, mayCup.orElse(null), design.setting()));
    }
}
