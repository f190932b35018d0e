package fairgrain.entry;

import fairgrain.design.FinishedWood;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.place.IndoorClimate;
import fairgrain.place.RoomAir;
import java.util.List;
import java.util.Optional;

/** What the piece is finished with. */
final class FinishForm extends Form<FinishedWood> {
    private final Field<FinishKind> kind;
    private final Field<Integer> coats = count("coats", 1, 12, "how many").example("2");
    private final Field<Boolean> both = field(
                    "faces",
                    Kinds.choice(List.of(true, false), all -> all ? "both alike" : "outside only"),
                    "what is finished of every part")
            .or("outside only", "not said, and a bare back is the worse");
    private final Field<Optional<IndoorClimate>> behind;

    FinishForm(Catalog catalog) {
        super("finish", "What the piece is finished with. A finish makes no gap smaller; unlike faces cup a board.");
        kind = named("kind", catalog.finishFinder(), "what it is").example("shellac");
        behind = named("air behind", catalog.climateFinder(), "a climate, if the backs of the parts live in other air")
                .example("basement")
                .optional();
    }

    @Override
    protected FinishedWood build(Entries e) {
        return new FinishedWood(
                e.get(kind).with(e.get(coats)), e.get(both), e.get(behind).map(RoomAir::of));
    }
}
