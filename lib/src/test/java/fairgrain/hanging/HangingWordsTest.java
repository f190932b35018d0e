package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What a maker is told, and is asked for, about a hung cabinet. */
class HangingWordsTest {
    private static final String PLASTER = "Old plaster breaks off its laths when it is hammered or drawn on: bore it,"
            + " do not punch it, and pack behind the rail where it sounds hollow.";
    private static final String TILE = "Bore tile with a bit for tile, without hammering, and wider than the screw: a"
            + " screw that bears on the tile cracks it. Shim the lower edge where the tiles end.";
    private static final String CABLES =
            "The points reach {} into the studs, deeper than cables are kept from: make sure that none run there.";

    private static List<String> notes(Hanging hanging) {
        return hanging.findings().get(0).notes().stream().map(Words::sentence).toList();
    }

    private static List<Quantity> numbers(Hanging hanging, String sentence) {
        return hanging.findings().get(0).notes().stream()
                .filter(note -> note.sentence().equals(sentence))
                .findFirst()
                .orElseThrow()
                .numbers();
    }

    private static Hanging lined(String name) {
        return Hung.cabinet(5, 4, 0).layers(List.of(new Layer(name, Length.mm(12))));
    }

    private static Hanging with(Hanging h, Rail rail) {
        return h.fixing(h.fixing().rail(rail));
    }

    @Test
    void liningsThatBreakAreBoredAndPlasterboardIsNoPlaster() {
        assertThat(notes(lined("lath and plaster"))).contains(PLASTER).doesNotContain(TILE);
        assertThat(notes(lined("Tile on cement board"))).contains(TILE).doesNotContain(PLASTER);
        assertThat(notes(lined("plasterboard"))).doesNotContain(PLASTER, TILE);
    }

    /** Cables are kept an inch and a quarter deep, 31.75 mm: 2 1/4 in of screw through 19 mm reach 38 mm, 2 in 31.8 mm, 1.9 in less. */
    @Test
    void pointsDeeperThanCablesAreKeptFromAreWarnedOf() {
        Hanging h = Hung.cabinet(5, 4, 0);
        Hanging deep = h.fixing(h.fixing().length(Length.inches(2.25)));
        assertThat(numbers(deep, CABLES).get(0).si()).isCloseTo(2.25 * 0.0254 - 0.019, within(1e-9));
        assertThat(notes(h.fixing(h.fixing().length(Length.inches(1.9))))).doesNotContain(CABLES);
        assertThat(HangingWords.maybeCables(Length.inches(1.25))).isFalse();
        assertThat(HangingWords.maybeCables(Length.mm(31.76))).isTrue();
    }

    @Test
    void wetWoodIsSaidToCountSevenTenths() {
        Hanging h = Hung.cabinet(5, 4, 0);
        String wet = "The wood may get wetter than {} there: every figure of wood is taken at 0.7 for it.";
        assertThat(notes(h)).doesNotContain(wet);
        Setting damp = new Setting(
                new MoistureYear(new Estimate(0.14, 0.005), new Estimate(0.20, 0.005), 0.005, "a test", Hung.ANY),
                Hung.IN.day(),
                Hung.IN.rule(),
                Hung.IN.deviations());
        Hanging inDamp = new Hanging(
                h.part(),
                h.hung(),
                h.cabinet(),
                h.fixing(),
                h.stud(),
                h.layers(),
                h.cases(),
                h.carries(),
                h.open(),
                damp);
        assertThat(numbers(inDamp, wet).get(0).si()).isEqualTo(0.19);
    }

