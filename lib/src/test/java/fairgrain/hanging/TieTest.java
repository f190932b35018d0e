package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.LoadDuration;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What each link of a tie holds, worked out by hand from the printed rules. */
class TieTest {
    private static final double LB = 4.4482216152605;
    private static final double DRY = 0.11;
    private static final Stud SPF = Hung.stud("spruce-pine-fir");
    private static final Rail TOP = Rail.solid("the top rail", 0.55, Length.mm(19), Hung.ANY);
    private static final Masonry BRICK = new Masonry(Masonry.Kind.SOLID);

    /** In the wall so, behind half an inch of board and 1 mm of strap; in the piece No. 8 by 19 mm. */
    private static Tie tie(HangingScrew screw, double lengthIn, Stud stud, Rail member, int count) {
        return new Tie(
                count,
                Length.mm(1100),
                Optional.of(Force.newtons(900)),
                screw,
                Length.inches(lengthIn),
                stud,
                List.of(new Layer("board", Length.mm(12.7))),
                Hung.screw("wood-screw-8"),
                Length.mm(19),
                member);
    }

    private static Tie ten(double lengthIn, Stud stud) {
        return tie(Hung.screw("wood-screw-10"), lengthIn, stud, TOP, 2);
    }

    private static DeclaredAnchor anchor(Masonry.Kind in) {
        return new DeclaredAnchor(
                "anchor",
                Length.mm(8),
                Length.mm(20),
                Force.newtons(2000),
                Force.newtons(1500),
                DeclaredScrew.Given.ULTIMATE,
                false,
                4,
                in,
                Length.mm(50),
                Length.mm(80),
                Length.mm(15));
    }

    /** No. 10 by 3 in, 0.66 of it thread: 2850 · 0.42² · 0.19 lb/in on 1.98 in; 0.9 for good, 1.6 for ten minutes. */
    @Test
    void aWoodScrewHoldsByItsThreadInTheStud() {
        double reference = 2850 * 0.42 * 0.42 * 0.19 * 1.98 * LB;
        Tie tie = ten(3, SPF);
        assertThat(tie.wall(DRY, LoadDuration.PERMANENT)).isCloseTo(0.9 * reference, within(1e-6));
        assertThat(tie.wall(DRY, LoadDuration.TEN_MINUTES)).isCloseTo(1.6 * reference, within(1e-6));
        assertThat(tie.wall(0.20, LoadDuration.TEN_MINUTES))
                .as("in wet wood")
                .isCloseTo(0.7 * 1.6 * reference, within(1e-6));
        assertThat(tie.depth().toMm()).isCloseTo(76.2 - 12.7 - 1, within(1e-9));
        assertThat(tie.leastDepth().toMm()).isCloseTo(6 * 0.19 * 25.4, within(1e-9));
        // 1 in: 11.3 mm of it past board and strap, all of that thread
        assertThat(ten(1, SPF).wall(DRY, LoadDuration.PERMANENT))
                .isCloseTo(0.9 * reference / 1.98 * (25.4 - 13.7) / 25.4, within(1e-6));
        assertThat(ten(0.5, SPF).depth()).isEqualTo(Length.ZERO);
        assertThat(ten(0.5, SPF).wall(DRY, LoadDuration.PERMANENT)).isZero();
    }

    /** Half of 3 in is thread, the tip of 0.1562 in left out: 1800 · 0.42^1.5 · 0.25^0.75 lb/in. */
    @Test
    void aLagScrewHoldsByItsThreadWithoutTheTip() {
        Tie tie = tie(Hung.screw("lag-screw-1-4"), 3, SPF, TOP, 2);
        double reference = 1800 * Math.pow(0.42, 1.5) * Math.pow(0.25, 0.75) * (1.5 - 0.1562) * LB;
        assertThat(tie.wall(DRY, LoadDuration.PERMANENT)).isCloseTo(0.9 * reference, within(1e-6));
        assertThat(tie.leastDepth().toMm()).isCloseTo(4 * 6.35, within(1e-9));
    }

    /** Half of 80 000 psi on the root of 0.152 in, 726 lb: less than 1.6 · 2850 · 0.19 · 1.98 lb of the thread. */
    @Test
    void inVeryDenseWoodTheScrewItselfIsTheLimit() {
        WoodStud dense = ((WoodStud) SPF).specificGravity(1);
        double steel = 0.5 * 80_000 * Math.PI / 4 * 0.152 * 0.152 * LB;
        assertThat(ten(3, dense).wall(DRY, LoadDuration.TEN_MINUTES)).isCloseTo(steel, within(1e-3));
    }

