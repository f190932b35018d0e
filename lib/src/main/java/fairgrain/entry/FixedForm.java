package fairgrain.entry;

import fairgrain.design.FixedPart;
import fairgrain.design.Material;
import fairgrain.finding.Missing;
import fairgrain.fixing.Fastening;
import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.fixing.Fixed;
import fairgrain.fixing.FixedAt;
import fairgrain.fixing.Member;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kinds;
import fairgrain.material.SheetGood;
import fairgrain.material.SheetMovement;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Two parts that are fixed to each other, and how. What is left out is asked for, never assumed. */
final class FixedForm extends Form<FixedPart> {
    private static final Limits ROOM = new Limits("room behind", 0, 0.1, "m");

    /** How the one is held to the other. */
    private enum Way {
        GLUE("glue"),
        TIGHT("tight screws"),
        SLOTTED("slotted screws"),
        PIN("pin"),
        SLIDING("sliding");

        private final String word;

        Way(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    /** What such joints are called, and where the trade keeps them fast. */
    private enum Usual {
        BREADBOARD_END(
                "breadboard end", FixedAt.MIDDLE, "a breadboard end is fast in the middle and free to both sides"),
        TOP("top on a case", FixedAt.FRONT, "a top stays flush in front and moves behind"),
        CLEAT("cleat", FixedAt.FRONT, "a cleat is fast in front and slotted behind"),
        RUNNER("runner", FixedAt.FRONT, "a runner is fast in front, where the drawer shuts, and slotted behind"),
        CREST("crest", FixedAt.FRONT, "a crest's return is fast at its mitre in front and slotted behind"),
        MOULDING("moulding", FixedAt.FRONT, "a moulding is glued at its mitre in front and slotted behind"),
        BACK("solid back", FixedAt.MIDDLE, "a solid back is fast in its middle and free to both sides"),
        BATTEN("hinge batten", FixedAt.MIDDLE, "a batten across a lid is fast in the middle and slotted to both sides"),
        BOTTOM("drawer bottom", FixedAt.FRONT, "a drawer bottom is fast in front and grows behind"),
        TENON("tenon", FixedAt.MIDDLE, "a tenon keeps to the middle of its glue"),
        OTHER("other", FixedAt.FRONT, "the edge in sight");

        private final String word;
        private final FixedAt at;
        private final String why;

        Usual(String word, FixedAt at, String why) {
            this.word = word;
            this.at = at;
            this.why = why;
        }

        String word() {
            return word;
        }
    }

    private final Field<Usual> kind = choice(
                    "kind", List.of(Usual.values()), Usual::word, "what it is; it tells which part stays fixed")
            .orElse(Usual.OTHER);
    private final Field<String> name = name("name", "what you call the joint").example("cleat on the left side");
    private final Field<Lying> of;
    private final Field<Lying> to;
    private final Field<Optional<Way>> way;
    private final Field<Optional<Length>> between;
    private final Field<Optional<Length>> glued;
    private final Field<Optional<Integer>> screws;
    private final Field<Optional<Length>> diameter;
    private final Field<Optional<Length>> hole;
    private final Field<Optional<Length>> slot;
    private final Field<Optional<FixedAt>> place;
    private final Field<Optional<Length>> room;

    FixedForm(Catalog catalog) {
        super(
                "fixing",
                "Two parts that are fixed to each other, and how. What is left out is asked for, never assumed.");
        of = block("of", new LyingForm("of", catalog), "the part that is fastened; slots are cut in it");
        to = block("to", new LyingForm("to", catalog), "what it is fastened to; screws are driven into it");
        way = choice("fixed by", List.of(Way.values()), Way::word, "how the one is held to the other")
                .example("slotted screws")
                .optional();
        between = length("between outermost fixings", Fixed.BETWEEN, "from the first to the last, across the joint")
                .example("9 in")
                .optional();
        glued = length("glued width", Fastening.GLUED, "how much of it carries glue")
                .optional();
        screws = count("screws", 2, 40, "how many slotted ones in the row, evenly apart; 2 if left out")
                .optional();
        diameter = length("screw diameter", Fastening.DIAMETER, "where the slot or the hole is")
                .example("0.164 in")
                .optional();
        hole = length("hole diameter", Fastening.HOLE, "of round holes wider than the screws")
                .optional();
        slot = length("slot length", Fastening.SLOT, "if the slots are cut already, end to end")
                .optional();
        place = choice(
                        "stays fixed at",
                        List.of(FixedAt.values()),
                        FixedAt::word,
                        "where the two stay put to each other; the front if left out")
                .optional();
        room = length("room", ROOM, "what the free end of a pinned or sliding part has to move")
                .optional();
    }

    @Override
    protected FixedPart build(Entries e) {
        List<Missing> missing = new ArrayList<>();
        e.get(of).why().ifPresent(missing::add);
        e.get(to).why().ifPresent(missing::add);
        Optional<Fastening> by = fastening(e, missing);
        Optional<Length> width = e.get(between);
        if (width.isEmpty() && by.isPresent() && by.get() instanceof Glued glue) {
            width = Optional.of(glue.width());
        }
        boolean isGlued = e.get(way).filter(Way.GLUE::equals).isPresent(); // asks for the width of its glue alone
        if (width.isEmpty() && !isGlued) {
            missing.add(new Missing(
                    "how far apart the outermost fixings are",
                    "measure from the first to the last and enter 'between outermost fixings'"));
        }
        return new FixedPart(
                e.get(name), e.get(of).member(), e.get(to).member(), width, by, missing, e.get(kind) == Usual.BACK);
    }

    private Optional<Fastening> fastening(Entries e, List<Missing> missing) {
        if (e.get(way).isEmpty()) {
            missing.add(new Missing(
                    "how the one is held to the other", "enter 'fixed by', such as glue or slotted screws"));
            return Optional.empty();
        }
        return switch (e.get(way).get()) {
            case GLUE -> glue(e, missing);
            case TIGHT -> Optional.of(tight(e));
            case SLOTTED -> slotted(e, missing);
            case PIN, SLIDING -> Optional.of(new Pinned(place(e), e.get(room).orElse(null)));
        };
    }

    private Optional<Fastening> glue(Entries e, List<Missing> missing) {
        Optional<Length> width = e.get(glued).or(() -> e.get(between));
        if (width.isEmpty()) {
            missing.add(new Missing("how wide the glue is", "measure it across the grain and enter 'glued width'"));
            return Optional.empty();
        }
        if (e.get(between).isPresent() && width.get().compareTo(e.get(between).get()) > 0) {
            throw new IllegalArgumentException("'glued width' must not be more than 'between outermost fixings'");
        }
        return Optional.of(new Glued(width.get()));
    }

    private Fastening tight(Entries e) {
        if (e.get(hole).isEmpty()) {
            return TightScrews.SNUG;
        }
        if (e.get(diameter).isEmpty()) {
            throw new IllegalArgumentException("'hole diameter' needs 'screw diameter' beside it");
        }
        if (e.get(hole).get().compareTo(e.get(diameter).get()) < 0) {
            throw new IllegalArgumentException("'hole diameter' must not be less than 'screw diameter'");
        }
        return TightScrews.inHoles(e.get(hole).get(), e.get(diameter).get());
    }

    private Optional<Fastening> slotted(Entries e, List<Missing> missing) {
        if (e.get(diameter).isEmpty()) {
            missing.add(new Missing(
                    "how thick the screws are", "measure one where the slot will be and enter 'screw diameter'"));
            return Optional.empty();
        }
        if (e.get(screws).isEmpty()) {
            e.take(screws, "2", "the outermost");
        }
        return Optional.of(new SlottedScrews(
                e.get(screws).orElse(2),
                e.get(diameter).get(),
                place(e),
                e.get(slot).orElse(null)));
    }

    private FixedAt place(Entries e) {
        Usual usual = e.get(kind);
        if (e.get(place).isEmpty()) {
            e.take(place, usual.at.word(), usual.why);
        }
        return e.get(place).orElse(usual.at);
    }

    /** A part as it lies, or why nothing is known of how it moves. */
    private record Lying(Optional<Member> member, Optional<Missing> why) {}

    /** Which way the grain runs, seen along the row of fixings. */
    private enum Grain {
        ACROSS("across"),
        ALONG("along");

        private final String word;

        Grain(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    private static final class LyingForm extends Form<Lying> {
        private static final Length ANY = Length.mm(19); // only the width is asked about

        private final Catalog catalog;
        private final Field<Material> material;
        private final Field<RingAngle> sawn;
        private final Field<Optional<Length>> thickness = length("thickness", Board.THICKNESS, "as measured")
                .example("3/4 in")
                .optional();
        private final Field<Optional<Grain>> grain = choice(
                        "grain",
                        List.of(Grain.values()),
                        Grain::word,
                        "whether the row of fixings runs across its grain or along it; a sheet needs none")
                .example("across")
                .optional();

        LyingForm(String name, Catalog catalog) {
            super(name, "One of two parts that are fixed to each other.");
            this.catalog = catalog;
            material = field("material", new MaterialKind(catalog), "a wood or a sheet")
                    .example("white oak");
            sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                    .example("flat")
                    .or("unknown", "nothing moves more than flatsawn");
        }

        @Override
        protected Lying build(Entries e) {
            Material made = e.get(material);
            SheetGood sheet = made.sheet();
            if (sheet != null) {
                SheetMovement moves = catalog.sheetMovement(sheet);
                return moves == null
                        ? new Lying(
                                Optional.empty(),
                                Optional.of(new Missing(
                                        "how much a sheet of " + sheet.kind() + " grows with humidity",
                                        "use a kind of sheet that stands in the table, such as plywood or mdf")))
                        : new Lying(Optional.of(new Member.Sheet(sheet, moves)), Optional.empty());
            }
            if (e.get(grain).isEmpty()) {
                return new Lying(
                        Optional.empty(),
                        Optional.of(new Missing(
                                "which way the grain of the " + made.solid().name() + " runs",
                                "enter 'grain': across, if the row of fixings runs across it, or along")));
            }
            if (e.get(grain).get() == Grain.ALONG) {
                return new Lying(Optional.of(new Member.Along(made.solid())), Optional.empty());
            }
            Board board = Board.of(made.solid(), e.get(sawn), e.get(thickness).orElse(ANY));
            return new Lying(
                    Optional.of(new Member.Across(board, catalog.elasticRatio(made.solid()))), Optional.empty());
        }
    }
}
