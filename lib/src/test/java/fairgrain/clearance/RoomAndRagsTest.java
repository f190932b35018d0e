package fairgrain.clearance;

import static fairgrain.clearance.Panels.board;
import static fairgrain.clearance.Panels.setting;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.material.Shrinkage;
import fairgrain.material.SpecificGravity;
import fairgrain.material.VolumeBasis;
import fairgrain.material.Wood;
import fairgrain.material.WoodNames;
import fairgrain.movement.LongGrain;
import fairgrain.part.Board;
import fairgrain.part.Face;
import fairgrain.part.Finish;
import fairgrain.part.RingAngle;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Cautions and words about finishes, lamps, lengths, figured and glued-up wood. */
class RoomAndRagsTest {
    private static final Setting IN = setting(0.08, 0.06, 0.11);

    private static List<String> notes(Finding finding) {
        return finding.notes().stream().map(Words::sentence).toList();
    }

    // Finishes

    private static Face film(String name) {
        return new Face(new Finish("a-1", name, 2, 0.05 / 86_400, "", Citation.of("own", "a test", Basis.JUDGEMENT)));
    }

    private static FinishEffect effect(Face front, Face back, boolean framed) {
        return new FinishEffect(
                "top", Gaps.thick(board(0.04, 0.08), 19), Length.mm(300), framed, front, back, 0.47, IN.year(), IN);
    }

    /** Rags with drying oils heat up by themselves and burn: on either face, however it is written. */
    @ParameterizedTest
    @CsvSource({
        "Linseed oil, true",
        "OIL and wax, true",
        "Soya alkyd, true",
        "Urethane varnish, true",
        "Shellac, false",
        "Epoxy, false"
    })
    void ragsWithOilAreWarnedOf(String name, boolean oily) {
        Finding front = effect(film(name), Face.BARE, false).findings().get(0);
        Finding back = effect(film("Shellac"), film(name), false).findings().get(0);
        assertThat(front.cautions().contains(Caution.OILY_RAGS)).isEqualTo(oily);
        assertThat(back.cautions().contains(Caution.OILY_RAGS)).isEqualTo(oily);
        assertThat(front.cautions()).contains(Caution.WOOD_DUST);
    }

    @Test
    void bareWoodHasNoRags() {
        assertThat(effect(Face.BARE, Face.BARE, false).findings().get(0).cautions())
                .containsExactly(Caution.WOOD_DUST);
    }

    /** Free it may cup by a two-hundredth of 300 mm; held flat each face bears half of the difference, to 3 thousandths. */
    @Test
    void whatIsAllowedIsToldByHowItIsHeld() {
        FinishEffect free = effect(film("Epoxy"), Face.BARE, false);
        FinishEffect framed = effect(film("Epoxy"), Face.BARE, true);
        assertThat(free.answer().checks().get(0).capacity()).isCloseTo(0.0015, within(1e-12));
        assertThat(free.answer().checks().get(0).demand())
                .isEqualTo(free.answer().cup().metres());
        assertThat(framed.answer().checks().get(0).capacity()).isEqualTo(0.003);
        assertThat(framed.answer().checks().get(0).demand())
                .isCloseTo(framed.answer().strain() / 2, within(1e-15));
        assertThat(free.evidence().sources()).contains(FinishEffect.CUP_LIMIT).doesNotContain(FinishEffect.FACE_STRAIN);
        assertThat(framed.evidence().sources())
                .contains(FinishEffect.FACE_STRAIN)
                .doesNotContain(FinishEffect.CUP_LIMIT);
        assertThat(free.spreads()).isNotEmpty();
    }

    // Lamps

    private static LampInCase lamp(double watts, double fromEdgeMm) {
        return new LampInCase("lamp", watts, 1, Length.mm(10), Length.mm(fromEdgeMm), IN);
    }

    /** To half a watt: with that much it holds, with half a watt more it does not. */
    @Test
    void aLampThatDriesTheCaseIsMadeAsWeakAsItMust() {
        List<Remedy> cures = lamp(40, 30).findings().get(0).remedies();
        assertThat(cures).hasSize(1);
        assertThat(cures.get(0).words().sentence())
                .isEqualTo("Let no more than {} W burn in it, or vent it above and below.");
        double watts = cures.get(0).words().numbers().get(0).si();
        assertThat(lamp(watts, 30).answer().checks().get(0).holds()).isTrue();
        assertThat(lamp(watts + 0.5, 30).answer().checks().get(0).holds()).isFalse();
        assertThat(cures.get(0).then()).isEqualTo(lamp(watts, 30));
    }

    @Test
    void aWeakerLampDoesNotMoveACableHole() {
        assertThat(lamp(1, 10).findings().get(0).remedies()).isEmpty();
        assertThat(lamp(40, 10).findings().get(0).remedies()).isEmpty();
        assertThat(lamp(1, 30).findings().get(0).remedies()).isEmpty();
    }

    // Along the grain

    private static LengthMovement along(Figure figure, @Nullable Length room, Setting in) {
        return new LengthMovement("board", figure.of(board(0.04, 0.08)), figure, Length.mm(1000), room, in);
    }

