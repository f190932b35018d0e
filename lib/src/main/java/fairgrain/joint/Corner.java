package fairgrain.joint;

import fairgrain.fastener.ScrewSize;
import fairgrain.fastener.UltimateWithdrawal;
import fairgrain.fastener.YieldMargin;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/** How a rail is joined to a stile at a corner of a frame: what moment it carries. */
public sealed interface Corner {
    Limits HEIGHT = new Limits("height of the tenon", 0.005, 0.3, "m");
    Limits LENGTH = new Limits("length of the tenon", 0.003, 0.15, "m");
    Limits THICKNESS = new Limits("thickness of the tenon", 0.002, 0.06, "m");
    Limits DIAMETER = new Limits("diameter of a dowel", 0.004, 0.02, "m");
    Limits DEPTH = new Limits("depth of a dowel in one member", 0.005, 0.1, "m");
    Limits SPACING = new Limits("distance from one to the next", 0.006, 0.3, "m");
    Limits TO_EDGE = new Limits("distance to the edge of the rail", 0.003, 0.2, "m");
    Limits THREAD = new Limits("thread in the stile", 0.003, 0.06, "m");
    /** Between a pocket screw and the groove of the panel. */
    Length CLEAR_OF_GROOVE = Length.mm(3); // judgement

    Limits PLUG = new Limits("wood under the head", 0.003, 0.05, "m");

    Citation WOODWORK_STANDARD = Citation.of("aws2009", "Appendix B and 4.4.6.10", Basis.READ);

    /** Its strength in this wood, the weaker of rail and stile. */
    JointStrength strength(JointWood wood, boolean damp);

    /**
     * A glued tenon in a mortise, plain, haunched or loose: of a haunched one the part that goes deep.
     *
     * @param height along the width of the rail
     * @param length in the mortise; of a loose tenon in the shallower one
     */
    record Tenon(Length height, Length length, Length thickness, Length railThickness) implements Corner {
        private static final double MOST_OF_RAIL = 0.9;

        public Tenon {
            HEIGHT.check(height);
            LENGTH.check(length);
            THICKNESS.check(thickness);
            new Limits(
                            "thickness of the tenon",
                            0.002,
                            MOST_OF_RAIL * railThickness.metres(),
                            "m, no more than nine tenths of the rail")
                    .check(thickness);
        }

