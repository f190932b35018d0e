package fairgrain.sheet;

import fairgrain.clearance.PanelFit;
import fairgrain.drawing.Drawing;
import fairgrain.drawing.Mark;
import fairgrain.drawing.Paper;
import fairgrain.drawing.Pen;
import fairgrain.drawing.Point;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.place.Month;
import fairgrain.place.YearByMonth;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The year as a curve of what the wood holds, with the day of cutting; and how wide a panel is at its ends. */
final class YearFigure {
    private static final double LEFT = 5;
    private static final double RIGHT = OnPaper.WIDTH - 5;
    private static final double HEIGHT = 34;
    private static final double TOP = 7;

    private final Setting in;
    private final ShopRule rule;
    private final Paper paper = new Paper();
    private final double low;
    private final double high;

    private YearFigure(Setting in, ShopRule rule) {
        this.in = in;
        this.rule = rule;
        double day = in.day().known()
                ? in.day().estimate().expected()
                : in.year().dry().expected();
        low = Math.min(in.year().dry().expected(), day);
        high = Math.max(
                Math.max(in.year().damp().expected(), low + 0.005), in.day().known() ? day : 0);
    }

    /** Nothing where no month is known by its name. */
    static Optional<Block.Figure> of(Setting in, Optional<PanelFit> panel, ShopRule rule) {
        Setting lives = panel.map(PanelFit::in)
                .filter(own -> own.year().byMonth().isPresent())
                .orElse(in);
        return lives.year()
                .byMonth()
                .map(months -> new YearFigure(lives, rule)
                        .figure(
                                months,
                                panel.filter(fit ->
                                        fit.in().equals(lives) && lives.day().known())));
    }

    private Block.Figure figure(YearByMonth months, Optional<PanelFit> panel) {
        MoistureYear year = in.year();
        curve(months);
        List<String> said = new ArrayList<>();
        said.add("damp end, " + percent(year.damp().expected())
                + panel.map(fit -> ": " + rule.text(fit.answer().atDamp()) + " wide")
                        .orElse(""));
        said.add("dry end, " + percent(year.dry().expected())
                + panel.map(fit -> ": " + rule.text(fit.answer().atDry()) + " wide")
                        .orElse(""));
        double day = in.day().estimate().expected();
        double damp = year.damp().expected();
        double dry = year.dry().expected();
        if (in.day().known()) {
            said.add("on the day, " + percent(day)
                    + panel.map(fit -> ": " + rule.text(fit.width()) + " wide").orElse(""));
            paper.line(Pen.ACCENT, new Point(LEFT, y(day)), new Point(RIGHT, y(day)));
        }
        level(damp, said.get(0), true, !early(months, damp));
        level(dry, said.get(1), false, !early(months, dry));
        double end = (in.day().known() ? Math.max(y(dry), y(day)) : y(dry)) + 12;
        for (Month month : Month.values()) {
            paper.words(month.word().substring(0, 1), new Point(x(month.number() - 0.5), end - 2), Mark.Anchor.MIDDLE);
        }
        if (in.day().known()) {
            end += 5;
            paper.line(Pen.ACCENT, new Point(LEFT, end - 3), new Point(LEFT + 9, end - 3));
            paper.words(said.get(2), new Point(LEFT + 11, end - 3 + Paper.LETTERS / 3), Mark.Anchor.BEGINNING);
        }
        String of = panel.map(fit -> "of " + fit.part()).orElse("of the wood");
        Drawing drawing = paper.drawing(
                "the year " + of,
                "Moisture " + of + " through the year: " + String.join("; ", said) + ". By month: " + eachMonth(months)
                        + ".",
                OnPaper.WIDTH,
                end);
        return new Block.Figure(
                drawing,
                "What wood in that room tends to, January to December"
                        + panel.map(fit -> ", and the width of " + fit.part() + " expected there")
                                .orElse("")
                        + (months.drawn().isEmpty()
                                ? "."
                                : ". Broken where a month was not known and is drawn in between."));
    }

    /** Whether the curve comes nearest to a moisture in the first half of the year. */
    private static boolean early(YearByMonth months, double moisture) {
        Month nearest = Month.JANUARY;
        for (Month month : Month.values()) {
            nearest = away(months, month, moisture) < away(months, nearest, moisture) ? month : nearest;
        }
        return nearest.number() <= Month.JUNE.number();
    }

    private static double away(YearByMonth months, Month month, double moisture) {
        return Math.abs(months.in(month).expected() - moisture);
    }

    /** A thin line with its words above or below it, at the end where the curve is not. */
    private void level(double moisture, String says, boolean above, boolean left) {
        double y = y(moisture);
        paper.line(Pen.FINE, new Point(LEFT, y), new Point(RIGHT, y));
        double foot = above ? y - 1 : y + 4;
        paper.words(says, new Point(left ? LEFT : RIGHT, foot), left ? Mark.Anchor.BEGINNING : Mark.Anchor.END);
    }

    /** From the middle of each month to that of the next. */
    private void curve(YearByMonth months) {
        for (Month month : Month.values()) {
            Point here = new Point(x(month.number() - 0.5), y(months.in(month).expected()));
            paper.line(Pen.EDGE, here.plus(0, -0.8), here.plus(0, 0.8));
            if (month != Month.DECEMBER) {
                Month next = month.plus(1);
                boolean known =
                        !months.drawn().contains(month) && !months.drawn().contains(next);
                paper.line(
                        known ? Pen.EDGE : Pen.DASHED,
                        here,
                        new Point(x(next.number() - 0.5), y(months.in(next).expected())));
            }
        }
    }

    private String eachMonth(YearByMonth months) {
        List<String> all = new ArrayList<>();
        for (Month month : Month.values()) {
            all.add(month.word() + " " + percent(months.in(month).expected()));
        }
        return String.join(", ", all);
    }

    private String percent(double moisture) {
        return rule.text(new MoistureContent(moisture));
    }

    private double x(double months) {
        return LEFT + (RIGHT - LEFT) * months / Month.values().length;
    }

    private double y(double moisture) {
        return TOP + HEIGHT * (high - moisture) / (high - low);
    }
}