    /** 0.2 % from 30 points to none is the most of ordinary boards, 0.1 % the least: over 3 and 2 points, on a metre. */
    @Test
    void ordinaryBoardsDoHalfToAllOfTheMostThatIsPublished() {
        LengthMovement asked = along(Figure.STRAIGHT, null, IN);
        Finding finding = asked.findings().get(0);
        assertThat(asked.answer().growing().metres()).isCloseTo(0.002 * 0.03 / 0.30, within(1e-6));
        assertThat(asked.answer().shortening().metres()).isCloseTo(0.002 * 0.02 / 0.30, within(1e-6));
        assertThat(finding.why().sentence())
                .isEqualTo("It is {} long that day, grows by no more than {} by the damp end and shortens by {} by the"
                        + " dry end.");
        assertThat(finding.why().numbers().get(2)).isEqualTo(asked.answer().shortening());
        Words half = finding.notes().stream()
                .filter(note ->
                        note.sentence().equals("Most boards do about half of that: expected between {} and {} longer."))
                .findFirst()
                .orElseThrow();
        assertThat(half.numbers().get(0).si())
                .isCloseTo(asked.answer().growing().metres() / 2, within(1e-12));
        assertThat(half.numbers().get(1)).isEqualTo(asked.answer().growing());
        assertThat(finding.evidence().sources()).contains(LongGrain.SOURCE).doesNotContain(Figure.ALONG);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "how much room it has along its grain",
                        "leave it the room above, and enter it as 'room in length' to have it checked"));
        assertThat(along(Figure.STRAIGHT, Length.mm(2), IN).findings().get(0).missing())
                .isEmpty();
    }

    @Test
    void oddGrainIsNotSaidToDoHalfAndOnlyWhatRunsAnyWayHasAShrinkageCurve() {
        Finding pith = along(Figure.NEAR_PITH, null, IN).findings().get(0);
        assertThat(notes(pith)).isEmpty();
        assertThat(pith.evidence().sources()).contains(Figure.ALONG).doesNotContain(LongGrain.SOURCE);
        assertThat(notes(along(Figure.BURL, null, IN).findings().get(0)))
                .hasSize(1)
                .allMatch(note -> note.startsWith("From end to end of the year that is {}"));
    }

    @Test
    void stockBeyondTheYearNeitherGrowsNorShortensByLessThanNothing() {
        Finding dry = along(Figure.STRAIGHT, null, setting(0.04, 0.06, 0.11))
                .findings()
                .get(0);
        assertThat(dry.why().numbers().get(2).si()).isZero();
        Finding damp = along(Figure.STRAIGHT, null, setting(0.16, 0.06, 0.11))
                .findings()
                .get(0);
        assertThat(damp.sizes().get(0).value().si()).isZero();
    }

    // Figured wood

    @ParameterizedTest
    @CsvSource({
        "CURLY, curly, how far curly grain cups and twists",
        "CROTCH, crotch, how far crotch wood cups and twists",
        "BURL, burl, how far burl wood cups and twists",
        "REACTION, reaction wood, how far reaction wood cups and twists",
        "NEAR_PITH, near the pith, how far near the pith grain cups and twists"
    })
    void howOddGrainWarpsIsNotKnown(Figure figure, String word, String missing) {
        assertThat(figure.word()).isEqualTo(word);
        assertThat(figure.flatness("panel").findings().get(0).missing())
                .extracting(Missing::what)
                .containsExactly(missing);
    }

    /** Of figured wood both directions move as the tangential one, by either figure. */
    @Test
    void figuredWoodTakesTheLargerOfBothDifferentialFigures() {
        Shrinkage both = new Shrinkage(0.04, 0.08, null, 0.3, 0.19, 0.35, 0.15, Panels.ANY);
        Wood wood =
                new Wood("a-wood", new WoodNames("a wood", "", List.of()), Wood.Origin.EUROPEAN, both, null, null, "");
        Shrinkage odd = Figure.CURLY
                .of(Board.of(wood, RingAngle.FLATSAWN, Length.mm(20)))
                .shrinkage();
        assertThat(odd.differentialRadial()).isEqualTo(0.35);
        assertThat(odd.differentialTangential()).isEqualTo(0.35);
    }

    // Glued up

    private static Board of(String name, @Nullable SpecificGravity gravity) {
        Shrinkage s = board(0.04, 0.08).shrinkage();
        Wood wood = new Wood(name, new WoodNames(name, "", List.of()), Wood.Origin.US_HARDWOOD, s, gravity, null, "");
        return Board.of(wood, RingAngle.FLATSAWN, Length.mm(20));
    }

    private static Wood glued(Board... boards) {
        return new GluedUp(List.of(boards).stream()
                        .map(each -> new GluedUp.Strip(each, Length.mm(100)))
                        .toList())
                .asOne(0)
                .wood();
    }

    @Test
    void gluedUpBoardsAreNamedOnceEachAndWeighAsTheHeaviest() {
        SpecificGravity light = new SpecificGravity(0.40, VolumeBasis.OVEN_DRY, null, Panels.ANY);
        SpecificGravity heavy = new SpecificGravity(0.70, VolumeBasis.OVEN_DRY, null, Panels.ANY);
        assertThat(glued(of("ash", heavy), of("pine", light), of("ash", heavy)).name())
                .isEqualTo("ash and pine, glued up");
        assertThat(glued(of("ash", heavy), of("ash", heavy)).name()).isEqualTo("ash");
        assertThat(glued(of("pine", light), of("ash", heavy)).gravity()).isEqualTo(heavy);
        assertThat(glued(of("ash", heavy), of("pine", light)).gravity()).isEqualTo(heavy);
        assertThat(glued(of("ash", heavy), of("pine", null)).gravity())
                .as("one of them not known")
                .isNull();
    }
}
