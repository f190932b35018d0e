package fairgrain.sheet;

import fairgrain.design.Review;
import fairgrain.design.Wall;
import fairgrain.finding.Caution;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.Lift;
import fairgrain.hanging.Row;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What to mark on the wall, every size from the floor or from the lower left corner of the case. */
final class WallBlocks {
    private static final int MOST_PEOPLE = 3;

    private final ShopRule rule;
    private final List<Block.SizeLine> lines = new ArrayList<>();

    private WallBlocks(ShopRule rule) {
        this.rule = rule;
    }

    static List<Block> of(Review review, ShopRule rule) {
        Optional<Length> aboveFloor =
                review.design().parts(Wall.class).stream().map(Wall::aboveFloor).findFirst();
        if (aboveFloor.isEmpty()) {
            return List.of();
        }
        WallBlocks wall = new WallBlocks(rule);
        boolean hooked = Questions.of(review, Lift.class).stream().anyMatch(Lift::hooked);
        wall.line(
                hooked
                        ? "lower edge of the case above the floor"
                        : "lower edge of the case and upper edge of the ledger, above the floor",
                aboveFloor.get());
        List<Hanging> hangings = Questions.hangings(review);
        hangings.forEach(hanging -> wall.screws(hanging, aboveFloor.get()));
        hangings.forEach(wall::weights);
        Questions.of(review, Lift.class).forEach(lift -> wall.people(lift.answer()));
        List<Block> blocks = new ArrayList<>();
        blocks.add(Block.Heading.plain(3, "Marks on the wall"));
        blocks.add(new Block.Sentence(
                "Draw the line of the lower edge first, level, from the highest spot of the floor. Mark on it the left"
                        + " end of the case: everything below is measured from that corner, each screw to the right and"
                        + " then up."));
        blocks.add(new Block.Sizes(wall.lines));
        blocks.addAll(Figures.wall(review, rule));
        blocks.add(new Block.Warning(Caution.HIDDEN_SERVICES));
        blocks.add(new Block.Warning(Caution.STUDS_ONLY));
        return List.copyOf(blocks);
    }

    private void screws(Hanging hanging, Length aboveFloor) {
        Fixing fixing = hanging.fixing();
        fixing.rail().depth().ifPresent(depth -> {
            if (fixing.rows().size() == 1) {
                line("rail, its lower edge above that line", railAbove(fixing));
                line("rail, its upper edge above that line", railAbove(fixing).plus(depth));
            }
        });
        int number = 0;
        for (Length stud : fixing.studs()) {
            number++;
            for (Row row : fixing.rows()) {
                screws(Questions.place(hanging) + " " + number, stud, row);
            }
        }
        line(
                "lowest screws above the floor",
                fixing.rows().get(fixing.rows().size() - 1).height().plus(aboveFloor));
        line("length of each screw", fixing.length());
    }

    /** Each screw of a row; where their distance was not said, the lowest of them. */
    private void screws(String where, Length stud, Row row) {
        boolean told = row.perStud() == 1 || row.apart().isPresent();
        for (int i = told ? row.perStud() - 1 : 0; i >= 0; i--) {
            Length up = row.height().plus(row.apart().orElse(Length.ZERO).times(i));
            String which = told ? ", screw" : ", lowest of " + row.perStud() + " screws";
            lines.add(new Block.SizeLine(where + which + ": right, up", rule.text(stud) + ", " + rule.text(up)));
        }
    }

    /** The lower edge of a rail of known depth that one row of screws goes through, above that of the case. */
    static Length railAbove(Fixing fixing) {
        Length up = fixing.rail()
                .screwsUp()
                .orElseGet(() -> fixing.rail().depth().orElseThrow().times(0.5));
        return middle(fixing).minus(up);
    }

    /** Of the screws of the one row. */
    private static Length middle(Fixing fixing) {
        List<Length> heights = WallFigure.heights(fixing);
        return heights.get(0).plus(heights.get(heights.size() - 1)).times(0.5);
    }

    private void weights(Hanging hanging) {
        line("all of it with heavy contents", new Mass(hanging.hung().mass(1)));
    }

    private void people(Lift.Plan plan) {
        line("weight to lift, doors, shelves and glass off", plan.lifted());
        lines.add(new Block.SizeLine("people to lift it", people(plan.people())));
    }

    /** More have no room around a case. */
    static String people(int number) {
        return number <= MOST_PEOPLE ? Integer.toString(number) : "too many: raise it with a lift or on props";
    }

    private void line(String what, Quantity value) {
        lines.add(new Block.SizeLine(what, rule.text(value)));
    }
}
