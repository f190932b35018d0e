package fairgrain.sheet;

import fairgrain.clearance.PanelFit;
import fairgrain.design.Box;
import fairgrain.design.Door;
import fairgrain.design.Review;
import fairgrain.part.Groove;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import fairgrain.shelf.PinHold;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How to set the machines, and the marks of the story sticks. */
final class BenchBlocks {
    /** What a stop leaves under a hole; judgement. */
    private static final double LEFT_UNDER_INCHES = 1 / 8.0;

    private static final double LEFT_UNDER_MM = 3;

    private final Review review;
    private final ShopRule rule;
    private final List<Block> blocks = new ArrayList<>();

    private BenchBlocks(Review review, ShopRule rule) {
        this.review = review;
        this.rule = rule;
    }

    static List<Block> of(Review review, ShopRule rule) {
        BenchBlocks bench = new BenchBlocks(review, rule);
        ToBuy.of(review, rule).ifPresent(bench.blocks::add);
        bench.settings();
        bench.sticks();
        return List.copyOf(bench.blocks);
    }

    private void settings() {
        List<Block.SizeLine> lines = new ArrayList<>();
        for (PanelFit fit : Figures.panels(review)) {
            Groove groove = fit.opening().groove();
            lines.add(line("groove for " + fit.part() + ", deep", groove.depth()));
            lines.add(line("groove for " + fit.part() + ", wide", groove.width()));
        }
        for (PinHold pins : Questions.of(review, PinHold.class)) {
            lines.add(line(pins.part() + ", holes deep", pins.pins().inHole()));
        }
        for (Door door : review.design().parts(Door.class)) {
            stop(lines, "a face of the frame of " + door.name(), door.thickness());
        }
        review.design().box().ifPresent(box -> {
            stop(lines, "sides, top and bottom of the case", box.thickness());
            stop(lines, "back of the case", box.backThickness());
        });
        if (!lines.isEmpty()) {
            blocks.add(Block.Heading.plain(3, "Settings"));
            blocks.add(new Block.Sizes(lines));
            blocks.add(new Block.Sentence("Set every stop so that " + rule.text(left())
                    + " of wood stays under the point of the bit or screw: nothing comes through."));
        }
    }

    /** Thinner wood takes no blind hole. */
    private void stop(List<Block.SizeLine> lines, String what, Length thickness) {
        Length deepest = rule.down(thickness.minus(left()));
        if (deepest.compareTo(left()) >= 0) {
            lines.add(line("deepest hole in " + what + ", " + rule.text(thickness) + " thick", deepest));
        }
    }

    private Length left() {
        return rule.system() == UnitSystem.INCHES ? Length.inches(LEFT_UNDER_INCHES) : Length.mm(LEFT_UNDER_MM);
    }

    private void sticks() {
        List<StoryStick> all = new ArrayList<>();
        review.design().parts(Door.class).forEach(door -> doors(all, door));
        review.design().box().ifPresent(box -> box(all, box));
        if (all.isEmpty()) {
            return;
        }
        blocks.add(Block.Heading.plain(3, "Story sticks"));
        blocks.add(new Block.Sentence("Running sizes: every mark is measured from the end that is named, none from the"
                + " mark before. For the piece of the other hand turn the stick over: left and right are mirrored, the"
                + " named end stays the same."));
        for (StoryStick stick : all) {
            blocks.add(new Block.Sentence(stick.said() + ":"));
            blocks.add(new Block.Sizes(stick.marks().stream()
                    .map(mark -> line(mark.what(), mark.at()))
                    .toList()));
        }
        blocks.add(StripFigure.of(all, rule));
    }

    private static void doors(List<StoryStick> all, Door door) {
        Length rail = door.rail().width();
        Length stile = door.stile().width();
        all.add(new StoryStick(
                door.name() + ", upright",
                "lower end",
                List.of(
                        new StoryStick.Mark("upper edge of the lower rail", rail),
                        new StoryStick.Mark(
                                "lower edge of the upper rail", door.height().minus(rail)),
                        new StoryStick.Mark("upper end", door.height()))));
        Optional<Length> stub =
                door.panel().map(panel -> panel.opening().groove().depth());
        List<StoryStick.Mark> across = new ArrayList<>();
        stub.ifPresent(depth -> across.add(new StoryStick.Mark("end of the rail's stub", stile.minus(depth))));
        across.add(new StoryStick.Mark("inner edge of the stile", stile));
        Length other = stile.plus(door.rail().length());
        across.add(new StoryStick.Mark("inner edge of the other stile", other));
        stub.ifPresent(depth -> across.add(new StoryStick.Mark("other end of the rail's stub", other.plus(depth))));
        across.add(new StoryStick.Mark("closing edge", door.width()));
        all.add(new StoryStick(door.name() + ", across", "hinge edge", across));
    }

    private static void box(List<StoryStick> all, Box box) {
        all.add(new StoryStick(
                "case, upright",
                "lower end",
                List.of(
                        new StoryStick.Mark("upper face of the bottom", box.thickness()),
                        new StoryStick.Mark(
                                "lower face of the top", box.height().minus(box.thickness())),
                        new StoryStick.Mark("upper end", box.height()))));
        all.add(new StoryStick(
                "case, across",
                "left end",
                List.of(
                        new StoryStick.Mark("inner face of the left side", box.thickness()),
                        new StoryStick.Mark(
                                "inner face of the right side", box.width().minus(box.thickness())),
                        new StoryStick.Mark("right end", box.width()))));
    }

    private Block.SizeLine line(String what, Length size) {
        return new Block.SizeLine(what, rule.text(size));
    }
}
