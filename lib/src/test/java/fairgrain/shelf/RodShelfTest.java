package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class RodShelfTest {
    private static final OptionalDouble OAK = OptionalDouble.of(0.68);
    private static final OptionalDouble STUD = OptionalDouble.of(0.42);

    private static RodShelf shelf(
            int rods,
            double diameterMm,
            double kgPerMetre,
            OptionalDouble wood,
            OptionalDouble wall,
            Optional<Metal> metal) {
        return new RodShelf(
                "floating shelf",
                "oak",
                wood,
                Shelves.ANY,
                5,
                Length.mm(900),
                Length.mm(200),
                Length.mm(50),
                new SteelRods(rods, Length.mm(diameterMm), Length.mm(150), Length.mm(80), Length.mm(12), metal, wall),
                new ShelfLoad("things", kgPerMetre * 0.8, kgPerMetre, 0.1, Shelves.ANY),
                Force.newtons(50),
                Shelves.in(ShopRule.MILLIMETRES));
    }

    private static RodShelf known(int rods, double diameterMm, double kgPerMetre) {
        return shelf(rods, diameterMm, kgPerMetre, OAK, STUD, Optional.of(Metal.STEEL));
    }

    /**
     * Three rods: own 5 kg x 1.25/3 = 20.43 N at 100 mm, 9 kg of things 36.77 N at 122 mm, push 50 N at 200 mm: 107.2 N at 154.1 mm.
     * With the 12 mm gap M = 17.81 N m; 32 M/(pi 16^3) = 44.3 MPa against 235/1.65 = 142.4 MPa.
     */
    @Test
    void agreesWithTheHandCalculation() {
        RodShelf.Held held = known(3, 16, 10).answer();
        assertThat(held.onOneRod().newtons()).isCloseTo(107.2, within(0.05));
        assertThat(held.arm().toMm()).isCloseTo(154.1, within(0.1));
        assertThat(held.checks().get(0).demand() / 1e6).isCloseTo(44.3, within(0.1));
        assertThat(held.checks().get(0).capacity() / 1e6).isCloseTo(142.4, within(0.05));
        // own and expected things, 20.43 and 29.42 N, 49.85 N at 113.0 mm; E I = 200e9 x pi 0.016^4/64 = 643.4 N m2;
        // 49.85 x 0.125^2 (2 x 0.125 + 3 x 0.087)/(6 x 643.4) = 0.103 mm, twice 0.206
        assertThat(held.checks().get(4).demand() * 1000).isCloseTo(0.206, within(0.001));
    }

    @Test
    void holdsWithThickRodsInOakAndStuds() {
        assertThat(known(3, 15, 10).findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void isNeverSaidToHoldWhereTheWallTheWoodOrTheRodsAreUnknown() {
        for (RodShelf unknown : List.of(
                shelf(3, 16, 5, OAK, OptionalDouble.empty(), Optional.of(Metal.STEEL)),
                shelf(3, 16, 5, OptionalDouble.empty(), STUD, Optional.of(Metal.STEEL)),
                shelf(3, 16, 5, OAK, STUD, Optional.empty()))) {
            assertThat(unknown.findings().get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
            assertThat(unknown.findings().get(0).missing()).hasSize(1);
        }
        assertThat(shelf(3, 16, 5, OAK, OptionalDouble.empty(), Optional.of(Metal.STEEL))
                        .findings()
                        .get(0)
                        .missing())
                .containsExactly(new Missing(
                        "what holds the rods in the wall",
                        "bore each into a stud or solid blocking, and enter it as 'into'; for masonry ask the maker of"
                                + " the anchor"));
    }

    @Test
    void aRodTooThickForTheShelfFails() {
        Finding finding = known(3, 18, 5).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Property
    void moreOnItNeverAsksLessAndMoreRodsNeverMore(
            @ForAll @IntRange(min = 2, max = 11) int rods,
            @ForAll @DoubleRange(min = 6, max = 25) double diameter,
            @ForAll @DoubleRange(min = 0, max = 80) double load) {
        RodShelf.Held once = known(rods, diameter, load).answer();
        RodShelf.Held heavier = known(rods, diameter, load + 1).answer();
        RodShelf.Held shared = known(rods + 1, diameter, load).answer();
        for (int check = 0; check < 5; check++) {
            assertThat(heavier.checks().get(check).demand())
                    .isGreaterThanOrEqualTo(once.checks().get(check).demand());
        }
        assertThat(shared.onOneRod().newtons()).isLessThan(once.onOneRod().newtons());
        assertThat(shared.checks().get(4).demand())
                .isLessThan(once.checks().get(4).demand());
    }

    @Property(tries = 200)
    void aThickerRodIsNeverStressedMore(
            @ForAll @DoubleRange(min = 6, max = 25) double diameter,
            @ForAll @DoubleRange(min = 0, max = 80) double load) {
        RodShelf.Held thin = known(3, diameter, load).answer();
        RodShelf.Held thick = known(3, diameter + 1, load).answer();
        assertThat(thick.checks().get(0).demand())
                .isLessThan(thin.checks().get(0).demand());
        assertThat(thick.checks().get(4).demand())
                .isLessThan(thin.checks().get(4).demand());
    }

    @Property(tries = 100)
    void everyCureAskedAgainHolds(
            @ForAll @IntRange(min = 2, max = 6) int rods,
            @ForAll @DoubleRange(min = 6, max = 20) double diameter,
            @ForAll @DoubleRange(min = 0, max = 80) double load) {
        for (Remedy remedy : known(rods, diameter, load).findings().get(0).remedies()) {
            assertThat(remedy.then().findings().get(0).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        }
    }

    @Test
    void anOverloadedShelfIsOfferedACure() {
        Finding finding = known(2, 12, 25).findings().get(0);
        assertThat(finding.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(finding.remedies()).isNotEmpty();
    }

    @Test
    void refusesRodsThatComeOutInFront() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RodShelf(
                        "floating shelf",
                        "oak",
                        OAK,
                        Shelves.ANY,
                        5,
                        Length.mm(900),
                        Length.mm(150),
                        Length.mm(50),
                        new SteelRods(
                                3,
                                Length.mm(12),
                                Length.mm(150),
                                Length.mm(80),
                                Length.mm(12),
                                Optional.of(Metal.STEEL),
                                STUD),
                        new ShelfLoad("things", 5, 5, 0.1, Shelves.ANY),
                        Force.newtons(50),
                        Shelves.in(ShopRule.MILLIMETRES)))
                .withMessage("the rods must go less deep into the shelf than it is deep");
    }
}
