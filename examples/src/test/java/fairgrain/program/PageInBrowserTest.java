package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The page of every sample in a real browser, on screens and on paper. Left out where there is no browser. */
class PageInBrowserTest {
    private static final double A4_WIDE = 210; // mm
    private static final double A4_HIGH = 297;
    private static final double LETTER_WIDE = 215.9;
    private static final double LETTER_HIGH = 279.4;
    private static final double BESIDE = 10; // mm of margin that the page asks for
    private static final double ABOVE = 9;
    private static final double POINTS = 96 / 72.0; // CSS pixels

    private static final List<String> SAMPLES = List.of(
            "brick-cellar-cupboard",
            "coast-display-shelf",
            "hallway-cupboard-on-strips",
            "harbour-glass-cupboard",
            "lakeside-book-cupboard",
            "mountain-spice-cupboard",
            "one-door",
            "weekend-cabin-cupboard");

    @TempDir
    private static Path folder;

    private static @Nullable Browser browser;
    private static final Map<String, JsonNode> REVIEWS = new HashMap<>();

    @BeforeAll
    static void start() throws Exception {
        Optional<Path> program = Browser.found();
        if (program.isEmpty()) {
            System.out.println("The pages are not tried in a browser: no chromium stands on the path.");
        }
        assumeTrue(program.isPresent(), "no browser on the path");
        browser = Browser.start(program.get());
        for (String name : SAMPLES) {
            write(name, Path.of("designs", name + ".yaml"));
        }
        Path odd = folder.resolve("odd.yaml");
        Files.writeString(
                odd,
                Files.readString(Path.of("designs", "one-door.yaml"))
                        .replaceFirst("name: One door", Matcher.quoteReplacement("name: '" + SCRIPT + "'"))
                        .replaceFirst("name: door", Matcher.quoteReplacement("name: '" + HEBREW + "'")));
        write("odd", odd);
    }

    private static final String SCRIPT = "<script>window.hurt = 1; alert(1)</script> \"quoted\" & <b onclick=x>";
    private static final String HEBREW = "דלת ימין";

    private static void write(String name, Path design) {
        Ran ran = Ran.of("", "review", "--form", "json", "--html", page(name).toString(), design.toString());
        assertThat(ran.err()).isEmpty();
        REVIEWS.put(name, JsonMapper.shared().readTree(ran.out()));
    }

    @AfterAll
    static void end() throws Exception {
        if (browser != null) {
            browser.close();
        }
    }

    static List<String> all() {
        List<String> all = new ArrayList<>(SAMPLES);
        all.add("odd");
        return all;
    }

    private static Path page(String name) {
        return folder.resolve(name + ".html");
    }

    private static JsonNode review(String name) {
        return Objects.requireNonNull(REVIEWS.get(name));
    }

    private static Browser browser() {
        return Objects.requireNonNull(browser);
    }

    private static JsonNode check(String call) throws Exception {
        try (InputStream in = Objects.requireNonNull(PageInBrowserTest.class.getResourceAsStream("/page-checks.js"))) {
            return browser().value(new String(in.readAllBytes(), StandardCharsets.UTF_8).strip() + "." + call);
        }
    }

    private static List<String> wrong(String call) throws Exception {
        List<String> all = new ArrayList<>();
        check(call).forEach(each -> all.add(each.asString()));
        return all;
    }

    @ParameterizedTest
    @MethodSource("all")
    void itReadsOnAPhoneATabletAndADeskWithoutAWordToTheConsole(String name) throws Exception {
        for (int width : new int[] {360, 768, 1280}) {
            browser().screen(width, 900);
            browser().open(page(name));
            assertThat(browser().complaints()).as("at " + width + " pixels").isEmpty();
            assertThat(wrong("tooWide()"))
                    .as("too wide at " + width + " pixels")
                    .isEmpty();
            assertThat(wrong("wordsOfDrawings()"))
                    .as("words of drawings at " + width + " pixels")
                    .isEmpty();
        }
        browser().screen(360, 900);
        assertThat(wrong("smallLetters(10.9)")).as("small letters on a phone").isEmpty();
    }

