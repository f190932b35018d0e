package fairgrain.entry;

import fairgrain.design.Material;
import fairgrain.design.TiedPiece;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.hanging.DeclaredAnchor;
import fairgrain.hanging.DeclaredScrew;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hangers;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.Layer;
import fairgrain.hanging.LoadCases;
import fairgrain.hanging.Masonry;
import fairgrain.hanging.Rail;
import fairgrain.hanging.StandingPiece;
import fairgrain.hanging.Stud;
import fairgrain.hanging.Tie;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A free-standing piece that is tied back to a wall. */
final class TiedForm extends Form<TiedPiece> {
    private final Field<String> name = name("name", "what you call it").example("chest of drawers");
    private final Field<Mass> weight = mass(
                    "weight", StandingPiece.MASS, "empty, without the drawers or doors that may stand open")
            .example("90 lb");
    private final Field<Length> depth =
            length("depth", StandingPiece.DEPTH, "from back to front").example("18 in");
    private final Field<Length> height =
            length("height", StandingPiece.HEIGHT, "of its top").example("48 in");
    private final Field<Length> feet = length("front feet behind front", StandingPiece.FEET_BACK, "what it tips about")
            .example("1 in");
    private final Field<Mass> openWeight = mass(
                    "open weight",
                    StandingPiece.OPEN_MASS,
                    "of all drawers, with what is in them, and doors that may stand open at once")
            .example("35 lb");
    private final Field<Length> openReach = length(
                    "open reach", StandingPiece.OPEN_REACH, "how far they stand out in front")
            .example("14 in");
    private final Field<Integer> ties = count("ties", 1, 12, "how many").example("2");
    private final Field<Length> above =
            length("ties above floor", Tie.HEIGHT, "how high they sit").example("44 in");
    private final Field<Optional<Force>> strap = force(
                    "strap holds", DeclaredScrew.VALUE, "what its maker declares for one")
            .example("200 lb")
            .optional();
    private final Field<DeclaredScrew.Given> given = choice(
                    "values",
                    List.of(DeclaredScrew.Given.values()),
                    DeclaredScrew.Given::word,
                    "whether that is ultimate, allowable or characteristic")
            .or("ultimate", "it is divided most then");
    private final Field<Optional<Stud>> stud;
    private final Field<Optional<Masonry.Kind>> wall = choice(
                    "wall", List.of(Masonry.Kind.values()), Masonry.Kind::word, "of a wall without studs")
            .example("solid masonry")
            .optional();
    private final Field<Optional<List<Layer>>> layers;
    private final Field<Optional<HangingScrew>> screw;
    private final Field<Optional<DeclaredAnchor>> anchor =
            block("anchor", new AnchorForm(), "in masonry, in place of a screw").optional();
    private final Field<Optional<Length>> screwLength =
            length("screw length", Fixing.LENGTH, "in the wall").example("3 in").optional();
    private final Field<HangingScrew> caseScrew;
    private final Field<Length> caseLength =
            length("case screw length", Fixing.LENGTH, "in the piece").example("3/4 in");
    private final Field<Material> wood;
    private final Field<Length> thickness =
            length("case thickness", Rail.THICKNESS, "of that wood").example("3/4 in");
    private final Field<Amount> peopleFactor = amount(
                    "people factor", Dimension.RATIO, LoadCases.FACTOR, "what the weight of a child is multiplied by")
            .orElse(Amount.ratio(LoadCases.PEOPLE_FACTOR));
    private final Field<Optional<Amount>> earthquake = amount(
                    "earthquake coefficient",
                    Dimension.RATIO,
                    LoadCases.COEFFICIENT,
                    "part of the weight that an earthquake pulls with, by your code")
            .example("0.5")
            .optional();

    TiedForm(Catalog catalog) {
        super("tied piece", "A free-standing piece that straps or brackets keep from tipping.");
        stud = named("stud", catalog.studFinder(), "what the studs are, by the stamp on them")
                .example("spruce-pine-fir")
                .optional();
        layers = field("wall board", new LayersKind(catalog), "what lies before stud or masonry, 0 if nothing")
                .example("1/2 in")
                .optional();
        screw = field("screw", new ScrewKind(catalog), "that holds each tie to its stud")
                .example("No. 10 wood screw")
                .optional();
        caseScrew = field("case screw", new ScrewKind(catalog), "that holds each tie to the piece")
                .example("No. 8 wood screw");
        wood = field("case wood", new MaterialKind(catalog), "what that screw goes into")
                .example("yellow-poplar");
    }

    @Override
    protected TiedPiece build(Entries e) {
        if (e.get(stud).isPresent() && e.get(wall).isPresent()) {
            throw new IllegalArgumentException("say what it is tied to once: by 'stud' or by 'wall'");
        }
        if (e.get(screw).isPresent() && e.get(anchor).isPresent()) {
            throw new IllegalArgumentException("say what holds it to the wall once: by 'screw' or by 'anchor'");
        }
        if (e.get(above).compareTo(e.get(height)) > 0) {
            throw new IllegalArgumentException("the ties must sit no higher than the top of the piece");
        }
        return new TiedPiece(
                new StandingPiece(
                        e.get(name),
                        e.get(weight).kilograms(),
                        e.get(depth),
                        e.get(height),
                        e.get(feet),
                        e.get(openWeight).kilograms(),
                        e.get(openReach)),
                e.get(ties),
                e.get(above),
                e.get(strap).map(holds -> new Force(holds.newtons() / Hangers.divisor(e.get(given)))),
                e.get(wall).<Stud>map(Masonry::new).or(() -> e.get(stud)),
                e.get(layers),
                e.get(anchor).<HangingScrew>map(each -> each).or(() -> e.get(screw)),
                e.get(screwLength),
                e.get(caseScrew),
                e.get(caseLength),
                e.get(wood),
                e.get(thickness),
                e.get(peopleFactor).si(),
                e.get(earthquake).map(each -> OptionalDouble.of(each.si())).orElse(OptionalDouble.empty()));
    }
}
