package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Missing;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Edges and spacings: the printed multiples of the diameter, the maker's own where he gives them. */
class FixingPlacesTest {
    private static final WoodStud SPF = (WoodStud) Hung.stud("spruce-pine-fir");
    private static final WoodStud BLOCKING = SPF.asBlocking(Length.mm(140), Length.mm(38));
    private static final String EDGE =
            "least distance from the edge of the stud, against what is left if it is 6 mm off centre";
    private static final String MAKERS_EDGE = "least distance from the edge of the stud by the maker of the screw,"
            + " against what is left if it is 6 mm off centre";
    private static final String IN_A_STUD = "least distance between screws in a stud, against theirs";
    private static final String ALONG = "least distance between anchors along the wall, against theirs";

    private static List<Check> checks(HangingScrew screw, Stud stud, Row row, double... studs) {
        return FixingPlaces.checks(new Fixing(screw, Length.inches(3), row, Hung.at(studs), Hung.RAIL), stud);
    }

    private static Row column(int perStud) {
        return new Row(Length.mm(650), perStud, Optional.of(Length.mm(40)));
    }

    private static void says(Check check, String what, double leastMm, double thereMm) {
        assertThat(check.what()).isEqualTo(what);
        assertThat(check.demand()).isCloseTo(leastMm / 1000, within(1e-9));
        assertThat(check.capacity()).isCloseTo(thereMm / 1000, within(1e-9));
    }

    private static DeclaredScrew declared(double mm, Optional<Length> edge) {
        return new DeclaredScrew(
                "a screw",
                Length.mm(mm),
                Force.newtons(1500),
                Force.newtons(900),
                Optional.of(Force.newtons(1200)),
                DeclaredScrew.Given.ALLOWABLE,
                1,
                0.42,
                edge,
                Length.mm(16));
    }

    private static DeclaredAnchor anchor() {
        return new DeclaredAnchor(
                "anchor",
                Length.mm(8),
                Length.mm(20),
                Force.newtons(2000),
                Force.newtons(1500),
                DeclaredScrew.Given.ALLOWABLE,
                false,
                1,
                Masonry.Kind.SOLID,
                Length.mm(50),
                Length.mm(80),
                Length.mm(15));
    }

    /** Bored: ten diameters along the grain of an upright stud, three across that of blocking and of plywood. */
    @Test
    void woodScrewsInAColumnStandTenDiametersApartAlongTheGrainAndThreeAcrossIt() {
        HangingScrew ten = Hung.screw("wood-screw-10");
        List<Check> upright = checks(ten, SPF, column(2), 200, 606);
        assertThat(upright).hasSize(1);
        says(upright.get(0), IN_A_STUD, 10 * 0.19 * 25.4, 40);
        says(checks(ten, BLOCKING, column(2), 200, 606).get(0), IN_A_STUD, 3 * 0.19 * 25.4, 40);
        Backing panel = new Backing("plywood", 0.42, Length.mm(18), Hung.ANY);
        says(checks(ten, panel, column(2), 200, 606).get(0), IN_A_STUD, 3 * 0.19 * 25.4, 40);
        assertThat(checks(ten, SPF, column(1), 200, 606))
                .as("one screw has no neighbour")
                .isEmpty();
        assertThat(checks(ten, SPF, new Row(Length.mm(650), 2), 200, 606))
                .as("where their distance is not said")
                .isEmpty();
    }

    /** From a quarter inch: 1.5 diameters to the edge of an upright stud, 4 to the loaded edge of blocking; 4 between. */
    @Test
    void lagScrewsKeepFromTheEdgeAndFromEachOther() {
        HangingScrew lag = Hung.screw("lag-screw-1-4");
        List<Check> upright = checks(lag, SPF, column(2), 200, 606);
        assertThat(upright).hasSize(2);
        says(upright.get(0), EDGE, 1.5 * 6.35, 13);
        says(upright.get(1), IN_A_STUD, 4 * 6.35, 40);
        says(checks(lag, BLOCKING, column(2), 200, 606).get(0), EDGE, 4 * 6.35, 64);
        // a declared screw of just a quarter inch is such a one
        says(checks(declared(6.35, Optional.empty()), SPF, column(2), 200).get(0), EDGE, 1.5 * 6.35, 13);
        says(checks(declared(6.35, Optional.empty()), SPF, column(2), 200).get(1), IN_A_STUD, 4 * 6.35, 40);
    }

    @Test
    void theMakersEdgeStandsInPlaceOfTheRule() {
        List<Check> checks = checks(declared(8, Optional.of(Length.mm(16))), SPF, column(1), 200, 606);
        assertThat(checks).hasSize(1);
        says(checks.get(0), MAKERS_EDGE, 16, 13);
        assertThat(FixingPlaces.hasEdge(declared(8, Optional.of(Length.mm(16)))))
                .isTrue();
        assertThat(FixingPlaces.hasEdge(declared(8, Optional.empty()))).isFalse();
    }

