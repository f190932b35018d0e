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

/** The case on its wall, from the front and to scale: floor, studs, screws, and how much each is used. */
final class WallFigure {
    private static final double WIDEST = 50;
    private static final double HIGHEST = 96;
    private static final double ABOVE = 8; // mm of studs that show above the case
    private static final double LEFT = 8;
    private static final double CROSS = 0.7;

    private final Hanging hanging;
    private final Box box;
    private final Length aboveFloor;
    private final ShopRule rule;
    private final OnPaper scale;
    private final Paper paper = new Paper();
    private final double top;
    private final double bottom;
    private final double floor;

    private WallFigure(Hanging hanging, Box box, Length aboveFloor, ShopRule rule) {
        this.hanging = hanging;
        this.box = box;
        this.aboveFloor = aboveFloor;
        this.rule = rule;
        scale = OnPaper.fitting(
                box.width().metres(), WIDEST, box.height().plus(aboveFloor).metres(), HIGHEST);
        top = 5 + Paper.LETTERS + ABOVE;
        bottom = top + scale.mm(box.height());
        floor = bottom + scale.mm(aboveFloor);
    }

    static Block.Figure of(Hanging hanging, Box box, Length aboveFloor, ShopRule rule) {
        WallFigure figure = new WallFigure(hanging, box, aboveFloor, rule);
        figure.wall();
        figure.screws();
        figure.sizes();
        List<String> uses = figure.uses();
        double end = figure.floor + 8;
        for (String use : uses) {
            figure.paper.words(use, new Point(0, end), Mark.Anchor.BEGINNING);
            end += 5;
        }
        Drawing drawing = figure.paper.drawing(
                hanging.part() + ", its studs and screws",
                "The case, " + rule.text(box.width()) + " wide and " + rule.text(box.height())
                        + " high, its lower edge " + rule.text(aboveFloor) + " above the floor. Its "
                        + Questions.place(hanging) + "s from its left end"
                        + " at " + figure.places(hanging.fixing().studs()) + ". Screws above its lower edge at "
                        + figure.places(heights(hanging.fixing())) + ". " + String.join("; ", uses) + ".",
                OnPaper.WIDTH,
                end - 2);
        return new Block.Figure(
                drawing,
                "From the front, " + figure.scale.word() + "; every size from the lower left corner of the case. Use is"
                        + " the part of what a screw may carry for good, with heavy contents; 1 is all of it.");
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
        paper.words("floor", new Point(OnPaper.WIDTH, floor - 1), Mark.Anchor.END);
        int number = 0;
        for (Length stud : hanging.fixing().studs()) {
            number++;
            double x = LEFT + scale.mm(stud);
            paper.line(Pen.DASHED, new Point(x, top - ABOVE), new Point(x, floor));
            paper.words(
                    narrow() ? "" + number : Questions.place(hanging) + " " + number,
                    new Point(x, top - ABOVE - 1),
                    Mark.Anchor.MIDDLE);
        }
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
        double y = bottom;
        for (Length stud : hanging.fixing().studs()) {
            y += 6;
            paper.across(LEFT, LEFT + scale.mm(stud), y, rule.text(stud));
        }
        y += 6;
        paper.helper(LEFT, bottom, y + 1);
        paper.helper(right, bottom, y + 1);
        paper.across(LEFT, right, y, rule.text(box.width()));
        Row lowest = hanging.fixing().rows().get(hanging.fixing().rows().size() - 1);
        paper.line(Pen.FINE, new Point(right, bottom), new Point(OnPaper.WIDTH - 14, bottom));
        paper.up(right + 5, bottom - scale.mm(lowest.height()), bottom, rule.text(lowest.height()));
        if (aboveFloor.metres() > 0) {
            paper.up(right + 5, bottom, floor, rule.text(aboveFloor));
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
