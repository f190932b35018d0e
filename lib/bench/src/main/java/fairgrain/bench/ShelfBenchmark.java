package fairgrain.bench;

import fairgrain.finding.Answer;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.material.Glass;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.shelf.BackEdge;
import fairgrain.shelf.Contents;
import fairgrain.shelf.EdgePiece;
import fairgrain.shelf.GlassRest;
import fairgrain.shelf.GlassShelf;
import fairgrain.shelf.GlassSupport;
import fairgrain.shelf.GlassUse;
import fairgrain.shelf.Loads;
import fairgrain.shelf.SagLimit;
import fairgrain.shelf.Section;
import fairgrain.shelf.ShelfLoad;
import fairgrain.shelf.ShelfSag;
import fairgrain.shelf.ShelfStock;
import fairgrain.shelf.Support;
import fairgrain.shelf.Supports;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Shelves under books: the answer as expected, all checks at their likely worst, and the finding in words with its cures. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ShelfBenchmark {
    /** Which shelf. */
    public enum Shelf {
        SIMPLE,
        SIMPLE_THAT_FAILS,
        FOUR_BAYS,
        FRONT_STRIP,
        GLASS_ON_CLEATS,
        GLASS_ON_PINS
    }

    @Param
    private Shelf shelf = Shelf.SIMPLE;

    private Question<? extends Answer> question = simple();

    @Setup
    public void set() {
        question = switch (shelf) {
            case SIMPLE -> simple();
            case SIMPLE_THAT_FAILS -> tooThin();
            case FOUR_BAYS -> fourBays();
            case FRONT_STRIP -> frontStrip();
            case GLASS_ON_CLEATS -> glass(GlassSupport.CLEATS);
            case GLASS_ON_PINS -> glass(GlassSupport.PINS);
        };
    }

    static ShelfSag simple() {
        return shelf(Section.plain(Length.mm(250), Length.mm(25)), Supports.at(Support.PINS, Length.mm(600)));
    }

    private static ShelfSag tooThin() {
        return shelf(Section.plain(Length.mm(250), Length.mm(16)), Supports.at(Support.PINS, Length.mm(900)));
    }

    private static ShelfSag fourBays() {
        Supports held = new Supports(
                Support.PINS,
                Length.mm(2400),
                null,
                BackEdge.FREE,
                List.of(Length.mm(600), Length.mm(1200), Length.mm(1800)),
                List.of(),
                Length.ZERO,
                Length.ZERO,
                null);
        return shelf(Section.plain(Length.mm(250), Length.mm(20)), held);
    }

    private static ShelfSag frontStrip() {
        EdgePiece strip = new EdgePiece(oak(), Length.mm(20), Length.mm(40), EdgePiece.Place.EDGE, true);
        return shelf(
                new Section(Length.mm(250), Length.mm(18), strip, null, null),
                Supports.at(Support.PINS, Length.mm(900)));
    }

    private static ShelfStock oak() {
        return Places.TABLES
                .longTerm()
                .of(Places.TABLES.woods().find("white oak").get(0), true, false);
    }

    private static ShelfLoad books() {
        return Places.row(Places.TABLES.contents(), Contents::id, "books").on(Length.mm(250));
    }

    private static ShelfSag shelf(Section section, Supports supports) {
        return new ShelfSag(
                "shelf", oak(), section, supports, Loads.even(books()), SagLimit.OPEN, Places.room(), List::of);
    }

    private static GlassShelf glass(GlassSupport support) {
        return new GlassShelf(
                "glass shelf",
                Places.row(Places.TABLES.glass(), Glass::id, "toughened-polished"),
                Length.mm(8),
                false,
                new GlassRest(support, Length.mm(700), Length.mm(250), Length.mm(40), Length.mm(15)),
                new GlassUse(books(), Mass.kilograms(0), Force.newtons(200), SagLimit.OPEN, false),
                Places.room());
    }

    /** The model made anew, at what is expected. */
    @Benchmark
    public Answer answer() {
        return question.answer();
    }

    /** The same, then every check at its own likely worst case. */
    @Benchmark
    public List<Outcome> outcomes() {
        return Reliability.outcomes(question, Reliability.NINETEEN_IN_TWENTY);
    }

    @Benchmark
    public List<Finding> findings() {
        return question.findings();
    }
}