    @Test
    void anchorsStandAsFarApartAsTheirMakerAsksAlongTheWallAndUpIt() {
        Masonry brick = new Masonry(Masonry.Kind.SOLID);
        List<Check> three = checks(anchor(), brick, column(2), 100, 400, 475);
        assertThat(three).hasSize(2);
        says(three.get(0), ALONG, 80, 75);
        says(three.get(1), IN_A_STUD, 80, 40);
        List<Check> one = checks(anchor(), brick, column(2), 400);
        assertThat(one).hasSize(1);
        says(one.get(0), IN_A_STUD, 80, 40);
    }

    /** 2.5 diameters, bored, of the 13 mm that are left beside a stud found 6 mm off: 5 mm and no more. */
    @Test
    void aThinScrewThatMaySplitTheEdgeIsNotJudged() {
        Missing splits = new Missing(
                "whether a screw so thick splits the edge of the stud, 6 mm off its centre",
                "use No. 10 wood screws, or lag screws, in studs so narrow");
        for (double mm : new double[] {5, 5.5, 6.3, 6.35}) {
            Hanging h = Hung.cabinet(5, 2, 0);
            Fixing f = h.fixing();
            Hanging asked =
                    h.fixing(new Fixing(declared(mm, Optional.empty()), f.length(), f.rows(), f.studs(), f.rail()));
            assertThat(asked.findings().get(0).missing().contains(splits))
                    .as(mm + " mm")
                    .isEqualTo(mm > 5.2 && mm < 6.35);
        }
    }

    @Test
    void whatHangsIsAddedUpByWhatBecomesOfIt() {
        HungWeight hung = new HungWeight(List.of(
                new HungWeight.Item("case", 20, 22, 0.15, 0.1, OptionalDouble.of(0.4), HungWeight.Stays.ON),
                new HungWeight.Item("doors", 8, 8, 0.31, 0, OptionalDouble.empty(), HungWeight.Stays.COMES_OFF),
                new HungWeight.Item("books", 12, 20, 0.2, -0.2, OptionalDouble.of(0.2), HungWeight.Stays.NOT_YET)));
        assertThat(hung.mass(HungWeight.Stays.ON, 1)).isEqualTo(22);
        assertThat(hung.mass(HungWeight.Stays.NOT_YET, 0.5)).isEqualTo(16);
        assertThat(hung.without(HungWeight.Stays.NOT_YET).mass(0)).isEqualTo(28);
        // 20 · 0.1 − 12 · 0.2 kg·m
        assertThat(hung.turning(0)).isCloseTo(-0.4 * Force.STANDARD_GRAVITY, within(1e-9));
        // (20 · 0.4 + 8 · 0.7 + 12 · 0.2)/40
        assertThat(hung.centreHeight(0, 0.7)).isCloseTo(0.4, within(1e-12));
        assertThat(new HungWeight(List.of()).centreHeight(0, 0.7)).isEqualTo(0.7);
        assertThatIllegalArgumentException()
                .isThrownBy(() ->
                        new HungWeight.Item("case", 20, 22, 0.15, 0.1, OptionalDouble.of(-0.1), HungWeight.Stays.ON))
                .withMessage("height of case must be from 0 to 5 m, but was -0.1");
    }

    @Test
    void screwsInAStudStandOneAboveTheOtherFromTheLowestUp() {
        assertThat(column(3).heights()).containsExactly(new double[] {0.65, 0.69, 0.73}, within(1e-12));
        assertThat(new Row(Length.mm(650), 2).heights()).containsExactly(0.65, 0.65);
        Fixing two = new Fixing(
                Hung.screw("wood-screw-10"),
                Length.inches(3),
                List.of(new Row(Length.mm(45), 1), new Row(Length.mm(700), 2)),
                Hung.at(600, 200),
                Hung.RAIL);
        assertThat(two.top().height()).isEqualTo(Length.mm(700));
        assertThat(two.inEachStud()).isEqualTo(3);
        assertThat(two.studs()).isEqualTo(Hung.at(200, 600));
        assertThat(two.perStud(4).inEachStud()).isEqualTo(5);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Fixing(two.screw(), two.length(), List.of(), two.studs(), two.rail()))
                .withMessage("there must be a row of screws at least");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> two.studs(List.of()))
                .withMessage("the studs must stand at places of their own, at least one");
    }

    /** A ledger with one screw in each stud beside two above takes a third of the weight. */
    @Test
    void besideALedgerTheWeightIsSharedByTheNumberOfScrews() {
        Rail strip = Hung.ledger(Rail.Held.TOP_EDGE, LongGrain.UNKNOWN);
        Fixing above = Hung.cabinet(5, 2, 0).fixing();
        assertThat(above.beside(new Ledger(strip, 1, Length.inches(3))).share()).isCloseTo(2 / 3.0, within(1e-12));
        Fixing ledger = new Ledger(strip, 3, Length.inches(3)).fixing(above);
        assertThat(ledger.inEachStud()).isEqualTo(3);
        assertThat(ledger.rail().rolling())
                .as("its lever is counted about its own heel")
                .isEqualTo(1);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Ledger(Hung.RAIL, 1, Length.inches(3)))
                .withMessage("the depth of the ledger must be known");
    }
}
