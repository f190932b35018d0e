package fairgrain.sheet;

import fairgrain.clearance.DoorGap;
import fairgrain.clearance.PanelFit;
import fairgrain.clearance.SizeByMonth;
import fairgrain.design.Review;
import fairgrain.place.Month;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** How wide panels and doors are expected to be, and the gaps of doors, month by month. */
final class MonthBlocks {
    private static final int MOST_COLUMNS = 4; // on a page that is read at a bench

    private final ShopRule rule;
    private final List<String> columns = new ArrayList<>();
    private final List<List<Length>> sizes = new ArrayList<>();
    private final Set<Month> drawn = EnumSet.noneOf(Month.class);

    private MonthBlocks(ShopRule rule) {
        this.rule = rule;
    }

    /** Nothing where no month is known by its name, or the stock on the day is not. */
    static List<Block> of(Review review, ShopRule rule) {
        MonthBlocks all = new MonthBlocks(rule);
        for (PanelFit fit : Figures.panels(review)) {
            fit.byMonth().ifPresent(months -> all.column(fit.part() + ", wide", months));
        }
        for (DoorGap gap : Questions.of(review, DoorGap.class)) {
            if (gap.side() == DoorGap.Side.WIDTH) {
                gap.widthByMonth().ifPresent(months -> all.column(gap.part() + ", wide", months));
                gap.set()
                        .byMonth()
                        .ifPresent(months -> all.column(
                                gap.part() + ", " + gap.set().kind().word() + " "
                                        + gap.set().where(),
                                months));
            }
        }
        List<Block> blocks = new ArrayList<>();
        for (int from = 0; from < all.columns.size(); from += MOST_COLUMNS) {
            if (from == 0) {
                blocks.add(Block.Heading.plain(3, "The width month by month"));
            }
            blocks.add(all.table(from, Math.min(all.columns.size(), from + MOST_COLUMNS)));
        }
        return blocks;
    }

    private void column(String name, SizeByMonth months) {
        columns.add(name);
        sizes.add(months.sizes());
        drawn.addAll(months.drawn());
    }

    private Block.Table table(int from, int to) {
        List<Block.Row> rows = new ArrayList<>();
        for (Month month : Month.values()) {
            String star = drawn.contains(month) ? "*" : "";
            rows.add(new Block.Row(
                    month.word() + star,
                    sizes.subList(from, to).stream()
                            .map(size -> rule.text(size.get(month.number() - 1)))
                            .toList()));
        }
        return new Block.Table(
                "As expected, of bare wood that follows the room at once."
                        + (drawn.isEmpty() ? "" : " A star: drawn in between the driest and the dampest month."),
                "month",
                columns.subList(from, to),
                rows);
    }
}
