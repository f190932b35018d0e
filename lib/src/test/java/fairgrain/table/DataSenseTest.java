package fairgrain.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.table.DataPackage.Resource;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Columns of the tables that must agree with each other, whatever the figures are. */
class DataSenseTest {
    @ParameterizedTest(name = "{0}: {1} <= {2}")
    @CsvSource({
        "creep,expected,cautious",
        "contents,expected,heavy",
        "sheet-goods,least_thickness_mm,most_thickness_mm",
        "wall-linings,least_thickness_mm,most_thickness_mm",
        "stock-states,least_percent,expected_percent",
        "stock-states,expected_percent,most_percent",
        "sag-limits,least_span_mm,most_span_mm",
        "fasteners,root_diameter_in,diameter_in",
        "fasteners,diameter_in,head_diameter_in",
        "fasteners,drill_medium_in,drill_dense_in",
        "glass,service_strength_mpa,design_strength_mpa",
        "finishes,mee_14_day_percent,mee_7_day_percent",
        "finishes,mee_7_day_percent,mee_1_day_percent",
        "woods,radial_shrinkage_percent,volumetric_shrinkage_percent"
    })
    void theOneIsNotAboveTheOther(String table, String lower, String upper) {
        Resource resource = DataPackage.resource(table);
        List<List<String>> both = resource.rows().stream()
                .filter(row -> resource.isFilled(row, lower) && resource.isFilled(row, upper))
                .toList();
        assertThat(both)
                .isNotEmpty()
                .allSatisfy(row -> assertThat(resource.number(row, lower))
                        .as(row.get(0))
                        .isLessThanOrEqualTo(resource.number(row, upper)));
    }

    @Test
    void boardThatIsNotDeclaredForDampPlacesHasNoCreepThere() {
        Resource creep = DataPackage.resource("creep");
        assertThat(creep.column("id"))
                .contains("damp-grade-particleboard-damp", "damp-grade-mdf-damp", "mdf-dry", "particleboard-dry")
                .doesNotContain("particleboard-damp", "mdf-damp", "hardboard-damp");
    }

    @Test
    void mdfInDampPlacesMayNotCarryWhatStays() {
        assertThat(DataPackage.resource("duration").column("id"))
                .contains("k-mod-damp-grade-mdf-damp-short-term", "k-mod-mdf-dry-permanent")
                .doesNotContain("k-mod-damp-grade-mdf-damp-permanent", "k-mod-mdf-damp-permanent");
    }

    @Test
    void everyKindOfSheetHasCreepAndDurationWhereItIsDry() {
        List<String> kinds = DataPackage.resource("sheet-goods").column("kind").stream()
                .distinct()
                .toList();
        assertThat(kinds).hasSizeGreaterThan(4).allSatisfy(kind -> {
            String key = kind.replace(' ', '-');
            assertThat(DataPackage.resource("creep").column("id")).contains(key + "-dry");
            assertThat(DataPackage.resource("duration").column("id"))
                    .contains("k-mod-" + key + "-dry-permanent", "gamma-m-" + key);
        });
    }

    @Test
    void glassStrengthsFollowFromTheirFactors() {
        Resource glass = DataPackage.resource("glass");
        assertThat(glass.rows()).hasSizeGreaterThan(3).allSatisfy(row -> {
            double strength = glass.number(row, "characteristic_strength_mpa");
            double basic = glass.number(row, "edge_factor") * glass.number(row, "duration_factor") * 45 / 1.8;
            double design = basic + (strength - 45) / 1.2;
            assertThat(glass.number(row, "design_strength_mpa")).as(row.get(0)).isCloseTo(design, within(1e-9));
            assertThat(glass.number(row, "service_strength_mpa"))
                    .as(row.get(0))
                    .isLessThanOrEqualTo(design / 1.5)
                    .isCloseTo(design / 1.5, within(0.01));
        });
    }

    @Test
    void alongAndAcrossTheGrainStandSideBySide() {
        List<String> ids = DataPackage.resource("sheet-goods").column("id");
        Stream<String> across = ids.stream().filter(id -> id.endsWith("-across"));
        assertThat(across)
                .isNotEmpty()
                .allSatisfy(id -> assertThat(ids).contains(id.substring(0, id.length() - "across".length()) + "along"));
    }

    @Test
    void climatesSettleWoodWhereTheirNotesSay() {
        Pattern settles = Pattern.compile("wood settles at (\\d+\\.\\d) to (\\d+\\.\\d) %");
        Resource climates = DataPackage.resource("indoor-climates");
        assertThat(climates.rows()).hasSizeGreaterThan(10).allSatisfy(row -> {
            double dry = moisture(climates, row, "dry");
            double damp = moisture(climates, row, "damp");
            assertThat(dry).as(row.get(0)).isLessThan(damp);
            Matcher note = settles.matcher(row.get(climates.header().indexOf("note")));
            assertThat(note.find()).as(row.get(0)).isTrue();
            MatchResult said = note.toMatchResult();
            assertThat(dry).as(row.get(0)).isCloseTo(Double.parseDouble(said.group(1)), within(0.06));
            assertThat(damp).as(row.get(0)).isCloseTo(Double.parseDouble(said.group(2)), within(0.06));
        });
    }

    @Test
    void outdoorPlacesHaveBothQuantities() {
        Resource outdoor = DataPackage.resource("outdoor-climates");
        assertThat(outdoor.column("place").stream().distinct()).hasSize(15);
        assertThat(outdoor.column("id").stream()
                        .filter(id -> id.endsWith("-temperature"))
                        .map(id -> id.replace("-temperature", "-humidity")))
                .hasSize(15)
                .allMatch(outdoor.column("id")::contains);
    }

    private static double moisture(Resource climates, List<String> row, String end) {
        double kelvin = climates.number(row, end + "_temperature_c") + 273.15;
        double humidity = climates.number(row, end + "_humidity_percent") / 100;
        return HailwoodHorrobin.moisture(kelvin, humidity) * 100;
    }
}
