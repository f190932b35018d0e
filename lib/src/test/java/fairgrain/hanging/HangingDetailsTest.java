package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.fastener.GroupAction;
import fairgrain.fastener.PanelScrew;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.SteelStudScrew;
import fairgrain.finding.Citation;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Holes, sources and guards of a cabinet that hangs. */
class HangingDetailsTest {
    private static final Hanging WOOD = Hung.cabinet(5, 4, 0);

    private static double size(Hanging hanging, String what) {
        return hanging.findings().get(0).sizes().stream()
                .filter(size -> size.what().equals(what))
                .findFirst()
                .orElseThrow()
                .value()
                .si();
    }

    private static List<Citation> sources(Hanging hanging) {
        return hanging.findings().get(0).evidence().sources();
    }

    private static Hanging with(HangingScrew screw) {
        Fixing f = WOOD.fixing();
        return WOOD.fixing(new Fixing(screw, f.length(), new Row(Length.mm(720), 1), f.studs(), f.rail()));
    }

    /** Of a wood screw seven eighths of the shank, 0.190 in, in a rail of softwood; of a lag screw all of it. */
    @Test
    void theRailIsBoredForTheShank() {
        assertThat(size(WOOD, "hole in the rail for the shank")).isCloseTo(7 * 0.190 / 8 * 0.0254, within(1e-9));
        assertThat(size(with(Hung.screw("lag-screw-1-4")), "hole in the rail for the shank"))
                .isCloseTo(0.00635, within(1e-9));
    }

    @Test
    void theSourcesAreThoseOfTheWallThatItHangsOn() {
        assertThat(sources(WOOD))
                .contains(ReferenceWithdrawal.SOURCE)
                .doesNotContain(SteelStudScrew.SOURCE, PanelScrew.PLYWOOD_SOURCE, GroupAction.SOURCE);
        assertThat(sources(WOOD.stud(Hung.stud("steel-stud-54-mil"))))
                .contains(SteelStudScrew.SOURCE)
                .doesNotContain(ReferenceWithdrawal.SOURCE);
        assertThat(sources(WOOD.stud(new Backing("plywood backing", 0.5, Length.mm(18), Hung.ANY))))
                .contains(PanelScrew.PLYWOOD_SOURCE)
                .doesNotContain(ReferenceWithdrawal.SOURCE);
        assertThat(sources(with(Hung.screw("lag-screw-1-4"))))
                .as("just a quarter of an inch is large")
                .contains(GroupAction.SOURCE);
    }

    @Test
    void declaredValuesThatAreNoForcesOrDistancesAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> declared(Optional.of(new Force(9)), Optional.empty()))
                .withMessage("declared value must be from 10 to 50000 N, but was 9");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> declared(Optional.empty(), Optional.of(Length.mm(2.9))))
                .withMessage("edge distance of the screw must be from 0.003 to 0.1 m, but was 0.0029");
        assertThat(declared(Optional.of(new Force(10)), Optional.of(Length.mm(3)))
                        .lag())
                .isFalse();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Hangers(
                        "plates",
                        Hung.at(100, 700),
                        Length.mm(700),
                        new Force(2000),
                        Optional.of(new Force(9)),
                        DeclaredScrew.Given.ALLOWABLE,
                        1))
                .withMessage("declared value must be from 10 to 50000 N, but was 9");
    }

    private static DeclaredScrew declared(Optional<Force> pullThrough, Optional<Length> edge) {
        return new DeclaredScrew(
                "declared screw",
                Length.mm(5),
                new Force(900),
                new Force(700),
                pullThrough,
                DeclaredScrew.Given.ALLOWABLE,
                1,
                0.4,
                edge,
                Length.ZERO);
    }

    @Test
    void sidesToDriveFromAreNamedAsInADesign() {
        assertThat(CaseScrews.Driven.FROM_INSIDE.word()).isEqualTo("from inside");
        assertThat(CaseScrews.Driven.FROM_BEHIND.word()).isEqualTo("from behind");
    }
}
