package fairgrain.program;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.CaseJoints;
import fairgrain.design.Design;
import fairgrain.design.Door;
import fairgrain.design.Review;
import fairgrain.design.Weighs;
import fairgrain.door.FrameHolds;
import fairgrain.door.HingesHold;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Question;
import fairgrain.finding.Words;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.hanging.Hanging;
import fairgrain.joint.EndJointHolds;
import fairgrain.quantity.Force;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Unit;
import fairgrain.shelf.PinHold;
import fairgrain.shelf.ShelfSag;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The lakeside cupboard, reckoned by hand in docs/worked-cabinet.md in inches and pounds, and by the library. */
class WorkedCabinetTest {
    private static final Path SAMPLE = Path.of("designs/lakeside-book-cupboard.yaml");
    private static final Path BY_HAND = Path.of("../docs/worked-cabinet.csv");
    private static final double INCH_POUND = Force.NEWTONS_PER_POUND * 0.0254;

    private final Design design = design();
    private final Review review = Review.of(design);

    private static Design design() {
        Reading in = new Reading(ShopRule.INCHES, new DesignFolder(SAMPLE));
        Node node = Objects.requireNonNull(YamlNodes.read(SAMPLE, in));
        return Objects.requireNonNull(new DesignForm(Catalog.shipped()).design(node, in));
    }

    private <Q extends Question<?>> List<Q> asked(Class<Q> kind) {
        return review.asked().stream()
                .map(each -> (Object) each.question())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    private static double pounds(double newtons) {
        return newtons / Force.NEWTONS_PER_POUND;
    }

    private static double poundsMass(double kilograms) {
        return Unit.POUND.fromSi(kilograms);
    }

    /** What the library says, in the units of the page. */
    private Map<String, Double> reckoned() {
        Map<String, Double> all = new LinkedHashMap<>();
        Hanging hanging = asked(Hanging.class).get(0);
        Finding hung = hanging.findings().get(0);
        all.put("case without back", poundsMass(design.box().orElseThrow().carcassMass()));
        all.put("one door", poundsMass(design.parts(Door.class).get(0).mass()));
        all.put("one shelf", poundsMass(design.parts(Weighs.class).get(0).mass()));
        all.put("all that hangs, heavy", pounds(hanging.heavyWeight().newtons()));
        Check stress = asked(ShelfSag.class).get(0).answer().stress().orElseThrow();
        all.put("bending stress of the shelf", Unit.PSI.fromSi(stress.demand()));
        PinHold.Held pins = asked(PinHold.class).get(0).answer();
        all.put("load on the front pin", pounds(pins.onOnePin().newtons()));
        all.put("what the side bears at a pin", pounds(pins.mayBear().newtons()));
        FrameHolds.Square square = asked(FrameHolds.class).get(0).answer();
        all.put("moment at a corner of a door", square.atCorner().si() / INCH_POUND);
        all.put("what a corner may carry", square.mayCarry().si() / INCH_POUND);
        all.put(
                "pull on the top hinge",
                pounds(asked(HingesHold.class).get(0).answer().pull().newtons()));
        EndJointHolds.Carried bottom = joint("bottom to sides");
        all.put("load on one end of the bottom", pounds(bottom.load().newtons()));
        all.put(
                "what the joint of the bottom may carry",
                pounds(bottom.mayCarry().newtons()));
        all.put(
                "what the joint of the rail may carry",
                pounds(joint("hanging rail to sides").mayCarry().newtons()));
        all.put("moment about the wall", hanging.hung().moment(1) / INCH_POUND);
        all.put("pull at the screws", pounds(hanging.heavyPull().newtons()));
        List<Quantity> worst = hung.why().numbers();
        all.put("weight on the hardest worked screw", pounds(worst.get(3).si()));
        all.put("pull on the hardest worked screw", pounds(worst.get(4).si()));
        all.put("use of the hardest worked screw", worst.get(5).si());
        List<Quantity> one = hung.notes().stream()
                .filter(note -> note.sentence().startsWith("One screw may carry"))
                .map(Words::numbers)
                .findFirst()
                .orElseThrow();
        all.put("what one lag screw may carry along the wall", pounds(one.get(0).si()));
        all.put("what its thread may carry", pounds(one.get(1).si()));
        all.put("what its head may carry", pounds(one.get(2).si()));
        return all;
    }

    private EndJointHolds.Carried joint(String part) {
        return asked(EndJointHolds.class).stream()
                .filter(joint -> joint.part().equals(part))
                .findFirst()
                .orElseThrow()
                .answer();
    }

    @Test
    void theLibraryAndTheHandAgreeOnEveryFigure() throws IOException {
        assertThat(design.parts(CaseJoints.class)).hasSize(1);
        Map<String, Double> reckoned = reckoned();
        try (CSVParser rows = CSVParser.parse(
                Files.readString(BY_HAND, StandardCharsets.UTF_8),
                CSVFormat.DEFAULT
                        .builder()
                        .setCommentMarker('#')
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get())) {
            for (CSVRecord row : rows) {
                String what = row.get("quantity");
                double value = Double.parseDouble(row.get("value"));
                assertThat(reckoned).containsKey(what);
                assertThat(Objects.requireNonNull(reckoned.remove(what)))
                        .as(what + ", " + row.get("unit"))
                        .isCloseTo(value, within(value * Double.parseDouble(row.get("tolerance"))));
            }
        }
        assertThat(reckoned).isEmpty();
    }
}
