package fairgrain.design;

import fairgrain.finding.Reliability;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.part.DayMoisture;
import fairgrain.part.MoistureYear;
import fairgrain.part.RoomAir;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** A design file: a piece and as many of its parts as the maker wants judged. */
public final class DesignForm extends Form<Design> {
    /** Above this moisture content at the damp end a place counts as damp: wood and boards creep more there. */
    static final double DAMP = 0.12;

    private static final String WIDEST = "heated-cold-winters-uncooled";

    private final Field<String> name = name("name", "what you call the piece").example("Lakeside book cupboard");
    private final Field<UnitSystem> units = choice(
                    "units", List.of(UnitSystem.values()), UnitSystem::word, "what a bare number means")
            .first((system, in) -> in.measureBy(ShopRule.of(system)));
    private final Field<Optional<MoistureYear>> place;
    private final Field<Optional<Function<MoistureYear, DayMoisture>>> cutting;
    private final Field<List<Door>> doors;
    private final Field<List<FramedPanel>> panels;
    private final Field<List<SolidBoard>> boards;
    private final Field<List<Function<Boolean, Shelf>>> shelves;
    private final Field<Optional<Box>> box;
    private final MoistureYear widest;
    private final Field<Optional<Function<ShelfForm.Sized, Wall>>> wall;

    public DesignForm(Catalog catalog) {
        super("design", "A piece and as many of its parts as you want judged.");
        widest = RoomAir.of(catalog.climateFinder().find(WIDEST).get(0));
        place = block("place", new PlaceForm(catalog), "the room that the finished piece lives in")
                .optional();
        cutting = block(
                        "cutting",
                        new CuttingForm(catalog),
                        "how wet the stock is when it is cut; left out, it is unknown")
                .optional();
        doors = list("doors", new DoorForm(catalog), "frame-and-panel doors");
        panels = list("panels", new FramedPanelForm(catalog), "panels in frames of which nothing else is asked");
        boards = list("boards", new BoardForm(catalog), "solid boards whose movement is asked for");
        shelves = list("shelves", new ShelfForm(catalog), "shelves");
        box = block("case", new CaseForm(catalog), "sides, top, bottom and back")
                .optional();
        wall = block("wall", new WallForm(catalog), "how the case hangs").optional();
    }

    /** Reads a whole design; null with the reasons in {@code in.problems()}. What was taken goes into the design. */
    public @Nullable Design design(Node root, Reading in) {
        Design design = read(root, in);
        return design == null || !in.isClean() ? null : design.taken(in.taken());
    }

    @Override
    protected Design build(Entries e) {
        MoistureYear year = e.get(place).orElse(widest);
        if (e.get(place).isEmpty()) {
            e.take(place, widest.said(), "the widest year of any ordinary house");
        }
        DayMoisture day = e.get(cutting).map(come -> come.apply(year)).orElseGet(() -> CuttingForm.unknown(year));
        if (e.get(cutting).isEmpty()) {
            e.take(cutting, "unknown", "both ends of the year are tried, and the worse governs");
        }
        Setting setting = new Setting(year, day, ShopRule.of(e.get(units)), Reliability.NINETEEN_IN_TWENTY);
        boolean damp = year.damp().expected() > DAMP;
        Optional<Wall> hung = e.get(wall)
                .map(make -> make.apply(e.get(box)
                        .map(b -> new ShelfForm.Sized(b.width(), b.depth()))
                        .orElse(new ShelfForm.Sized(Length.mm(800), Length.mm(300)))));
        return new Design(
                e.get(name),
                setting,
                e.get(panels),
                e.get(boards),
                e.get(doors),
                e.get(shelves).stream().map(make -> make.apply(damp)).toList(),
                e.get(box),
                hung,
                List.of());
    }
}
