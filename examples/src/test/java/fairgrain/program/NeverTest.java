package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Verdict;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import fairgrain.sheet.CsvSizes;
import fairgrain.sheet.HtmlSheet;
import fairgrain.sheet.JsonSheet;
import fairgrain.sheet.TextSheet;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What must never come out of a design file, whatever stands in it. */
class NeverTest {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final String CUPBOARD = "lakeside-book-cupboard.yaml";

    private static String sample(String name) {
        try {
            return Files.readString(Path.of("designs", name));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static @Nullable Design read(String yaml, Reading in) {
        var root = YamlNodes.read("never.yaml", yaml.getBytes(StandardCharsets.UTF_8), in);
        return root == null ? null : new DesignForm(CATALOG).design(root, in);
    }

    private static List<String> problems(String yaml) {
        Reading in = new Reading(ShopRule.INCHES);
        assertThat(read(yaml, in)).isNull();
        return in.problems().stream().map(problem -> problem.text()).toList();
    }

    private static Review review(String yaml) {
        Reading in = new Reading(ShopRule.INCHES);
        Design design = read(yaml, in);
        if (design == null) {
            throw new AssertionError(
                    in.problems().stream().map(problem -> problem.text()).toList());
        }
        return Review.of(design);
    }

    private static String changed(String yaml, String from, String to) {
        assertThat(yaml).contains(from);
        return yaml.replace(from, to);
    }

    /** Line breaks and spaces that do not break are but spaces. */
    private static String flat(String text) {
        return text.replaceAll("[\\s\\u00a0]+", " ");
    }

    private static boolean anyHolds(Review review, String part) {
        List<Finding> about = review.findings().stream()
                .filter(finding -> finding.part().equals(part))
                .toList();
        assertThat(about).as("findings of " + part).isNotEmpty();
        return about.stream().anyMatch(finding -> finding.verdict().compareTo(Verdict.NOT_JUDGED) < 0);
    }

    @ParameterizedTest(name = "without ''{0}''")
    @CsvSource(
            delimiter = '|',
            value = {
                "  stud: spruce-pine-fir",
                "  studs at: [8, 24]",
                "  screw: 1/4 in lag screw",
                "  screw length: 3",
                "  screws in each stud: 3",
                "  screws above lower edge: 25",
                "  wall board: 0            # the cabin's boarding is cut away behind the rail",
                "  rail: {wood: yellow-poplar, thickness: 3/4, depth: 5 1/2, held: both edges}"
            })
    void theWallNeverHoldsOnWhatNobodySaid(String line) {
        Review review = review(changed(sample(CUPBOARD), line.strip(), "# left out"));
        assertThat(anyHolds(review, "cabinet on the wall")).isFalse();
        assertThat(review.verdict()).isGreaterThanOrEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void theWallNeverHoldsWhereItsStudsAreOnlyAssumed() {
        String assumed = "first stud at: 8\n  studs every: 16";
        Review review = review(changed(sample(CUPBOARD), "studs at: [8, 24]", assumed));
        assertThat(anyHolds(review, "cabinet on the wall")).isFalse();
        assertThat(review.verdict()).isGreaterThanOrEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void aBackThatIsToldToBeScrewedAllRoundIsNeverPassedOverWhereStripsHoldTheCase() {
        String yaml = changed(
                sample("hallway-cupboard-on-strips.yaml"),
                "along, thickness: 1/4}",
                "along, thickness: 1/4, fixed: {screws within the rail: 6, screw: No. 8 wood screw,"
                        + " screw length: 1 1/2, screws all round apart: 6}}");
        assertThat(review(yaml).findings())
                .anyMatch(finding -> finding.question().equals("does the back keep the case square"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"4/4", "5/4", "1x8", "1 x 8", "nominal 3/4"})
    void aNominalSizeIsNeverTakenAsReal(String nominal) {
        String yaml =
                changed(sample(CUPBOARD), "sawn: quarter, thickness: 1/2", "sawn: quarter, thickness: " + nominal);
        assertThat(problems(yaml)).hasSize(1).allMatch(problem -> problem.contains("thickness"));
    }

    /** Rings that nobody looked at, or that run through every angle, are never taken as better than the worst. */
    @ParameterizedTest
    @ValueSource(strings = {"unknown", "mixed"})
    void mixedOrUnknownRingsNeverGiveAWiderPanelThanFlatsawn(String rings) {
        double flat = widest(review(changed(sample(CUPBOARD), "sawn: quarter", "sawn: flat")));
        Reading in = new Reading(ShopRule.INCHES);
        String yaml = changed(sample(CUPBOARD), "sawn: quarter", "sawn: " + rings);
        if (read(yaml, in) == null) { // a word that is not known is refused, which is as good
            assertThat(in.problems().toString()).contains(rings);
        } else {
            assertThat(widest(review(yaml))).isLessThanOrEqualTo(flat);
        }
    }

    @ParameterizedTest(name = "without ''{0}''")
    @ValueSource(strings = {"  joined: ", "  rail joined: "})
    void thePieceNeverHoldsWhileAPartThatCarriesItIsMissing(String key) {
        String whole = sample(CUPBOARD);
        int at = whole.indexOf(key);
        assertThat(at).isPositive();
        Review review = review(whole.substring(0, at) + "  #" + whole.substring(at));
        assertThat(review.verdict()).isGreaterThanOrEqualTo(Verdict.NOT_JUDGED);
    }

    @ParameterizedTest
    @ValueSource(strings = {"crotch", "burl", "curly", "reaction wood", "near the pith"})
    void figuredWoodNeverHoldsOnStraightGrainData(String figure) {
        String yaml = changed(
                sample(CUPBOARD), "sawn: quarter, thickness", "sawn: quarter, figure: " + figure + ", thickness");
        Review straight = review(sample(CUPBOARD));
        Review figured = review(yaml);
        double least = widest(straight) - widest(figured);
        assertThat(least).as("a figured panel is cut narrower, or not judged").isPositive();
    }

    /** Width to cut of the door's panel; nothing where it is not judged. */
    private static double widest(Review review) {
        return review.findings().stream()
                .filter(finding -> finding.part().equals("door, panel") && finding.verdict() != Verdict.NOT_JUDGED)
                .flatMap(finding -> finding.sizes().stream())
                .filter(size -> size.what().equals("cut it across the grain"))
                .mapToDouble(size -> size.value().si())
                .max()
                .orElse(0);
    }

    @ParameterizedTest
    @ValueSource(strings = {"11 5/8", "11 3/4", "12"})
    void aPanelAsCutThatFillsItsGroovesNeverHolds(String width) {
        String yaml =
                changed(sample(CUPBOARD), "pinned at centre: yes", "pinned at centre: yes, width as cut: " + width);
        assertThat(anyHolds(review(yaml), "door, panel")).isFalse();
    }

    @ParameterizedTest(name = "glass: {0}, edges: {1}")
    @CsvSource({"annealed, unknown", "toughened, unknown", "unknown, polished", "unknown, unknown"})
    void glassNeverHoldsWithItsKindOrEdgesUnknown(String kind, String edges) {
        Review review = review("""
            name: glass
            units: millimetres
            glass shelves:
              - {name: pane, glass: %s, edges: %s, thickness: 10, span: 500, depth: 200, supports: pins, pins in: 40, bearing: 12, load: 5 kg}
            """.replaceFirst("%s", kind).replaceFirst("%s", edges));
        assertThat(anyHolds(review, "pane")).isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                CUPBOARD,
                "brick-cellar-cupboard.yaml",
                "coast-display-shelf.yaml",
                "hallway-cupboard-on-strips.yaml",
                "mountain-spice-cupboard.yaml"
            })
    void noFormOfOutputLosesACaution(String name) {
        Review review = review(sample(name));
        ShopRule rule = review.design().setting().rule();
        assertThat(review.cautions()).isNotEmpty();
        String text = flat(TextSheet.write(review, rule, CATALOG.sources()));
        String page = flat(HtmlSheet.write(review, rule, CATALOG.sources()));
        String json = JsonSheet.write(review, rule, CATALOG.sources());
        String csv = CsvSizes.write(review, rule);
        for (Caution caution : review.cautions()) {
            assertThat(text).contains(caution.sentence());
            assertThat(page).contains(caution.sentence().replace("'", "&#39;"));
            assertThat(json).contains(caution.sentence());
            assertThat(csv).contains(caution.sentence());
        }
    }
}
