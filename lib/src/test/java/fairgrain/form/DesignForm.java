package fairgrain.form;

import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.util.List;

/** A root form for the tests: units first, then lists of parts. */
final class DesignForm extends Form<DesignForm.Design> {
    record Design(String name, UnitSystem units, List<PanelForm.Panel> panels, List<Integer> holes) {}

    private final Field<String> name = name("name", "what you call the piece").example("Lakeside book cupboard");
    private final Field<UnitSystem> units = choice(
                    "units", List.of(UnitSystem.values()), UnitSystem::word, "what a bare length means")
            .or("inches", "nothing else was said")
            .first((system, in) -> in.measureBy(ShopRule.of(system)));
    private final Field<List<PanelForm.Panel>> panels = some("panels", new PanelForm(), "every panel in a groove");
    private final Field<List<Integer>> holes = list("holes", Kinds.count(1, 9), "screws in each cleat");

    DesignForm() {
        super("design", "A piece of furniture and its parts.");
    }

    @Override
    protected Design build(Entries entries) {
        return new Design(entries.get(name), entries.get(units), entries.get(panels), entries.get(holes));
    }
}
