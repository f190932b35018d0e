package fairgrain.form;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.in;
import static fairgrain.form.Given.problems;
import static fairgrain.form.Given.scalar;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Mass;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Temperature;
import fairgrain.quantity.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class KindsTest {
    private static final Limits WIDE = new Limits("number", 0, 1000, "");

    private static <V> V good(Kind<V> kind, String text) {
        return good(kind, scalar(text));
    }

    private static <V> V good(Kind<V> kind, Node node) {
        Reading in = Given.inInches();
        V value = kind.read(node, in);
        assertThat(in.problems()).isEmpty();
        if (value == null) {
            throw new AssertionError("refused without a word: " + node);
        }
        return value;
    }

    /** The message without the place; what is read stands at the key "size". */
    private static String wrong(Kind<?> kind, String text) {
        return wrong(kind, scalar(text), ShopRule.INCHES);
    }

    private static String wrong(Kind<?> kind, Node node, ShopRule rule) {
        Reading in = new Reading(rule);
        in.enterKey("size");
        assertThat(kind.read(node, in)).isNull();
        assertThat(in.problems()).hasSize(1);
        return in.problems().get(0).sentence();
    }

    @Test
    void textIsOneLine() {
        assertThat(good(Kinds.text(), "  Anne's 2 \"doors\" ")).isEqualTo("Anne's 2 \"doors\"");
        assertThat(wrong(Kinds.text(), " ")).isEqualTo("size must not be empty");
        assertThat(wrong(Kinds.text(), "a\nb"))
                .isEqualTo("size must be one line without control characters, but was 'a b'");
        assertThat(wrong(Kinds.text(), "a\u2028b"))
                .isEqualTo("size must be one line without control characters, but was 'a b'");
        assertThat(good(Kinds.text(), "x".repeat(200))).hasSize(200);
        assertThat(wrong(Kinds.text(), "x".repeat(201))).isEqualTo("size must be at most 200 characters, but has 201");
    }

    @Test
    void aPlainValueIsNeitherAListNorABlock() {
        assertThat(wrong(Kinds.text(), new Node.Sequence("x:1:1", List.of()), ShopRule.INCHES))
                .isEqualTo("size must be text, not a list");
        assertThat(wrong(Kinds.count(1, 9), block("a", "b"), ShopRule.INCHES))
                .isEqualTo("size must be a whole number from 1 to 9, not a block of keys");
        assertThat(wrong(Kinds.yesNo(), new Node.Nothing("x:1:1", ""), ShopRule.INCHES))
                .isEqualTo("size must be yes or no, not nothing");
    }

    @Test
    void aCountIsAWholeNumberWithinItsEnds() {
        assertThat(good(Kinds.count(2, 20), "2")).isEqualTo(2);
        assertThat(good(Kinds.count(2, 20), "20")).isEqualTo(20);
        for (String bad : List.of("1", "21", "3.5", "-3", "three", "99999999999", "٣")) {
            assertThat(wrong(Kinds.count(2, 20), bad))
                    .isEqualTo("size must be a whole number from 2 to 20, but was '" + bad + "'");
        }
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Kinds.count(3, 2))
                .withMessage("a count goes upwards from 0 or more, not from 3 to 2");
    }

    @Test
    void aLengthIsReadAsTheShopMeansIt() {
        Kind<Length> length = Kinds.length(new Limits("depth", 0.002, 0.04, "m"));
        assertThat(good(length, "3/8")).isEqualTo(Length.inches(0.375));
        assertThat(good(length, "10 mm")).isEqualTo(Length.mm(10));
        assertThat(length.read(scalar("10"), new Reading(ShopRule.MILLIMETRES))).isEqualTo(Length.mm(10));
    }

    @Test
    void aLengthBeyondItsLimitsIsRefusedInTheUnitsOfTheShop() {
        Kind<Length> length = Kinds.length(new Limits("depth", 0.002, 0.04, "m"));
        assertThat(wrong(length, "3")).isEqualTo("size must be from 3/32 to 1 9/16 in, but was '3'");
        assertThat(wrong(length, "-1 mm")).isEqualTo("size must be from 3/32 to 1 9/16 in, but was '-1 mm'");
        assertThat(wrong(length, scalar("3 in"), ShopRule.MILLIMETRES))
                .isEqualTo("size must be from 2 to 40 mm, but was '3 in'");
        assertThat(wrong(length, "999999999")).isEqualTo("size must be from 3/32 to 1 9/16 in, but was '999999999'");
    }

    @Test
    void aLengthThatCannotBeReadIsRefusedAsTheNumberSays() {
        Kind<Length> length = Kinds.length(WIDE);
        assertThat(wrong(length, "wide"))
                .isEqualTo("size must look like 2 1/4, 2-1/4, 2.25 in, 1 ft 2 1/2 in or 57 mm, but was 'wide'");
        assertThat(wrong(length, "11,5"))
                .isEqualTo("size: write the decimal mark as a point, such as 11.5, not '11,5'");
        assertThat(wrong(length, "1x4"))
                .isEqualTo("size: '1x4' is a name, not a size: a sawn board called so is thinner than it sounds;"
                        + " measure it and write what you find, such as 23/32 or 18.2 mm");
        assertThat(wrong(length, "")).isEqualTo("size must be a length, but was ''");
        assertThat(wrong(length, "1".repeat(100_000)))
                .isEqualTo("size must be a length, but was '" + "1".repeat(60) + "...'");
    }

    @Test
    void aSizeThatStandsOnItsLimitIsAllowedWhateverTheRounding() {
        Kind<Length> length = Kinds.length(new Limits("depth", 0.0563, 0.0571, "m"));
        assertThat(57.1 * 0.001).isGreaterThan(0.0571);
        assertThat(good(length, "57.1 mm").metres()).isEqualTo(0.0571);
        assertThat(good(length, "56.3 mm").metres()).isCloseTo(0.0563, within(1e-15));
        assertThat(wrong(length, "57.101 mm")).isEqualTo("size must be from 2.217 to 2.248 in, but was '57.101 mm'");
    }

    @Test
    void otherQuantitiesCarryTheirUnit() {
        assertThat(good(Kinds.mass(WIDE), "10 lb")).isEqualTo(Mass.pounds(10));
        assertThat(good(Kinds.force(WIDE), "10 N")).isEqualTo(Force.newtons(10));
        assertThat(good(Kinds.temperature(Temperature.LIMITS), "68 F").toFahrenheit())
                .isCloseTo(68, within(1e-9));
        assertThat(good(Kinds.moisture(MoistureContent.LIMITS), "9 %")).isEqualTo(MoistureContent.percent(9));
        assertThat(good(Kinds.humidity(RelativeHumidity.LIMITS), "45 %")).isEqualTo(RelativeHumidity.percent(45));
        assertThat(good(Kinds.amount(Dimension.LINE_MASS, WIDE), "30 kg/m"))
                .isEqualTo(Amount.of(30, Dimension.LINE_MASS));
        assertThat(good(Kinds.amount(Dimension.RATIO, WIDE), "1.5")).isEqualTo(Amount.ratio(1.5));
        assertThat(wrong(Kinds.moisture(MoistureContent.LIMITS), "9"))
                .isEqualTo("size needs its unit, such as 9 %, but was '9'");
        assertThat(wrong(Kinds.humidity(RelativeHumidity.LIMITS), "120 %"))
                .isEqualTo("size must be from 0 to 100 %, but was '120 %'");
        assertThat(wrong(Kinds.temperature(Temperature.LIMITS), "300 F"))
                .isEqualTo("size must be from -76 to 212 °F, but was '300 F'");
        assertThat(wrong(Kinds.temperature(Temperature.LIMITS), scalar("300 C"), ShopRule.MILLIMETRES))
                .isEqualTo("size must be from -60 to 100 °C, but was '300 C'");
        assertThat(wrong(Kinds.mass(WIDE), "10 mm"))
                .isEqualTo("size has no unit 'mm'; write 25 lb or 11.3 kg, but was '10 mm'");
    }

    @ParameterizedTest
    @ValueSource(strings = {"yes", "YES", "true", " Yes "})
    void severalWordsMeanYes(String word) {
        assertThat(good(Kinds.yesNo(), word)).isTrue();
    }

    @Test
    void noMeansNoAndNothingElseMeansEither() {
        assertThat(good(Kinds.yesNo(), "No")).isFalse();
        assertThat(good(Kinds.yesNo(), "false")).isFalse();
        assertThat(wrong(Kinds.yesNo(), "1")).isEqualTo("size must be yes or no, but was '1'");
    }

    @Test
    void aChoiceDoesNotLookAtCapitalsOrHyphens() {
        Kind<String> where = Kinds.choice(List.of("pinned at centre", "loose", "pinned at one edge"), word -> word);
        assertThat(good(where, "Pinned-at  centre")).isEqualTo("pinned at centre");
        assertThat(wrong(where, "pined at center"))
                .isEqualTo("size must be pinned at centre, loose or pinned at one edge, but was 'pined at center';"
                        + " did you mean 'pinned at centre'?");
        assertThat(wrong(where, "glued all round"))
                .isEqualTo("size must be pinned at centre, loose or pinned at one edge, but was 'glued all round'");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Kinds.choice(List.of("a", "A"), word -> word))
                .withMessage("'A' stands for two things");
    }

    @Test
    void aNamedThingIsFoundAskedBackOrUnknown() {
        Kind<String> wood = Kinds.named("wood", new PanelForm.Woods());
        assertThat(good(wood, "Hill maple")).isEqualTo("hill maple");
        assertThat(good(wood, "ash")).isEqualTo("lake ash");
        assertThat(wrong(wood, "maple"))
                .isEqualTo("size: 'maple' could be lake maple, hill maple or shore maple: write one of them");
        assertThat(wrong(wood, "hill mapel"))
                .isEqualTo(
                        "size: 'hill mapel' is not known; did you mean 'hill maple', 'lake maple' or 'shore maple'?");
        assertThat(wrong(wood, "balsa")).isEqualTo("size: 'balsa' is not known");
        assertThat(wrong(wood, "")).isEqualTo("size: '' is not known");
    }

    @Test
    void aFinderOfManyThingsSaysWhereToLook() {
        Kind<Integer> number = Kinds.named("number", new Finder<>() {
            @Override
            public List<Integer> find(String words) {
                return words.equals("all") ? List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14) : List.of();
            }

            @Override
            public String name(Integer thing) {
                return "no " + thing;
            }

            @Override
            public List<String> nearest(String words) {
                return words.equals("al") ? List.of("all") : List.of();
            }

            @Override
            public String hint() {
                return "a list hangs on the wall";
            }
        });
        assertThat(wrong(number, "all"))
                .isEqualTo("size: 'all' could be no 1, no 2, no 3, no 4, no 5, no 6, no 7, no 8, no 9, no 10, no 11,"
                        + " no 12 or one of 2 more: write one of them");
        assertThat(wrong(number, "al"))
                .isEqualTo("size: 'al' is not known; did you mean 'all'? a list hangs on the wall");
        assertThat(wrong(number, "x")).isEqualTo("size: 'x' is not known; a list hangs on the wall");
    }

    @Test
    void aListReadsEachEntryAndMayBeEmpty() {
        Kind<List<Integer>> counts = Kinds.list(Kinds.count(1, 9));
        Node.Mapping given = block("n", List.of("1", "2"), "empty", List.of());
        assertThat(counts.read(given.entries().get(0).value(), Given.inInches()))
                .containsExactly(1, 2);
        assertThat(counts.read(given.entries().get(1).value(), Given.inInches()))
                .isEmpty();
        assertThat(wrong(Kinds.some(Kinds.count(1, 9)), given.entries().get(1).value(), ShopRule.INCHES))
                .isEqualTo("size must have at least one entry");
    }

    @Test
    void aListKnowsWhichEntryIsWrongOrMissing() {
        Node list = block("n", List.of("1", "x", "")).entries().get(0).value();
        assertThat(problems(Kinds.list(Kinds.count(1, 9)), list))
                .containsExactly(
                        "lakeside.yaml:1:5: entry 2 must be a whole number from 1 to 9, but was 'x'",
                        "lakeside.yaml:1:5: entry 3: nothing stands after '-'");
    }

    @Test
    void oneThingIsNoListOfOne() {
        assertThat(wrong(Kinds.list(Kinds.count(1, 9)), "3")).isEqualTo("size must be a list: put a '-' before '3'");
        assertThat(wrong(Kinds.list(new PanelForm()), block("name", "left"), ShopRule.INCHES))
                .isEqualTo("size must be a list: put a '-' before it");
    }

    @Test
    void aPlainValueOrABlockMayStandInOnePlace() {
        Kind<MoistureContent> moisture = Kinds.either(Kinds.moisture(PanelForm.MOISTURE), new PanelForm.MeterForm());
        assertThat(good(moisture, "9 %")).isEqualTo(MoistureContent.percent(9));
        assertThat(moisture.read(block("meter reading", "11 %"), Given.inInches()))
                .isEqualTo(MoistureContent.percent(11));
        assertThat(wrong(moisture, "90 %")).isEqualTo("size must be from 3 to 25 %, but was '90 %'");
        assertThat(wrong(moisture, block("meter readng", "9 %"), ShopRule.INCHES))
                .isEqualTo(
                        "'meter readng' is not a key of moisture; did you mean 'meter reading'? keys: meter reading");
    }

    @Test
    void aWordWithAMeaningOfItsOwnStandsBesideNumbers() {
        Kind<MoistureContent> moisture =
                Kinds.wordOr("unknown", MoistureContent.percent(12), Kinds.moisture(PanelForm.MOISTURE));
        assertThat(good(moisture, "Unknown")).isEqualTo(MoistureContent.percent(12));
        assertThat(good(moisture, "9 %")).isEqualTo(MoistureContent.percent(9));
        assertThat(wrong(moisture, "unkown"))
                .isEqualTo("size must be 'unknown' or a moisture content from 3 to 25 %, but was 'unkown';"
                        + " did you mean 'unknown'?");
        assertThat(wrong(moisture, "9")).isEqualTo("size needs its unit, such as 9 %, but was '9'");
    }

    @Test
    void whatAValueIsMadeIntoMayRefuse() {
        Kind<UnitSystem> kind = Kinds.text().to(text -> {
            if (text.equals("inches")) {
                return UnitSystem.INCHES;
            }
            throw new IllegalArgumentException("must be inches, for once, but was '" + text + "'");
        });
        assertThat(good(kind, "inches")).isEqualTo(UnitSystem.INCHES);
        assertThat(wrong(kind, "mm")).isEqualTo("size must be inches, for once, but was 'mm'");
    }

    @Test
    void aBlockIsSaidWithItsArticle() {
        assertThat(new PanelForm().says()).isEqualTo("a panel block");
        Form<String> offcut = new Form<>("offcut", "A piece cut off.") {
            @Override
            protected String build(Entries entries) {
                return entries.at();
            }
        };
        assertThat(offcut.says()).isEqualTo("an offcut block");
        assertThat(good(offcut.to(String::strip), block())).isEqualTo("lakeside.yaml:1:1");
    }

    @Test
    void partsAreCalledByTheirNamesOrNumbers() {
        assertThat(new PanelForm().title(block("wood", "x", "name", " left "), 3))
                .isEqualTo("left");
        assertThat(new PanelForm().title(block("wood", "x"), 3)).isEqualTo("panel 3");
        assertThat(new PanelForm().title(block("name", List.of()), 3)).isEqualTo("panel 3");
        assertThat(new PanelForm.GrooveForm().title(block(in("depth", "1")), 2)).isEqualTo("groove 2");
        assertThat(Kinds.text().title(scalar("x"), 1)).isNull();
    }

    @Test
    void limitsThatCannotBeWrittenAreAMistakeOfOurs() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Kinds.length(new Limits("depth", 0, Double.POSITIVE_INFINITY, "m")))
                .withMessage("the limits of depth are too wide for a form");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Kinds.amount(Dimension.RATIO, new Limits("share", Double.NEGATIVE_INFINITY, 1, "")))
                .withMessage("the limits of share are too wide for a form");
    }
}
