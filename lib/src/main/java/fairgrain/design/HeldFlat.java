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
 * @param hollow already that day; 0 if it is planed flat
 */
public record HeldFlat(
        String name, Member.Across wood, Length width, Length fromPith, Optional<Length> mayCup, Length hollow)
        implements Part {
    private static final Length NEAREST = Length.inches(2); // judgement: few boards are sawn nearer the pith

    /** A panel that is cut already and not flat: its frame must hold it. Its rings are taken as curved as such a width may have them. */
    public static HeldFlat warped(String name, Member.Across wood, Length width, Length hollow) {
        Length half = width.times(0.5);
        Length pith = half.compareTo(NEAREST) > 0 ? half : NEAREST;
        return new HeldFlat(name, wood, width, pith, Optional.empty(), hollow);
    }

    @Override
    public List<Question<?>> questions(Design design) {
        return List.of(new Flat(name, wood, width, fromPith, mayCup.orElse(null), hollow, design.setting()));
    }
}
