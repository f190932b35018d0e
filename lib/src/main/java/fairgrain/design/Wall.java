package fairgrain.design;

import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.hanging.BevelledPair;
import fairgrain.hanging.BevelledRails;
import fairgrain.hanging.Cabinet;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.HangerHold;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.Layer;
import fairgrain.hanging.Ledger;
import fairgrain.hanging.LedgerHold;
import fairgrain.hanging.Lift;
import fairgrain.hanging.LoadCase;
import fairgrain.hanging.LoadCases;
import fairgrain.hanging.Rail;
import fairgrain.hanging.RailStrength;
import fairgrain.hanging.Row;
import fairgrain.hanging.Stud;
import fairgrain.hanging.StudPattern;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Temperature;
import fairgrain.shelf.ShelfLoad;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * How the case hangs on the wall, as far as it was said.
 *
 * @param stud what the studs or the blocking are
 * @param places where the studs stand, from the left end of the case
 * @param into what the screws go into
 * @param behind the blocking or backing, if they go into one
 * @param layers what lies between rail and stud and is not wood in bearing
 * @param rows the screws in each stud
 * @param bottomLoad what stands on the bottom of the case
 * @param topLoad what stands on top
 * @param cases people and earthquake, if asked for
 * @param warmest how warm the wood gets
 * @param aboveFloor the lower edge, once it hangs
 * @param by what else than screws through a rail holds it
 */
