package fairgrain.hanging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.quantity.Length;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Pairs of strips that are refused, each at its very limit. */
class BevelledGuardsTest {
    private static final BevelledRails GOOD = BevelledRailsTest.thick(5);

    private static Rail strip(Optional<Length> depth, Optional<Length> screwsUp) {
        return new Rail(
                "a strip",
                Rail.Kind.SOLID,
                0.6,
                Length.mm(32),
                depth,
                screwsUp,
                Rail.Held.BOTH_EDGES,
                OptionalDouble.of(6e6),
                LongGrain.of(100e6, 13e6),
                Hung.ANY);
    }

    private static BevelledRails with(Fixing fixing) {
        return new BevelledRails(GOOD.hanging().fixing(fixing), GOOD.pair());
    }

    @Test
    void theDepthOfTheWallStripMustBeKnown() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GOOD.fixing(GOOD.hanging().fixing().rail(strip(Optional.empty(), Optional.empty()))))
                .withMessage("the depth of the wall strip must be known");
    }

    /** A bevel of 45 degrees on strips of 32 mm rises 32 mm: at the bevel itself no wood is left beside a screw. */
    @Test
    void theScrewsOfBothStripsMustLieClearOfTheBevel() {
        Length rise = GOOD.pair().rise(Length.mm(32));
        Length depth = Length.mm(90);
        assertThat(GOOD.pair().unfit(strip(Optional.of(depth), Optional.of(depth.minus(rise)))))
                .contains("the screws of the wall strip must sit below its bevel");
        assertThat(GOOD.pair()
                        .unfit(strip(
                                Optional.of(depth),
                                Optional.of(depth.minus(rise).minus(Length.mm(0.01))))))
                .isEmpty();
        BevelledPair just = GOOD.pair().caseDepth(Length.mm(40).plus(rise).plus(Length.mm(0.01)));
        assertThat(just.unfit(GOOD.hanging().fixing().rail())).isEmpty();
        assertThat(GOOD.pair()
                        .caseDepth(Length.mm(40).plus(rise).minus(Length.mm(0.01)))
                        .unfit(GOOD.hanging().fixing().rail()))
                .contains("the screws of the case strip must sit above its bevel");
    }

    @Test
    void aWallStripCatchesTwoStudsAtLeast() {
        Fixing good = GOOD.hanging().fixing();
        assertThat(with(new Fixing(good.screw(), good.length(), good.top(), Hung.at(94, 906), good.rail()))
                        .hanging()
                        .fixing()
                        .studs())
                .hasSize(2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(new Fixing(
                        good.screw(),
                        good.length(),
                        new Row(Length.mm(655), 2, Optional.of(Length.mm(30))),
                        Hung.at(500),
                        good.rail())))
                .withMessage("the wall strip must catch two studs at least");
    }

    @Test
    void sizesOutOfReasonAreRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GOOD.pair().caseDepth(new Length(90)))
                .withMessageStartingWith(Rail.DEPTH.name() + " must be from ");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BevelledPair(
                        GOOD.pair().bevel(),
                        GOOD.pair().caseDepth(),
                        GOOD.pair().screws(),
                        BevelledPair.Bearing.SPACER,
                        Optional.of(true),
                        Optional.of(new Length(40))))
                .withMessage("height free above the case must be from 0 to 3 m, but was 40");
    }

    @Test
    void bearingsAreNamedAsInADesignAndMayBeChanged() {
        assertThat(BevelledPair.Bearing.RECESSED_BACK.word()).isEqualTo("recessed back");
        assertThat(BevelledPair.Bearing.SPACER.word()).isEqualTo("spacer");
        assertThat(BevelledPair.Bearing.NOTHING.word()).isEqualTo("nothing");
        BevelledPair other = GOOD.pair().bearing(BevelledPair.Bearing.NOTHING);
        assertThat(other.bearing()).isEqualTo(BevelledPair.Bearing.NOTHING);
        assertThat(other.bearing(BevelledPair.Bearing.SPACER)).isEqualTo(GOOD.pair());
        assertThat(GOOD.part()).isEqualTo("cabinet");
        assertThat(GOOD.spreads()).isEqualTo(GOOD.hanging().spreads()).isNotEmpty();
    }
}
