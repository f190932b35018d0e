package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.FixedPart;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Verdict;
import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.fixing.Fixed;
import fairgrain.fixing.FixedAt;
import fairgrain.fixing.Member;
import fairgrain.form.Given;
import fairgrain.form.Node;
import fairgrain.form.Problem;
import fairgrain.form.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class FixedFormTest {
    private static final Catalog CATALOG = Catalog.shipped();
    private static final Object[] CLEAT = in("material", "white oak", "thickness", "3/4", "grain", "along");
    private static final Object[] SIDE =
            in("material", "white oak", "sawn", "flat", "thickness", "3/4", "grain", "across");

    private static Design design(Object[] of, Object[] to, Object... rest) {
        Reading reading = Given.inInches();
        Design design = new DesignForm(CATALOG).design(node(of, to, rest), reading);
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(design);
    }

    private static List<String> problems(Object... rest) {
        Reading reading = Given.inInches();
        new DesignForm(CATALOG).design(node(CLEAT, SIDE, rest), reading);
        return reading.problems().stream().map(Problem::text).toList();
    }

    private static Node.Mapping node(Object[] of, Object[] to, Object... rest) {
        List<Object> fixing = new ArrayList<>(List.of("name", "cleat", "of", of, "to", to));
        fixing.addAll(Arrays.asList(rest));
        return block(
                "name",
                "piece",
                "cutting",
                in("moisture", "8 %"),
                "units",
                "inches",
                "fixings",
                blocks(fixing.toArray()));
    }

    private static Question<?> asked(Design design) {
        return design.parts(FixedPart.class).stream()
                .flatMap(part -> part.questions(design).stream())
                .reduce((one, other) -> {
                    throw new IllegalStateException("one question was wanted");
                })
                .orElseThrow();
    }

    private static Fixed fixed(Object... rest) {
        return (Fixed) asked(design(CLEAT, SIDE, rest));
    }

    @Test
    void readsSlottedScrews() {
        Fixed fixed = fixed(
                "fixed by", "slotted screws",
                "between outermost fixings", "9",
                "screws", "3",
                "screw diameter", "0.164",
                "stays fixed at", "middle",
                "slot length", "3/8");
        assertThat(fixed.between().toInches()).isCloseTo(9, within(1e-9));
        assertThat(fixed.of()).isInstanceOf(Member.Along.class);
        assertThat(fixed.to()).isInstanceOf(Member.Across.class);
        SlottedScrews screws = (SlottedScrews) fixed.by();
        assertThat(screws.count()).isEqualTo(3);
        assertThat(screws.at()).isEqualTo(FixedAt.MIDDLE);
        assertThat(screws.diameter().toInches()).isCloseTo(0.164, within(1e-9));
        assertThat(Objects.requireNonNull(screws.slot()).toInches()).isCloseTo(0.375, within(1e-9));
    }

    @Test
    void readsGlueTightScrewsPinsAndSliding() {
        Glued glue = (Glued) fixed("fixed by", "glue", "glued width", "2 1/4").by();
        assertThat(glue.width().toInches()).isCloseTo(2.25, within(1e-9));
        assertThat(fixed("fixed by", "glue", "glued width", "2 1/4").between()).isEqualTo(glue.width());
        assertThat(fixed("fixed by", "tight screws", "between outermost fixings", "9")
                        .by())
                .isEqualTo(TightScrews.SNUG);
        TightScrews wide = (TightScrews) fixed(
                        "fixed by", "tight screws",
                        "between outermost fixings", "9",
                        "screw diameter", "4 mm",
                        "hole diameter", "6 mm")
                .by();
        assertThat(wide.slip().toMm()).isCloseTo(1, within(1e-9));
        Pinned pinned = (Pinned) fixed(
                        "fixed by", "pin",
                        "between outermost fixings", "9",
                        "stays fixed at", "back",
                        "room", "1/8")
                .by();
        assertThat(pinned.at()).isEqualTo(FixedAt.BACK);
        assertThat(Objects.requireNonNull(pinned.room()).toInches()).isCloseTo(0.125, within(1e-9));
        assertThat(((Pinned) fixed("fixed by", "sliding", "between outermost fixings", "9")
                                .by())
                        .at())
                .isEqualTo(FixedAt.FRONT);
    }

    @Test
    void aSheetNeedsNoGrain() {
        Fixed back = (Fixed) asked(design(
                in("material", "birch plywood 6 5 mm along", "thickness", "1/4"),
                in("material", "white oak", "grain", "along"),
                "fixed by",
                "tight screws",
                "between outermost fixings",
                "30"));
        assertThat(back.of()).isInstanceOf(Member.Sheet.class);
        assertThat(back.findings().get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void whatIsNotSaidIsAskedFor() {
        assertThat(missing(CLEAT, SIDE))
                .containsExactly("how the one is held to the other", "how far apart the outermost fixings are");
        assertThat(missing(CLEAT, SIDE, "fixed by", "glue")).containsExactly("how wide the glue is");
        assertThat(missing(CLEAT, SIDE, "fixed by", "slotted screws", "between outermost fixings", "9"))
                .containsExactly("how thick the screws are");
        assertThat(missing(
                        in("material", "white oak"),
                        in("material", "hardboard", "grain", "across"),
                        "fixed by",
                        "tight screws",
                        "between outermost fixings",
                        "9"))
                .containsExactly(
                        "which way the grain of the white oak runs",
                        "how much a sheet of hardboard grows with humidity");
    }

    private static List<String> missing(Object[] of, Object[] to, Object... rest) {
        List<? extends Finding> findings = asked(design(of, to, rest)).findings();
        assertThat(findings).hasSize(1);
        assertThat(findings.get(0).verdict()).isEqualTo(Verdict.NOT_JUDGED);
        return findings.get(0).missing().stream().map(m -> m.what()).toList();
    }

    @Test
    void refusesWhatDoesNotGoTogether() {
        assertThat(Stream.of(
                                problems("fixed by", "tight screws", "hole diameter", "1/4"),
                                problems("fixed by", "tight screws", "hole diameter", "1/8", "screw diameter", "1/4"),
                                problems("fixed by", "glue", "glued width", "3", "between outermost fixings", "2"),
                                problems("fixed by", "nails"))
                        .map(all -> String.join("; ", all)))
                .satisfiesExactly(
                        text -> assertThat(text).contains("'hole diameter' needs 'screw diameter' beside it"),
                        text -> assertThat(text).contains("'hole diameter' must not be less than 'screw diameter'"),
                        text -> assertThat(text)
                                .contains("'glued width' must not be more than 'between outermost fixings'"),
                        text -> assertThat(text)
                                .contains(
                                        "must be glue, tight screws, slotted screws, pin or sliding, but was 'nails'"));
    }

    @Test
    void theRatiosOfAWoodComeFromItsTable() {
        Member.Across oak =
                (Member.Across) fixed("fixed by", "glue", "glued width", "2").to();
        assertThat(Objects.requireNonNull(oak.elastic()).id()).isEqualTo("white-oak");
    }

    @Test
    void aKindOfJointTellsWhichPartStaysFixed() {
        Design design = design(
                CLEAT,
                SIDE,
                "kind",
                "breadboard end",
                "fixed by",
                "slotted screws",
                "between outermost fixings",
                "9",
                "screw diameter",
                "0.164");
        assertThat(design.taken().stream().map(taken -> taken.text()))
                .anySatisfy(text -> assertThat(text)
                        .contains("stays fixed at taken as middle: a breadboard end is fast in the middle and free to"
                                + " both sides"));
    }
}
