package fairgrain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** What data/woods.csv promises. The cells themselves are frozen by the test of all tables. */
class ShippedWoodsTest {
    private static final Woods WOODS = ShippedWoods.WOODS;

    @Test
    void holdsEveryWood() {
        assertThat(WOODS.all()).hasSize(246);
        assertThat(WOODS.all().stream().filter(wood -> wood.shrinkage() != null))
                .hasSize(229);
        assertThat(WOODS.all().stream().filter(wood -> wood.gravity() != null)).hasSize(162);
        assertThat(WOODS.all().stream().filter(wood -> wood.strength() != null)).hasSize(164);
    }

    @Test
    void theSumsOfTheShrinkagesAreThoseOfTheTable() {
        List<Shrinkage> known = WOODS.all().stream()
                .map(Wood::shrinkage)
                .flatMap(Stream::ofNullable)
                .toList();
        // radial without gray birch, 5.2, which has no tangential figure
        assertThat(known.stream().mapToDouble(Shrinkage::radial).sum()).isCloseTo(10.390 - 0.052, within(1e-9));
        assertThat(known.stream().mapToDouble(Shrinkage::tangential).sum()).isCloseTo(18.487, within(1e-9));
        assertThat(known.stream().filter(Shrinkage::isBent)).hasSize(49);
    }

    @Test
    void theseAreTheWoodsWhoseTotalTheBentCurveRaises() {
        assertThat(WOODS.all().stream().filter(wood -> {
                    Shrinkage shrinkage = wood.shrinkage();
                    return shrinkage != null && shrinkage.raisesTotal();
                }))
                .extracting(Wood::id)
                .containsExactly(
                        "afrormosia",
                        "afzelia",
                        "ash-genus-average",
                        "black-cherry",
                        "black-locust",
                        "european-ash",
                        "european-birch",
                        "european-oak",
                        "iroko",
                        "iroko-handbook",
                        "jatoba",
                        "makore",
                        "niangon",
                        "norway-spruce",
                        "sapele",
                        "sapele-handbook",
                        "spruce-genus-average",
                        "sycamore-maple",
                        "teak",
                        "yellow-meranti");
    }

    @Test
    void noNameOfOneWoodIsTheOwnNameOfAnother() {
        Map<String, String> own = new HashMap<>();
        for (Wood wood : WOODS.all()) {
            for (String name : new HashSet<>(List.of(WoodNames.letters(wood.id()), WoodNames.letters(wood.name())))) {
                assertThat(own.put(name, wood.id())).as(name).isNull();
            }
        }
        for (Wood wood : WOODS.all()) {
            Set<String> once = new HashSet<>();
            for (String name : wood.names().trade()) {
                assertThat(own).as(wood.id()).doesNotContainKey(WoodNames.letters(name));
                assertThat(once.add(WoodNames.letters(name))).as(name).isTrue();
            }
        }
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/shrinkage-coefficients.csv", useHeadersInDisplayName = true)
    void holdsTheTotalsThatThePrintedCoefficientsBearOut(String id, double radial, double tangential, double start) {
        Shrinkage shrinkage = Objects.requireNonNull(ShippedWoods.wood(id).shrinkage());
        assertThat(shrinkage.radial()).isEqualTo(radial * 0.01);
        assertThat(shrinkage.tangential()).isEqualTo(tangential * 0.01);
        assertThat(shrinkage.start()).isEqualTo(start * 0.01);
    }

    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = "/published/shrinkage-coefficient-exceptions.csv", useHeadersInDisplayName = true)
    void whereTheTablesDisagreeItNeverHoldsLessThanTheTotal(String id, double radial, double tangential, double start) {
        Shrinkage shrinkage = Objects.requireNonNull(ShippedWoods.wood(id).shrinkage());
        assertThat(shrinkage.radial()).isGreaterThanOrEqualTo(radial * 0.01);
        assertThat(shrinkage.tangential()).isGreaterThanOrEqualTo(tangential * 0.01);
    }

