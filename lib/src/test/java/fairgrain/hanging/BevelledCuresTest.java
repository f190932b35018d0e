package fairgrain.hanging;

import static fairgrain.hanging.BevelledRailsTest.finding;
import static fairgrain.hanging.BevelledRailsTest.thick;
import static fairgrain.hanging.BevelledRailsTest.thin;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What mends a pair of bevelled strips, the least change first. */
class BevelledCuresTest {
    private static List<String> cures(BevelledRails rails) {
        return finding(rails).remedies().stream()
                .map(remedy -> remedy.words().in(ShopRule.MILLIMETRES))
                .toList();
    }

    private static BevelledRails then(BevelledRails rails) {
        List<Remedy> remedies = finding(rails).remedies();
        assertThat(remedies.get(0).then()).isInstanceOf(BevelledRails.class);
        return (BevelledRails) remedies.get(0).then();
    }

    private static BevelledRails free(double kg) {
        return thick(kg, BevelledPair.Bearing.SPACER, Optional.of(false), LoadCases.ALWAYS);
    }

    /** An empty case of 10 kg weighs 98.07 N: a push up of 100 N lifts it off. */
    private static BevelledRails light(BevelledRails like) {
        HungWeight empty = new HungWeight(List.of(new HungWeight.Item("cabinet", 10, 10, 0.165)));
        return new BevelledRails(like.hanging().hung(empty), like.pair());
    }

    @Test
    void aLightCaseThatCanBeLiftedOffNeedsALiftStopAndNothingElse() {
        BevelledRails asked = light(free(5));
        assertThat(finding(asked).verdict()).isEqualTo(Verdict.FAILS);
        assertThat(cures(asked)).containsExactly("Put in a lift stop: a screw or a block over the case strip.");
        assertThat(then(asked)).isEqualTo(asked.pair(asked.pair().liftStop(true)));
    }

    /** With 80 kg the screws of the wall strip are used up by a tenth; a third in each stud is the least that helps. */
    @Test
    void aHeavyCaseGetsAsManyMoreScrewsInItsStudsAsItNeeds() {
        BevelledRails asked = thick(80);
        assertThat(cures(asked)).containsExactly("Put 3 screws in each stud and 10 in the case strip.");
        assertThat(then(asked)).isEqualTo(asked.fixing(asked.hanging().fixing().perStud(3)));
        assertThat(cures(free(80)))
                .containsExactly("Put 3 screws in each stud and 10 in the case strip, and a lift stop.");
        assertThat(then(free(80)).pair().liftStop()).contains(true);
        assertThat(then(free(80)).holds()).isTrue();
    }

    /** Two screws take the whole case strip, where six hold: 3, 4, 5 do not. */
    @Test
    void aCaseStripOnTooFewScrewsGetsTheFewestThatHold() {
        BevelledRails like = thick(40);
        BevelledRails asked = like.pair(like.pair().screws(like.pair().screws().count(2)));
        assertThat(finding(asked).verdict()).isEqualTo(Verdict.FAILS);
        BevelledRails mended = then(asked);
        int screws = mended.pair().screws().count();
        assertThat(mended.holds()).isTrue();
        assertThat(mended.hanging().fixing()).isEqualTo(asked.hanging().fixing());
        for (int fewer = 2; fewer < screws; fewer++) {
            BevelledRails less =
                    asked.pair(asked.pair().screws(asked.pair().screws().count(fewer)));
            assertThat(less.holds()).as("%s screws", fewer).isFalse();
        }
        assertThat(cures(asked).get(0)).isEqualTo("Put 2 screws in each stud and " + screws + " in the case strip.");
    }

    /**
     * 19 mm are too thin for the screws of the case: from 25 mm on, 6 mm more, bevel and screws deeper by as much at 45 degrees; the depth in
     * half millimetres is 79.5 + 6 and 69.5 + 6.
     */
    @Test
    void thinStripsAreMadeThickerDeeperAndWithLongerScrews() {
        BevelledRails asked = thin(25, 40, BevelledPair.Bearing.SPACER);
        assertThat(cures(asked))
                .containsExactly("Make both strips 25 mm thick, the one on the wall 85.5 mm and the one on the case"
                        + " 75.5 mm deep, the spacer as thick, and the screws as much longer. Put 2 screws in each"
                        + " stud and 10 in the case strip.");
        BevelledRails mended = then(asked);
        assertThat(mended.hanging().fixing().rail().thickness()).isEqualTo(Length.mm(25));
        assertThat(mended.hanging().fixing().length().toMm()).isCloseTo(76.2 + 6, within(1e-9));
        assertThat(mended.pair().screws().length().toMm()).isCloseTo(38 + 6, within(1e-9));
    }

    /** Where 25 mm do not do it is 32 mm; a bevel 2.5 diameters, 12.07 mm, above the screws needs 50 + 12.07 + 25 mm of depth, so 87.5. */
    @Test
    void theThinnestThatHoldsIsOffered() {
        assertThat(cures(thin(40, 40, BevelledPair.Bearing.SPACER)))
                .hasSize(1)
                .allMatch(cure -> cure.startsWith("Make both strips 32 mm thick, the one on the wall 92.5 mm"));
        assertThat(cures(thin(25, 50, BevelledPair.Bearing.SPACER)))
                .hasSize(1)
                .allMatch(cure -> cure.startsWith("Make both strips 25 mm thick, the one on the wall 87.5 mm"));
    }

    /** The cure says a lift stop, so what is asked again has one, whether the case is heavy enough without it or not. */
    @Test
    void thickerStripsOfACaseThatCanBeLiftedOffGetAStopToo() {
        BevelledRails stopped = thin(25, 40, BevelledPair.Bearing.SPACER);
        BevelledRails free = stopped.pair(stopped.pair().liftStop(false));
        for (BevelledRails asked : List.of(free, light(free))) {
            assertThat(cures(asked))
                    .hasSize(1)
                    .allMatch(cure -> cure.startsWith("Make both strips 25 mm thick")
                            && cure.endsWith("Put 2 screws in each stud and 10 in the case strip, and a lift stop."));
            assertThat(then(asked).pair().liftStop()).contains(true);
            assertThat(then(asked).holds()).isTrue();
        }
    }

    @Test
    void whereNothingOfThisHelpsNothingIsOffered() {
        Finding finding = finding(thick(160));
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isEmpty();
        assertThat(finding.outcomes().stream().map(outcome -> outcome.planned()))
                .anyMatch((Check check) -> !check.holds());
    }
}
