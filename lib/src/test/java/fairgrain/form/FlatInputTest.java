package fairgrain.form;

import static org.assertj.core.api.Assertions.assertThat;

import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class FlatInputTest {
    private final Form<PanelForm.Panel> panel = new PanelForm();

    private static Map<String, String> cells(String... headingsAndTexts) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < headingsAndTexts.length; i += 2) {
            cells.put(headingsAndTexts[i], headingsAndTexts[i + 1]);
        }
        return cells;
    }

    private List<String> row(Map<String, String> cells) {
        return Given.problems(panel, FlatInput.row(panel, "panels.csv:12", cells));
    }

    @Test
    void aRowIsReadByTheSameFormAsAFile() {
        Reading in = Given.inInches();
        Node row = FlatInput.row(
                panel,
                "panels.csv:12",
                cells(
                        "groove width",
                        "3/16",
                        "name",
                        "left",
                        "wood",
                        "lake ash",
                        "between stiles",
                        "11",
                        "width",
                        " ",
                        "groove depth",
                        "3/8",
                        "moisture meter reading",
                        "9 %"));
        assertThat(panel.read(row, in))
                .isEqualTo(new PanelForm.Panel(
                        "left",
                        "lake ash",
                        Length.inches(11),
                        new PanelForm.Groove(Length.inches(0.375), Length.inches(0.1875)),
                        1,
                        Optional.empty(),
                        Optional.of(MoistureContent.percent(9)),
                        false));
        assertThat(in.problems()).isEmpty();
        assertThat(in.taken()).extracting(Taken::key).containsExactly("boards", "bevelled");
    }

    @Test
    void optionsAreReadByTheSameFormAsAFile() {
        Reading in = Given.inInches();
        Node options = FlatInput.options(
                panel,
                "panel",
                cells(
                        "name",
                        "left",
                        "wood",
                        "lake ash",
                        "between-stiles",
                        "11",
                        "groove-depth",
                        "3/8",
                        "moisture",
                        "9 %"));
        PanelForm.Panel read = panel.read(options, in);
        assertThat(in.problems()).isEmpty();
        PanelForm.Panel panelRead = Objects.requireNonNull(read);
        assertThat(panelRead.sight()).isEqualTo(Length.inches(11));
        assertThat(panelRead.today()).contains(MoistureContent.percent(9));
    }

    @Test
    void slipsInARowAreToldWithItsLine() {
        assertThat(row(cells("name", "left", "wood", "maple", "betwen stiles", "11", "groove depth", "3")))
                .containsExactly(
                        "panels.csv:12: 'betwen stiles' is not a key of panel; did you mean 'between stiles'?"
                                + " keys: name, wood, between stiles, groove, boards, width, moisture, bevelled",
                        "panels.csv:12: wood: 'maple' could be lake maple, hill maple or shore maple: write one of"
                                + " them",
                        "panels.csv:12: groove depth must be from 3/32 to 1 9/16 in, but was '3'");
    }

    @Test
    void aMisspeltPathIsOneSlip() {
        assertThat(row(cells("name", "left", "wood", "lake ash", "between stiles", "11", "grove depth", "3/8")))
                .containsExactly("panels.csv:12: 'grove depth' is not a key of panel; did you mean 'groove depth'?"
                        + " keys: name, wood, between stiles, groove, boards, width, moisture, bevelled");
    }

    @Test
    void whatIsMissingIsAKeyThatHasAColumn() {
        assertThat(row(cells("name", "left", "wood", "lake ash", "between stiles", "11")))
                .containsExactly("panels.csv:12: groove needs 'depth': how deep the groove is cut");
        assertThat(row(cells("name", "left", "wood", "lake ash", "groove depth", "3/8")))
                .containsExactly("panels.csv:12: panel needs 'between stiles': the clear width of the frame");
    }

    @Test
    void slipsInOptionsAreToldWithTheOption() {
        assertThat(Given.problems(
                        panel,
                        FlatInput.options(
                                panel,
                                "panel",
                                cells("name", "left", "between-stiles", "11,5", "groove-depth", "3", "grain", "flat"))))
                .containsExactlyInAnyOrder(
                        "panel: panel needs 'wood': what it is made of",
                        "--between-stiles: between stiles: write the decimal mark as a point, such as 11.5, not '11,5'",
                        "--groove-depth: groove depth must be from 3/32 to 1 9/16 in, but was '3'",
                        "--grain: 'grain' is not a key of panel; keys: name, wood, between stiles, groove, boards,"
                                + " width, moisture, bevelled");
    }

    @Test
    void everyColumnHasItsPath() {
        assertThat(FlatInput.paths(panel).keySet())
                .containsExactly(
                        "name",
                        "wood",
                        "between stiles",
                        "groove depth",
                        "groove width",
                        "boards",
                        "width",
                        "moisture",
                        "moisture meter reading",
                        "bevelled");
        assertThat(FlatInput.paths(new DesignForm()).keySet()).containsExactly("name", "units", "holes");
    }
}
