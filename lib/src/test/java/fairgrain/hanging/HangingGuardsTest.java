package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;

/** The tables that ship are read as printed, and what cannot be hung is refused in words that name the value. */
class HangingGuardsTest {
    private static Reader shipped(String file) {
        return new InputStreamReader(
                Objects.requireNonNull(Hanging.class.getResourceAsStream("/fairgrain/data/" + file)),
                StandardCharsets.UTF_8);
    }

    private static int nearly(double one, double other) {
        return Math.abs(one - other) < 1e-9 ? 0 : Double.compare(one, other);
    }

    private static void refused(ThrowingCallable call, String message) {
        assertThatIllegalArgumentException().isThrownBy(call).withMessage(message);
    }

    @Test
    void aScrewIsReadAsTheTablePrintsIt() {
        List<Screw> all = Screw.read(shipped("fasteners.csv"), "fasteners.csv");
        Screw ten = all.stream()
                .filter(each -> each.id().equals("wood-screw-10"))
                .findFirst()
                .orElseThrow();
        assertThat(ten.name()).isEqualTo("No. 10 wood screw");
        assertThat(ten.lag()).isFalse();
        assertThat(ten.diameter()).isEqualTo(Length.inches(0.190));
        assertThat(ten.root()).isEqualTo(Length.inches(0.152));
        assertThat(ten.head()).isEqualTo(Length.inches(0.363));
        assertThat(ten.tip()).isEqualTo(Length.inches(0.380));
        assertThat(ten.bendingYield()).isCloseTo(80_000 * 6894.757, within(1e4));
        assertThat(ten.threadShare()).isEqualTo(0.66);
        assertThat(ten.shopLengths())
                .extracting(Length::toInches)
                .usingElementComparator(HangingGuardsTest::nearly)
                .containsExactly(1.0, 1.25, 1.5, 2.0, 2.5, 3.0, 3.5, 4.0);
        assertThat(ten.size().root()).isEqualTo(ten.root().metres());
        assertThat(all)
                .filteredOn(Screw::lag)
                .hasSize(5)
                .allMatch(each -> each.id().startsWith("lag"));
    }

    @Test
    void aStudIsReadAsTheTablePrintsIt() {
        List<Stud> all = Stud.read(shipped("framing.csv"), "framing.csv");
        WoodStud fir = (WoodStud) all.stream()
                .filter(each -> each.id().equals("douglas-fir-larch"))
                .findFirst()
                .orElseThrow();
        assertThat(fir.specificGravity()).isEqualTo(0.50);
        assertThat(fir.gravity()).hasValue(0.50);
        assertThat(fir.width()).isEqualTo(Length.mm(38));
        assertThat(fir.depth()).isEqualTo(Length.mm(89));
        assertThat(fir.level()).isFalse();
        assertThat(fir.tradeNames()).containsExactly("DF-L", "D Fir-L");
        SteelStud steel = (SteelStud) all.stream()
                .filter(each -> each.id().equals("steel-stud-33-mil"))
                .findFirst()
                .orElseThrow();
        assertThat(steel.mils()).isEqualTo(33);
        assertThat(steel.sheet()).isEqualTo(Length.mm(0.878));
        assertThat(steel.tensile()).isCloseTo(310.2e6, within(1.0));
        assertThat(steel.gravity()).isEmpty();
    }

    @Test
    void aCabinetAndItsDoorsHaveSizes() {
        refused(() -> Cabinet.wide(Length.mm(99)), "width of the cabinet must be from 0.1 to 5 m, but was 0.099");
        refused(
                () -> new Cabinet(Length.mm(800), Optional.of(Length.mm(29)), Length.mm(18), List.of()),
                "depth of the cabinet must be from 0.03 to 1.5 m, but was 0.029");
        refused(
                () -> new Cabinet(Length.mm(800), Optional.empty(), Length.mm(101), List.of()),
                "thickness of the sides must be from 0 to 0.1 m, but was 0.101");
        refused(
                () -> new Leaf("doors", 0, Length.mm(398), Length.mm(20), 4, 4.4),
                "number of doors must be from 1 to 20 doors, but was 0");
        refused(
                () -> new Leaf("doors", 2, Length.mm(49), Length.mm(20), 4, 4.4),
                "width of a door must be from 0.05 to 2 m, but was 0.049");
        refused(
                () -> new Leaf("doors", 2, Length.mm(398), Length.mm(20), 4, 3),
                "heavy mass of doors must be from 4 to 500 kg, but was 3");
    }

    @Test
    void aRowAndItsScrewsHavePlaces() {
        refused(
                () -> new Row(Length.mm(9), 2),
                "height of the screws above the lower edge must be from 0.01 to 3 m, but was 0.009");
        refused(
                () -> new Row(Length.mm(700), 2, Optional.of(Length.mm(4))),
                "distance between screws in a stud must be from 0.005 to 1 m, but was 0.004");
        refused(
                () -> Hung.cabinet(5, 2, 0).fixing().length(Length.mm(9)),
                "screw length must be from 0.01 to 0.3 m, but was 0.009");
        refused(
                () -> new LoadCases(List.of(), 1.5, OptionalDouble.of(4.1)),
                "earthquake coefficient must be from 0 to 4 (a ratio of the weight), but was 4.1");
    }