    /** The thread begins 25.9 mm in and the panel ends at 31.7 mm: 0.75 · 15 700 · 0.42² · 0.19 on 5.8 mm, 1/5.5 of the mean. */
    @Test
    void plywoodHoldsByItsThickness() {
        Backing panel = new Backing("plywood", 0.42, Length.mm(18), Hung.ANY);
        double reference = 0.75 * 15_700 * 0.42 * 0.42 * 0.19 * (31.7 - 0.34 * 76.2) / 25.4 / 5.5 * LB;
        assertThat(ten(3, panel).wall(DRY, LoadDuration.PERMANENT)).isCloseTo(0.9 * reference, within(1e-6));
        Tie through = tie(Hung.screw("lag-screw-1-4"), 6, panel, TOP, 2);
        assertThat(through.wall(DRY, LoadDuration.PERMANENT))
                .as("its thread has gone through")
                .isZero();
    }

    /** 0.85 t d F / 3, for however long; three threads and the drill point behind the sheet. */
    @Test
    void aSteelStudHoldsByItsSheet() {
        Tie tie = ten(3, Hung.stud("steel-stud-54-mil"));
        double holds = 0.85 * 0.001437 * 0.19 * 0.0254 * 310.2e6 / 3;
        assertThat(tie.wall(DRY, LoadDuration.PERMANENT)).isCloseTo(holds, within(1e-6));
        assertThat(tie.wall(DRY, LoadDuration.TEN_MINUTES)).isCloseTo(holds, within(1e-6));
        assertThat(tie.leastDepth().toMm()).isCloseTo(11.437, within(1e-9));
    }

    @Test
    void declaredValuesAreDividedAndGainNothing() {
        Tie anchored = tie(anchor(Masonry.Kind.SOLID), 3, BRICK, TOP, 2);
        assertThat(anchored.wall(DRY, LoadDuration.TEN_MINUTES)).isCloseTo(500, within(1e-9));
        assertThat(anchored.leastDepth()).isEqualTo(Length.mm(50));
        DeclaredScrew declared = new DeclaredScrew(
                "a screw",
                Length.mm(5),
                Force.newtons(2200),
                Force.newtons(1100),
                Optional.empty(),
                DeclaredScrew.Given.ULTIMATE,
                5.5,
                0.42,
                Optional.empty(),
                Length.ZERO);
        assertThat(tie(declared, 3, SPF, TOP, 2).wall(DRY, LoadDuration.TEN_MINUTES))
                .isCloseTo(400, within(1e-9));
        assertThat(tie(declared, 3, SPF, TOP, 2).wall(0.20, LoadDuration.TEN_MINUTES))
                .isCloseTo(280, within(1e-9));
    }

    /** No. 8 by 19 mm through 1 mm of strap: 12.54 mm of thread in the piece, solid or of plywood. */
    @Test
    void thePieceHoldsTheOtherEndOfTheStrap() {
        double solid = 2850 * 0.55 * 0.55 * 0.164 * 12.54 / 25.4 * LB;
        assertThat(ten(3, SPF).piece(DRY, LoadDuration.PERMANENT)).isCloseTo(0.9 * solid, within(1e-6));
        Rail plywood = new Rail(
                "the plywood back",
                Rail.Kind.PLYWOOD,
                0.55,
                Length.mm(19),
                Optional.empty(),
                Optional.empty(),
                Rail.Held.BOTH_EDGES,
                OptionalDouble.empty(),
                Hung.ANY);
        double panel = 0.75 * 15_700 * 0.55 * 0.55 * 0.164 * 12.54 / 25.4 / 5.5 * LB;
        assertThat(tie(Hung.screw("wood-screw-10"), 3, SPF, plywood, 2).piece(DRY, LoadDuration.PERMANENT))
                .isCloseTo(0.9 * panel, within(1e-6));
    }

    private static TiedBack chest(Tie tie, OptionalDouble earthquake) {
        StandingPiece piece =
                new StandingPiece("chest", 40, Length.mm(450), Length.mm(1200), Length.mm(20), 15, Length.mm(350));
        return new TiedBack(piece, tie, 1.5, earthquake, Hung.IN);
    }

    private static double demand(TiedBack asked, String of) {
        return asked.answer().checks().stream()
                .filter(check ->
                        check.what().equals("pull on a tie, " + of + ", against what its screw in the wall holds"))
                .mapToDouble(Check::demand)
                .findFirst()
                .orElseThrow();
    }