    @Test
    void howTheScrewsShareIsTold() {
        String swings = "There is one row of screws: the lower edge is free to swing out when it is pulled.";
        String alike = "The rows share the weight alike: bore the holes so that every screw fits. In slack holes the"
                + " upper row may carry all of it.";
        String couple = "On a single stud only the couple of screws one above the other keeps it level; an eighth of"
                + " the width is taken as the least that its load stands to one side.";
        Hanging one = Hung.cabinet(5, 2, 0);
        assertThat(notes(one)).contains(swings).doesNotContain(alike, couple);
        Hanging two = one.fixing(one.fixing().with(new Row(Length.mm(45), 1)));
        assertThat(notes(two)).contains(alike).doesNotContain(swings, couple);
        Row apart = new Row(Length.mm(600), 2, Optional.of(Length.mm(100)));
        assertThat(notes(Hung.cabinet(5, apart, 0, Hung.at(400))))
                .contains(couple)
                .doesNotContain(alike, swings);
    }

    @Test
    void peopleAndEarthquakesAreToldWithTheirFactors() {
        String people = "The weight of people is multiplied by {}, since people move. It is there for ten minutes, for"
                + " which wood carries 1.6 in place of 0.9.";
        String quake =
                "In the earthquake {} of the weight pulls outward and sideways at once; the coefficient is yours.";
        Hanging h = Hung.cabinet(5, 4, 0);
        assertThat(notes(h)).doesNotContain(people, quake);
        Hanging both = h.cases(new LoadCases(List.of(LoadCase.ADULT_LEANING), 2, OptionalDouble.of(0.3)));
        assertThat(numbers(both, people).get(0).si()).isEqualTo(2);
        assertThat(numbers(both, quake).get(0).si()).isEqualTo(0.3);
        assertThat(notes(both.stud(Hung.stud("steel-stud-54-mil"))))
                .contains("The weight of people is multiplied by {}, since people move.")
                .doesNotContain(people);
    }

    @Test
    void aRailThatRollsIsSaidToPullHarder() {
        Rail top = Hung.RAIL.held(Rail.Held.TOP_EDGE);
        String along = "The case holds the rail along its top edge only, so the rail rolls and the screws are pulled {}"
                + " times as hard as by the case alone; a rail held along both edges does not.";
        String ends = "The case holds the rail by its ends only, so the rail rolls and the screws are pulled {} times"
                + " as hard as by the case alone; a rail held along both edges does not.";
        Hanging h = Hung.cabinet(5, 4, 0);
        assertThat(notes(h)).doesNotContain(along, ends);
        assertThat(numbers(with(h, top), along).get(0).si()).isEqualTo(2);
        assertThat(notes(with(h, Hung.RAIL.held(Rail.Held.ENDS)))).contains(ends);
    }

    @Test
    void whatCostsStrengthIsToldWithWhatItWouldBeWithout() {
        String packed = "The {} between rail and stud leave {} of the lateral value; a rail let in or packed out solid"
                + " on the studs wins the rest back, and the use would be {}.";
        Hanging gapped = Hung.cabinet(20, 2, 12.7);
        List<Quantity> told = numbers(gapped, packed);
        ScrewHold hold = gapped.hold();
        assertThat(told.get(0)).isEqualTo(Length.mm(12.7));
        assertThat(told.get(1).si()).isCloseTo(hold.lateral() / hold.ungapped(), within(1e-12));
        // 25 kg, the heavy contents, on the studs themselves
        Hanging straight = Hung.cabinet(25, 2, 0);
        Hanging heavy = straight.hung(gapped.hung());
        double used = heavy.outcomes().get(1).planned().demand();
        assertThat(told.get(2).si()).isCloseTo(used, within(1e-9));
        assertThat(notes(Hung.cabinet(20, 2, 0))).doesNotContain(packed);
        String light = "The studs are taken as light as {}; with studs stamped spruce-pine-fir the use would be {}.";
        assertThat(notes(gapped)).doesNotContain(light);
        List<Quantity> better = numbers(gapped.stud(Hung.stud("western-woods")), light);
        assertThat(better.get(0).si()).isEqualTo(0.36);
        assertThat(better.get(1).si())
                .isCloseTo(gapped.outcomes().get(1).planned().demand(), within(1e-9));
    }