public record Wall(
        Optional<Stud> stud,
        Places places,
        ScrewsInto into,
        Optional<Behind> behind,
        Optional<List<Layer>> layers,
        Optional<HangingScrew> screw,
        Optional<Length> screwLength,
        Rows rows,
        Optional<RailSaid> rail,
        ShelfLoad bottomLoad,
        ShelfLoad topLoad,
        LoadCases cases,
        Optional<Temperature> warmest,
        Length aboveFloor,
        HungBy by)
        implements Part {
    /** The load that the links from the case to the wall carry. */
    public static final String CASE = "case";

    private static final double HOTTEST = 38 + 273.15 + 0.01; // K, 100 F and a hair
    private static final Length LEAST_HEIGHT = Hanging.CONTACT.times(3);

    /** Where studs stand: listed, or the first and how far apart. */
    public record Places(List<Length> listed, Optional<Length> first, Optional<Length> every) {
        boolean said() {
            return !listed.isEmpty() || first.isPresent();
        }

        List<Length> upTo(Length width) {
            return first.isPresent() ? StudPattern.spaced(first.get(), every.orElseThrow(), width) : listed;
        }
    }

    /** The first row, as far as it was said, and more. */
    public record Rows(Optional<Integer> perStud, Optional<Length> height, Optional<Length> apart, List<Row> more) {
        List<Row> all() {
            List<Row> all = new ArrayList<>(more);
            if (perStud.isPresent() && height.isPresent()) {
                all.add(0, new Row(height.get(), perStud.get(), apart));
            }
            return List.copyOf(all);
        }

        /** Of the highest screw above the lower edge of the case, as far as heights were said [m]. */
        double highest() {
            return all().stream()
                    .mapToDouble(row -> row.height().metres()
                            + (row.perStud() - 1)
                                    * row.apart().map(Length::metres).orElse(0.0))
                    .max()
                    .orElse(0);
        }

        /** Screws one above the other at known heights keep a case level on a single stud. */
        boolean couple() {
            List<Row> all = all();
            return all.stream().map(Row::height).distinct().count() > 1
                    || all.stream()
                            .anyMatch(row -> row.perStud() > 1 && row.apart().isPresent());
        }
    }

    /** Blocking or backing: its thickness, the height of its face, and what its own fixing may carry. */
    public record Behind(Length thickness, Length face, Optional<Force> carries) {}

    /** The rail, as it was said. */
    public record RailSaid(
            Material material, Length thickness, Optional<Length> depth, Optional<Length> screwsUp, Rail.Held held) {}

    static final Citation ITEMS = Citation.of("own", "books flush with the front, 156 mm deep", Basis.DERIVED);

    @Override
    public String name() {
        return "cabinet on the wall";
    }

    @Override
    public Workplace where() {
        return Workplace.WALL;
    }

    /** The same with so many times as much on the bottom of the case and on top. */
    Wall loaded(double times) {
        return new Wall(
                stud,
                places,
                into,
                behind,
                layers,
                screw,
                screwLength,
                rows,
                rail,
                bottomLoad.times(times),
                topLoad.times(times),
                cases,
                warmest,
                aboveFloor,
                by);
    }

    @Override
    public Optional<Carries> carries(Question<?> question) {
        return question instanceof Lift ? Optional.empty() : Optional.of(new Carries(stage(question), CASE));
    }

    private static Stage stage(Question<?> question) {
        if (question instanceof RailStrength) {
            return Stage.RAIL;
        }
        if (question instanceof LedgerHold) {
            return Stage.LEDGER;
        }
        return question instanceof HangerHold ? Stage.HANGERS : Stage.WALL;
    }

    @Override
    public List<Question<?>> questions(Design design) {
        WallHardware hardware = new WallHardware(this);
        Optional<Cabinet> cabinet = design.box().map(box -> WallWeights.cabinet(design, box));
        List<Missing> missing = missing(design, cabinet, hardware);
        if (!missing.isEmpty() || cabinet.isEmpty()) {
            return List.of(new Unasked(
                    name(),
                    "do these screws hold in these studs",
                    missing,
                    Evidence.of(Hanging.SOURCE),
                    EnumSet.of(
                            Caution.LOCAL_CODE,
                            Caution.STUDS_ONLY,
                            Caution.HIDDEN_SERVICES,
                            Caution.CHILDREN,
                            Caution.EARTHQUAKE)));
        }
        Fixing fixing = new Fixing(
                screw.orElseThrow(),
                screwLength.orElseThrow(),
                rows.all(),
                caught(cabinet.get()),
                hardware.rail().orElseThrow());
        Hanging hanging = new Hanging(
                name(),
                WallWeights.of(design, design.box().orElseThrow(), this),
                cabinet.get(),
                fixing,
                hardware.stud().orElseThrow(),
                layers.orElseThrow(),
                cases,
                behind.flatMap(Behind::carries),
                Stream.concat(hardware.open().stream(), passedOver(design, cabinet.get()).stream())
                        .toList(),
                design.setting());
        List<Question<?>> all = new ArrayList<>(held(hanging));
        all.add(by.bevelled().isPresent() ? Lift.overARail(hanging, aboveFloor) : new Lift(hanging, aboveFloor));
        return List.copyOf(all);
    }

    private List<Question<?>> held(Hanging hanging) {
        Optional<BevelledPair> pair = by.bevelled().flatMap(HungBy.Bevelled::pair);
        if (pair.isPresent()) {
            return List.of(new BevelledRails(hanging, pair.get()));
        }
        Optional<Ledger> ledger = by.ledger().flatMap(said -> said.ledger(screwLength.orElseThrow()));
        Hanging beside = ledger.map(under -> hanging.fixing(hanging.fixing().beside(under)))
                .orElse(hanging);
        List<Question<?>> all = new ArrayList<>(List.of(beside));
        if (hanging.fixing().rail().depth().isPresent()) {
            all.add(new RailStrength(beside));
        }
        ledger.ifPresent(under -> all.add(new LedgerHold(beside, under)));
        by.hangers().ifPresent(hangers -> all.add(new HangerHold(hanging, hangers)));
        return all;
    }

    /** Studs that were named behind the case and that no screw may go into: whoever named them counts on them. */
    private List<Missing> passedOver(Design design, Cabinet cabinet) {
        List<Length> caught = caught(cabinet);
        return places.listed().stream()
                .filter(at -> at.metres() >= 0 && at.compareTo(cabinet.width()) <= 0 && !caught.contains(at))
                .map(design.setting().rule()::text)
                .map(at -> new Missing(
                        "what becomes of the place at " + at + ": a screw there would sit too near the end of the rail",
                        "leave it out of '" + (into.masonry().isPresent() ? "anchors at" : "studs at")
                                + "', as no screw may go there, or shift the case"))
                .toList();
    }

    private List<Length> caught(Cabinet cabinet) {
        return screw.map(each -> StudPattern.caught(places.upTo(cabinet.width()), cabinet, each))
                .orElse(List.of());
    }

    private List<Missing> missing(Design design, Optional<Cabinet> cabinet, WallHardware hardware) {
        List<Missing> all = new ArrayList<>();
        boolean masonry = into.masonry().isPresent();
        need(all, cabinet.isPresent(), "the case that hangs", "enter 'case' with its sizes");
        need(
                all,
                stud.isPresent() || into == ScrewsInto.BACKING || masonry,
                "what the studs are",
                "read the stamp on a stud, or enter 'stud: unknown softwood'");
        need(
                all,
                places.said() || masonry,
                "where two studs or more stand",
                "find the studs, prove each by a pilot hole, and enter their places from the left end of the case as"
                        + " 'studs at'");
        need(
                all,
                layers.isPresent(),
                "what lies between rail and stud",
                "bore a pilot hole, feel with a bent wire where the wood begins, and enter the depth as 'wall board'"
                        + " (0 if nothing)");
        need(
                all,
                places.said() || !masonry,
                "where the anchors sit",
                "enter their places from the left end of the case as 'anchors at'");
        need(
                all,
                screw.isPresent() || !masonry,
                "which anchors, and what their maker declares",
                "enter 'anchor' with its maker's values for such a wall");
        need(
                all,
                screw.isPresent() || masonry,
                "which screws",
                "enter 'screw', such as No. 10 wood screw or 1/4 in lag screw");
        need(all, screwLength.isPresent(), "how long the screws are", "measure one and enter 'screw length'");
        need(all, rows.perStud().isPresent(), "how many screws go into each stud", "enter 'screws in each stud'");
        need(
                all,
                rows.height().isPresent(),
                "how high the screws sit",
                "measure from the lower edge of the case and enter 'screws above lower edge'");
        need(all, rail.isPresent(), "the rail under the screw heads", "enter 'rail' with its wood and thickness");
        need(
                all,
                rail.isEmpty() || hardware.rail().isPresent(),
                "how dense the wood of the rail is",
                "choose a wood whose density and its basis are in the table");
        if (all.isEmpty()) {
            unfit(all, design, cabinet.orElseThrow(), hardware);
        }
        return all;
    }

    /** What is said, but cannot hang a cabinet or be judged. */
    private void unfit(List<Missing> all, Design design, Cabinet cabinet, WallHardware hardware) {
        String stands = caught(cabinet).stream()
                .map(at -> design.setting().rule().text(at))
                .collect(Collectors.joining(", "));
        need(
                all,
                places.first().isEmpty() || stands.isEmpty() || into != ScrewsInto.STUDS,
                "whether a stud stands at each of " + stands + ": a spacing is only assumed",
                "prove each by a pilot hole, and enter 'studs at: [" + stands + "]' in place of the spacing");
        need(
                all,
                design.box().stream()
                        .allMatch(box -> rows.highest() <= box.height().metres()),
                "screws that sit within the height of the case",
                "measure again: their highest would sit above the case");
        int studs = caught(cabinet).size();
        need(
                all,
                studs > 0,
                "a stud that the rail catches, clear of its ends",
                "shift the case, or fix a ledger or rail across studs");
        need(
                all,
                studs != 1 || rows.couple(),
                "where a second stud is caught: one alone lets the case swing",
                "shift the case, add blocking, or enter two rows of screws ('more rows')");
        need(
                all,
                rows.all().stream().anyMatch(row -> row.height().compareTo(LEAST_HEIGHT) >= 0),
                "screws well above the lower edge",
                "put a row of screws through a rail near the top");
        need(
                all,
                cases.people().stream().noneMatch(each -> each == LoadCase.CHILD_ON_DOOR)
                        || !cabinet.leaves().isEmpty(),
                "the door that a child hangs on",
                "enter 'doors', or take 'child on a door' away");
        hardware.unfit(all);
        unfitOthers(all, cabinet, hardware.rail().orElseThrow(), studs);
        need(
                all,
                warmest.isEmpty() || warmest.get().kelvin() <= HOTTEST,
                "what screws hold in wood warmer than 100 F (38 C)",
                "hang it where it stays cooler");
    }

    /** Bevelled strips, a ledger or hangers that cannot be judged as they were said. */
    private void unfitOthers(List<Missing> all, Cabinet cabinet, Rail strip, int studs) {
        by.bevelled().ifPresent(said -> {
            need(
                    all,
                    rows.all().size() == 1,
                    "which row of screws holds the wall strip",
                    "enter one row of screws with bevelled rails");
            need(all, studs > 1, "where the wall strip catches a second stud", "shift the case, or add blocking");
            Optional<BevelledPair> pair = said.pair();
            need(
                    all,
                    pair.isPresent(),
                    "how dense the wood of the case is behind the strip",
                    "choose a wood whose density and its basis are in the table");
            pair.flatMap(each -> each.unfit(strip))
                    .ifPresent(why -> all.add(
                            new Missing("strips whose bevel and screws have room: " + why, "make the strips deeper")));
        });
        by.ledger()
                .ifPresent(said -> need(
                        all,
                        said.ledger(screwLength.orElseThrow()).isPresent(),
                        "how dense the wood of the ledger is",
                        "choose a wood whose density and its basis are in the table"));
        by.hangers()
                .ifPresent(hangers -> need(
                        all,
                        hangers.at().get(hangers.at().size() - 1).compareTo(cabinet.width()) <= 0
                                && hangers.height().compareTo(LEAST_HEIGHT) >= 0,
                        "hangers on the case, well above its lower edge",
                        "enter their places from the left end of the case, and their height above its lower edge"));
    }

    static void need(List<Missing> all, boolean there, String what, String todo) {
        if (!there) {
            all.add(new Missing(what, todo));
        }
    }
}
