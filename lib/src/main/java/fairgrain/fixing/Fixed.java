package fairgrain.fixing;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Draw;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.TwoLimits;
import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.movement.FastenerSlip;
import fairgrain.movement.RestraintStress;
import fairgrain.part.Setting;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Two parts are fixed to each other: may each move as its grain wants to, or is one held until it splits?
 *
 * @param part the joint, as the maker calls it
 * @param of the part that is fastened; screws pass through it, and slots are cut in it
 * @param to the part that it is fastened to; screws are driven into it
 * @param between the outermost fixings, or over the whole joint that is glued
 * @param by what
 * @param in the setting
 */
public record Fixed(String part, Member of, Member to, Length between, Fastening by, Setting in)
        implements Question<Fixed.Held> {
    public static final Limits BETWEEN = new Limits("width between the outermost fixings", 0.005, 3, "m");

    public static final Citation SOURCE = Citation.of("own", "two parts that move and what holds them", Basis.DERIVED);
    static final Citation GLUED_WIDTH = Citation.of(
            "common-practice", "glue across the grain: 3 in of width safe, 4 in at most", Basis.COMMON_PRACTICE);
    static final Citation LADDER =
            Citation.of("museum-strain", "across the grain 0.004 yields, from 0.010 it breaks", Basis.MEMORY);
    static final Citation UNKNOWN_WOOD =
            Citation.of("own", "0.0012 of strain where the strength across the grain is not known", Basis.JUDGEMENT);
    static final Citation ONE_LOT =
            Citation.of("own", "parts of one wood that lie alike count as of one lot", Basis.JUDGEMENT);

    /** Widths that carry glue across the grain, in inches as the trade says them. */
    static final TwoLimits TRADE = new TwoLimits(3 * Length.METRES_PER_INCH, 4 * Length.METRES_PER_INCH);

    /** Strain across the grain. */
    static final TwoLimits STRAIN = new TwoLimits(0.004, 0.010);

    private static final int TOWARDS = 0; // the checks of Moves
    private static final int AWAY = 1;
    private static final int STRAIN_BETWEEN = 2;

    /** No wood of our tables whose strength and stiffness are known reaches its limit below this strain. */
    static final double SURE_FOR_ANY_WOOD = 0.0012;

    private static final double HARDLY_APART = 0.002; // judgement: half a millimetre in ten inches

    public Fixed {
        BETWEEN.check(between);
        if (by instanceof Glued glued && glued.width().compareTo(between) > 0) {
            throw new IllegalArgumentException("the glued width must not be wider than the joint");
        }
    }

    /**
     * The joint in numbers.
     *
     * @param atDry how much longer the second part has become than the first, over the width between the fixings, from the day to the dry
     *     end
     * @param atDamp the same at the damp end
     * @param towards how far the farthest screw comes back towards the fixed place
     * @param away how far it goes away from it
     * @param free strain between the parts after a whole drying, if nothing held them
     * @param strain held back in the wood
     * @param stress across the grain; empty if the wood's strength or stiffness is not known, or nothing is held
     * @param limit the most it may be; empty likewise
     */
    public record Held(
            Length atDry,
            Length atDamp,
            Length towards,
            Length away,
            double free,
            double strain,
            OptionalDouble stress,
            OptionalDouble limit,
            List<Check> checks)
            implements Answer {
        public Held {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return year().spreads(part);
    }

    @Override
    public Model<Held> model() {
        JointYear year = year();
        Optional<Slot> slot =
                by instanceof SlottedScrews screws ? Optional.of(slotAt(screws, arm(), worst())) : Optional.empty();
        return draw -> held(year.at(draw), slot);
    }

    private Held held(JointYear.Apart apart, Optional<Slot> slot) {
        double arm = arm();
        double left = heldBack(apart.strain());
        Optional<Holdable> stands = holdable(apart);
        OptionalDouble stress = stands.isPresent() && left > 0
                ? OptionalDouble.of(
                        RestraintStress.stress(relaxation(), stands.get().elasticity(), left, 0))
                : OptionalDouble.empty();
        double w = between.metres();
        OptionalDouble limit =
                stress.isPresent() ? OptionalDouble.of(stands.get().limit()) : OptionalDouble.empty();
        return new Held(
                new Length(w * apart.atDry()),
                new Length(w * apart.atDamp()),
                new Length(arm * apart.towards()),
                new Length(arm * apart.away()),
                apart.strain(),
                left,
                stress,
                limit,
                checks(apart, slot, left, stress, limit));
    }

    private List<Check> checks(
            JointYear.Apart apart, Optional<Slot> slot, double left, OptionalDouble stress, OptionalDouble limit) {
        if (by instanceof Glued glued) {
            double trade = TRADE.used(glued.width().metres());
            return List.of(Check.of(
                    "glue across the grain: how much of its limits is used",
                    Math.min(trade, gluedStrainUsed(left, stress, limit)),
                    1,
                    Dimension.RATIO));
        }
        List<Check> checks = new ArrayList<>();
        if (by instanceof SlottedScrews screws) {
            Slot played = slot.orElseThrow();
            double arm = arm();
            checks.add(Check.of(
                    "screw coming towards the fixed place, against its room in the slot",
                    arm * apart.towards(),
                    played.roomTowards(screws.diameter()).metres(),
                    Dimension.LENGTH));
            checks.add(Check.of(
                    "screw going away from the fixed place, against its room in the slot",
                    arm * apart.away(),
                    played.roomAway(screws.diameter()).metres(),
                    Dimension.LENGTH));
            return checks;
        }
        checks.add(STRAIN.check("strain held back across the grain", left));
        if (by instanceof Pinned pinned && pinned.room() != null) {
            checks.add(Check.of(
                    "growth of the free end, against the room it has",
                    arm() * apart.towards(),
                    pinned.room().metres(),
                    Dimension.LENGTH));
        }
        if (by instanceof TightScrews && strengthKnown() && liesAcross()) {
            checks.add(Check.of(
                    "tension across the grain, against what the wood stands",
                    stress.orElse(0),
                    limit.orElse(1),
                    Dimension.STRESS));
        }
        return checks;
    }

    /** Glue does not slip: what is wider than the trade glues must stay below the strain that does no harm, and its stress. */
    private double gluedStrainUsed(double strain, OptionalDouble stress, OptionalDouble limit) {
        return stress.isPresent()
                ? Math.max(strain / STRAIN.sure(), stress.getAsDouble() / limit.orElseThrow())
                : strain / (strengthKnown() ? STRAIN.sure() : SURE_FOR_ANY_WOOD);
    }

    private double heldBack(double free) {
        if (by instanceof TightScrews screws) {
            return FastenerSlip.strainLeft(free, between.metres(), screws.slip().metres());
        }
        return by instanceof Glued ? free : 0;
    }

    /** How far the farthest point that moves lies from the one that stays [m]. */
    double arm() {
        return place().arm(between.metres());
    }

    /** Where the parts stay put to each other. */
    FixedAt place() {
        if (by instanceof SlottedScrews screws) {
            return screws.at();
        }
        return by instanceof Pinned pinned ? pinned.at() : FixedAt.MIDDLE;
    }

    /** The slot of a screw so far [m] from the fixed place. */
    Slot slotAt(SlottedScrews screws, double distance, Worst worst) {
        double towards = distance * worst.towards();
        double away = distance * worst.away();
        Length given = screws.slot();
        return given == null
                ? Slot.planned(screws.diameter(), towards, away, in.rule())
                : Slot.given(given, screws.diameter(), towards, away);
    }

    /**
     * The free movements of the two parts, each at its own likely worst, over the width.
     *
     * @param towards how far a screw comes back towards the fixed place [ratio]
     * @param away how far it goes away from it [ratio]
     * @param strain between the parts after a whole drying [ratio]
     */
    record Worst(double towards, double away, double strain) {
        /** Whether hardly anything shows however the two are fixed. */
        boolean moveTogether() {
            return strain <= HARDLY_APART;
        }
    }

    Worst worst() {
        return new Worst(worst(TOWARDS), worst(AWAY), worst(STRAIN_BETWEEN));
    }

    private double worst(int which) {
        JointYear year = year();
        Model<Moves> moves = draw -> new Moves(year.at(draw));
        Draw worst = Reliability.worst(moves, spreads(), which, in.deviations());
        return moves.at(worst).checks().get(which).demand();
    }

    /** The bare movements, each against nothing, so that their likely worst can be searched for. */
    private record Moves(JointYear.Apart apart) implements Answer {
        @Override
        public List<Check> checks() {
            return List.of(
                    Check.of("towards", apart.towards(), 0, Dimension.RATIO),
                    Check.of("away", apart.away(), 0, Dimension.RATIO),
                    Check.of("strain", apart.strain(), 0, Dimension.RATIO));
        }
    }

    /** What the part that would shrink more stands; empty if that is not known, or it lies along its grain or is a sheet. */
    private Optional<Holdable> holdable(JointYear.Apart apart) {
        Member shrinks = apart.firstShrinksMore() ? of : to;
        return strengthKnown() && shrinks instanceof Member.Across across ? across.holdable() : Optional.empty();
    }

    /** Whether the strength of every part that lies across its grain is known. */
    boolean strengthKnown() {
        return known(of) && known(to);
    }

    /** Whether either part can be split along its grain by this joint. */
    boolean liesAcross() {
        return of instanceof Member.Across || to instanceof Member.Across;
    }

    private static boolean known(Member member) {
        return !(member instanceof Member.Across across) || across.holdable().isPresent();
    }

    /** Stock that comes in damper than the room ever is dries fast in its first heating season. */
    double relaxation() {
        boolean damp = !in.day().known()
                || in.day().estimate().expected() > in.year().damp().expected();
        return damp ? RestraintStress.FIRST_SEASON : RestraintStress.SEASONAL;
    }

    private JointYear year() {
        return new JointYear(of, to, in);
    }

    boolean isOneLot() {
        return year().isOneLot();
    }

    /** Nothing is missing and every check holds at its likely worst. */
    boolean holds() {
        return missing().isEmpty()
                && Reliability.outcomes(this, in.deviations()).stream()
                        .allMatch(o -> o.planned().holds());
    }

    /** Screws that are tight ask for a strength, unless hardly anything is held back. */
    List<Missing> missing() {
        boolean matters =
                by instanceof TightScrews && !strengthKnown() && heldBack(worst(STRAIN_BETWEEN)) > SURE_FOR_ANY_WOOD;
        return matters
                ? List.of(new Missing(
                        "how stiff and strong this wood is across its grain",
                        "slot the screws, or choose a wood whose tension across the grain and elastic ratios are in the"
                                + " tables"))
                : List.of();
    }

    @Override
    public List<Finding> findings() {
        return List.of(new FixedWords(this).finding());
    }

    /** The same two parts, fixed otherwise. */
    public Fixed by(Fastening other) {
        return new Fixed(part, of, to, between, other, in);
    }
}
