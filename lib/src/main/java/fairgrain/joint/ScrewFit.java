package fairgrain.joint;

import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.PilotHole;
import fairgrain.fastener.ScrewSize;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Does a screw fit the pieces it joins: long enough, not through, far enough from edge and end?
 *
 * @param part as the maker calls it
 * @param length from under the head, or from the face if it is countersunk
 * @param through thickness of the piece under the head
 * @param into thickness of the piece it goes into, along the screw
 * @param fromEdge nearest edge along the grain; empty if not said
 * @param fromEnd nearest end of the grain; empty if not said
 * @param endGrain whether it goes into end grain
 */
public record ScrewFit(
        String part,
        ScrewSize screw,
        Length length,
        JointWood throughWood,
        Length through,
        JointWood intoWood,
        Length into,
        Optional<Length> fromEdge,
        Optional<Length> fromEnd,
        boolean endGrain,
        List<Length> shopLengths)
        implements Question<ScrewFit.Fits> {
    public static final Limits PIECE = new Limits("thickness along a screw", 0.003, 0.5, "m");
    public static final Limits DISTANCE = new Limits("distance of a screw", 0.001, 3, "m");
    public static final Citation SOURCE = Penetration.SOURCE;

    static final Citation LEFT = Citation.of("own", "2 mm of wood before the point of a screw", Basis.JUDGEMENT);

    private static final Length LEFT_OVER = Length.mm(2);

    public ScrewFit {
        EndJoint.LENGTH.check(length);
        PIECE.check(through);
        PIECE.check(into);
        shopLengths = List.copyOf(shopLengths);
    }

    /**
     * The screw in numbers.
     *
     * @param reaches into the second piece, its point included
     */
    public record Fits(Length reaches, List<Check> checks) implements Answer {
        public Fits {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Fits> model() {
        Fits fits = fits();
        return draw -> fits;
    }

    private Fits fits() {
        double d = screw.diameter();
        Length reaches = length.minus(through);
        List<Check> checks = new ArrayList<>();
        checks.add(length(
                "how far the screw reaches, against the wood there less 2 mm",
                reaches.metres(),
                into.minus(LEFT_OVER).metres()));
        checks.add(length(
                "least depth, six diameters, against how far it reaches",
                Penetration.WOOD_SCREW_LEAST * d,
                reaches.metres()));
        fromEdge.ifPresent(edge -> checks.add(length(
                "least distance from an edge, against its own", EdgeAndSpacing.smallEdgeBored(d), edge.metres())));
        fromEnd.ifPresent(end -> checks.add(length(
                "least distance from an end, against its own", EdgeAndSpacing.smallEnd(d, true, false), end.metres())));
        return new Fits(reaches, checks);
    }

    /** One such screw, for its strength. */
    ScrewedTogether together() {
        return new ScrewedTogether(screw, length, throughWood, through, intoWood, endGrain);
    }

    private static Check length(String what, double demand, double capacity) {
        return Check.of(what, demand, capacity, Dimension.LENGTH);
    }

    @Override
    public List<Finding> findings() {
        Fits fits = answer();
        List<Outcome> outcomes = fits.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        part,
                        "does this screw fit",
                        Words.of("It reaches {} into the " + intoWood.name() + ".", fits.reaches()),
                        evidence())
                .outcomes(outcomes)
                .missing(missing())
                .cautions(Caution.DRY_SOUND_WOOD);
        throughWood
                .gravity()
                .ifPresent(g -> draft.size("hole under the head for the shank", ScrewHoles.shank(screw, g)));
        ScrewHoles.into(draft, screw, intoWood, "for the thread");
        if (endGrain) {
            draft.note(
                    "It goes into end grain: it holds sideways, two thirds of what it would in side grain, and no pull"
                            + " along itself.");
        }
        strength(draft);
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures());
        }
        return List.of(draft.done());
    }

    /** For information: no load was told. */
    private void strength(Finding.Draft draft) {
        ScrewedTogether one = together();
        if (one.missingSideways().isEmpty()) {
            draft.note(
                    "For information: one such screw may carry {} sideways for good in a dry room; enter its"
                            + " 'sideways' load or 'pull' to have it judged.",
                    Force.newtons(one.sideways() * LoadDuration.PERMANENT.factor()));
            draft.evidence(one.evidence());
        }
    }

    private List<Missing> missing() {
        return intoWood.gravity().isPresent() ? List.of() : List.of(intoWood.densityMissing());
    }

    private List<Remedy> cures() {
        return shopLengths.stream()
                .filter(other -> EndJoint.LENGTH.allow(other.metres()))
                .map(this::length)
                .filter(other -> other.answer().checks().stream().allMatch(Check::holds))
                .findFirst()
                .map(other -> new Remedy(Words.of("Use screws {} long.", other.length()), other))
                .stream()
                .toList();
    }

    private ScrewFit length(Length other) {
        return new ScrewFit(
                part, screw, other, throughWood, through, intoWood, into, fromEdge, fromEnd, endGrain, shopLengths);
    }

    private Evidence evidence() {
        return screw.evidence().and(intoWood.evidence()).and(SOURCE, LEFT, EdgeAndSpacing.SOURCE, PilotHole.SOURCE);
    }
}
