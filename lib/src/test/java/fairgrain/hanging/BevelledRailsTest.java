package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** A case on two bevelled strips. */
class BevelledRailsTest {
    private static final LongGrain STRONG = LongGrain.of(100e6, 13e6);

    private static Rail strip(double thick, double depth, double screwsUp) {
        return new Rail(
                "a strip",
                Rail.Kind.SOLID,
                0.6,
                Length.mm(thick),
                Optional.of(Length.mm(depth)),
                Optional.of(Length.mm(screwsUp)),
                Rail.Held.BOTH_EDGES,
                OptionalDouble.of(6e6),
                STRONG,
                Hung.ANY);
    }

    /** Screws from inside, through 19 mm of a rail in the case. */
    private static BevelledPair pair(double length, BevelledPair.Bearing bearing, Optional<Boolean> stop) {
        CaseScrews screws = new CaseScrews(
                10,
                Hung.screw("wood-screw-8"),
                Length.mm(length),
                Length.mm(40),
                CaseScrews.Driven.FROM_INSIDE,
                Rail.solid("the rail in the case", 0.6, Length.mm(19), Hung.ANY));
        return new BevelledPair(Math.toRadians(45), Length.mm(69.5), screws, bearing, stop, Optional.of(Length.mm(40)));
    }

    private static Hanging hanging(double kg, Rail strip, double high, LoadCases cases) {
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("cabinet", 25, 25, 0.165),
                new HungWeight.Item("contents", kg, kg, 0.150, 0, OptionalDouble.empty(), HungWeight.Stays.NOT_YET)));
        Fixing fixing = new Fixing(
                Hung.screw("wood-screw-10"),
                Length.inches(3),
                new Row(Length.mm(high), 2),
                Hung.at(94, 500, 906),
                strip);
        return new Hanging(
                        "cabinet",
                        hung,
                        new Cabinet(Length.mm(1000), Optional.of(Length.mm(300)), Length.mm(18), List.of()),
                        fixing,
                        Hung.stud("spruce-pine-fir"),
                        List.of(),
                        Hung.IN)
                .cases(cases);
    }

    /** Strips of 19 mm and 45 degrees, the bevel 700 mm up, 70 mm above the heel. */
    static BevelledRails thin(double kg, double screwsUp, BevelledPair.Bearing bearing) {
        return new BevelledRails(
                hanging(kg, strip(19, 79.5, screwsUp), 630 + screwsUp, LoadCases.ALWAYS),
                pair(38, bearing, Optional.of(true)));
    }

    /** Strips of 32 mm, deep enough for the bevel, their screws near it. */
    static BevelledRails thick(double kg, BevelledPair.Bearing bearing, Optional<Boolean> stop, LoadCases cases) {
        BevelledPair pair = pair(51, bearing, stop);
        return new BevelledRails(hanging(kg, strip(32, 100, 55), 655, cases), pair.caseDepth(Length.mm(90)));
    }

    static BevelledRails thick(double kg) {
        return thick(kg, BevelledPair.Bearing.SPACER, Optional.of(true), LoadCases.ALWAYS);
    }

    static Finding finding(BevelledRails rails) {
        return rails.findings().get(0);
    }

    private static Check check(BevelledRails rails, String what) {
        return rails.answer().checks().stream()
                .filter(c -> c.what().startsWith(what))
                .findFirst()
                .orElseThrow();
    }

    /** Worked by hand: V 795.3 N, M 138.09 N·m with the strip; H_need 192, T_strip 1580, T_cab 477 N. */
    @Test
    void agreesWithTheHandCalculation() {
        BevelledRails.Held held = thin(56.1, 40, BevelledPair.Bearing.SPACER).answer();
        assertThat(held.needed().newtons()).isCloseTo(192, within(0.5));
        assertThat(held.wedge().newtons()).isCloseTo(795.3, within(0.1));
        assertThat(held.wallPull().newtons()).isCloseTo(1580, within(5.0));
        assertThat(held.casePull().newtons()).isCloseTo(477, within(0.5));
    }

    @Test
    void withARecessedBackTheCaseStripIsPulledByTheWholeBevel() {
        BevelledRails.Held held =
                thin(56.1, 40, BevelledPair.Bearing.RECESSED_BACK).answer();
        assertThat(held.casePull().newtons()).isCloseTo(1380, within(5.0));
        // (122.98 - 795.32 * 0.0095) / 0.68
        assertThat(held.needed().newtons()).isCloseTo(169.7, within(0.1));
    }

    @Test
    void onlyAStripThatStandsOffAsksForASpacer() {
        assertThat(finding(thick(5)).sizes()).anyMatch(size -> size.what().startsWith("spacer at the bottom"));
        assertThat(finding(thick(5, BevelledPair.Bearing.RECESSED_BACK, Optional.of(true), LoadCases.ALWAYS))
                        .sizes())
                .noneMatch(size -> size.what().startsWith("spacer at the bottom"));
    }

    @Test
    void aLightCaseOnThickStripsHolds() {
        assertThat(finding(thick(5)).outcomes())
                .filteredOn(o -> !o.planned().holds())
                .isEmpty();
        assertThat(finding(thick(5)).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    @Test
    void theWorkedCaseFailsOnThinStripsAcrossTheirGrain() {
        Check across = check(thin(56.1, 40, BevelledPair.Bearing.SPACER), "bending of the wall strip across its grain");
        // 5/8 of the pull at the middle stud, 30 mm from bevel to screws, 68.2 mm of strip, as of a head of 8.2 mm
        assertThat(across.demand()).isBetween(2e6, 6e6);
        assertThat(across.holds()).isFalse();
    }

    @Test
    void everyPartOfTheStripsIsChecked() {
        assertThat(thick(5).answer().checks())
                .extracting(Check::what)
                .contains(
                        "bending of the wall strip across its grain at a stud, against what is allowed for good",
                        "rolling shear at the feather edge of the wall strip, against what is allowed for good",
                        "bending of the wall strip from stud to stud, against what is allowed for good",
                        "twist of the wall strip from stud to stud, against what is allowed for good",
                        "bending of the case strip across its grain at a screw, against what is allowed for good",
                        "rolling shear at the feather edge of the case strip, against what is allowed for good",
                        "bending of the case strip from screw to screw, against what is allowed for good",
                        "use of the hardest worked screw of the case strip, standing, against all of it",
                        "least depth of the screws of the case strip, against the depth reached",
                        "screws of the case strip, against the wood that they go through");
    }

    @Test
    void anEmptyCaseIsTriedForItsHookToo() {
        BevelledRails child =
                thick(30, BevelledPair.Bearing.SPACER, Optional.of(true), LoadCases.of(LoadCase.CHILD_CLIMBING));
        Check full =
                check(child, "pull that keeps it on the wall, against what the bevel draws in without friction, child");
        Check empty = child.answer().checks().stream()
                .filter(c -> c.what().endsWith("child climbing, nothing in it"))
                .findFirst()
                .orElseThrow();
        assertThat(empty.factor()).isLessThan(full.factor());
    }

    @Test
    void whatIsNotKnownIsNeverSaidToHold() {
        assertThat(finding(thick(5, BevelledPair.Bearing.NOTHING, Optional.of(true), LoadCases.ALWAYS))
                        .missing())
                .containsExactly(new Missing(
                        "what bears on the wall at the bottom",
                        "put a spacer as thick as the strip behind the lower edge, or recess the back by as much, and"
                                + " enter 'at the bottom'"));
        assertThat(finding(thick(5, BevelledPair.Bearing.SPACER, Optional.empty(), LoadCases.ALWAYS))
                        .missing())
                .extracting(Missing::what)
                .containsExactly("whether anything keeps it from being lifted off");
        LoadCases shaken = new LoadCases(List.of(), 1.5, OptionalDouble.of(0.3));
        assertThat(finding(thick(5, BevelledPair.Bearing.SPACER, Optional.of(false), shaken))
                        .missing())
                .extracting(Missing::what)
                .containsExactly("what keeps it from being lifted off in an earthquake");
        assertThat(finding(thick(5, BevelledPair.Bearing.SPACER, Optional.of(true), shaken))
                        .verdict())
                .isEqualTo(Verdict.NOT_JUDGED);
        BevelledRails known = thick(5);
        Rail weak = known.hanging().fixing().rail().along(LongGrain.UNKNOWN);
        Finding unknown = finding(known.fixing(known.hanging().fixing().rail(weak)));
        assertThat(unknown.missing())
                .extracting(Missing::what)
                .containsExactly("how strong the strips are along and across their grain");
        CaseScrews plain = known.pair().screws();
        CaseScrews board = new CaseScrews(
                10, plain.screw(), Length.mm(51), plain.belowTop(), CaseScrews.Driven.FROM_BEHIND, Hung.PARTICLEBOARD);
        assertThat(finding(known.pair(known.pair().screws(board))).missing())
                .extracting(Missing::what)
                .contains("what a screw loaded sideways holds in particleboard");
    }

    /** 100 N on 0.300 + 0.032 - 0.016 m against 25 kg at 0.165 + 0.016 m. */
    @Test
    void withoutAStopAPushUpAtTheFrontMustNotTurnTheEmptyCaseUp() {
        BevelledRails free = thick(5, BevelledPair.Bearing.SPACER, Optional.of(false), LoadCases.ALWAYS);
        Check turn = check(free, "turning by a push up");
        assertThat(turn.demand()).isCloseTo(31.6, within(1e-9));
        assertThat(turn.capacity()).isCloseTo(25 * 9.80665 * 0.181, within(1e-6));
        assertThat(turn.holds()).isTrue();
    }

    @Test
    void aHeavyCaseFailsAndEveryCureAskedAgainHolds() {
        for (double kg : new double[] {15, 25, 40}) {
            for (BevelledRails asked : List.of(thin(kg, 50, BevelledPair.Bearing.SPACER), thick(kg * 2))) {
                for (Remedy remedy : finding(asked).remedies()) {
                    assertThat(remedy.then().findings().get(0).outcomes())
                            .as(remedy.words().sentence())
                            .extracting(Outcome::planned)
                            .allMatch(Check::holds);
                }
            }
        }
        assertThat(finding(thin(56.1, 40, BevelledPair.Bearing.SPACER)).verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(finding(thin(15, 50, BevelledPair.Bearing.SPACER)).remedies())
                .isNotEmpty();
    }

    @Property(tries = 30)
    void screwsHigherInTheStripAreNeverPulledHarder(@ForAll @DoubleRange(min = 20, max = 54) double up) {
        double low =
                thin(30, up, BevelledPair.Bearing.SPACER).answer().wallPull().newtons();
        assertThat(thin(30, up + 5, BevelledPair.Bearing.SPACER)
                        .answer()
                        .wallPull()
                        .newtons())
                .isLessThanOrEqualTo(low);
    }

    @Property(tries = 30)
    void moreWeightIsNeverEasier(@ForAll @DoubleRange(min = 5, max = 100) double kg) {
        List<Check> once = thick(kg).answer().checks();
        List<Check> more = thick(kg + 1).answer().checks();
        for (int i = 0; i < once.size(); i++) {
            assertThat(more.get(i).demand())
                    .as(once.get(i).what())
                    .isGreaterThanOrEqualTo(once.get(i).demand() * (1 - 1e-12));
        }
    }

    @Test
    void whatIsNoPairOfStripsIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> thin(5, 61, BevelledPair.Bearing.SPACER))
                .withMessage("the screws of the wall strip must sit below its bevel");
        BevelledRails good = thick(5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> good.pair(good.pair().caseDepth(Length.mm(60))))
                .withMessage("the screws of the case strip must sit above its bevel");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> good.fixing(good.hanging().fixing().with(new Row(Length.mm(100), 1))))
                .withMessage("the wall strip is held by one row of screws");
    }

    /** Any strips that have room for bevel and screws, any weight, standing anywhere along the case, everybody who may load it. */
    @Property(tries = 150)
    void whateverStripsHaveRoomAreReckonedAndNeverPulledLessThanTheBevelDraws(
            @ForAll @DoubleRange(min = 12, max = 38) double thick,
            @ForAll @DoubleRange(min = 20, max = 70) double degrees,
            @ForAll @DoubleRange(min = 50, max = 250) double depth,
            @ForAll @DoubleRange(min = 0.1, max = 0.9) double screws,
            @ForAll @DoubleRange(min = 1, max = 300) double kg,
            @ForAll @DoubleRange(min = -0.49, max = 0.49) double off) {
        CaseScrews plain = thick(5).pair().screws();
        BevelledPair pair = new BevelledPair(
                Math.toRadians(degrees),
                Length.mm(depth),
                new CaseScrews(
                        8, plain.screw(), plain.length(), Length.mm(20), CaseScrews.Driven.FROM_BEHIND, plain.member()),
                BevelledPair.Bearing.RECESSED_BACK,
                Optional.of(false),
                Optional.empty());
        Rail strip = strip(thick, depth, Math.max(5, screws * (depth - thick * Math.tan(Math.toRadians(degrees)))));
        Assume.that(pair.unfit(strip).isEmpty());
        Hanging like = hanging(5, strip, 655, LoadCases.of(LoadCase.CHILD_CLIMBING, LoadCase.ADULT_LEANING));
        Hanging leaning = like.hung(new HungWeight(List.of(new HungWeight.Item(
                "all of it", kg, 1.3 * kg, 0.15, off, OptionalDouble.empty(), HungWeight.Stays.ON))));
        BevelledRails rails = new BevelledRails(leaning, pair);
        BevelledRails.Held held = rails.answer();
        assertThat(held.wallPull().newtons())
                .isGreaterThanOrEqualTo(held.wedge().newtons());
        assertThat(held.casePull().newtons())
                .isGreaterThanOrEqualTo(held.needed().newtons());
        assertThat(held.checks()).allMatch(c -> c.demand() >= 0);
        BevelledRails middle = new BevelledRails(
                like.hung(new HungWeight(List.of(new HungWeight.Item(
                        "all of it", kg, 1.3 * kg, 0.15, 0, OptionalDouble.empty(), HungWeight.Stays.ON)))),
                pair);
        for (int i = 0; i < held.checks().size(); i++) {
            Check to = held.checks().get(i);
            if (to.what().contains("case strip") && to.what().contains("standing")) {
                assertThat(to.demand())
                        .as("leaning to one side, " + to.what())
                        .isGreaterThanOrEqualTo(middle.answer().checks().get(i).demand() * (1 - 1e-9));
            }
        }
    }
}
