package fairgrain.clearance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.material.ShippedWoods;
import fairgrain.part.Board;
import fairgrain.part.Face;
import fairgrain.part.Finish;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class FinishEffectTest {
    private static final Setting IN = Panels.setting(0.08, 0.06, 0.11);
    private static final Face VARNISH = film("Urethane varnish", 3, 0.0643);
    private static final Face EPOXY = film("Epoxy", 2, 0.0095);

    private static Face film(String name, int coats, double perDay) {
        return new Face(
                new Finish("a-1", name, coats, perDay / 86_400, "", Citation.of("own", "a test", Basis.JUDGEMENT)));
    }

    private static FinishEffect effect(
            double mm, double widthMm, boolean framed, Face front, Face back, MoistureYear behind) {
        Board cherry = Board.of(ShippedWoods.wood("black-cherry"), RingAngle.FLATSAWN, Length.mm(mm));
        return new FinishEffect("top", cherry, Length.mm(widthMm), framed, front, back, 0.47, behind, IN);
    }

    private static Finding asked(FinishEffect effect) {
        return effect.findings().get(0);
    }

    @Test
    void anOrdinaryFinishOnBothFacesTakesLittleOffAndCupsNothing() {
        FinishEffect both = effect(19, 300, false, VARNISH, VARNISH, IN.year());
        assertThat(both.answer().cup().toMm()).isCloseTo(0, within(1e-6));
        Finding finding = asked(both);
        assertThat(finding.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(finding.why().in(ShopRule.MILLIMETRES))
                .startsWith("Urethane varnish, 3 coats on both faces takes only ")
                .endsWith(" late.");
        assertThat(finding.remedies()).isEmpty();
        assertThat(finding.notes())
                .anySatisfy(note -> assertThat(note.sentence()).startsWith("No gap is made smaller for a finish"));
    }

    @Test
    void aFinishOnOneFaceCupsABoardAndBothFacesAlikeMendIt() {
        FinishEffect front = effect(19, 600, false, EPOXY, Face.BARE, IN.year());
        assertThat(front.answer().difference()).isBetween(0.003, 0.03);
        assertThat(front.answer().cup().toMm()).isBetween(1.0, 12.0);
        Finding finding = asked(front);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).hasSize(1);
    }

    @Test
    void saysWhatIsSoOfFacesThatDifferAndOfFilmsThatDoNothing() {
        Finding post = asked(effect(120, 90, false, VARNISH, Face.BARE, IN.year()));
        assertThat(post.notes())
                .anySatisfy(note -> assertThat(note.sentence()).startsWith("Its two faces are not alike"));
        Finding oil = asked(effect(8, 100, false, film("Linseed oil", 1, 4), Face.BARE, IN.year()));
        assertThat(oil.why().in(ShopRule.MILLIMETRES))
                .startsWith("Linseed oil, 1 coat on its front alone takes less than 1 % off");
    }

    @Test
    void theCupIsWhatOneFaceSwellsMoreOverEightTimesTheThickness() {
        FinishEffect.Effect answer =
                effect(19, 300, false, EPOXY, Face.BARE, IN.year()).answer();
        assertThat(answer.cup().toMm()).isCloseTo(answer.strain() * 300 * 300 / (8 * 19), within(1e-9));
        // a point of difference is about 0.25 to 0.35 % of the width in cherry
        assertThat(answer.strain() / answer.difference()).isBetween(0.2, 0.4);
    }

    @Test
    void otherAirBehindCupsEvenLikeFaces() {
        MoistureYear damp = Panels.setting(0.1, 0.12, 0.17).year();
        FinishEffect door = effect(19, 600, false, VARNISH, VARNISH, damp);
        assertThat(door.answer().difference()).isBetween(0.005, 0.06);
        Finding finding = asked(door);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isEmpty(); // its faces are alike already
    }

    @Test
    void aFrameHoldsFlatWhatAFreeBoardMayNotDo() {
        assertThat(asked(effect(8, 250, true, VARNISH, Face.BARE, IN.year())).verdict())
                .isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(asked(effect(8, 250, true, VARNISH, Face.BARE, IN.year())).notes())
                .anySatisfy(note -> assertThat(note.sentence()).startsWith("A frame holds it flat"));
    }

    @Property(tries = 60)
    void aTighterFilmOnOneFaceNeverKeepsTheFacesNearerWhileTheBoardIsThin(
            @ForAll @Scale(5) @DoubleRange(min = 6, max = 22) double mm,
            @ForAll @Scale(5) @DoubleRange(min = 0.05, max = 1) double perDay) {
        double loose = effect(mm, 300, false, film("f", 1, perDay), Face.BARE, IN.year())
                .answer()
                .difference();
        double tight = effect(mm, 300, false, film("f", 2, perDay / 2), Face.BARE, IN.year())
                .answer()
                .difference();
        assertThat(tight).isGreaterThanOrEqualTo(loose - 1e-9);
    }

    @Property(tries = 60)
    void everyRemedyAskedAgainHoldsAndEveryNumberIsOne(
            @ForAll @Scale(5) @DoubleRange(min = 4, max = 60) double mm,
            @ForAll @DoubleRange(min = 50, max = 1200) double width,
            @ForAll boolean framed,
            @ForAll boolean tight) {
        FinishEffect effect = effect(mm, width, framed, tight ? EPOXY : VARNISH, Face.BARE, IN.year());
        Finding finding = asked(effect);
        assertThat(effect.answer().cup().metres()).isFinite().isNotNegative();
        if (finding.verdict() == Verdict.FAILS) {
            assertThat(finding.remedies()).hasSize(1);
        }
        for (Remedy remedy : finding.remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }
}