    @ParameterizedTest
    @MethodSource("all")
    void whoCannotSeeItFindsTheWayAndWhoSeesLittleCanReadIt(String name) throws Exception {
        browser().screen(1280, 900);
        browser().open(page(name));
        assertThat(wrong("order()")).isEmpty();
        assertThat(wrong("pale()")).isEmpty();
        assertThat(wrong("alive()")).isEmpty();
        int drawings = 0;
        for (JsonNode node : browser().spoken()) {
            String role = node.path("role").path("value").asString("");
            if (!node.path("ignored").asBoolean(false)
                    && List.of("image", "img").contains(role)) {
                drawings++;
                assertThat(node.path("name").path("value").asString(""))
                        .as("name of a drawing")
                        .isNotBlank();
                assertThat(node.path("description").path("value").asString(""))
                        .as("words of a drawing")
                        .isNotBlank();
            }
        }
        assertThat(drawings).isPositive().isEqualTo(check("drawings()").size());
    }

    /** Letters of another make take other room: the most is what a wide one took. */
    @ParameterizedTest
    @CsvSource({
        "brick-cellar-cupboard,      8",
        "coast-display-shelf,        7",
        "hallway-cupboard-on-strips, 7",
        "harbour-glass-cupboard,     13",
        "lakeside-book-cupboard,     12",
        "mountain-spice-cupboard,    12",
        "one-door,                   5",
        "weekend-cabin-cupboard,     11"
    })
    void itPrintsOnFewPagesOfA4AndOfLetter(String name, int most) throws Exception {
        browser().screen(1280, 900);
        browser().open(page(name));
        assertThat(pages(browser().pdf(A4_WIDE, A4_HIGH))).isBetween(2, most);
        assertThat(pages(browser().pdf(LETTER_WIDE, LETTER_HIGH))).isBetween(2, most);
    }

    private static int pages(byte[] pdf) {
        Matcher page = Pattern.compile("/Type\\s*/Page\\b(?!s)").matcher(new String(pdf, StandardCharsets.ISO_8859_1));
        int found = 0;
        while (page.find()) {
            found++;
        }
        return found;
    }

    @ParameterizedTest
    @MethodSource("all")
    void noDrawingIsCutOrShrunkOnPaperAndNoLetterIsSmall(String name) throws Exception {
        browser().open(page(name));
        for (double[] paper : new double[][] {{A4_WIDE, A4_HIGH}, {LETTER_WIDE, LETTER_HIGH}}) {
            browser().paper(paper[0] - 2 * BESIDE);
            assertThat(wrong("drawingsOnPaper(" + (paper[1] - 2 * ABOVE) + ")")).isEmpty();
            assertThat(wrong("tooWide()")).isEmpty();
            assertThat(wrong("smallLetters(" + 8.5 * POINTS + ")")).isEmpty();
        }
    }

    /** Whoever looks at everything and never complains has not looked. */
    @Test
    void theChecksFindWhatIsWrong() throws Exception {
        Path bad = folder.resolve("bad.html");
        Files.writeString(bad, """
            <!DOCTYPE html><html><head><meta name="viewport" content="user-scalable=no"></head><body>
            <h3>no first</h3><p style="width: 2000px; color: #aaa">wide and pale</p><p style="font-size: 6px">small</p>
            <img src="none.png" onerror="console.error('hurt')">
            <figure><svg width="92mm" viewBox="0 0 92 40"><title>a board</title><desc>a board</desc>
            <text x="10" y="10" font-size="3">over</text><text x="11" y="10" font-size="3">each other</text>
            <text x="90" y="20" font-size="3">beside</text></svg></figure></body></html>
            """);
        browser().screen(360, 900);
        browser().open(bad);
        assertThat(browser().complaints()).isNotEmpty();
        assertThat(wrong("tooWide()")).isNotEmpty();
        assertThat(wrong("pale()")).isNotEmpty();
        assertThat(wrong("smallLetters(10.9)")).isNotEmpty();
        assertThat(wrong("order()")).contains("no language", "not one first heading", "cannot be made larger");
        assertThat(wrong("alive()")).contains("IMG", "IMG onerror");
        assertThat(wrong("wordsOfDrawings()"))
                .contains("a board: over / each other", "a board: beside the paper: beside");
        assertThat(wrong("drawingsOnPaper(100)")).contains("a board: cut by the page");
    }