    private static Finding finding(Hanging hanging) {
        return hanging.findings().get(0);
    }

    @Test
    void whatHasNoFigureIsAskedForAndNotJudged() {
        Hanging h = Hung.cabinet(5, 4, 0);
        Rail board = Hung.PARTICLEBOARD;
        assertThat(finding(with(h, board)).missing())
                .containsExactly(new Missing(
                        "when a head pulls through particleboard",
                        "use a rail of solid wood or plywood, or put a strip of wood under the heads"));
        Missing thin = new Missing(
                "whether the heads pull through a rail so thin or so thick",
                "use a rail from 5/16 to 1 1/2 in (8 to 38 mm) thick under round heads or washers");
        assertThat(finding(with(h, Hung.RAIL.thickness(Length.mm(7.9)))).missing())
                .containsExactly(thin);
        assertThat(finding(with(h, Hung.RAIL.thickness(Length.inches(5 / 16.0))))
                        .missing())
                .isEmpty();
        Finding steel = finding(h.stud(Hung.stud("steel-stud-30-mil")));
        assertThat(steel.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(steel.missing())
                .containsExactly(new Missing(
                        "whether so thin a steel stud bends or crushes, and stays in its track",
                        "screw into wood blocking or a plywood backing fixed between or across the studs, and enter"
                                + " that"));
        assertThat(finding(h.stud(Hung.stud("steel-stud-33-mil"))).missing()).isEmpty();
    }

    @Test
    void itIsSaidWhatIsJudgedAndInWhichWall() {
        assertThat(finding(Hung.cabinet(5, 4, 0)).question()).isEqualTo("do these screws hold in these studs");
        assertThat(notes(Hung.cabinet(5, 4, 0)))
                .contains(
                        "This says that the screws hold in the studs. The cabinet's own joints, back and rail are not"
                                + " judged here.",
                        "It catches a stud at {} (each screw there uses up to {}) and a stud at {} (each screw there"
                                + " uses up to {}), {} screws in each.",
                        "It is taken that the lower edge bears on the wall all along; shim it where the wall is"
                                + " hollow.",
                        "The pull of the head is for round heads or washers, not for countersunk ones.",
                        "Bore the stud for every screw, within 6 mm of its centre.",
                        "No friction between cabinet and wall is counted, nor the squeeze of tight screws.");
    }

    /** Half the sizes of a 2 by 4: no screw deeper than its depth, the hole for the thread no more than nine tenths of the root. */
    @Test
    void sizesToMarkAndBoreAreGiven() {
        Finding finding = finding(Hung.cabinet(5, 4, 0));
        assertThat(finding.sizes())
                .extracting(size -> size.what())
                .containsExactly(
                        "lowest screws above the lower edge",
                        "stud 1 from the left end",
                        "stud 2 from the left end",
                        "pilot hole in the stud at most",
                        "hole in the rail for the shank",
                        "screws reach into the stud",
                        "screws in one stud at least so far apart",
                        "screws from the end of the rail at least");
        Screw ten = Hung.screw("wood-screw-10");
        // seven eighths of the root in soft wood, 0.7 of it in middling, 0.9 in dense
        assertThat(HangingSizes.pilot(ten, 0.42).metres()).isCloseTo(7 * 0.152 / 8 * 0.0254, within(1e-9));
        assertThat(HangingSizes.pilot(ten, 0.55).metres()).isCloseTo(0.7 * 0.152 * 0.0254, within(1e-9));
        assertThat(HangingSizes.pilot(ten, 0.65).metres()).isCloseTo(0.9 * 0.152 * 0.0254, within(1e-9));
        Screw lag = Hung.screw("lag-screw-1-4");
        assertThat(HangingSizes.pilot(lag, 0.42).metres()).isCloseTo(0.7 * 0.00635, within(1e-9));
    }
}
