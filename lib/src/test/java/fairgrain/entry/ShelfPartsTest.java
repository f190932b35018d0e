package fairgrain.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Weighs;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Glass, hollow and floating shelves and shelf pins as a design file names them; what it leaves out is never said to hold. */
class ShelfPartsTest {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final Pattern PAIR = Pattern.compile("([a-z ]+): (?:\\{([^}]*)\\}|([^,]*))(?:, |$)");

    private static final String GLASS =
            "name: glass shelf, count: 2, glass: toughened, edges: polished, thickness: 8, span: 600,"
                    + " depth: 250, supports: pins, pins in: 30, bearing: 15, load: glasses";
    private static final String BOX =
            "name: long shelf, skins: mdf la 6 to 9 mm, skin thickness: 6, height: 60, span: 900, depth:"
                    + " 300, load: 10 kg/m, ribs: {material: yellow-poplar, count: 3, width: 18}";
    private static final String RODS =
            "name: floating shelf, material: white oak, length: 900, depth: 200, thickness: 50, rods: 3, rod diameter:"
                    + " 15, in shelf: 150, in wall: 80, gap: 12, rods of: steel, into: spruce-pine-fir, load: 8 kg, push"
                    + " at front edge: 50 N";
    private static final String PINS =
            "name: pins, under: glass shelf, sides: white oak, diameter: 6, in side: 12, stand out: 8, pins"
                    + " in: 30, hole from edge: 60, hole from end: 150, pins of: steel";

    private static Node.Mapping block(String text) {
        List<Node.Entry> entries = new ArrayList<>();
        Matcher pair = PAIR.matcher(text);
        while (pair.find()) {
            String inner = pair.group(2);
            Node value = inner == null ? new Node.Scalar("d.yaml:9:9", pair.group(3)) : block(inner);
            entries.add(new Node.Entry(new Node.Scalar("d.yaml:9:3", pair.group(1)), value));
        }
        return new Node.Mapping("d.yaml:9:3", entries);
    }

    private static Node design(Map<String, String> parts) {
        List<Node.Entry> entries = new ArrayList<>();
        entries.add(entry("name", new Node.Scalar("d.yaml:1:7", "shelves")));
        entries.add(entry("units", new Node.Scalar("d.yaml:2:8", "millimetres")));
        entries.add(entry("place", block("climate: heated temperate")));
        parts.forEach((key, text) -> entries.add(entry(key, new Node.Sequence("d.yaml:8:1", List.of(block(text))))));
        return new Node.Mapping("d.yaml:1:1", entries);
    }

    private static Node.Entry entry(String key, Node value) {
        return new Node.Entry(new Node.Scalar("d.yaml:1:1", key), value);
    }

