package fairgrain.entry;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fairgrain.design.Design;
import fairgrain.design.Door;
import fairgrain.design.GreatestLoad;
import fairgrain.design.GreatestLoads;
import fairgrain.design.Link;
import fairgrain.design.LoadPath;
import fairgrain.design.Piece;
import fairgrain.design.Review;
import fairgrain.design.Stage;
import fairgrain.design.Wall;
import fairgrain.design.Weighs;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.form.Given;
import fairgrain.form.Reading;
import fairgrain.hanging.Hanging;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The way of a load, from the book to the stud. */
class LoadPathTest {
    private static Object shelf(String load) {
        return in(
                "name", "shelf",
                "count", "2",
                "material", "white ash",
                "span", "30",
                "depth", "10",
                "thickness", "1",
                "load", load,
                "behind doors", "yes");
    }

    private static Object back(Object... more) {
        Object[] all = new Object[more.length + 4];
        System.arraycopy(new Object[] {"material", "birch plywood 6 5 mm along", "thickness", "1/4"}, 0, all, 0, 4);
        System.arraycopy(more, 0, all, 4, more.length);
        return in(all);
    }

    private static Design hung(String load) {
        return hung(load, back());
    }

    private static Design hung(String load, Object back) {
        return design(
                load,
                back,
                "wall",
                in(
                        "stud", "spruce-pine-fir",
                        "studs at", List.of("8", "24"),
                        "wall board", "1/2",
                        "rail", in("wood", "yellow-poplar", "thickness", "3/4", "depth", "5 1/2", "held", "both edges"),
                        "screw", "1/4 in lag screw",
                        "screw length", "3 1/2",
                        "screws in each stud", "3",
                        "screws apart", "1 1/2",
                        "screws above lower edge", "27",
                        "on the bottom", load,
                        "on top", "nothing"));
    }

    private static Design design(String load, Object back, Object... more) {
        Object[] said = {
            "name",
            "piece",
            "units",
            "inches",
            "shelves",
            blocks((Object[]) shelf(load)),
            "case",
            in(
                    "material", "white oak",
                    "width", "31 1/2",
                    "height", "30",
                    "depth", "11",
                    "thickness", "3/4",
                    "back", back)
        };
        Object[] all = new Object[said.length + more.length];
        System.arraycopy(said, 0, all, 0, said.length);
        System.arraycopy(more, 0, all, said.length, more.length);
        Reading reading = Given.inInches();
        Design design = new DesignForm(Catalog.shipped()).design(block(all), reading);
        if (design == null) {
            throw new AssertionError(
                    reading.problems().stream().map(p -> p.text()).toList());
        }
        return design;
    }

    @Test
    void everyLinkStandsInItsPlaceToldOrNot() {
        LoadPath path = Review.of(hung("20 lb")).path();
        assertThat(path.links().stream().map(Link::stage))
                .containsExactly(Stage.SHELF, Stage.UNDER_SHELF, Stage.CASE, Stage.PULLED_OFF, Stage.RAIL, Stage.WALL);
    }

    @Test
    void aLinkThatTheDesignLeavesOutIsNotJudgedAndNeitherIsThePiece() {
        Review review = Review.of(hung("20 lb"));
        assertThat(review.findings().stream().map(Finding::verdict)).doesNotContain(Verdict.FAILS, Verdict.NOT_JUDGED);
        assertThat(review.path().notJudged().stream().map(Link::stage))
                .containsExactly(Stage.UNDER_SHELF, Stage.CASE, Stage.PULLED_OFF);
        assertThat(review.path().notJudged().stream().flatMap(l -> l.missing().stream()))
                .contains(new Missing(
                        "what carries it in the sides",
                        "enter 'shelf pins' under it by its name, or its ends among 'joints'"));
        assertThat(review.verdict()).isEqualTo(Verdict.NOT_JUDGED);
    }

    @Test
    void aBackScrewedAllRoundKeepsTheCaseSquareAndIsNoLinkOfItsOwn() {
        Object screws = in(
                "screws within the rail", "8",
                "screw", "no. 8 wood screw",
                "screw length", "1 1/4",
                "screws all round apart", "6");
        Review review = Review.of(hung("20 lb", back("fixed", screws)));
        assertThat(review.findings().stream()
                        .filter(finding -> finding.question().equals("does the back keep the case square"))
                        .map(Finding::verdict))
                .containsExactly(Verdict.HOLDS);
        // what pulls a countersunk head through a thin back is not known
        assertThat(review.path().links().stream()
                        .filter(link -> link.stage() == Stage.PULLED_OFF)
                        .map(Link::verdict))
                .containsExactly(Verdict.NOT_JUDGED);
    }

