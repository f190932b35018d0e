package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is said, and said to be missing, of a ledger under a case, and of the rail above it. */
class LedgerWordsTest {
    private static final LongGrain STRONG = LongGrain.of(80e6, 9e6);

    private static Rail strip(Optional<Length> depth, Optional<Length> screwsUp, double thickMm) {
        return new Rail(
                "a ledger",
                Rail.Kind.SOLID,
                0.45,
                Length.mm(thickMm),
                depth,
                screwsUp,
                Rail.Held.BOTH_EDGES,
                OptionalDouble.empty(),
                STRONG,
                Hung.ANY);
    }

    private static Ledger ledger(int perStud) {
        return new Ledger(strip(Optional.of(Length.mm(70)), Optional.of(Length.mm(40)), 19), perStud, Length.inches(3));
    }

    private static Finding finding(Hanging hanging, int perStud) {
        return new LedgerHold(hanging, ledger(perStud)).findings().get(0);
    }

    /** The ledger hangs on the same screws as the rail above: what their maker does not say is missing of both. */
    @Test
    void whatTheMakerOfItsScrewsDoesNotSayIsMissing() {
        DeclaredScrew screw = new DeclaredScrew(
                "declared screw",
                Length.mm(5),
                new Force(900),
                new Force(700),
                Optional.empty(),
                DeclaredScrew.Given.ALLOWABLE,
                1,
                0.5,
                Optional.empty(),
                Length.ZERO);
        Hanging like = Hung.cabinet(5, 2, 12.7);
        Fixing fixing = new Fixing(
                screw,
                Length.inches(3),
                like.fixing().top(),
                like.fixing().studs(),
                like.fixing().rail());
        assertThat(finding(like.fixing(fixing), 2).missing())
                .containsExactly(
                        new Missing(
                                "what the screw holds in wood as light as "
                                        + like.stud().name(),
                                "ask its maker for values in such wood, or take a screw of the table"),
                        new Missing(
                                "what the screw holds sideways across what lies between rail and stud",
                                "ask its maker for a value across such a gap, or let the rail in so that it lies on the"
                                        + " studs"),
                        new Missing(
                                "the pull at which its head goes through the rail",
                                "ask its maker and enter 'pull through'"));
        assertThat(finding(like, 2).missing()).isEmpty();
    }

    @Test
    void aLedgerThatHoldsIsOfferedNoCureAndOneThatDoesNotTheFewestScrews() {
        Finding holds = finding(Hung.cabinet(5, 2, 0), 2);
        assertThat(holds.outcomes()).allMatch(outcome -> outcome.planned().holds());
        assertThat(holds.remedies()).isEmpty();
        assertThat(holds.cautions()).contains(Caution.CHILDREN);
        Hanging heavy = Hung.cabinet(60, 2, 12.7);
        Finding weak = finding(heavy, 1);
        assertThat(weak.remedies()).hasSize(1);
        assertThat(weak.remedies().get(0).words().sentence())
                .isEqualTo("Put {} screws in each stud through the ledger.");
        int screws = (int) weak.remedies().get(0).words().numbers().get(0).si();
        assertThat(new LedgerHold(heavy, ledger(screws)).holds()).isTrue();
        assertThat(new LedgerHold(heavy, ledger(screws - 1)).holds()).isFalse();
    }

    /** Case 20 kg, doors 8.8 kg and contents 25 kg at most rest on it. */
    @Test
    void theWeightToldIsThatOfHeavyContents() {
        Finding finding = finding(Hung.cabinet(20, 2, 0), 2);
        assertThat(finding.why().sentence())
                .isEqualTo("With heavy contents {} rest on the ledger and pull its screws out with {} together.");
        assertThat(finding.why().numbers().get(0).si())
                .isCloseTo((20 + 8.8 + 25) * Force.STANDARD_GRAVITY, within(1e-3));
        assertThat(finding.why().numbers().get(1).si())
                .isCloseTo((20 + 8.8 + 25) * Force.STANDARD_GRAVITY * 19 / 40, within(1e-3));
    }

    // The rail itself

    @Test
    void aRailKnowsWhereItsScrewsSitOrTakesItsMiddleOrFortyMillimetres() {
        Optional<Length> deep = Optional.of(Length.mm(70));
        assertThat(strip(deep, Optional.of(Length.mm(25)), 19).below()).isCloseTo(0.025, within(1e-12));
        assertThat(strip(deep, Optional.empty(), 19).below()).isCloseTo(0.035, within(1e-12));
        assertThat(strip(Optional.empty(), Optional.empty(), 19).below()).isCloseTo(0.040, within(1e-12));
    }

    @Test
    void railsOutOfReasonAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> strip(Optional.empty(), Optional.empty(), 19_000))
                .withMessage("rail thickness must be from 0.003 to 0.06 m, but was 19");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> strip(Optional.empty(), Optional.of(Length.mm(40)), 19))
                .withMessage("where the screws sit in the rail means nothing without the rail's depth");
    }

    // A pair of strips on a case that is not a metre wide

    /** The weight of 30 kg on 800 mm: v = 294.2/0.8 N/m bends the case strip between ten screws 80 mm apart, on 58 by 32 mm left. */
    @Test
    void theNarrowerTheCaseTheMoreLiesOnEachMetreOfItsStrips() {
        BevelledRails wide = BevelledRailsTest.thick(5);
        Hanging narrow = new Hanging(
                "cabinet",
                wide.hanging().hung(),
                Cabinet.wide(Length.mm(800)),
                wide.hanging().fixing().studs(Hung.at(100, 400, 700)),
                wide.hanging().stud(),
                wide.hanging().layers(),
                wide.hanging().in());
        double v = 30 * Force.STANDARD_GRAVITY / 0.8;
        double m = v * 0.080 * 0.080 / 8;
        double stress = m / (0.032 * 0.058 * 0.058 / 6) + m / (0.058 * 0.032 * 0.032 / 6);
        assertThat(new BevelledRails(narrow, wide.pair())
                        .answer().checks().stream()
                                .filter(check ->
                                        check.what().startsWith("bending of the case strip from screw to screw"))
                                .findFirst()
                                .orElseThrow()
                                .demand())
                .isCloseTo(stress, within(1.0));
    }
}
