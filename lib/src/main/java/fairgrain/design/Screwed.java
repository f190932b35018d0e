package fairgrain.design;

import fairgrain.finding.Question;
import fairgrain.joint.ScrewFit;
import fairgrain.joint.ScrewsHold;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Screws through one piece into another.
 *
 * @param hold what they must carry; empty if that was not told
 */
public record Screwed(ScrewFit fit, Optional<ScrewsHold> hold) implements Part {
    @Override
    public String name() {
        return fit.part();
    }

    @Override
    public List<Question<?>> questions(Design design) {
        return Stream.<Question<?>>concat(
                        Stream.of(fit),
                        hold
                                .map(told -> told.where(design.setting()
                                        .year()
                                        .damp()
                                        .at(design.setting().deviations())))
                                .stream())
                .toList();
    }
}