    @Test
    void pinsOfWhichNoSidesAreToldStandInTheCase() {
        Object pins = in(
                "name", "pins",
                "under", "shelf",
                "diameter", "1/4",
                "in side", "3/8",
                "stand out", "3/8",
                "pins in", "1",
                "hole from edge", "1",
                "hole from end", "8",
                "pins of", "steel");
        Review review = Review.of(design("20 lb", back(), "shelf pins", blocks((Object[]) pins)));
        assertThat(review.findings().stream()
                        .filter(finding -> finding.part().equals("pins"))
                        .map(Finding::verdict))
                .containsExactly(Verdict.CLOSE);
    }

    @Test
    void theWeakestLinkIsTheOneWithTheLeastToSpare() {
        LoadPath path = Review.of(hung("20 lb")).path();
        double least = path.links().stream()
                .mapToDouble(Link::spare)
                .filter(spare -> !Double.isNaN(spare))
                .min()
                .orElseThrow();
        assertThat(path.weakest())
                .hasValueSatisfying(weakest -> assertThat(weakest.spare()).isEqualTo(least));
    }

    @Test
    void sagIsNoMatterOfCarrying() {
        Link shelf = Review.of(hung("20 lb")).path().links().get(0);
        assertThat(shelf.governing())
                .hasValueSatisfying(
                        outcome -> assertThat(outcome.planned().what()).doesNotContain("sag"));
    }

    @Test
    void aPieceOfWhichNoWallIsToldHasNoWayToIt() {
        assertThat(Review.of(design("20 lb", back())).path().links()).isEmpty();
    }

    /** Another way to the same sum: volume of every piece that is cut, times its density, and what was told of contents. */
    @Test
    void everyThingIsWeighedOnceAndOnlyOnce() {
        Design design = hung("20 lb");
        Hanging hanging = Review.of(design).asked().stream()
                .map(asked -> asked.question())
                .filter(Hanging.class::isInstance)
                .map(Hanging.class::cast)
                .findFirst()
                .orElseThrow();
        Catalog catalog = Catalog.shipped();
        double cut = design.box().orElseThrow().pieces().stream()
                .mapToDouble(piece -> volume(piece) * density(catalog, piece.material()))
                .sum();
        double shelves = design.parts(Weighs.class).stream()
                .mapToDouble(shelf -> shelf.count() * shelf.mass())
                .sum();
        double contents = 3 * 20 * 0.45359237;
        assertThat(hanging.hung().mass(0)).isCloseTo(cut + shelves + contents, within(1e-6));
    }

    private static double volume(Piece piece) {
        return piece.count()
                * piece.length().orElseThrow().metres()
                * piece.width().metres()
                * piece.thickness().metres();
    }

    private static double density(Catalog catalog, String of) {
        return catalog.sheetFinder().find(of).stream()
                .findFirst()
                .map(sheet -> sheet.density())
                .orElseGet(() -> Door.density(catalog.woodFinder().find(of).get(0)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"20 lb", "books", "60 lb"})
    void theGreatestLoadHoldsAndALittleMoreDoesNot(String load) {
        Design design = hung(load);
        for (GreatestLoad greatest : GreatestLoads.of(design)) {
            if (greatest.setBy().isEmpty() || greatest.most().kilograms() == 0) {
                continue;
            }
            double times = greatest.most().kilograms() / greatest.planned().kilograms();
            assertThat(GreatestLoads.holds(design, greatest.on(), times)).isTrue();
            assertThat(GreatestLoads.holds(design, greatest.on(), 1.01 * times)).isFalse();
        }
    }

    @Test
    void theGreatestLoadsAreOfEachShelfAndOfTheWholeCase() {
        List<GreatestLoad> all = GreatestLoads.of(hung("20 lb"));
        assertThat(all.stream().map(GreatestLoad::on)).containsExactly("shelf", Wall.CASE);
        assertThat(all.get(0).planned().kilograms()).isCloseTo(20 * 0.45359237, within(1e-9));
        assertThat(all.get(1).planned().kilograms()).isCloseTo(60 * 0.45359237, within(1e-9));
    }
}
