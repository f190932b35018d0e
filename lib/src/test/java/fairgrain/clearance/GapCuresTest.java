package fairgrain.clearance;

import static fairgrain.clearance.Gaps.gap;
import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Remedy;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** What mends a gap, the least change first, and how little of it. */
class GapCuresTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static GapPlan plan(GapFit unset, @Nullable Length narrowest) {
        return new GapPlan(unset, new Fitted(Length.mm(400), Length.ZERO, 2, 1, "make it wide"), "how wide", narrowest);
    }

    private static List<String> words(List<Remedy> cures) {
        return cures.stream().map(cure -> cure.words().sentence()).toList();
    }

    private static GapFit flat(double eachMm) {
        return gap(board(0.04, 0.086), eachMm, 2, Reveal.USUAL, IN);
    }

    private static GapFit quartered(double eachMm, Setting in) {
        Board flat = board(0.04, 0.086);
        Board radial = new Board(flat.wood(), flat.shrinkage(), RingAngle.QUARTERSAWN, flat.thickness());
        return gap(radial, eachMm, 2, Reveal.USUAL, in);
    }

    // Planned

    @Test
    void quartersawnStockComesFirstThenNarrowerMembersThenAWiderGap() {
        assertThat(plan(flat(90), GapCures.NARROWEST).set()).isEmpty();
        assertThat(words(GapCures.of(plan(flat(90), GapCures.NARROWEST))))
                .containsExactly(
                        "Use quartersawn stock for the stiles.",
                        "Make the stiles {} wide.",
                        "Accept a gap of up to {} at its widest.");
        assertThat(words(GapCures.of(plan(flat(90), null))))
                .as("their width is given")
                .containsExactly("Use quartersawn stock for the stiles.", "Accept a gap of up to {} at its widest.");
    }

    @Test
    void whereQuartersawnStockAloneDoesNotDoAWiderGapIsAcceptedWithIt() {
        List<Remedy> cures = GapCures.of(plan(flat(200), null));
        assertThat(words(cures))
                .containsExactly(
                        "Use quartersawn stock for the stiles, and accept a gap of up to {} at its widest.",
                        "Accept a gap of up to {} at its widest.");
        assertThat(cures.get(0).words().numbers().get(0).si())
                .as("a narrower one than without")
                .isLessThan(cures.get(1).words().numbers().get(0).si());
    }

    @Test
    void quartersawnStockAndWhatMovesInItsThicknessAreNotMendedByQuartersawnStock() {
        assertThat(words(GapCures.of(plan(quartered(200, IN), null))))
                .containsExactly("Accept a gap of up to {} at its widest.");
        MovingWood fronts = MovingWood.thick("fronts", Gaps.thick(board(0.086, 0.17), 45), 4);
        GapFit thick = flat(90).moving(fronts);
        assertThat(plan(thick, null).set()).isEmpty();
        assertThat(words(GapCures.of(plan(thick, null)))).containsExactly("Accept a gap of up to {} at its widest.");
    }

    /** In steps of 2 mm, or of an eighth of an inch, and never below 38 mm. */
    @Test
    void membersAreMadeNoNarrowerThanTheyMust() {
        for (ShopRule rule : List.of(ShopRule.MILLIMETRES, ShopRule.INCHES)) {
            Length step = rule.equals(ShopRule.INCHES) ? Length.inches(1 / 8.0) : Length.mm(2);
            Setting in = new Setting(IN.year(), IN.day(), rule, IN.deviations());
            GapPlan asked = plan(gap(board(0.04, 0.086), 90, 2, Reveal.USUAL, in), GapCures.NARROWEST);
            Remedy cure = GapCures.of(asked).get(1);
            GapPlan then = (GapPlan) cure.then();
            Length each = then.unset().moving().each();
            assertThat(cure.words().numbers().get(0)).isEqualTo(each);
            double steps = each.metres() / step.metres();
            assertThat(steps).isCloseTo(Math.rint(steps), within(1e-9));
            assertThat(then.holds()).isTrue();
            for (Length wider = each.plus(step); wider.compareTo(Length.mm(90)) <= 0; wider = wider.plus(step)) {
                assertThat(asked.unset(asked.unset()
                                        .moving(asked.unset().moving().each(wider)))
                                .holds())
                        .as(wider.toString())
                        .isFalse();
            }
        }
    }

    /** Where only members of less than 38 mm would do, none are offered; just 38 mm are. */
    @Test
    void narrowMembersEndWhereTheirJointsNeedRoom() {
        Setting wild = setting(0.08, 0.03, 0.15);
        GapPlan asked = plan(gap(board(0.06, 0.12), 90, 2, Reveal.USUAL, wild), GapCures.NARROWEST);
        assertThat(words(GapCures.of(asked))).noneMatch(cure -> cure.startsWith("Make the stiles"));
        Remedy cure = GapCures.of(plan(flat(90), GapCures.NARROWEST)).get(1);
        Length just = ((GapPlan) cure.then()).unset().moving().each();
        assertThat(words(GapCures.of(plan(flat(90), just)))).contains("Make the stiles {} wide.");
        assertThat(words(GapCures.of(plan(flat(90), just.plus(Length.mm(0.1))))))
                .doesNotContain("Make the stiles {} wide.");
    }

    // Set already

    @Test
    void whatHoldsNeedsNoCure() {
        GapFit fit = flat(40);
        assertThat(GapCures.ofSet(fit.today(GapPlan.window(fit).middle()))).isEmpty();
    }

    /** Planed to the next fifth of a millimetre that will do. */
    @Test
    void aGapThatIsTooNarrowIsPlaned() {
        GapFit fit = flat(40);
        Length least = GapPlan.window(fit).least();
        Remedy cure = GapCures.ofSet(fit.today(least.minus(Length.mm(0.5)))).get(0);
        assertThat(cure.words().sentence()).isEqualTo("Plane it until the gap is {} that day.");
        double planed = cure.words().numbers().get(0).si();
        assertThat(planed).isBetween(least.metres(), least.metres() + 0.0002);
        assertThat(((GapFit) cure.then()).today().metres()).isEqualTo(planed);
    }

    /** Half a millimetre over the widest: as much more is accepted, to the next fifth. */
    @Test
    void aGapThatIsTooWideCanOnlyBeAccepted() {
        GapFit fit = flat(40);
        Length most = GapPlan.window(fit).most();
        Remedy cure = GapCures.ofSet(fit.today(most.plus(Length.mm(0.5)))).get(0);
        assertThat(cure.words().sentence()).isEqualTo("Accept a gap of up to {} at its widest.");
        assertThat(cure.words().numbers().get(0).si()).isBetween(0.003675, 0.003675 + 0.00023);
        assertThat(((GapFit) cure.then()).today()).isEqualTo(most.plus(Length.mm(0.5)));
    }

    @Test
    void woodThatMovesTooMuchIsPlanedAndAWiderGapAccepted() {
        GapFit fit = flat(120).today(Length.mm(1));
        assertThat(words(GapCures.ofSet(fit)))
                .containsExactly("Plane it until the gap is {} that day. Accept a gap of up to {} at its widest.");
    }

    @Test
    void anOverlapThatIsTooSmallCannotBeMendedAndOneThatIsTooLargeIsAccepted() {
        GapFit like = flat(40);
        GapFit small = new GapFit(
                "door", "at the top", GapFit.Kind.OVERLAP, like.moving(), Length.mm(0.6), Reveal.USUAL, null, IN);
        assertThat(small.holds()).isFalse();
        assertThat(GapCures.ofSet(small)).isEmpty();
        GapFit large = small.today(GapPlan.window(small).most().plus(Length.mm(0.5)));
        assertThat(words(GapCures.ofSet(large))).containsExactly("Accept an overlap of up to {} at its widest.");
    }

    /** 40²/600 = 2.667 mm of swing; the gap itself lasts, so it is not planed, though no mark lies below it: the edge is set back by what the gap at the damp end lacks, to a tenth of a millimetre. */
    @Test
    void anEdgeThatCatchesIsSetBackAsFarAsItMust() {
        GapFit like = flat(40);
        Length good = GapPlan.window(like).middle();
        ClosingEdge square = new ClosingEdge(Length.mm(40), Length.mm(300), Length.ZERO);
        GapFit catching = new GapFit(
                "door", "at the closing edge", GapFit.Kind.GAP, like.moving(), good, Reveal.USUAL, square, IN);
        List<Remedy> cures = GapCures.ofSet(catching);
        assertThat(words(cures)).containsExactly("Plane the back of the closing edge {} farther back than the front.");
        Length back = GapPlan.neededSetBack(catching);
        assertThat(cures.get(0).words().numbers().get(0)).isEqualTo(back);
        assertThat(catching.setBack(back).holds()).isTrue();
        assertThat(catching.setBack(back.minus(Length.mm(0.11))).holds()).isFalse();
        // in inches to five thousandths
        GapFit inches = new GapFit(
                "door",
                "at the closing edge",
                GapFit.Kind.GAP,
                like.moving(),
                good,
                Reveal.USUAL,
                square,
                new Setting(IN.year(), IN.day(), ShopRule.INCHES, IN.deviations()));
        double marks = GapPlan.neededSetBack(inches).metres() / (0.005 * 0.0254);
        assertThat(marks).isCloseTo(Math.rint(marks), within(1e-9));
        assertThat(inches.setBack(GapPlan.neededSetBack(inches)).holds()).isTrue();
        assertThat(GapPlan.neededSetBack(inches).metres()).isBetween(back.metres() - 0.00013, back.metres() + 0.00013);
    }

    /** An edge that is set back more than it must stays so, and nothing is said of it. */
    @Test
    void anEdgeThatIsSetBackEnoughStaysAsItIs() {
        GapFit like = flat(40);
        ClosingEdge edge = new ClosingEdge(Length.mm(40), Length.mm(300), Length.mm(3));
        GapFit narrow = new GapFit(
                "door",
                "at the closing edge",
                GapFit.Kind.GAP,
                like.moving(),
                GapPlan.window(like).least().minus(Length.mm(0.3)),
                Reveal.USUAL,
                edge,
                IN);
        List<Remedy> cures = GapCures.ofSet(narrow);
        assertThat(words(cures)).containsExactly("Plane it until the gap is {} that day.");
        assertThat(((GapFit) cures.get(0).then()).setBack(Length.mm(3)))
                .isEqualTo(cures.get(0).then());
    }

    // The plan itself

    /** Where any gap is wanted the least that will do is planned; it is asked of the same wood under the same names. */
    @Test
    void aPlanAsksWhatItsGapAsks() {
        GapFit any = flat(40).wanted(new Reveal(Length.mm(0.5), null, Panels.ANY));
        GapPlan plan = plan(any, null);
        Length least = plan.window().least();
        assertThat(plan.set().orElseThrow().today().metres()).isBetween(least.metres(), least.metres() + 0.0002);
        assertThat(plan.part()).isEqualTo("door");
        assertThat(plan.spreads()).isEqualTo(any.spreads()).isNotEmpty();
        assertThat(plan.answer()).isEqualTo(plan.chosen().answer());
    }

    /** The piece ends on a mark of a fifth of a millimetre; where the nearest one would leave less than the least gap, it is the next. */
    @Test
    void aPieceIsMadeToAMarkThatLeavesTheLeastGap() {
        GapFit any = flat(40).wanted(new Reveal(Length.mm(0.5), null, Panels.ANY));
        ShopRule fine = Fitted.fine(ShopRule.MILLIMETRES);
        Length least = GapPlan.window(any).least();
        // so much more wanted that the least gap lies a hair under a mark
        Length wanted = Length.mm(0.49).plus(fine.up(least).minus(least));
        GapFit close = any.wanted(new Reveal(wanted, null, Panels.ANY));
        Length need = GapPlan.window(close).least();
        for (double opening = 400; opening < 400.2; opening += 0.01) {
            Fitted fitted = new Fitted(Length.mm(opening), Length.ZERO, 1, 1, "make it wide");
            GapFit set = new GapPlan(close, fitted, "how wide", null).set().orElseThrow();
            double size = opening - set.today().toMm();
            assertThat(size / 0.2).as("opening %s", opening).isCloseTo(Math.rint(size / 0.2), within(1e-6));
            assertThat(set.today().metres()).isBetween(need.metres(), need.metres() + 0.0003);
        }
    }
}
