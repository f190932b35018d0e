package fairgrain.entry;

import fairgrain.clearance.Figure;
import fairgrain.clearance.GluedUp;
import fairgrain.finding.Reliability;
import fairgrain.form.Entries;
import fairgrain.form.Field;
import fairgrain.form.Form;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.material.Wood;
import fairgrain.part.Board;
import fairgrain.part.RingAngle;
import fairgrain.quantity.Length;
import java.util.List;

/** What a panel is cut from: boards of one wood, or boards of several glued up side by side. */
interface Stock {
    /** The board it makes, so thick; strips bring their own rings. */
    Board board(RingAngle rings, Length thickness, Figure figure);

    static Kind<Stock> kind(Catalog catalog) {
        Kind<Stock> one = Kinds.named("wood", catalog.woodFinder()).to(OneWood::new);
        Kind<Stock> several = Kinds.some(new StripForm(catalog)).to(Strips::new);
        return Kinds.either(one, several);
    }

    /** Boards of one wood, sawn alike. */
    record OneWood(Wood wood) implements Stock {
        @Override
        public Board board(RingAngle rings, Length thickness, Figure figure) {
            return figure.of(Board.of(wood, rings, thickness));
        }
    }

    /** Boards that differ. */
    record Strips(List<Strip> strips) implements Stock {
        @Override
        public Board board(RingAngle rings, Length thickness, Figure figure) {
            return new GluedUp(strips.stream()
                            .map(s -> new GluedUp.Strip(figure.of(Board.of(s.wood(), s.rings(), thickness)), s.width()))
                            .toList())
                    .asOne(Reliability.NINETEEN_IN_TWENTY);
        }

        Length width() {
            return strips.stream().map(Strip::width).reduce(Length.ZERO, Length::plus);
        }
    }

    /** One board of several. */
    record Strip(Wood wood, RingAngle rings, Length width) {}

    /** One of the boards that a panel is glued up from. */
    final class StripForm extends Form<Strip> {
        private final Field<Wood> wood;
        private final Field<RingAngle> sawn;
        private final Field<Length> width =
                length("width", GluedUp.Strip.WIDTH, "across the grain").example("3 in");

        StripForm(Catalog catalog) {
            super("strip", "One of the boards that a panel is glued up from.");
            wood = named("wood", catalog.woodFinder(), "what it is made of").example("white oak");
            sawn = field("sawn", Kinds.text().to(RingAngle::read), "how the rings lie, seen at the end of the board")
                    .example("flat")
                    .orElse(RingAngle.UNKNOWN);
        }

        @Override
        protected Strip build(Entries e) {
            return new Strip(e.get(wood), e.get(sawn), e.get(width));
        }
    }
}