    @Test
    void aNameThatLooksLikeMarkupIsTextAndOneFromRightToLeftTurnsNothingAround() throws Exception {
        browser().screen(768, 900);
        browser().open(page("odd"));
        assertThat(browser().value("document.title").asString()).isEqualTo(SCRIPT);
        assertThat(browser().value("document.querySelector('h1').textContent").asString())
                .startsWith(SCRIPT);
        assertThat(browser().value("typeof window.hurt").asString()).isEqualTo("undefined");
        assertThat(check("behind('" + HEBREW + ", panel')").asDouble()).isPositive();
        Map<String, List<String>> drawn = drawn();
        assertThat(drawn.keySet()).anySatisfy(name -> assertThat(name).contains(HEBREW));
    }

    /** The words in each drawing, by its name. */
    private static Map<String, List<String>> drawn() throws Exception {
        Map<String, List<String>> all = new LinkedHashMap<>();
        for (JsonNode each : check("drawings()")) {
            List<String> words = new ArrayList<>();
            each.get("words").forEach(word -> words.add(word.asString()));
            all.put(each.get("name").asString(), words);
        }
        return all;
    }

    @ParameterizedTest
    @MethodSource("samples")
    void theNumbersInTheDrawingsAreThoseOfTheFindings(String name) throws Exception {
        browser().screen(1280, 900);
        browser().open(page(name));
        Map<String, List<String>> drawn = drawn();
        int compared = 0;
        for (JsonNode finding : review(name).get("findings")) {
            String part = finding.get("part").asString();
            List<String> shelf = drawn.get(part + ", its sag");
            if (shelf != null && finding.get("question").asString().equals("will it sag")) {
                JsonNode first = finding.get("checks").get(0);
                JsonNode later = finding.get("checks").get(1);
                assertThat(shelf)
                        .contains("at most on the first day: " + shop(first, "planned", "demand"))
                        .contains("expected after years: " + shop(later, "expected", "demand"))
                        .contains("at most after years: " + shop(later, "planned", "demand"))
                        .contains("wanted after years, no more than: " + shop(later, "planned", "capacity"));
                compared++;
            }
            List<String> panel = drawn.get(part + " in its grooves");
            if (panel != null) {
                JsonNode swelling = finding.get("checks").get(0).get("planned");
                double left = si(swelling, "capacity") - si(swelling, "demand");
                String shown = text(finding, Math.abs(left));
                assertThat(panel)
                        .contains("stays in the groove: "
                                + shop(finding.get("checks").get(1), "planned", "capacity"))
                        .contains(left < 0 ? "too wide by " + shown : "gap still left in all: " + shown);
                compared++;
            }
        }
        List<String> path = drawn.get("the way of every load");
        if (path != null) {
            JsonNode links = review(name).get("load path");
            assertThat(path.stream()
                            .filter(words -> words.startsWith("not judged"))
                            .count())
                    .isEqualTo(count(links, "not judged"));
            compared++;
        }
        assertThat(compared).as("drawings that were compared").isPositive();
    }

    static List<String> samples() {
        return SAMPLES;
    }

    private static long count(JsonNode links, String verdict) {
        long all = 0;
        for (JsonNode link : links) {
            all += link.get("verdict").asString().equals(verdict) ? 1 : 0;
        }
        return all;
    }

    private static String shop(JsonNode check, String when, String which) {
        return check.get(when).get(which).get("shop").asString();
    }

    private static double si(JsonNode numbers, String which) {
        return numbers.get(which).get("si").asDouble();
    }

    /** As the shop of that finding writes lengths. */
    private static String text(JsonNode finding, double metres) {
        boolean inches = finding.get("checks")
                .get(0)
                .get("planned")
                .get("demand")
                .get("shop")
                .asString()
                .endsWith("in");
        return (inches ? ShopRule.INCHES : ShopRule.MILLIMETRES).text(new Length(metres));
    }
}
