package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class FlatViewTest {
    private final DesignForm design = new DesignForm();
    private final FlatView view =
            new FlatView(design, texts("panels", "", "units", "units", "holes", "holes"), Set.of("moisture", "groove"));

    private static Map<String, String> texts(String... namesAndTexts) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int i = 0; i < namesAndTexts.length; i += 2) {
            texts.put(namesAndTexts[i], namesAndTexts[i + 1]);
        }
        return texts;
    }

    /** The block with the name that the root needs. */
    private static Node.Mapping named(Node.Mapping block) {
        List<Node.Entry> entries = new ArrayList<>(block.entries());
        entries.add(0, FlatInput.entry(block.at(), "name", "piece"));
        return new Node.Mapping(block.at(), entries);
    }

    @Test
    void aColumnGoesByTheRestOfItsPathWhereTheFirstKeyGoesWithoutSaying() {
        assertThat(view.columns())
                .extracting(FlatView.Column::names)
                .containsExactly(
                        List.of("name"),
                        List.of("wood"),
                        List.of("between stiles"),
                        List.of("depth", "groove depth"),
                        List.of("groove width"),
                        List.of("boards"),
                        List.of("width"),
                        List.of("moisture"),
                        List.of("meter reading", "moisture meter reading"),
                        List.of("bevelled"),
                        List.of("units"),
                        List.of("holes"));
        assertThat(view.column("width")).isNotEqualTo(view.column("groove width"));
    }

    @Test
    void aColumnIsNeededOnlyIfAllThatItStandsInIs() {
        assertThat(view.columns().stream().filter(FlatView.Column::needed))
                .extracting(FlatView.Column::path)
                .containsExactly("name", "wood", "between stiles", "groove depth");
        FlatView apart = new FlatView(design, texts("panels", "panel"), Set.of("panel"));
        assertThat(Objects.requireNonNull(apart.column("panel groove depth")).names())
                .containsExactly("groove depth", "panel groove depth");
    }

    @Test
    void textsAreReadByTheSameFormAsAFile() {
        Reading in = Given.inInches();
        Node.Mapping block = view.block(
                "panels.csv:12",
                texts(
                        "name",
                        "left",
                        "wood",
                        "lake ash",
                        "between stiles",
                        "11",
                        "depth",
                        "3/8",
                        "width",
                        " ",
                        "holes",
                        "2; 3"));
        DesignForm.Design read = Objects.requireNonNull(design.read(named(block), in));
        assertThat(in.problems()).isEmpty();
        assertThat(read.holes()).containsExactly(2, 3);
        assertThat(read.panels()).singleElement().satisfies(panel -> {
            assertThat(panel.groove().depth()).isEqualTo(Length.inches(0.375));
            assertThat(panel.width()).isEqualTo(Optional.empty());
        });
    }

    @Test
    void whatIsWrongIsToldByItsColumn() {
        Node.Mapping block = view.block("panels.csv:12", texts("name", "left", "wood", "maple", "depth", "3"));
        assertThat(Given.problems(design, named(block)))
                .containsExactly(
                        "panels.csv:12: left: wood: 'maple' could be lake maple, hill maple or shore maple: write one"
                                + " of them",
                        "panels.csv:12: left needs 'between stiles': the clear width of the frame",
                        "panels.csv:12: left: groove depth must be from 3/32 to 1 9/16 in, but was '3'");
    }

    @Test
    void aListEntryOfItsOwnNameIsLeftOutWholeIfNothingIsSaidOfIt() {
        FlatView apart = new FlatView(design, texts("units", "units", "panels", "panel"), Set.of());
        assertThat(apart.block("x", texts("units", "inches")).entries())
                .extracting(entry -> entry.key().text())
                .containsExactly("units");
    }

    @Test
    void aNameThatIsUnknownOrGivenTwiceIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> view.block("x", texts("dpeth", "1")))
                .withMessage("'dpeth' is not a column");
        assertThat(view.nearest("dpeth")).startsWith("depth");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> view.block("x", texts("depth", "1", "groove depth", "1")))
                .withMessage("'groove depth' is given twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new FlatView(design, texts("pannels", ""), Set.of()))
                .withMessage("design has no key 'pannels'");
    }

    @Test
    void aBlockIsWrittenWithTheMeaningOfEachKey() {
        Node.Mapping block = view.block(
                "x",
                texts(
                        "name",
                        "left: \"a\"",
                        "wood",
                        "lake ash",
                        "between stiles",
                        "11",
                        "depth",
                        "3/8",
                        "units",
                        "inches",
                        "holes",
                        "2;3"));
        assertThat(view.written(named(block))).isEqualTo("""
            # what you call the piece
            name: piece
            # every panel in a groove
            panels:
              # what you call it
              - name: "left: \\"a\\""
                # what it is made of
                wood: lake ash
                # the clear width of the frame
                between stiles: 11
                # the groove around it
                groove:
                  # how deep the groove is cut
                  depth: 3/8
            # what a bare length means
            units: inches
            # screws in each cleat
            holes: [2, 3]
            """);
    }
}
