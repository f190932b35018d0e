package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.fastener.GroupAction;
import fairgrain.fastener.RailRolling;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What mends a cabinet whose screws do not hold, and what the figures of one that is asked about rest on. */
class HangingCuresTest {
    private static Finding finding(Hanging hanging) {
        return hanging.findings().get(0);
    }

    private static List<String> cures(Hanging hanging) {
        return finding(hanging).remedies().stream()
                .map(Remedy::words)
                .map(words -> words.in(ShopRule.MILLIMETRES))
                .toList();
    }

    private static List<String> begins(Hanging hanging) {
        return finding(hanging).remedies().stream()
                .map(remedy -> remedy.words().sentence())
                .toList();
    }

    private static Hanging then(Hanging hanging, int cure) {
        return (Hanging) finding(hanging).remedies().get(cure).then();
    }

    @Test
    void whatHoldsNeedsNoCure() {
        assertThat(finding(Hung.cabinet(5, 4, 0)).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(cures(Hung.cabinet(5, 4, 0))).isEmpty();
    }

    /** As few more as hold, in each stud; then a second row of as few as hold at 45 mm; then the rail let in: three at most. */
    @Test
    void moreScrewsComeFirstThenASecondRowThenTheRailLetIn() {
        Hanging asked = Hung.cabinet(30, 2, 12.7);
        assertThat(finding(asked).verdict()).isEqualTo(Verdict.FAILS);
        List<String> begins = begins(asked);
        assertThat(begins).hasSize(3);
        assertThat(begins.get(0)).startsWith("Put {} screws in each stud.");
        assertThat(begins.get(1))
                .startsWith("Add a second row through a rail at the bottom, {} above the lower edge, {} in each stud.");
        assertThat(begins.get(2)).startsWith("Let the rail in so that it lies straight on the studs.");
        int screws = then(asked, 0).fixing().top().perStud();
        assertThat(asked.fixing(asked.fixing().perStud(screws)).holds()).isTrue();
        for (int fewer = 2; fewer < screws; fewer++) {
            assertThat(asked.fixing(asked.fixing().perStud(fewer)).holds())
                    .as("%s screws", fewer)
                    .isFalse();
        }
        Fixing two = then(asked, 1).fixing();
        assertThat(two.rows()).hasSize(2);
        assertThat(two.rows().get(1).height()).isEqualTo(Length.mm(45));
        for (int fewer = 1; fewer < two.rows().get(1).perStud(); fewer++) {
            assertThat(asked.fixing(asked.fixing().with(new Row(Length.mm(45), fewer)))
                            .holds())
                    .isFalse();
        }
        assertThat(then(asked, 2).layers()).isEmpty();
    }

    /** A rail that lies on the studs already is not let in; screws are then made longer. */
    @Test
    void aRailOnTheStudsIsNotLetIn() {
        Hanging like = Hung.cabinet(20, 1, 0);
        Hanging asked = like.fixing(like.fixing().length(Length.inches(1.25)));
        assertThat(finding(asked).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(begins(asked)).noneMatch(cure -> cure.startsWith("Let the rail in"));
        List<Remedy> longer = finding(asked).remedies().stream()
                .filter(remedy -> remedy.words().sentence().startsWith("Use screws {} long, {} in each stud."))
                .toList();
        assertThat(longer).hasSize(1);
        Hanging then = (Hanging) longer.get(0).then();
        assertThat(then.fixing().length()).isGreaterThan(asked.fixing().length());
        assertThat(asked.fixing().screw().shopLengths()).contains(then.fixing().length());
        assertThat(then.holds()).isTrue();
        // the shortest of the shop that holds, whatever the number
        for (Length shorter : asked.fixing().screw().shopLengths()) {
            if (shorter.compareTo(asked.fixing().length()) > 0
                    && shorter.compareTo(then.fixing().length()) < 0) {
                for (int n = 1; n <= 6; n++) {
                    assertThat(asked.fixing(asked.fixing().length(shorter).perStud(n))
                                    .holds())
                            .isFalse();
                }
            }
        }
    }

    /** Points that come to reach deeper than an inch and a quarter are warned of in the cure itself; those that did so before are not. */
    @Test
    void aCureWhosePointsReachDeeperThanCablesSaysSo() {
        Hanging like = Hung.cabinet(20, 1, 0);
        Hanging asked = like.fixing(like.fixing().length(Length.inches(1.5)));
        String deeper = "The points of the screws then reach {} into the studs, deeper than cables are kept from.";
        for (Remedy remedy : finding(asked).remedies()) {
            Hanging then = (Hanging) remedy.then();
            boolean reaches = then.hold().point().compareTo(asked.hold().point()) > 0
                    && then.hold().point().toMm() > 31.75;
            assertThat(remedy.words().sentence().endsWith(deeper))
                    .as(remedy.words().sentence())
                    .isEqualTo(reaches);
        }
        Hanging deep = Hung.cabinet(60, 2, 12.7);
        assertThat(finding(deep).remedies().get(0).words().sentence()).doesNotContain(deeper);
    }

    // Notes and evidence that hang on the case

    private static List<String> notes(Hanging hanging) {
        return finding(hanging).notes().stream().map(Words::sentence).toList();
    }

    @Test
    void whatASteelStudLeavesOpenIsSaid() {
        String bending = "The bending of the steel stud and its hold in the track are not judged: backing across the"
                + " studs is better.";
        assertThat(notes(Hung.cabinet(5, 4, 0).stud(Hung.stud("steel-stud-54-mil"))))
                .contains(bending);
        assertThat(notes(Hung.cabinet(5, 4, 0))).doesNotContain(bending);
    }

    @Test
    void whatGapAndLedgerTakeIsSaidOnlyWhereTheyAre() {
        String straight = "Were the rail straight on the stud, it would be {} along the wall.";
        String ledger = "It rests on a ledger: these screws are judged for {} of the weight, as their number is to that"
                + " of the ledger's, and for all of the pull; in an earthquake for all of both.";
        assertThat(notes(Hung.cabinet(5, 4, 12.7))).anyMatch(note -> note.endsWith(straight));
        assertThat(notes(Hung.cabinet(5, 4, 0))).noneMatch(note -> note.endsWith(straight));
        assertThat(notes(Hung.cabinet(5, 4, 0))).doesNotContain(ledger);
        Hanging h = Hung.cabinet(5, 2, 0);
        Rail strip = Hung.ledger(Rail.Held.BOTH_EDGES, LongGrain.UNKNOWN);
        assertThat(notes(h.fixing(h.fixing().beside(new Ledger(strip, 2, Length.inches(3))))))
                .contains(ledger);
    }

    @Test
    void theEvidenceIsThatOfWhatIsAsked() {
        Hanging h = Hung.cabinet(5, 4, 0);
        assertThat(finding(h).evidence().sources())
                .doesNotContain(RailRolling.SOURCE, LoadCase.CHILD, LoadCase.ADULT, GroupAction.SOURCE);
        Hanging child = h.cases(LoadCases.of(LoadCase.CHILD_CLIMBING));
        assertThat(finding(child).evidence().sources()).contains(LoadCase.CHILD).doesNotContain(LoadCase.ADULT);
        Hanging adult = h.cases(LoadCases.of(LoadCase.ADULT_LEANING));
        assertThat(finding(adult).evidence().sources()).contains(LoadCase.ADULT).doesNotContain(LoadCase.CHILD);
        Hanging rolls = h.fixing(h.fixing().rail(Hung.RAIL.held(Rail.Held.TOP_EDGE)));
        assertThat(finding(rolls).evidence().sources()).contains(RailRolling.SOURCE);
    }

    // Declared screws

    private static DeclaredScrew declared(double factor, double leastGravity) {
        return new DeclaredScrew(
                "declared screw",
                Length.mm(5),
                new Force(900),
                new Force(700),
                Optional.empty(),
                DeclaredScrew.Given.ALLOWABLE,
                factor,
                leastGravity,
                Optional.empty(),
                Length.ZERO);
    }

    @Test
    void declaredValuesOutOfReasonAreRefused() {
        assertThat(declared(20, 0.2).factor()).isEqualTo(20);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> declared(20.1, 0.4))
                .withMessage("divisor of the declared values must be from 1 to 20 (a ratio), but was 20.1");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> declared(1, 0.19))
                .withMessage("specific gravity that the values are for must be from 0.2 to 1 (a ratio), but was 0.19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Hangers(
                        "plates",
                        Hung.at(100, 700),
                        Length.mm(700),
                        new Force(2000),
                        Optional.empty(),
                        DeclaredScrew.Given.ALLOWABLE,
                        21))
                .withMessage("divisor of the hangers' values must be from 1 to 20 (a ratio), but was 21");
    }
}