    @Test
    void ofAnEarthquakeAndOfPeopleTheCasesAreListedInOrder() {
        Cabinet doors = Hung.cabinet(5, 2, 0).cabinet();
        LoadCases all = new LoadCases(List.of(LoadCase.CHILD_CLIMBING), 1.5, OptionalDouble.of(0.2));
        assertThat(all.of(doors))
                .containsExactly(
                        LoadCase.STANDING,
                        LoadCase.DOORS_OPEN,
                        LoadCase.SCREW_GONE,
                        LoadCase.CHILD_CLIMBING,
                        LoadCase.EARTHQUAKE);
        assertThat(LoadCases.ALWAYS.of(Cabinet.wide(Length.mm(800))))
                .containsExactly(LoadCase.STANDING, LoadCase.SCREW_GONE);
        assertThat(all.coverChildren(doors)).as("none on its doors").isFalse();
        assertThat(all.coverChildren(Cabinet.wide(Length.mm(800)))).isTrue();
        assertThat(LoadCase.CHILD_CLIMBING.hasPerson()).isTrue();
        assertThat(LoadCase.EARTHQUAKE.hasPerson()).isFalse();
    }

    @Test
    void aGapJustAsWideAsTheMakerAllowsIsJudged() {
        DeclaredScrew screw = new DeclaredScrew(
                "a screw",
                Length.mm(5),
                Force.newtons(1500),
                Force.newtons(900),
                Optional.of(Force.newtons(1200)),
                DeclaredScrew.Given.ALLOWABLE,
                1,
                0.42,
                Optional.empty(),
                Length.mm(12.7));
        Hanging h = Hung.cabinet(5, 2, 12.7);
        Fixing f = h.fixing();
        Hanging asked = h.fixing(new Fixing(screw, f.length(), f.rows(), f.studs(), f.rail()));
        assertThat(asked.findings().get(0).missing()).isEmpty();
        assertThat(asked.layers(List.of(new Layer("board", Length.mm(12.8))))
                        .findings()
                        .get(0)
                        .missing())
                .hasSize(1);
    }

    private static Hangers hangers(DeclaredScrew.Given given, double factor) {
        return new Hangers(
                "plates", Hung.at(100, 700), Length.mm(700), Force.newtons(1000), Optional.empty(), given, factor);
    }

    @Test
    void declaredValuesOfHangersAreDividedByWhatTheyAre() {
        assertThat(Hangers.divisor(DeclaredScrew.Given.ULTIMATE)).isEqualTo(4);
        assertThat(Hangers.divisor(DeclaredScrew.Given.ALLOWABLE)).isEqualTo(1);
        assertThat(Hangers.divisor(DeclaredScrew.Given.CHARACTERISTIC)).isEqualTo(2.25);
        assertThat(hangers(DeclaredScrew.Given.ULTIMATE, 4).factor()).isEqualTo(4);
        refused(
                () -> hangers(DeclaredScrew.Given.ULTIMATE, 3.9),
                "the factor of ultimate values of hangers must be at least 4.0, but was 3.9");
        refused(
                () -> new HangerHold(
                        Hung.cabinet(5, 2, 0),
                        new Hangers(
                                "plates",
                                Hung.at(100, 700),
                                Length.mm(59),
                                Force.newtons(1000),
                                Optional.empty(),
                                DeclaredScrew.Given.ALLOWABLE,
                                1)),
                "the hangers must sit well above the lower edge of the case");
        assertThat(new HangerHold(
                                Hung.cabinet(5, 2, 0),
                                hangers(DeclaredScrew.Given.ALLOWABLE, 1).at(Hung.at(0, 800)))
                        .answer()
                        .checks())
                .as("they may sit at the very ends")
                .hasSize(2);
    }

    @Test
    void studsAreCaughtByTheRailAndSpacedFromTheFirst() {
        assertThat(StudPattern.spaced(Length.mm(-100), Length.mm(400), Length.mm(710)))
                .extracting(Length::toMm)
                .usingElementComparator(HangingGuardsTest::nearly)
                .containsExactly(300.0, 700.0);
        refused(
                () -> StudPattern.spaced(Length.mm(0), Length.mm(90), Length.mm(700)),
                "distance between studs must be from 0.1 to 1.5 m, but was 0.09");
        Cabinet cabinet = new Cabinet(Length.mm(800), Optional.empty(), Length.mm(18), List.of());
        // 18 mm of side and four diameters of a 1/4 in lag screw, 25.4 mm: from 43.4 mm on
        HangingScrew lag = Hung.screw("lag-screw-1-4");
        assertThat(StudPattern.caught(Hung.at(43.3, 756.7), cabinet, lag)).isEmpty();
        assertThat(StudPattern.caught(Hung.at(756.6, 43.4, 43.4), cabinet, lag))
                .containsExactly(Length.mm(43.4), Length.mm(756.6));
    }
}