        @Override
        public JointStrength strength(JointWood wood, boolean damp) {
            List<String> notes = new ArrayList<>();
            double part = thickness.metres() / railThickness.metres();
            double share = TenonGlueFaces.thicknessShare(part);
            List<Share> shares = new ArrayList<>(List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND));
            if (share < 1) {
                notes.add("The tests had tenons a quarter to half as thick as the rail; this one is outside of that, so"
                        + " less is counted: a thin one breaks off, beside a thick one the cheeks of the mortise"
                        + " split.");
                shares.add(new Share(
                        part < TenonGlueFaces.THINNEST ? "thinner than any tested" : "thicker than any tested",
                        share,
                        TenonGlueFaces.THICKNESS_SOURCE));
            }
            double longness = length.metres() / height.metres();
            if (longness < TenonGlueFaces.SHORTEST || longness > TenonGlueFaces.LONGEST) {
                notes.add("The tests had tenons 0.6 to 1.3 times as long as high; what is beyond is not counted.");
            }
            if (height.metres() > 5 * thickness.metres()) {
                notes.add("Higher than five times its thickness it is better divided in two (common practice).");
            }
            double mean = wood.shear().isPresent()
                    ? TenonGlueFaces.mean(wood.shear().getAsDouble(), height.metres(), length.metres())
                    : 0;
            return new JointStrength(
                    "mortise and tenon",
                    Dimension.MOMENT,
                    mean,
                    mean,
                    shares,
                    shearOf(wood),
                    notes,
                    wood.evidence().and(TenonGlueFaces.SOURCE, TenonGlueFaces.MEAN_SOURCE));
        }
    }

    /**
     * A stub tenon glued in the groove of the panel.
     *
     * @param height along the width of the rail
     * @param length as deep as the groove
     */
    record StubTenon(Length height, Length length) implements Corner {
        public StubTenon {
            HEIGHT.check(height);
            LENGTH.check(length);
        }

        @Override
        public JointStrength strength(JointWood wood, boolean damp) {
            boolean known = wood.shear().isPresent();
            double tau = known ? wood.shear().getAsDouble() : 0;
            return new JointStrength(
                    "stub tenon in the groove",
                    Dimension.MOMENT,
                    known ? TenonGlueFaces.mean(tau, height.metres(), length.metres()) : 0,
                    known ? StubTenonFaces.atMost(tau, height.metres(), length.metres()) : 0,
                    List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND, Share.UNPROVED),
                    shearOf(wood),
                    List.of(
                            "No test of stub tenons could be read: the strength stands between two bounds.",
                            "By a woodwork standard such corners are for frames that something else keeps square."),
                    wood.evidence()
                            .and(
                                    TenonGlueFaces.SOURCE,
                                    TenonGlueFaces.MEAN_SOURCE,
                                    StubTenonFaces.SOURCE,
                                    WOODWORK_STANDARD));
        }
    }

    /**
     * Two dowels or more; the outermost two are counted.
     *
     * @param depth in the shallower member
     * @param spacing between the outermost two
     * @param toEdge from the outermost one to the edge of the rail
     */
    record Dowels(int number, Length diameter, Length depth, Length spacing, Length toEdge) implements Corner {
        private static final double APART = 2.5; // diameters, common practice
        private static final double FROM_EDGE = 1.5;

        public Dowels {
            Require.between("number of dowels", number, 2, 8, "");
            DIAMETER.check(diameter);
            DEPTH.check(depth);
            SPACING.check(spacing);
            TO_EDGE.check(toEdge);
        }

        @Override
        public JointStrength strength(JointWood wood, boolean damp) {
            double pull =
                    GluedDowel.pull(damp ? GluedDowel.BOND_DAMP : GluedDowel.BOND, diameter.metres(), depth.metres());
            double best = wood.shear().isPresent()
                    ? GluedDowel.bestPull(
                            wood.shear().getAsDouble(), wood.shear().getAsDouble(), diameter.metres(), depth.metres())
                    : pull;
            List<String> notes = new ArrayList<>(
                    List.of("The lower bound takes the bond stress of cautious tests and the short arm, the upper one a"
                            + " regression that knows neither the fit nor the glue."));
            if (spacing.metres() / (number - 1) < APART * diameter.metres()
                    || toEdge.metres() < FROM_EDGE * diameter.metres()) {
                notes.add("By common practice dowels stand 2.5 diameters apart and 1.5 from the edge.");
            }
            double low = GluedDowel.moment(pull, spacing.metres());
            return new JointStrength(
                    number + " dowels",
                    Dimension.MOMENT,
                    low,
                    Math.max(low, GluedDowel.mostMoment(best, spacing.metres(), toEdge.metres())),
                    List.of(Share.OF_ALL, Share.FOR_GOOD, Share.BY_HAND),
                    List.of(),
                    notes,
                    wood.evidence().and(GluedDowel.SOURCE, GluedDowel.CHOICE_SOURCE, GluedDowel.REGRESSION_SOURCE));
        }
    }

    /**
     * Two pocket screws.
     *
     * @param thread in the edge of the stile
     * @param spacing between them
     * @param toEdge from the outer one to the edge of the rail
     * @param plug from the floor of the pocket to the end of the rail
     */
    record PocketScrews(ScrewSize screw, Length thread, Length spacing, Length toEdge, Length plug) implements Corner {
        private static final double HARD = 0.5; // where makers change from coarse threads to fine ones

        public PocketScrews {
            THREAD.check(thread);
            SPACING.check(spacing);
            TO_EDGE.check(toEdge);
            PLUG.check(plug);
        }

        @Override
        public JointStrength strength(JointWood wood, boolean damp) {
            List<Missing> missing = new ArrayList<>(shearOf(wood));
            if (wood.atTwelve().isEmpty()) {
                missing.add(wood.densityMissing());
            }
            double pull = missing.isEmpty() ? pull(wood) : 0;
            String kind = wood.atTwelve().orElse(0) >= HARD ? "fine" : "coarse";
            return new JointStrength(
                    "two pocket screws",
                    Dimension.MOMENT,
                    PocketScrewCorner.moment(pull, spacing.metres()),
                    PocketScrewCorner.mostMoment(pull, spacing.metres(), toEdge.metres()),
                    List.of(
                            new Share(
                                    "screws pulled for years, by the code",
                                    1 / YieldMargin.WOOD_SCREW,
                                    UltimateWithdrawal.SOURCE),
                            new Share("loaded for good", 0.9, fairgrain.fastener.LoadDuration.SOURCE)),
                    missing,
                    List.of(
                            "No equation from tests was found for pocket screws: this is an estimate between two"
                                    + " bounds, by the pull of the screws alone; glue on end grain counts nothing.",
                            "A woodwork standard lets pocket screws into stile-and-rail work in its lowest grade"
                                    + " only.",
                            "A " + kind
                                    + " thread is for a wood like this (common practice); drive the last turns by"
                                    + " hand."),
                    wood.evidence()
                            .and(screw.evidence())
                            .and(PocketScrewCorner.SOURCE, UltimateWithdrawal.SOURCE, WOODWORK_STANDARD));
        }

        private double pull(JointWood wood) {
            return Math.min(
                    UltimateWithdrawal.woodScrew(wood.atTwelve().getAsDouble(), screw.diameter(), thread.metres()),
                    PocketScrewCorner.plug(wood.shear().getAsDouble(), plug.metres(), screw.head()));
        }
    }

    /** Biscuits, or glue on the butted end alone. */
    record Aligned(String said) implements Corner {
        @Override
        public JointStrength strength(JointWood wood, boolean damp) {
            return new JointStrength(
                    said,
                    Dimension.MOMENT,
                    0,
                    0,
                    List.of(),
                    List.of(new Missing(
                            "what holds the corner: " + said + " only line it up",
                            "use tenons, dowels or screws, and enter them")),
                    List.of("Glue on end grain counts nothing."),
                    Evidence.of(WOODWORK_STANDARD));
        }
    }

    private static List<Missing> shearOf(JointWood wood) {
        return wood.shear().isPresent() ? List.of() : List.of(wood.shearMissing());
    }
}