    @ParameterizedTest(name = "{0}: {1} and {2} %, {3}")
    @CsvSource({
        "white-oak, 5.6, 10.5, read",
        "northern-red-oak, 4.0, 8.6, second-hand",
        "red-oak-commercial, 4.6, 10.3, from memory",
        "black-walnut, 5.5, 7.8, read",
        "sugar-maple, 4.8, 9.9, second-hand",
        "iroko, 3.5, 5.4, read",
        "true-mahogany, 3.7, 5.1, from memory",
        "african-mahogany, 4.1, 5.8, from memory",
        "teak, 2.5, 5.8, from memory",
        "purpleheart, 4.6, 6.6, second-hand",
        "scots-pine, 5.2, 8.3, second-hand",
        "white-spruce, 3.8, 7.8, from memory",
        "green-ash, 4.6, 7.1, read"
    })
    void conflictsAreResolvedAsTheDocumentSays(String id, double radial, double tangential, String basis) {
        Shrinkage shrinkage = Objects.requireNonNull(ShippedWoods.wood(id).shrinkage());
        assertThat(shrinkage.radial()).isEqualTo(radial * 0.01);
        assertThat(shrinkage.tangential()).isEqualTo(tangential * 0.01);
        assertThat(shrinkage.evidence().sources().get(0).basis().words()).isEqualTo(basis);
    }

    @ParameterizedTest(name = "{0}: {1} GPa, {2}")
    @CsvSource({
        "sapele, 11.7, read",
        "sapele-handbook, 12.5, from memory",
        "iroko, 9.4, second-hand",
        "iroko-handbook, 10.1, from memory",
        "western-hemlock, 11.2, read",
        "white-oak, 12.3, read",
        "bur-oak, 7.1, read",
        "european-oak, 11.7, second-hand"
    })
    void stiffnessIsTheLowerOfThoseSeenAndKeepsItsOwnBasis(String id, double elasticity, String basis) {
        Strength strength = Objects.requireNonNull(ShippedWoods.wood(id).strength());
        assertThat(strength.elasticity()).isEqualTo(elasticity * 1e9);
        assertThat(strength.evidence(Strength.Property.ELASTICITY).weakest().words())
                .isEqualTo(basis);
    }

    @Test
    void everyFigureNamesWhereItComesFrom() {
        for (Wood wood : WOODS.all()) {
            Stream.of(
                            Stream.ofNullable(wood.shrinkage()).map(Shrinkage::evidence),
                            Stream.ofNullable(wood.gravity()).map(SpecificGravity::evidence),
                            Stream.ofNullable(wood.strength()).map(Strength::evidence))
                    .flatMap(each -> each)
                    .flatMap(evidence -> evidence.sources().stream())
                    .forEach(citation ->
                            assertThat(citation.place()).as(wood.id()).isNotEmpty());
        }
    }

    @Test
    void noFigureIsOnABasisThatOnlyAUserCanGive() {
        assertThat(WOODS.all().stream()
                        .map(Wood::shrinkage)
                        .flatMap(Stream::ofNullable)
                        .flatMap(shrinkage -> shrinkage.evidence().sources().stream())
                        .map(Citation::basis))
                .doesNotContain(Basis.ENTERED, Basis.DECLARED);
    }

    @Test
    void densitiesStayWithinWhatWoodWeighs() {
        for (Wood wood : WOODS.all()) {
            SpecificGravity gravity = wood.gravity();
            if (gravity != null) {
                assertThat(gravity.density(0.12)).as(wood.id()).isBetween(150.0, 1250.0);
                gravity.ovenDry()
                        .ifPresent(dry -> assertThat(dry)
                                .as(wood.id())
                                .isGreaterThanOrEqualTo(gravity.atTwelve().orElseThrow()));
            }
        }
    }
}