    private static Design read(Map<String, String> parts) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        Design design = new DesignForm(CATALOG).design(design(parts), in);
        return Objects.requireNonNull(design, () -> in.problems().toString());
    }

    private static List<String> problems(String key, String text) {
        Reading in = new Reading(ShopRule.MILLIMETRES);
        assertThat(new DesignForm(CATALOG).design(design(Map.of(key, text)), in))
                .isNull();
        return in.problems().stream().map(Problem::text).toList();
    }

    private static Finding finding(String key, String text) {
        Design design = read(Map.of(key, text));
        return questions(design).get(0).findings().get(0);
    }

    private static List<Question<?>> questions(Design design) {
        return design.parts().stream()
                .flatMap(part -> part.questions(design).stream())
                .toList();
    }

    private static String without(String text, String key) {
        String left = text.replaceAll("(^|, )" + key + ": [^,{]*", "");
        assertThat(left).isNotEqualTo(text);
        return left;
    }

    @Test
    void eachWholeBlockIsJudged() {
        assertThat(finding("glass shelves", GLASS).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding("hollow shelves", BOX).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        assertThat(finding("rod shelves", RODS).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
    }

    @ParameterizedTest(name = "without ''{0}'': {1}")
    @CsvSource({
        "glass,what kind of glass it is",
        "edges,how its edges are worked",
        "pins in,where the pins are",
        "bearing,how far it lies on its supports"
    })
    void glassOfWhichSomethingIsUnknownIsNotJudged(String key, String what) {
        Finding finding = finding("glass shelves", without(GLASS, key));
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing()).extracting(Missing::what).containsExactly(what);
        assertThat(finding.cautions()).contains(Caution.SHARDS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"glass: toughened", "edges: polished"})
    void unknownGlassIsNotJudgedWhenItIsSaidToBeUnknown(String pair) {
        String unknown = GLASS.replace(pair, pair.replaceAll(": .*", ": unknown"));
        assertThat(finding("glass shelves", unknown).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void annealedGlassAbovePeopleIsNotJudged() {
        String annealed = GLASS.replace("glass: toughened", "glass: annealed").replace("span: 600", "span: 250")
                + ", push at front edge: 5 N";
        assertThat(finding("glass shelves", annealed).missing()).isEmpty();
        Finding above = finding("glass shelves", annealed + ", people below or children near: yes");
        assertThat(above.missing()).hasSize(1);
        assertThat(above.verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void refusesGlassThatNobodyMakes() {
        assertThat(problems("glass shelves", GLASS.replace("thickness: 8", "thickness: 7")))
                .containsExactly(
                        "d.yaml:9:3: glass shelf: toughened glass is made 4, 5, 6, 8, 10, 12, 15, 19 mm thick, but"
                                + " was 7 mm");
    }

    @Test
    void glassAndHollowShelvesMaySagByChoiceToo() {
        assertThat(finding("glass shelves", GLASS + ", sag limit: not noticed")
                        .outcomes()
                        .get(0)
                        .planned()
                        .what())
                .isEqualTo("sag, against 1/384 of the span");
        assertThat(finding("hollow shelves", BOX + ", sag limit: architectural woodwork")
                        .outcomes())
                .extracting(outcome -> outcome.planned().what())
                .startsWith(
                        "sag on the first day, against 1/144 of the span",
                        "sag after years, against 1/144 of the span");
        String both = "'behind doors' and 'sag limit' say how far it may sag; keep one of them";
        for (String key : List.of("glass shelves", "hollow shelves")) {
            String text = (key.equals("glass shelves") ? GLASS : BOX) + ", behind doors: yes, sag limit: not noticed";
            assertThat(problems(key, text)).singleElement().asString().endsWith(both);
        }
    }

    @Test
    void aShelfWithNothingBetweenItsSkinsIsNotJudged() {
        String empty = BOX.replaceAll(", ribs: \\{[^}]*\\}", "");
        Finding finding = finding("hollow shelves", empty);
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(new Missing(
                        "what keeps the skins apart",
                        "enter 'ribs' with their wood, or 'core' with its maker's figures"));
    }

    @Test
    void aCoreIsJudgedByItsMakersFiguresAndNotWithoutThem() {
        String cored = BOX.replaceAll(
                "ribs: \\{[^}]*\\}",
                "core: {of: paper honeycomb, shear modulus: 20 MPa, shear strength: 0.5 MPa, creep: 2, density: 40"
                        + " kg/m3}");
        assertThat(finding("hollow shelves", cored).verdict()).isIn(Verdict.HOLDS, Verdict.CLOSE);
        for (String key : List.of("shear modulus", "shear strength", "creep", "density")) {
            String left = cored.replaceAll(", " + key + ": [^,}]*", "");
            assertThat(left).isNotEqualTo(cored);
            Finding finding = finding("hollow shelves", left);
            assertThat(finding.verdict()).as(key).isEqualTo(Verdict.NOT_JUDGED);
            assertThat(finding.missing())
                    .extracting(Missing::todo)
                    .containsExactly("ask its maker, and enter it as '" + key + "' of the core");
        }
    }

    @Test
    void refusesAShelfWithRibsAndACore() {
        assertThat(problems("hollow shelves", BOX + ", core: {of: paper honeycomb}"))
                .singleElement()
                .asString()
                .endsWith("has 'ribs' and a 'core'; keep the one that it is made with");
    }

    @Test
    void refusesASkinOfAThicknessThatItsSheetIsNotKnownIn() {
        assertThat(problems("hollow shelves", BOX.replace("skin thickness: 6", "skin thickness: 12")))
                .singleElement()
                .asString()
                .endsWith("thick, but was 12 mm");
    }

    @ParameterizedTest
    @ValueSource(strings = {"into", "rods of"})
    void rodsOfUnknownHoldAreNotJudged(String key) {
        Finding finding = finding("rod shelves", without(RODS, key));
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing()).hasSize(1);
    }

    @Test
    void aFloatingShelfOfBoardIsNotJudged() {
        String board = RODS.replace("white oak", "mdf hls 30 to 45 mm")
                .replace("thickness: 50", "thickness: 45")
                .replace("load: 8 kg", "load: 1 kg");
        assertThat(finding("rod shelves", board).missing())
                .containsExactly(new Missing(
                        "how hard MDF.HLS, load-bearing, damp grade, 30 to 45 mm may be pressed by a rod in its edge",
                        "use solid wood whose density and its basis are in the table"));
        assertThat(finding("rod shelves", board).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    private static Map<String, String> withPins(String pins) {
        Map<String, String> parts = new LinkedHashMap<>();
        parts.put("glass shelves", GLASS);
        parts.put("shelf pins", pins);
        return parts;
    }

    private static Finding pins(String text) {
        List<Question<?>> all = questions(read(withPins(text)));
        return all.get(1).findings().get(0);
    }

    @Test
    void pinsCarryTheShelvesThatTheyAreSaidToBeUnder() {
        Finding finding = pins(PINS);
        assertThat(finding.missing()).isEmpty();
        // 615 x 250 x 8 mm of glass is 3.075 kg; glasses 62 kg/m2 x 0.25 m x 0.6 m are 9.3 kg; the half of both is 60.7
        // N
        assertThat(finding.why().numbers().get(1).si()).isCloseTo((3.075 + 9.3) * 9.80665 / 2, within(0.1));
    }

    @ParameterizedTest(name = "{0} is not judged")
    @ValueSource(strings = {"sides", "pins of"})
    void pinsOfUnknownStuffOrInUnknownSidesAreNotJudged(String key) {
        assertThat(pins(without(PINS, key)).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void pinsUnderAShelfThatIsNotThereAreNotJudged() {
        Finding finding = pins(PINS.replace("under: glass shelf", "under: other shelf"));
        assertThat(finding.verdict()).isEqualTo(Verdict.NOT_JUDGED);
        assertThat(finding.missing())
                .containsExactly(
                        new Missing("the shelf 'other shelf'", "enter it among the shelves, by the same name"));
    }

    @Test
    void pinsBehindTheMiddleOfTheirShelfAreNotJudged() {
        assertThat(pins(PINS.replace("pins in: 30", "pins in: 140")).verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void theCaseCarriesGlassAndHollowShelvesButNotOnesOnRods() {
        Map<String, String> parts = withPins(PINS);
        parts.put("hollow shelves", BOX);
        parts.put("rod shelves", RODS);
        List<Weighs> all = read(parts).parts(Weighs.class);
        assertThat(all).extracting(Weighs::name).containsExactly("glass shelf", "long shelf");
        assertThat(all.get(0).count() * all.get(0).mass()).isCloseTo(2 * 3.075, within(0.001));
    }
}
