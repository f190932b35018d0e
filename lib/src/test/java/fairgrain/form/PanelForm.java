package fairgrain.form;

import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** A form for the tests, with most kinds in it. */
final class PanelForm extends Form<PanelForm.Panel> {
    static final Limits SIGHT = new Limits("sight size", 0.02, 2, "m");
    static final Limits DEPTH = new Limits("groove depth", 0.002, 0.04, "m");
    static final Limits MOISTURE = new Limits("moisture content", 0.03, 0.25, "(a fraction)");

    record Groove(Length depth, Length width) {}

    record Panel(
            String name,
            String wood,
            Length sight,
            Groove groove,
            int boards,
            Optional<Length> width,
            Optional<MoistureContent> today,
            boolean bevelled) {}

    static final class GrooveForm extends Form<Groove> {
        private final Field<Length> depth = length("depth", DEPTH, "how deep the groove is cut");
        private final Field<Length> width =
                length("width", DEPTH, "how wide it is cut").or("1/4 in", "a common cutter");

        GrooveForm() {
            super("groove", "The groove that holds a panel.");
        }

        @Override
        protected Groove build(Entries entries) {
            Groove groove = new Groove(entries.get(depth), entries.get(width));
            if (groove.width().compareTo(groove.depth().times(4)) > 0) {
                throw new IllegalArgumentException("must be deeper than a quarter of its width");
            }
            return groove;
        }
    }

    static final class MeterForm extends Form<MoistureContent> {
        private final Field<MoistureContent> reading =
                moisture("meter reading", MOISTURE, "what the meter shows").example("9 %");

        MeterForm() {
            super("moisture", "A reading of a meter.");
        }

        @Override
        protected MoistureContent build(Entries entries) {
            return entries.get(reading);
        }
    }

    /** Three woods, all invented. */
    static final class Woods implements Finder<String> {
        private static final List<String> ALL = List.of("lake ash", "lake maple", "hill maple", "shore maple");

        @Override
        public List<String> find(String words) {
            return ALL.stream()
                    .filter(w -> w.contains(words.toLowerCase(Locale.ROOT)))
                    .toList();
        }

        @Override
        public String name(String wood) {
            return wood;
        }

        @Override
        public List<String> nearest(String words) {
            return Nearest.several(words, ALL, 3);
        }
    }

    private final Field<String> name = name("name", "what you call it").example("left door panel");
    private final Field<String> wood =
            named("wood", new Woods(), "what it is made of").example("lake ash");
    private final Field<Length> sight =
            length("between stiles", SIGHT, "the clear width of the frame").example("11");
    private final Field<Groove> groove = block("groove", new GrooveForm(), "the groove around it");
    private final Field<Integer> boards =
            count("boards", 1, 20, "how many it is glued up of").or("1", "one wide board");
    private final Field<Optional<Length>> width =
            length("width", SIGHT, "how wide it is cut").optional();
    private final Field<Optional<MoistureContent>> today = field(
                    "moisture",
                    Kinds.<Optional<MoistureContent>>wordOr(
                            "unknown",
                            Optional.empty(),
                            Kinds.<MoistureContent>either(Kinds.moisture(MOISTURE), new MeterForm())
                                    .to(Optional::of)),
                    "of the wood on the day of cutting")
            .or("unknown", "no meter was named");
    private final Field<Boolean> bevelled =
            yesNo("bevelled", "whether its edges are thinned").or("no", "most are not");

    PanelForm() {
        super("panel", "A solid panel in the groove of a frame.");
    }

    @Override
    protected Panel build(Entries entries) {
        Panel panel = new Panel(
                entries.get(name),
                entries.get(wood),
                entries.get(sight),
                entries.get(groove),
                entries.get(boards),
                entries.get(width),
                entries.get(today),
                entries.get(bevelled));
        if (panel.width().isPresent() && panel.width().get().compareTo(panel.sight()) < 0) {
            throw new IllegalArgumentException("the panel is narrower than the frame is wide, and falls out");
        }
        return panel;
    }
}
