package fairgrain.sheet;

import fairgrain.design.Box;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.finding.Reliability;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.Row;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;

/**
 * The case on its wall, from the front and to scale: floor, studs, rail or strip, screws, and how much each is used. Where the floor
 * is far below, the wall between is left out in part.
 */
final class WallFigure {
    private static final double WIDEST = 60;
    private static final double HIGHEST = 80;
    private static final double ABOVE = 8; // mm of studs that show above the case
    private static final double LEFT = 5;
    private static final double CROSS = 0.7;
    private static final double DIMENSION = 6; // mm from one dimension line to the next
    private static final double BREAK = 2; // mm

    private final Hanging hanging;
    private final Box box;
    private final Length aboveFloor;
    private final ShopRule rule;
    private final OnPaper scale;
    private final Paper paper = new Paper();
    private final double top;
    private final double bottom;
    private final double floor;
    private final boolean leftOut;

    private WallFigure(Hanging hanging, Box box, Length aboveFloor, ShopRule rule) {
        this.hanging = hanging;
        this.box = box;
        this.aboveFloor = aboveFloor;
        this.rule = rule;
        scale = OnPaper.fitting(box.width().metres(), WIDEST, box.height().metres(), HIGHEST);
        top = 5 + Paper.LETTERS + ABOVE;
        bottom = top + scale.mm(box.height());
        double dimensions = DIMENSION * (hanging.fixing().studs().size() + 1) + 8;
        leftOut = scale.mm(aboveFloor) > dimensions;
        floor = bottom + Math.min(dimensions, scale.mm(aboveFloor));
    }

    /** Screwed to the wall. */
    static Block.Figure of(Hanging hanging, Box box, Length aboveFloor, ShopRule rule) {
        WallFigure figure = new WallFigure(hanging, box, aboveFloor, rule);
        return figure.figure(
                figure.uses(),
                " Use is the part of what a screw may carry for good, with heavy contents; 1 is all of it.");
    }

    /** Hooked over a strip; how much that is used is told with its question. */
    static Block.Figure hooked(Hanging hanging, Box box, Length aboveFloor, ShopRule rule) {
        return new WallFigure(hanging, box, aboveFloor, rule).figure(List.of(), "");
    }

    private Block.Figure figure(List<String> uses, String said) {
        wall();
        rail();
        screws();
        sizes();
        double end =
                Math.max(floor, bottom + DIMENSION * (hanging.fixing().studs().size() + 1) + 2) + 8;
        for (String use : uses) {
            paper.words(use, new Point(0, end), Mark.Anchor.BEGINNING);
            end += 5;
        }
        Drawing drawing = paper.drawing(
                hanging.part() + ", its studs and screws",
                "The case, " + rule.text(box.width()) + " wide and " + rule.text(box.height())
                        + " high, its lower edge " + rule.text(aboveFloor) + " above the floor. Its "
                        + Questions.place(hanging) + "s from its left end"
                        + " at " + places(hanging.fixing().studs()) + ". Screws above its lower edge at "
                        + places(heights(hanging.fixing())) + "."
                        + (uses.isEmpty() ? "" : " " + String.join("; ", uses) + "."),
                OnPaper.WIDTH,
                end - (uses.isEmpty() ? 6 : 2));
        return new Block.Figure(
                drawing,
                "From the front, " + scale.word() + "; every size from the lower left corner of the case."
                        + (leftOut ? " The wall between case and floor is left out in part." : "") + said);
    }

    private void wall() {
        double right = LEFT + scale.mm(box.width());
        paper.box(Mark.Shade.PAPER, new Point(LEFT, top), new Point(right, bottom));
        double side = scale.mm(box.thickness());
        paper.line(
                Pen.FINE,
                new Point(LEFT + side, top + side),
                new Point(right - side, top + side),
                new Point(right - side, bottom - side),
                new Point(LEFT + side, bottom - side),
                new Point(LEFT + side, top + side));
        paper.line(Pen.EDGE, new Point(0, floor), new Point(OnPaper.WIDTH, floor));
        paper.words("floor", new Point(OnPaper.RIGHT, floor - 1), Mark.Anchor.END);
        int number = 0;
        for (Length stud : hanging.fixing().studs()) {
            number++;
            double x = LEFT + scale.mm(stud);
            paper.line(Pen.DASHED, new Point(x, top - ABOVE), new Point(x, bottom));
            paper.words(
                    narrow() ? "" + number : Questions.place(hanging) + " " + number,
                    new Point(x, top - ABOVE - 1),
                    Mark.Anchor.MIDDLE);
        }
    }

