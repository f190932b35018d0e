package fairgrain.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.material.SheetGood;
import fairgrain.material.ShippedWoods;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a wood, a sheet and what stands on it are worth for years, from the tables that ship. */
class LongTermTest {
    private static final LongTerm YEARS =
            LongTerm.read(shipped("creep.csv"), "creep.csv", shipped("duration.csv"), "duration.csv");
    private static final List<SheetGood> SHEETS = SheetGood.read(shipped("sheet-goods.csv"), "sheet-goods.csv");

    private static Reader shipped(String file) {
        return new InputStreamReader(
                Objects.requireNonNull(LongTerm.class.getResourceAsStream("/fairgrain/data/" + file)),
                StandardCharsets.UTF_8);
    }

    private static SheetGood sheet(String id) {
        return SHEETS.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    private static double allowed(ShelfStock stock) {
        Double strength = stock.strength();
        assertThat(strength).as(stock.name()).isNotNull();
        return strength == null ? Double.NaN : strength;
    }

    /** 0.35 and 0.32 of the mean bending strength for ten years, 0.9 of that for good, 0.65 where the grain is not known. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"white-fir, 0.35", "black-walnut, 0.32"})
    void aWoodIsAllowedAThirdOfItsBendingStrength(String id, double share) {
        Wood wood = ShippedWoods.wood(id);
        Strength strength = Objects.requireNonNull(wood.strength());
        double rupture = Objects.requireNonNull(strength.rupture());
        assertThat(allowed(YEARS.of(wood, true, false)) / rupture).isCloseTo(share * 0.9, within(0.002));
        assertThat(allowed(YEARS.of(wood, false, false)) / rupture).isCloseTo(share * 0.9 * 0.65, within(0.002));
    }

    /** k_mod permanent x 5 % strength / (1.3 x 1.5): MDF 0.20 x 21 / 1.95 = 2.15 MPa. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "mdf-la-12-to-19-mm, 2.15", // 0.20 x 21 / 1.95
        "mdf-us-130-2002, 2.06" // 0.20 x 24 x (1 - 1.645 x 0.1) / 1.95: the printed figure is a mean
    })
    void aSheetIsAllowedItsPermanentShare(String id, double megapascals) {
        assertThat(allowed(YEARS.of(sheet(id), false)) / 1e6).isCloseTo(megapascals, within(0.005));
    }

    @Test
    void ordinaryMdfInADampPlaceHasNeitherCreepNorStrength() {
        ShelfStock stock = YEARS.of(sheet("mdf-us-130-2009"), true);
        assertThat(stock.creep()).isNull();
        assertThat(stock.strength()).isNull();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShelfSag(
                        "shelf",
                        stock,
                        Length.mm(600),
                        Length.mm(250),
                        Length.mm(18),
                        Support.PINS,
                        new ShelfLoad("books", 30, 40, 0.2, Shelves.ANY),
                        SagLimit.OPEN,
                        Shelves.in(ShopRule.MILLIMETRES)))
                .withMessage("no creep is known for MDF grade 130, American, edition 2009 in such a place");
    }

    @Test
    void dampGradeMdfInADampPlaceCreepsButNoStandingStressIsAllowedOnIt() {
        ShelfStock stock = YEARS.of(sheet("mdf-hls-30-to-45-mm"), true);
        assertThat(stock.creep()).isNotNull();
        assertThat(stock.strength()).isNull();
    }

    @Test
    void planningNeverTakesLessCreepThanIsExpectedAndADampPlaceNeverLessThanADryOne() {
        for (SheetGood sheet : SHEETS) {
            Creep dry = Objects.requireNonNull(YEARS.of(sheet, false).creep(), sheet.id());
            assertThat(dry.cautious()).as(sheet.id()).isGreaterThanOrEqualTo(dry.expected());
            Creep damp = YEARS.of(sheet, true).creep();
            if (damp == null) {
                assertThat(sheet.isBoard() && !sheet.isDampGrade())
                        .as(sheet.id())
                        .isTrue();
            } else {
                assertThat(damp.cautious()).as(sheet.id()).isGreaterThanOrEqualTo(dry.cautious());
                assertThat(damp.expected()).as(sheet.id()).isGreaterThanOrEqualTo(dry.expected());
            }
        }
        Creep wood = Objects.requireNonNull(
                YEARS.of(ShippedWoods.wood("black-walnut"), true, true).creep());
        assertThat(wood.expected()).isEqualTo(1);
        assertThat(wood.cautious()).isEqualTo(2);
    }

    @Test
    void aDampPlaceNeverAllowsMoreStressThanADryOne() {
        for (SheetGood sheet : SHEETS) {
            Double dry = YEARS.of(sheet, false).strength();
            Double damp = YEARS.of(sheet, true).strength();
            if (damp != null) {
                assertThat(damp).as(sheet.id()).isLessThanOrEqualTo(Objects.requireNonNull(dry));
            }
        }
    }

    @Test
    void refusesAWoodWhoseStiffnessIsNotKnown() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> YEARS.of(ShippedWoods.wood("african-ebony"), true, false))
                .withMessage("no stiffness or no density is known for African ebony; choose another wood");
    }

    @Test
    void contentsLoadAShelfByTheMetreBySurfaceOrByRoom() {
        List<Contents> all = Contents.read(shipped("contents.csv"), "contents.csv");
        assertThat(load(all, "books", 300)).isEqualTo(load(all, "books", 600)); // in one row however deep
        assertThat(load(all, "books", 300).expected()).isEqualTo(30);
        assertThat(load(all, "books", 300).heavy()).isEqualTo(40);
        assertThat(load(all, "plates", 300).expected()).isCloseTo(96 * 0.3, within(1e-9));
        assertThat(load(all, "plates", 300).heavy()).isCloseTo(135 * 0.3, within(1e-9));
        // by volume: taken to stand 300 mm high
        assertThat(load(all, "clothing", 400).expected()).isCloseTo(240 * 0.4 * 0.3, within(1e-9));
        for (Contents each : all) {
            ShelfLoad load = each.on(Length.mm(300));
            assertThat(load.heavy()).as(each.id()).isGreaterThanOrEqualTo(load.expected());
        }
    }

    private static ShelfLoad load(List<Contents> all, String id, double depthMm) {
        return all.stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow()
                .on(Length.mm(depthMm));
    }

    @Test
    void refusesCreepThatIsPlannedBelowWhatIsExpected() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Creep(1, 0.6, Shelves.ANY))
                .withMessage("cautious creep must be from 1 to 10 times the first sag, but was 0.6");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new ShelfLoad("books", 40, 30, 0.2, Shelves.ANY))
                .withMessage("heavy load along the shelf must be from 40 to 500 kg/m, but was 30");
    }
}
