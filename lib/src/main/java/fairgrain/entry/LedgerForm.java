package fairgrain.entry;

import fairgrain.design.HungBy;
import fairgrain.design.Material;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Rail;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.Optional;

/** A strip that stays under the case. */
final class LedgerForm extends Form<HungBy.LedgerSaid> {
    private final Field<Material> wood;
    private final Field<Length> thickness =
            length("thickness", Rail.THICKNESS, "from the wall").example("3/4 in");
    private final Field<Length> depth = length("depth", Rail.DEPTH, "upright").example("3 in");
    private final Field<Optional<Length>> screwsUp = length(
                    "screws above its lower edge",
                    new Limits("screws above the ledger's lower edge", 0.01, 0.6, "m"),
                    "left out, the middle of it")
            .example("2 in")
            .optional();
    private final Field<Integer> perStud =
            count("screws in each stud", 1, 12, "such as hold the case").example("2");
    private final Field<Optional<Length>> screwLength = length(
                    "screw length", Fixing.LENGTH, "left out, as long as those of the case")
            .example("3 in")
            .optional();

    LedgerForm(Catalog catalog) {
        super("ledger", "A strip that is screwed to the same studs and stays under the case.");
        wood = field("wood", new MaterialKind(catalog), "what it is made of").example("yellow-poplar");
    }

    @Override
    protected HungBy.LedgerSaid build(Entries e) {
        if (e.get(screwsUp)
                .filter(up -> up.compareTo(e.get(depth).minus(Length.mm(3))) > 0)
                .isPresent()) {
            throw new IllegalArgumentException("the screws must sit within the depth of the ledger");
        }
        return new HungBy.LedgerSaid(
                e.get(wood), e.get(thickness), e.get(depth), e.get(screwsUp), e.get(perStud), e.get(screwLength));
    }
}
