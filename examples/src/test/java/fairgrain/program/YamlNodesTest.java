package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class YamlNodesTest {
    private static final Limits SIZE = new Limits("size", 0.002, 2, "m");

    record Cleat(String name, Length length, String screw, Optional<MoistureContent> moisture) {}

    record Box(UnitSystem units, List<Cleat> cleats, Optional<Length> depth) {}

    static final class CleatForm extends Form<Cleat> {
        private final Field<String> name = name("name", "what you call it").example("upper: left");
        private final Field<Length> length =
                length("length", SIZE, "along the wall").example("11 1/2");
        private final Field<String> screw = text("screw", "its screws").example("#8");
        private final Field<Optional<MoistureContent>> moisture = moisture(
                        "moisture", new Limits("moisture", 0.03, 0.25, "(a fraction)"), "of the wood")
                .optional();

        CleatForm() {
            super("cleat", "A bar on the wall.");
        }

        @Override
        protected Cleat build(Entries entries) {
            return new Cleat(entries.get(name), entries.get(length), entries.get(screw), entries.get(moisture));
        }
    }

    static final class BoxForm extends Form<Box> {
        private final Field<UnitSystem> units = choice(
                        "units", List.of(UnitSystem.values()), UnitSystem::word, "what a bare length means")
                .or("inches", "nothing else was said")
                .first((system, in) -> in.measureBy(ShopRule.of(system)));
        private final Field<List<Cleat>> cleats = some("cleats", new CleatForm(), "all cleats");
        private final Field<Optional<Length>> depth =
                field("depth", Kinds.length(SIZE), "front to back").optional();

        BoxForm() {
            super("box", "A box on a wall.");
        }

        @Override
        protected Box build(Entries entries) {
            return new Box(entries.get(units), entries.get(cleats), entries.get(depth));
        }
    }

    private final Reading in = new Reading(ShopRule.INCHES);

    private @Nullable Node read(String text) {
        return YamlNodes.read("box.yaml", text.getBytes(StandardCharsets.UTF_8), in);
    }

    private List<String> problems(String text) {
        Node node = read(text);
        if (node != null) {
            new BoxForm().read(node, in);
        }
        return in.problems().stream().map(Problem::text).toList();
    }

    private static Box good(String text) {
        Reading in = new Reading(ShopRule.INCHES);
        Node node = YamlNodes.read("box.yaml", text.getBytes(StandardCharsets.UTF_8), in);
        assertThat(node).isNotNull();
        Box box = new BoxForm().read(Objects.requireNonNull(node), in);
        assertThat(in.problems()).isEmpty();
        return Objects.requireNonNull(box);
    }

    @Test
    void readsADesignFile() {
        Box box = good("""
            depth: 11           # read before the units are, but meant in them
            cleats:
              - {name: upper, length: 300, screw: 8, moisture: 9 %}
              - name: lower
                length: 11 1/2 in
                screw: "#8"
            units: millimetres
            """);
        assertThat(box.depth()).contains(Length.mm(11));
        assertThat(box.cleats())
                .containsExactly(
                        new Cleat("upper", Length.mm(300), "8", Optional.of(MoistureContent.percent(9))),
                        new Cleat("lower", Length.inches(11.5), "#8", Optional.empty()));
    }

    @Test
    void eachNodeKnowsItsPlace() {
        assertThat(read("a: 1\nb:\n  - x\n  -\n  - {c: \"2\"}\n"))
                .isEqualTo(new Node.Mapping(
                        "box.yaml:1:1",
                        List.of(
                                new Node.Entry(
                                        new Node.Scalar("box.yaml:1:1", "a"), new Node.Scalar("box.yaml:1:4", "1")),
                                new Node.Entry(
                                        new Node.Scalar("box.yaml:2:1", "b"),
                                        new Node.Sequence(
                                                "box.yaml:3:3",
                                                List.of(
                                                        new Node.Scalar("box.yaml:3:5", "x"),
                                                        new Node.Nothing("box.yaml:4:4", ""),
                                                        new Node.Mapping(
                                                                "box.yaml:5:5",
                                                                List.of(new Node.Entry(
                                                                        new Node.Scalar("box.yaml:5:6", "c"),
                                                                        new Node.Scalar(
                                                                                "box.yaml:5:9", "2", true))))))))));
    }

    @Test
    void theStarterFileIsGoodAsItIsAndWithEveryKeyInUse() {
        String starter = new BoxForm().starter();
        assertThat(good(starter).depth()).isEmpty();
        assertThat(good(starter).cleats()).extracting(Cleat::name).containsExactly("upper: left");
        assertThat(good(starter).cleats()).extracting(Cleat::screw).containsExactly("#8");
        Box all = good(starter.replaceAll("(?m)^( *)#(?! )", "$1"));
        assertThat(all.depth()).isPresent();
        assertThat(all.cleats().get(0).moisture()).isPresent();
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsArePassedOver() {
        assertThat(good("\uFEFFcleats:\r\n  - name: upper\r\n    length: 11\r\n    screw: 8\r\n")
                        .cleats())
                .hasSize(1);
    }

    @Test
    void aValueBehindANumberSignIsMissedAndTold() {
        assertThat(problems("cleats:\n  - name: a\n    length: 11\n    screw: #8\n"))
                .containsExactly("box.yaml:4:5: a: nothing stands after 'screw';"
                        + " a # begins a comment in YAML, so write \"#8\" or No. 8");
    }

    @Test
    void aLongerValueBehindANumberSignIsShownInQuotes() {
        assertThat(problems("cleats:\n  - name: a\n    length: 11\n    screw: #8 x \"2\n"))
                .containsExactly("box.yaml:4:5: a: nothing stands after 'screw';"
                        + " a # begins a comment in YAML, so write \"#8 x \\\"2\"");
    }

    @Test
    void aKeyWithNothingButARealCommentBehindItIsJustEmpty() {
        assertThat(problems("cleats:\n  - name: a\n    length: 11\n    screw: # not bought yet\n"))
                .containsExactly("box.yaml:4:5: a: nothing stands after 'screw'");
    }

    @Test
    void aNumberTakenOffTheEndOfAValueIsTold() {
        assertThat(problems("cleats:\n  - name: a\n    length: 11\n    screw: wood #8\n"))
                .containsExactly("box.yaml:4:12: a # behind a blank begins a comment in YAML, so '#8' is not read:"
                        + " put the whole in quotes, or a blank behind the # of a comment");
    }

    @Test
    void aDecimalCommaBetweenBracesIsOneSlip() {
        assertThat(problems("cleats:\n  - {name: a, length: 11,5, screw: 8}\n"))
                .containsExactly("box.yaml:2:23: a: length: write 11.5 with a point");
    }

    @Test
    void aDecimalCommaElsewhereIsOneSlip() {
        assertThat(problems("cleats:\n  - name: a\n    length: 11,5\n    screw: 8\n"))
                .containsExactly(
                        "box.yaml:3:13: a: length: write the decimal mark as a point, such as 11.5, not '11,5'");
    }

    @Test
    void aKeyThatStandsTwiceIsToldWithBothPlaces() {
        assertThat(problems("cleats:\n  - {name: a, length: 11, screw: 8, length: 12}\n"))
                .containsExactly("box.yaml:2:37: a: 'length' stands twice in cleat; first at box.yaml:2:15");
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                arguments("", "1:1: nothing stands in this file"),
                arguments("# only a comment\n", "1:1: nothing stands in this file"),
                arguments("---\n", "1:1: nothing stands in this file"),
                arguments("a: 1\n---\nb: 2\n", "2:1: a second document begins here (---); a file holds one"),
                arguments(
                        "a: 1\n...\nb: 2\n",
                        "3:1: text stands outside of the document; take away lines that begin with '%', '---' or"
                                + " '...'"),
                arguments(
                        "a: &x 1\n",
                        "1:4: '&' begins an anchor in YAML, which is not read here; write the value out, or put text"
                                + " in quotes"),
                arguments(
                        "a: *x\n",
                        "1:4: '*' begins an alias in YAML, which is not read here; write the value out, or put text in"
                                + " quotes"),
                arguments(
                        "a: *** x\n",
                        "1:4: '*' begins an alias in YAML, which is not read here; write the value out, or put text in"
                                + " quotes"),
                arguments(
                        "a: & b\n",
                        "1:4: '&' begins an anchor in YAML, which is not read here; write the value out, or put text"
                                + " in quotes"),
                arguments(
                        "a: !!str x\n",
                        "1:4: '!' begins a tag in YAML, which is not read here; write the value out, or put text in"
                                + " quotes"),
                arguments(
                        "a: ! x\n",
                        "1:4: '!' begins a tag in YAML, which is not read here; write the value out, or put text in"
                                + " quotes"),
                arguments(
                        "a: !!map {b: 1}\n",
                        "1:4: '!' begins a tag in YAML, which is not read here; write the value out, or put text in"
                                + " quotes"),
                arguments("a:\n\tb: 1\n", "2:1: line 2 begins with a tab; YAML wants blanks"),
                arguments("a:\n  \tb: 1\n", "2:1: line 2 begins with a tab; YAML wants blanks"),
                arguments(
                        "a:\n\u00a0 b: 1\n",
                        "2:1: line 2 begins with a blank of another kind; YAML wants plain blanks"),
                arguments(
                        "a: b: c\n",
                        "1:5: a ':' cannot stand here: put text that has a ':' in it in quotes, and each key on a line"
                                + " of its own"),
                arguments(
                        "a: x\n  b: y\n",
                        "2:1: this goes on from line 1: line it up with the keys above, or put text of several lines"
                                + " in quotes"),
                arguments(
                        "a: 1\n   - c\n",
                        "2:1: this goes on from line 1: line it up with the keys above, or put text of several lines"
                                + " in quotes"),
                arguments(
                        "a: {b: 1\nc: 2\n",
                        "2:1: this goes on from line 1: a ',' or a closing bracket may be missing there"),
                arguments(
                        "a: [1, 2\nb: 2\n",
                        "2:1: this goes on from line 1: a ',' or a closing bracket may be missing there"),
                arguments(
                        "a: {b: 1\n",
                        "2:1: a ',' or a closing bracket is missing before this; the bracket was opened on line 1"),
                arguments(
                        "a: {b: \"1\"\nc: 2\n",
                        "2:1: a ',' or a closing bracket is missing before this; the bracket was opened on line 1"),
                arguments(
                        "- {n: a, s: #8, l: 3}\n- {n: b}\n",
                        "2:1: a value, a ',' or a closing bracket is missing before this; a #"
                                + " behind a blank begins a comment: write text such as \"#8\" in quotes"),
                arguments(
                        "a: \"left\" door\n",
                        "1:11: text stands behind a closing quote; put the whole in quotes of the other kind"),
                arguments(
                        "a: 'it's'\n",
                        "1:8: text stands behind a closing quote; put the whole in quotes of the other kind"),
                arguments("a: \"left door\nb: 2\n", "1:4: the quote that begins here is not closed"),
                arguments(
                        "a: \"x\\q\"\n",
                        "1:7: a \\ between double quotes begins a sign that does not exist; use single quotes, or"
                                + " write \\\\"),
                arguments("a: @x\n", "1:4: text cannot begin with '@' here; put it in quotes"),
                arguments("a: %x\n", "1:4: text cannot begin with '%' here; put it in quotes"),
                arguments("a: , x\n", "1:4: a value cannot begin with ','; put it in quotes"),
                arguments("a: - b\n", "1:4: a list cannot begin here: put each '-' on a line of its own below the key"),
                arguments("a: 1\nb\n", "2:1: no ':' stands behind this key"),
                arguments(
                        "a: 1\n- b\n",
                        "2:1: this does not line up with the lines above: keys of one block begin below each other,"
                                + " and so do the '-' of one list"),
                arguments(
                        "a:\n  - b: 1\n   c: 2\n",
                        "3:4: this does not line up with the lines above: keys of one block begin below each other,"
                                + " and so do the '-' of one list"),
                arguments(
                        ": x\n",
                        "1:1: a ':' cannot stand here: put text that has a ':' in it in quotes, and each key on a line"
                                + " of its own"),
                arguments("{: x}\n", "1:2: no key stands before this ':'"),
                arguments("{[a]: b}\n", "1:2: a key must be words, not a block or a list"),
                arguments("a: |8x\n", "1:6: text cannot begin with '|' or '>' here; put it in quotes"),
                arguments(
                        "%x\n",
                        "2:1: text stands outside of the document; take away lines that begin with '%', '---' or"
                                + " '...'"));
    }

    @ParameterizedTest(name = "{1}")
    @MethodSource("slips")
    void whatBreaksTheRulesOfYamlIsSaidInPlainWords(String text, String problem) {
        assertThat(problems(text)).containsExactly("box.yaml:" + problem);
    }

    @Test
    void bytesThatAreNoUtf8AreRefused() {
        assertThat(YamlNodes.read("box.yaml", "a: 1\nb: é\n".getBytes(StandardCharsets.ISO_8859_1), in))
                .isNull();
        assertThat(in.problems())
                .containsExactly(new Problem(
                        "box.yaml:2:4", "this is not text in UTF-8; save the file again with the encoding UTF-8"));
    }

    @Test
    void signsThatCannotBeSeenAreRefused() {
        assertThat(problems("a: 1\u0000\n"))
                .containsExactly("box.yaml:1:5: a sign that cannot be seen stands here (U+0000); take it out");
    }

    @Test
    void aFileAsLargeAsAllowedIsReadAndALargerOneIsNot() {
        String largest = "a: 1\n" + "#".repeat(256 * 1024 - 5);
        assertThat(read(largest)).isNotNull();
        assertThat(in.problems()).isEmpty();
        assertThat(read(largest + "#")).isNull();
        assertThat(in.problems())
                .containsExactly(new Problem("box.yaml", "the file has 257 KB; it may have 256 KB at most"));
    }

    @Test
    void filesAreReadFromDisk(@TempDir Path directory) throws IOException {
        Path good = Files.writeString(directory.resolve("box.yaml"), "a: 1\n");
        Path large = Files.write(directory.resolve("large.yaml"), new byte[3_000_000]);
        assertThat(YamlNodes.read(good, in)).isInstanceOf(Node.Mapping.class);
        assertThat(YamlNodes.read(large, in)).isNull();
        assertThat(YamlNodes.read(directory.resolve("none.yaml"), in)).isNull();
        assertThat(YamlNodes.read(directory, in)).isNull();
        assertThat(in.problems())
                .extracting(Problem::sentence)
                .containsExactly(
                        "the file has 2930 KB; it may have 256 KB at most",
                        "there is no such file",
                        "this is a directory, not a file");
    }

    @Test
    void thirtyTwoLevelsAreReadAndOneMoreIsNot() {
        assertThat(read("[".repeat(32) + "]".repeat(32))).isNotNull();
        assertThat(in.problems()).isEmpty();
        assertThat(read("[".repeat(33) + "]".repeat(33))).isNull();
        assertThat(in.problems())
                .containsExactly(new Problem("box.yaml:1:33", "blocks stand inside blocks more than 32 deep here"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"[", "{", "{a: ", "- ", "? ", "[[a], ", "a:\n"})
    void noDepthOverflowsTheStack(String opening) {
        assertThat(problems(opening.repeat(200_000 / opening.length()))).isNotEmpty();
    }

    @Property
    void noTextIsEverAnsweredByAnException(@ForAll("scribbles") String text) {
        Reading reading = new Reading(ShopRule.INCHES);
        Node node = YamlNodes.read("box.yaml", text.getBytes(StandardCharsets.UTF_8), reading);
        boolean read = node != null && new BoxForm().read(node, reading) != null;
        assertThat(read || !reading.isClean()).isTrue();
    }

    @Provide
    Arbitrary<String> scribbles() {
        return Arbitraries.of(
                        "a",
                        "b: ",
                        ":",
                        " ",
                        "  ",
                        "\n",
                        "\n  ",
                        "- ",
                        "? ",
                        "{",
                        "}",
                        "[",
                        "]",
                        ",",
                        "#",
                        "#8",
                        "\"",
                        "'",
                        "|",
                        ">",
                        "&x",
                        "*x",
                        "!",
                        "!!str ",
                        "%",
                        "@",
                        "`",
                        "---\n",
                        "...\n",
                        "\\",
                        "\t",
                        "\r\n",
                        "~",
                        "cleats:",
                        "units: inches\n",
                        "name: x",
                        "length: 11",
                        "\u00a0",
                        "\u0085",
                        "\u2028",
                        "\uD83E",
                        "\uDEB5",
                        "<<: ",
                        "=",
                        "é",
                        "%YAML 1.2\n",
                        "%TAG ! x\n")
                .list()
                .ofMaxSize(30)
                .map(parts -> String.join("", parts));
    }
}