    /** Where its depth is known and one row of screws goes through it. */
    private void rail() {
        Fixing fixing = hanging.fixing();
        if (fixing.rows().size() != 1 || fixing.rail().depth().isEmpty()) {
            return;
        }
        double lower = bottom - scale.mm(WallBlocks.railAbove(fixing));
        double upper = lower - scale.mm(fixing.rail().depth().get());
        paper.line(Pen.FINE, new Point(LEFT, lower), new Point(LEFT + scale.mm(box.width()), lower));
        paper.line(Pen.FINE, new Point(LEFT, upper), new Point(LEFT + scale.mm(box.width()), upper));
    }

    /** Whether the names of two neighbours would touch. */
    private boolean narrow() {
        double before = Double.NEGATIVE_INFINITY;
        for (Length stud : hanging.fixing().studs()) {
            double x = scale.mm(stud);
            if (x - before < Paper.width(Questions.place(hanging) + " 10")) {
                return true;
            }
            before = x;
        }
        return false;
    }

    private void screws() {
        for (Length stud : hanging.fixing().studs()) {
            for (Length height : heights(hanging.fixing())) {
                double x = LEFT + scale.mm(stud);
                double y = bottom - scale.mm(height);
                paper.line(Pen.ACCENT, new Point(x - CROSS, y - CROSS), new Point(x + CROSS, y + CROSS));
                paper.line(Pen.ACCENT, new Point(x - CROSS, y + CROSS), new Point(x + CROSS, y - CROSS));
            }
        }
    }

    /** Every screw of one stud, from the top down. */
    static List<Length> heights(Fixing fixing) {
        List<Length> all = new ArrayList<>();
        for (Row row : fixing.rows()) {
            for (int i = row.perStud() - 1; i >= 0; i--) {
                Length up = row.apart().orElse(Length.ZERO).times(i);
                all.add(row.height().plus(up));
            }
        }
        return all.stream().distinct().toList();
    }

    private void sizes() {
        double right = LEFT + scale.mm(box.width());
        List<Length> across = new ArrayList<>(hanging.fixing().studs());
        across.add(box.width());
        for (int i = 0; i < across.size(); i++) {
            paper.helper(LEFT + scale.mm(across.get(i)), bottom, bottom + DIMENSION * (i + 1) + 1);
        }
        paper.helper(LEFT, bottom, bottom + DIMENSION * across.size() + 1);
        double y = bottom;
        for (Length each : across) {
            y += DIMENSION;
            paper.across(LEFT, LEFT + scale.mm(each), y, rule.text(each));
        }
        Row lowest = hanging.fixing().rows().get(hanging.fixing().rows().size() - 1);
        double beside = right + 5;
        paper.line(Pen.FINE, new Point(right, bottom), new Point(beside + 4, bottom));
        paper.up(beside, bottom - scale.mm(lowest.height()), bottom, rule.text(lowest.height()));
        if (aboveFloor.metres() > 0) {
            paper.up(beside, bottom, floor, rule.text(aboveFloor));
            if (leftOut) {
                leftOut(beside, floor - 4);
            }
        }
    }

    /** Two strokes across a line: it goes on for longer than is drawn. */
    private void leftOut(double x, double y) {
        for (double up : new double[] {0, 1.2}) {
            paper.line(Pen.EDGE, new Point(x - BREAK, y - up + 0.6), new Point(x + BREAK, y - up - 0.6));
        }
    }

    private List<String> uses() {
        List<String> all = new ArrayList<>();
        int number = 0;
        for (Hanging.Use use :
                hanging.model().at(spread -> Reliability.NINETEEN_IN_TWENTY).uses()) {
            number++;
            all.add(Questions.place(hanging) + " " + number + ", hardest worked screw: use "
                    + rule.text(Amount.ratio(use.used())) + " of 1");
        }
        return all;
    }

    private String places(List<Length> all) {
        return String.join(", ", all.stream().map(rule::text).toList());
    }
}