    /** What stands open tips with 15 kg at 195 mm, a child with 400.5 N at 370 mm; 36 kg at 205 mm stay. */
    @Test
    void halfOfTheTiesTakeTheChildAndAllOfThemTheRest() {
        double g = 9.80665;
        double child = (15 * g * 0.195 + 400.5 * 0.370 - 36 * g * 0.205) / 1.1;
        for (int count = 1; count <= 5; count++) {
            Tie tie = tie(Hung.screw("wood-screw-10"), 3, SPF, TOP, count);
            int take = count < 4 ? 1 : 2;
            assertThat(demand(chest(tie, OptionalDouble.empty()), "child on the front edge"))
                    .as(count + " ties")
                    .isCloseTo(child / take, within(1e-9));
        }
        // half the weight of piece and drawers, outward at 600 mm
        double shaken = (15 * g * 0.195 + 0.5 * 55 * g * 0.6 - 36 * g * 0.205) / 1.1;
        TiedBack quake = chest(tie(Hung.screw("wood-screw-10"), 3, SPF, TOP, 3), OptionalDouble.of(0.5));
        assertThat(demand(quake, "earthquake")).isCloseTo(shaken / 3, within(1e-9));
        assertThat(demand(quake, "everything open")).as("it stands by itself").isZero();
        StandingPiece light =
                new StandingPiece("chest", 10, Length.mm(450), Length.mm(1200), Length.mm(20), 30, Length.mm(350));
        TiedBack open = new TiedBack(light, quake.tie(), 1.5, OptionalDouble.empty(), Hung.IN);
        assertThat(demand(open, "everything open")).isCloseTo((30 * g * 0.195 - 9 * g * 0.205) / 1.1 / 3, within(1e-9));
    }

    @Test
    void whatIsNotKnownOfAWallIsAskedFor() {
        Finding thin = chest(ten(3, Hung.stud("steel-stud-30-mil")), OptionalDouble.empty())
                .findings()
                .get(0);
        assertThat(thin.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(thin.missing())
                .containsExactly(new Missing(
                        "whether so thin a steel stud bends or crushes, and stays in its track",
                        "tie it to wood blocking or a plywood backing, and enter that"));
        assertThat(chest(ten(3, Hung.stud("steel-stud-33-mil")), OptionalDouble.empty())
                        .findings()
                        .get(0)
                        .missing())
                .as("33 mil is thick enough")
                .isEmpty();
        Tie mixed = tie(anchor(Masonry.Kind.CONCRETE), 3, BRICK, TOP, 2);
        assertThat(chest(mixed, OptionalDouble.of(0.2)).findings().get(0).missing())
                .containsExactly(
                        new Missing(
                                "what the anchor holds in solid masonry",
                                "its values are for concrete: ask its maker for values in solid masonry"),
                        new Missing(
                                "whether the anchor holds in cracked walls in an earthquake",
                                "have a licensed professional choose the anchors"));
        Tie right = tie(anchor(Masonry.Kind.SOLID), 3, BRICK, TOP, 2);
        assertThat(chest(right, OptionalDouble.empty()).findings().get(0).missing())
                .isEmpty();
        Rail board = Hung.PARTICLEBOARD;
        TiedBack inBoard = chest(tie(Hung.screw("wood-screw-10"), 3, SPF, board, 2), OptionalDouble.empty());
        assertThat(inBoard.findings().get(0).missing())
                .containsExactly(new Missing(
                        "what a screw holds in particleboard when it is jerked",
                        "fix the tie to solid wood or to plywood"));
        assertThat(inBoard.answer().checks()).noneMatch(check -> check.what().contains("in the piece"));
    }

    @Test
    void itTellsWhatItTakesAndCautions() {
        Finding finding = chest(ten(3, SPF), OptionalDouble.empty()).findings().get(0);
        assertThat(finding.cautions())
                .containsExactlyInAnyOrder(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.CHILDREN,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD);
        assertThat(finding.notes())
                .anyMatch(note -> note.sentence()
                        .equals("A tie is for a slip, not for climbing: drawers that lock one another do more."));
        assertThat(finding.sizes())
                .anyMatch(size -> size.what().equals("ties above the floor")
                        && size.value().equals(Length.mm(1100)));
    }

    @Test
    void moreTiesMendWhatOneCannotHold() {
        Tie weak = tie(Hung.screw("wood-screw-10"), 4, SPF, TOP, 1).count(1);
        Finding finding = chest(weak, OptionalDouble.of(2)).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).hasSize(1);
        assertThat(finding.remedies().get(0).words().sentence()).isEqualTo("Use {} ties, each into a stud of its own.");
        TiedBack then = (TiedBack) finding.remedies().get(0).then();
        assertThat(then.answer().checks()).allMatch(Check::holds);
        TiedBack one = new TiedBack(
                then.piece(), then.tie().count(then.tie().count() - 1), 1.5, OptionalDouble.of(2), Hung.IN);
        assertThat(one.answer().checks()).as("one fewer does not").anyMatch(check -> !check.holds());
    }

    @Test
    void whatIsNoTieIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tie(Hung.screw("wood-screw-10"), 3, BRICK, TOP, 2))
                .withMessage("masonry takes anchors with values of their maker, and nothing else takes them");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> tie(anchor(Masonry.Kind.SOLID), 3, SPF, TOP, 2))
                .withMessage("masonry takes anchors with values of their maker, and nothing else takes them");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> ten(3, SPF).count(0))
                .withMessage("number of ties must be from 1 to 12 ties, but was 0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new StandingPiece(
                        "chest", 40, Length.mm(450), Length.mm(1200), Length.mm(300), 15, Length.mm(350)))
                .withMessage(
                        "front feet behind the front must be from 0 to 0.225 m, less than half its depth, but was 0.3");
    }
}
