package fairgrain.entry;

import fairgrain.design.Box;
import fairgrain.design.CaseJoints;
import fairgrain.design.CaseMoves;
import fairgrain.design.Design;
import fairgrain.design.FinishedWood;
import fairgrain.design.Material;
import fairgrain.design.Part;
import fairgrain.design.ReadyStock;
import fairgrain.finding.Reliability;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.part.Setting;
import fairgrain.place.DayMoisture;
import fairgrain.place.MoistureYear;
import fairgrain.place.RoomAir;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/** A design file: a piece and as many of its parts as the maker wants judged. */
public final class DesignForm extends Form<Design> {
    private static final String WIDEST = "heated-cold-winters-uncooled";

    private final Field<String> name = name("name", "what you call the piece").example("Lakeside book cupboard");
    private final Field<UnitSystem> units = field(
                    "units",
                    Kinds.choice(List.of(UnitSystem.values()), UnitSystem::word, UnitSystem::also),
                    "what a bare number means")
            .first((system, in) -> in.measureBy(ShopRule.of(system)));
    private final Field<Optional<MoistureYear>> place;
    private final Field<Optional<Function<MoistureYear, DayMoisture>>> cutting;
    private final Field<Optional<FinishedWood>> finish;
    private final Field<Optional<Box>> box;
    private final MoistureYear widest;
    private final Catalog catalog;
    private final List<Field<? extends List<? extends Entered>>> parts = new ArrayList<>();

    public DesignForm(Catalog catalog) {
        super("design", "A piece and as many of its parts as you want judged.");
        this.catalog = catalog;
        widest = RoomAir.of(catalog.climateFinder().find(WIDEST).get(0));
        place = block("place", new PlaceForm(catalog), "the room that the finished piece lives in")
                .optional();
        cutting = block(
                        "cutting",
                        new CuttingForm(catalog),
                        "how wet the stock is when it is cut; left out, it is unknown")
                .optional();
        finish = block(
                        "finish",
                        new FinishForm(catalog),
                        "what it is finished with; left out, it is bare wood, which moves most")
                .optional();
        parts("doors", new DoorForm(catalog), "frame-and-panel doors");
        parts("panels", new FramedPanelForm(catalog), "panels in frames of which nothing else is asked");
        parts(
                "sheets in frames",
                new SheetInFrameForm(catalog),
                "sheets in the grooves of a frame, or let in as a back");
        parts("boards", new BoardForm(catalog), "solid boards whose movement is asked for");
        parts("glass", new FramedGlassForm(catalog), "panes of glass in frames of which nothing else is asked");
        parts("drawers", new DrawerForm(catalog), "drawers and the openings they run in");
        parts(
                "fitted shelves",
                new FittedShelfForm(catalog),
                "solid shelves that grow towards closed doors and a back");
        parts("tenons", new TenonForm(catalog), "tenons whose movement is asked for");
        parts("held flat", new HeldFlatForm(catalog), "flatsawn boards that cup, free or held flat by a frame");
        parts("fixings", new FixedForm(catalog), "parts that are fixed to each other across the grain, and how");
        entered("shelves", new ShelfForm(catalog), "shelves");
        parts("glass shelves", new GlassShelfForm(catalog), "shelves of glass");
        entered("hollow shelves", new HollowShelfForm(catalog), "shelves of two skins on ribs or on a light core");
        parts("rod shelves", new RodShelfForm(catalog), "floating shelves on hidden rods");
        entered("shelf pins", new PinsUnderForm(catalog), "pins under shelves of the same piece");
        parts("joints", new JointedEndsForm(catalog), "joints at the ends of boards whose strength is asked for");
        parts("lamps", new LampForm(), "lamps in the case, their warmth and their weight");
        parts("crests", new CrestForm(catalog), "crests and mouldings that stand up, for their short grain");
        parts("screws", new ScrewFitForm(catalog), "screws of which only is asked whether they fit");
        box = block("case", new CaseForm(catalog), "sides, top, bottom and back")
                .optional();
        parts("tied back", new TiedForm(catalog), "free-standing pieces that are tied back to the wall");
        Kind<List<Entered>> wall = new WallForm(catalog).to(List::of);
        parts.add(field("wall", wall, "how the case hangs").orElse(List.of()));
    }

    private CaseMoves moves(Box around) {
        return new CaseMoves(around, growth(around.material()), growth(around.backMaterial()));
    }

    private Optional<SheetMovement> growth(Material material) {
        SheetGood sheet = material.sheet();
        return sheet == null ? Optional.empty() : Optional.ofNullable(catalog.sheetMovement(sheet));
    }

    /** Parts that need to know neither the place nor the case. */
    private <P extends Part> void parts(String key, Form<P> form, String meaning) {
        entered(key, form.to(part -> (setting, around) -> part), meaning);
    }

    private void entered(String key, Kind<Entered> kind, String meaning) {
        parts.add(list(key, kind, meaning));
    }

    /** Reads a whole design; null with the reasons in {@code in.problems()}. What was taken goes into the design. */
    public @Nullable Design design(Node root, Reading in) {
        Design read = read(root, in);
        if (read == null || !in.isClean()) {
            return null;
        }
        Design design = read.taken(in.taken());
        design.parts().forEach(part -> refuseUnasked(part, design, root.at(), in));
        return in.isClean() ? design : null;
    }

    /** A part that cannot even be asked, as its sizes do not go together or lie beyond all formulas. */
    private static void refuseUnasked(Part part, Design design, String at, Reading in) {
        try {
            part.questions(design);
        } catch (IllegalArgumentException e) { // of a guard
            in.report(at, part.name() + ": " + e.getMessage());
        }
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
        Stream<Part> entered =
                parts.stream().flatMap(field -> e.get(field).stream()).map(part -> part.in(setting, e.get(box)));
        return new Design(
                e.get(name),
                setting,
                Stream.of(
                                Stream.of(new ReadyStock()),
                                entered,
                                e.get(box).map(this::moves).stream(),
                                e.get(box).map(CaseJoints::new).stream(),
                                e.get(finish).stream())
                        .<Part>flatMap(some -> some)
                        .toList(),
                e.get(box),
                List.of());
    }
}
