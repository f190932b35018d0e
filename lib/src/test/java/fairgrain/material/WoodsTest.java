package fairgrain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fairgrain.finding.Basis;
import fairgrain.table.TableException;
import java.io.StringReader;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WoodsTest {
    private static final Woods WOODS = ShippedWoods.WOODS;

    @ParameterizedTest
    @CsvSource({
        "black walnut, black-walnut",
        "Black Walnut, black-walnut",
        "black-walnut, black-walnut",
        "blackwalnut, black-walnut",
        "American walnut, black-walnut",
        "cherry, black-cherry",
        "hard maple, sugar-maple",
        "rock maple, sugar-maple",
        "white oak, white-oak",
        "northern red oak, northern-red-oak",
        "commercial red oak, red-oak-commercial",
        "European oak, european-oak",
        "yellow poplar, yellow-poplar",
        "tulipwood, yellow-poplar",
        "white ash, white-ash",
        "pecan, pecan",
        "western red cedar, western-redcedar",
        "bald cypress, baldcypress",
        "coast Douglas fir, douglas-fir-coast",
        "sapele, sapele",
        "iroko, iroko",
        "teak, teak",
        "jatobá, jatoba",
        "khaya, african-mahogany",
        "Quercus alba, white-oak",
        "quercus petraea, european-oak|sessile-oak",
        "Chlorophora excelsa, iroko|iroko-handbook",
        "Juglans, black-walnut|butternut|european-walnut"
    })
    void findsTheOneWoodThatAMakerMeans(String name, String ids) {
        assertThat(WOODS.find(name)).extracting(Wood::id).containsExactly(ids.split("\\|", -1));
    }

    @ParameterizedTest
    @CsvSource({
        "maple, 8, sycamore-maple",
        "soft maple, 3, silver-maple",
        "oak, 25, bur-oak",
        "red oak, 12, red-oak-commercial",
        "walnut, 2, european-walnut",
        "Douglas-fir, 4, douglas-fir-interior-south",
        "fir, 12, douglas-fir-coast",
        "hem-fir, 6, western-hemlock",
        "mahogany, 6, dark-red-lauan",
        "Philippine mahogany, 3, light-red-lauan",
        "cedar, 8, spanish-cedar",
        "red cedar, 2, eastern-redcedar",
        "pine, 21, scots-pine",
        "southern yellow pine, 4, longleaf-pine",
        "spruce, 7, norway-spruce",
        "redwood, 3, scots-pine",
        "poplar, 4, yellow-poplar",
        "whitewood, 3, yellow-poplar",
        "ash, 8, european-ash",
        "beech, 3, american-beech",
        "birch, 7, yellow-birch",
        "hickory, 9, pecan",
        "sycamore, 2, sycamore-maple",
        "elm, 7, european-elm",
        "meranti, 4, white-meranti",
        "zebrawood, 2, zebrawood-cirad",
        "African teak, 2, iroko"
    })
    void answersWithAListWhereANameMeansSeveralWoods(String name, int size, String among) {
        assertThat(WOODS.find(name)).hasSize(size).extracting(Wood::id).contains(among);
    }

    @ParameterizedTest
    @ValueSource(strings = {"gypsum", "oa", "", " - ", "white", "spp"})
    void findsNothingForAWordThatIsNoWood(String name) {
        assertThat(WOODS.find(name)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "black walnt, black walnut",
        "whiteoak european, white oak",
        "quartersawn white oak, white oak",
        "suger maple, sugar maple",
        "purpelheart, purpleheart",
        "Douglass fir, Douglas fir",
        "mapel, maple"
    })
    void suggestsTheNameThatMayBeMeant(String typed, String suggestion) {
        assertThat(WOODS.find(typed)).isEmpty();
        assertThat(WOODS.nearest(typed)).first().isEqualTo(suggestion);
        assertThat(WOODS.find(suggestion)).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "qqqqqqqq",
                "",
                "-",
                "a very long name that nobody would type for a wood, however badly they spell it"
            })
    void suggestsNothingForNonsense(String typed) {
        assertThat(WOODS.nearest(typed)).isEmpty();
    }

    @Test
    void suggestsAFewNamesAtMost() {
        assertThat(WOODS.nearest("american white oak and red oak, ash, maple, cherry, pine"))
                .hasSizeLessThanOrEqualTo(5)
                .doesNotHaveDuplicates();
    }

    @Test
    void everyWoodIsFoundByItsKeyAndByItsOwnName() {
        for (Wood wood : WOODS.all()) {
            assertThat(WOODS.find(wood.id())).containsExactly(wood);
            assertThat(WOODS.find(wood.name())).containsExactly(wood);
            wood.names()
                    .trade()
                    .forEach(name -> assertThat(WOODS.find(name)).as(name).contains(wood));
        }
    }

    @Test
    void aTableOfOnesOwnIsAddedAndStandsInPlaceOfOurRows() {
        Woods own = read(row("white-oak", "white oak", Map.of("tangential_shrinkage_percent", "11.0"))
                + row("bog-oak", "bog oak", Map.of()));
        Woods both = WOODS.and(own);
        assertThat(both.all()).hasSize(WOODS.all().size() + 1);
        assertThat(tangential(both, "white oak")).isEqualTo(11.0 * 0.01);
        assertThat(tangential(both, "bog oak")).isEqualTo(10.5 * 0.01);
        assertThat(tangential(WOODS, "white oak")).isEqualTo(10.5 * 0.01);
        assertThat(WOODS.find("bog oak")).isEmpty();
        assertThat(own.all()).hasSize(2);
    }

    @Test
    void twoOfOnesOwnWithOneNameAreBothShown() {
        Woods both = WOODS.and(read(row("my-white-oak", "White Oak", Map.of())));
        assertThat(both.find("white oak")).extracting(Wood::id).containsExactly("white-oak", "my-white-oak");
    }

    @Test
    void figuresAreTurnedIntoSiUnits() {
        Wood wood = read(row(
                        "bog-oak",
                        "bog oak",
                        Map.ofEntries(
                                Map.entry("volumetric_shrinkage_percent", "15.0"),
                                Map.entry("differential_radial_percent_per_percent", "0.2"),
                                Map.entry("differential_tangential_percent_per_percent", "0.4"),
                                Map.entry("differential_source", "\"maker, a test\""),
                                Map.entry("differential_basis", "entered by you"),
                                Map.entry("specific_gravity", "0.6"),
                                Map.entry("specific_gravity_basis", "\"oven-dry mass, green volume\""),
                                Map.entry("mor_mpa", "100"),
                                Map.entry("moe_gpa", "12.5"),
                                Map.entry("compression_parallel_mpa", "50"),
                                Map.entry("compression_perpendicular_mpa", "7"),
                                Map.entry("shear_parallel_mpa", "13"),
                                Map.entry("tension_perpendicular_mpa", "5"),
                                Map.entry("side_hardness_n", "6000"),
                                Map.entry("strength_moisture_percent", "12"),
                                Map.entry("strength_source", "\"maker, a test\""),
                                Map.entry("strength_basis", "entered by you"))))
                .all()
                .get(0);
        Shrinkage shrinkage = Objects.requireNonNull(wood.shrinkage());
        assertThat(shrinkage.radial()).isEqualTo(5.6 * 0.01);
        assertThat(shrinkage.volumetric()).isEqualTo(15 * 0.01);
        assertThat(shrinkage.start()).isEqualTo(30 * 0.01);
        assertThat(shrinkage.differentialRadial()).isEqualTo(0.2);
        assertThat(shrinkage.differentialTangential()).isEqualTo(0.4);
        assertThat(shrinkage.evidence().sources())
                .extracting(Object::toString)
                .containsExactly(
                        "own, a test (judgement)",
                        "maker, a test (entered by you)",
                        "gtr190, chapter 4: shrinkage varies by about 15 % (from memory)");
        SpecificGravity gravity = Objects.requireNonNull(wood.gravity());
        assertThat(gravity.value()).isEqualTo(0.6);
        assertThat(gravity.basis()).isEqualTo(VolumeBasis.GREEN);
        assertThat(gravity.volumetric()).isEqualTo(15 * 0.01);
        Strength strength = Objects.requireNonNull(wood.strength());
        assertThat(strength.rupture()).isEqualTo(100e6);
        assertThat(strength.elasticity()).isEqualTo(12.5e9);
        assertThat(strength.compressionParallel()).isEqualTo(50e6);
        assertThat(strength.compressionPerpendicular()).isEqualTo(7e6);
        assertThat(strength.shearParallel()).isEqualTo(13e6);
        assertThat(strength.tensionPerpendicular()).isEqualTo(5e6);
        assertThat(strength.sideHardness()).isEqualTo(6000);
        assertThat(strength.moisture()).isEqualTo(0.12);
        for (Strength.Property property : Strength.Property.values()) {
            assertThat(strength.evidence(property).weakest()).isEqualTo(Basis.ENTERED);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "us hardwood, read, 0.15",
        "us softwood, second-hand, 0.15",
        "us hardwood, entered by you, 0.15",
        "us hardwood, from memory, 0.2",
        "us softwood, judgement, 0.2",
        "imported, read, 0.2",
        "european, read, 0.2"
    })
    void figuresOfOtherSamplesOrFromMemoryAreGivenAWiderSpread(String origin, String basis, double cv) {
        Wood wood = read(row("bog-oak", "bog oak", Map.of("origin", origin, "shrinkage_basis", basis)))
                .all()
                .get(0);
        assertThat(Objects.requireNonNull(wood.shrinkage()).cv()).isEqualTo(cv);
    }

    @Test
    void halfAShrinkageJudgesNoBoard() {
        Wood wood = read(row("bog-oak", "bog oak", Map.of("tangential_shrinkage_percent", "")))
                .all()
                .get(0);
        assertThat(wood.shrinkage()).isNull();
        assertThat(wood.gravity()).isNull();
        assertThat(wood.strength()).isNull();
    }

    @Test
    void eachStrengthFigureKeepsItsOwnBasis() {
        Strength strength = Objects.requireNonNull(read(row(
                        "bog-oak",
                        "bog oak",
                        Map.of(
                                "mor_mpa", "100",
                                "moe_gpa", "12.5",
                                "side_hardness_n", "6000",
                                "strength_moisture_percent", "12",
                                "strength_source", "\"own, one; own, two\"",
                                "strength_basis", "from memory",
                                "strength_from_memory", "mor",
                                "strength_second_hand", "side_hardness")))
                .all()
                .get(0)
                .strength());
        assertThat(strength.evidence().weakest()).isEqualTo(Basis.MEMORY);
        assertThat(strength.evidence(Strength.Property.RUPTURE).weakest()).isEqualTo(Basis.MEMORY);
        assertThat(strength.evidence(Strength.Property.ELASTICITY).weakest()).isEqualTo(Basis.READ);
        assertThat(strength.evidence(Strength.Property.SIDE_HARDNESS).sources())
                .extracting(Object::toString)
                .containsExactly("own, one (second-hand)", "own, two (second-hand)");
    }

    @Test
    void namesEveryBadRow() {
        String table = "# a comment\n" + header()
                + row("white-oak", "white oak", Map.of("radial_shrinkage_percent", "\"5,6\""))
                + row("red-oak", "red oak", Map.of("radial_shrinkage_percent", "56"))
                + row("Red Oak", "red oak", Map.of())
                + row("white-oak", "white oak", Map.of())
                + "short,row\n"
                + row("a", "", Map.of())
                + row("b", "b", Map.of("origin", "garden"))
                + row("c", "c", Map.of("shrinkage_start_percent", ""))
                + row("d", "d", Map.of("shrinkage_source", ""))
                + row("e", "e", Map.of("shrinkage_source", "Some Book"))
                + row("f", "f", Map.of("shrinkage_basis", "certain"))
                + row("g", "g", Map.of("specific_gravity", "560"))
                + row("h", "h", Map.of("specific_gravity", "0.5", "specific_gravity_basis", ""))
                + row("i", "i", Map.of("mor_mpa", "100", "strength_basis", "read", "strength_from_memory", "mor"))
                + row("j", "j", Map.of("mor_mpa", "100", "strength_basis", "from memory", "strength_from_memory", "g"));
        assertThatThrownBy(() -> Woods.read(new StringReader(table), "w.csv"))
                .isInstanceOfSatisfying(
                        TableException.class,
                        e -> assertThat(e.problems())
                                .containsExactly(
                                        "w.csv:3: radial_shrinkage_percent must be a number such as 12.3, but was"
                                                + " '5,6'",
                                        "w.csv:4: radial_shrinkage_percent must be from 0.5 to 25.0, but was '56'",
                                        "w.csv:5: id must be lower-case letters, digits and hyphens, but was 'Red Oak'",
                                        "w.csv:6: id must stand once, but 'white-oak' stands on line 3 too",
                                        "w.csv:7: expected 30 cells, but found 2",
                                        "w.csv:8: common_name must not be empty, but was ''",
                                        "w.csv:9: origin must be one of us hardwood / us softwood / imported /"
                                                + " european, but was 'garden'",
                                        "w.csv:10: shrinkage_start_percent must be a number such as 12.3, but was ''",
                                        "w.csv:11: shrinkage_source must not be empty, but was ''",
                                        "w.csv:12: shrinkage_source must be a key of sources.csv and a place, such as"
                                                + " gtr190, table 4-3, but was 'Some Book'",
                                        "w.csv:13: shrinkage_basis must be one of read / declared by the maker of the"
                                                + " product / entered by you / worked out here / second-hand / common"
                                                + " practice / from memory / judgement, but was 'certain'",
                                        "w.csv:14: specific_gravity must be from 0.08 to 1.4, but was '560'",
                                        "w.csv:15: specific_gravity_basis must not be empty, but was ''",
                                        "w.csv:16: strength_basis must be 'from memory', the weakest of the figures"
                                                + " that the row names, but was 'read'",
                                        "w.csv:17: strength_from_memory must name some of specific_gravity / mor / moe"
                                                + " / compression_parallel / compression_perpendicular /"
                                                + " shear_parallel / tension_perpendicular / side_hardness, but was"
                                                + " 'g'"));
    }

    private static double tangential(Woods woods, String name) {
        return Objects.requireNonNull(woods.find(name).get(0).shrinkage()).tangential();
    }

    private static Woods read(String rows) {
        return Woods.read(new StringReader(header() + rows), "own.csv");
    }

    private static String header() {
        return String.join(",", Woods.COLUMNS) + "\n";
    }

    /** A row that holds, with some cells changed. */
    private static String row(String id, String name, Map<String, String> changed) {
        Map<String, String> cells = new LinkedHashMap<>();
        Woods.COLUMNS.forEach(column -> cells.put(column, ""));
        cells.putAll(Map.of(
                "id", id,
                "common_name", name,
                "origin", "us hardwood",
                "radial_shrinkage_percent", "5.6",
                "tangential_shrinkage_percent", "10.5",
                "shrinkage_start_percent", "30",
                "shrinkage_source", "\"own, a test\"",
                "shrinkage_basis", "judgement"));
        cells.putAll(changed);
        return String.join(",", List.copyOf(cells.values())) + "\n";
    }
}
