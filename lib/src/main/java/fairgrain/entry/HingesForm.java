package fairgrain.entry;

import fairgrain.door.Hinges;
import fairgrain.door.HingesHold;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.hanging.Screw;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.List;
import java.util.Optional;

/** The hinges of a door and their screws. */
final class HingesForm extends Form<HingesForm.Told> {
    private static final Length USUAL_LEAF = Length.mm(1.5);

    /** Hinges, and the hand that leans on the open door. */
    record Told(Hinges hinges, Force leaning) {}

    private enum Metal {
        STEEL("steel"),
        BRASS("brass");

        private final String word;

        Metal(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private final Field<Integer> number =
            count("number", 2, 10, "of hinges on the door").orElse(2);
    private final Field<Length> apart = length("apart", Hinges.SPACING, "from middle to middle of the outermost two")
            .example("22 in");
    private final Field<Integer> screws =
            count("screws in each leaf", 1, 12, "that hold").example("3");
    private final Field<Screw> screw;
    private final Field<Length> length =
            length("screw length", Hinges.LENGTH, "under the head").example("3/4 in");
    private final Field<Optional<Length>> leaf = length("leaf", Hinges.LEAF, "how thick one leaf is")
            .example("1/16 in")
            .optional();
    private final Field<Metal> metal = choice("screws of", List.of(Metal.values()), Metal::word, "what metal")
            .orElse(Metal.STEEL);
    private final Field<Force> leaning = force(
                    "hand on the open door", HingesHold.LEANING, "that leans on its closing edge")
            .or("100 N", "somebody leans on it");

    HingesForm(Catalog catalog) {
        super("hinges", "The hinges of a door and their screws.");
        screw = field("screw", Kinds.named("screw", catalog.screwFinder()), "which")
                .example("No. 6 wood screw");
    }

    @Override
    protected Told build(Entries e) {
        return new Told(
                new Hinges(
                        e.get(number),
                        e.get(apart),
                        e.get(screws),
                        e.get(screw).size(),
                        e.get(length),
                        e.get(leaf).orElse(USUAL_LEAF),
                        e.get(metal) == Metal.BRASS),
                e.get(leaning));
    }
}
