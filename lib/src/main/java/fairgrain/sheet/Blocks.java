package fairgrain.sheet;

import fairgrain.clearance.StockReady;
import fairgrain.design.Asked;
import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.design.Workplace;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.form.Taken;
import fairgrain.part.Setting;
import fairgrain.place.MoistureYear;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A review as blocks, in the order of the work: at a glance, at the bench, at the wall, what holds and how sure, where the
 * numbers come from. Cautions stand where the action is.
 */
public final class Blocks {
    private static final int LONG = 160; // letters

    private final Review review;
    private final ShopRule rule;
    private final SourceList sources;
    private final List<Block> blocks = new ArrayList<>();

    private Blocks(Review review, ShopRule rule, SourceList sources) {
        this.review = review;
        this.rule = rule;
        this.sources = sources;
    }

    /**
     * The blocks of a review.
     *
     * @param titles of the sources by their keys; a key without a title is printed as it is
     */
    public static List<Block> of(Review review, ShopRule rule, Map<String, String> titles) {
        Blocks sheet = new Blocks(review, rule, new SourceList(titles));
        sheet.top();
        OrderOfWork.of(review, rule).forEach(sheet::add);
        sheet.work("At the bench", Workplace.BENCH);
        sheet.work("At the wall", Workplace.WALL);
        PathBlocks.of(review, rule, sheet.sources).forEach(sheet::add);
        DoorCard.of(review, rule).forEach(sheet::add);
        sheet.howSure();
        sheet.untold();
        sheet.add(Block.Heading.plain(2, "Where the numbers come from"));
        String room = review.design().setting().year().said();
        if (isLong(room)) {
            sheet.add(new Block.Sentence("The room: " + room + "."));
        }
        sheet.add(new Block.Items("", sheet.sources.lines()));
        return List.copyOf(sheet.blocks);
    }

    private void add(Block block) {
        blocks.add(block);
    }

    private void top() {
        Design design = review.design();
        add(new Block.Heading(1, design.name(), Optional.of(review.verdict())));
        review.findings()
                .forEach(finding ->
                        add(new Block.Glance(finding.part() + ": " + finding.question(), finding.verdict())));
        add(new Block.Sentence(place(design.setting())));
        if (!design.taken().isEmpty()) {
            add(new Block.Items(
                    "Taken, because it was not said:",
                    design.taken().stream().map(Taken::text).toList()));
        }
    }

    private String place(Setting setting) {
        MoistureYear year = setting.year();
        String room = isLong(year.said()) ? "as its record tells, at the end of this sheet" : year.said();
        return "The room: " + room + ". Wood there lives between " + percent(year.dry())
                + " moisture content at the dry end of the year and " + percent(year.damp()) + " at the damp end. "
                + (setting.day().known()
                        ? "It is cut at " + percent(setting.day().estimate()) + " ("
                                + setting.day().said() + ")."
                        : "How wet it is on the day of cutting is not known.");
    }

    /** Too long to stand before the work. */
    private static boolean isLong(String said) {
        return said.length() > LONG;
    }

    /** What to do at one place: sizes, drawing, what is missing, what would mend it, cautions. */
    private void work(String heading, Workplace where) {
        List<Asked<?>> here =
                review.asked().stream().filter(asked -> asked.where() == where).toList();
        List<Block> before = new ArrayList<>();
        if (where == Workplace.WALL) {
            before.addAll(WallBlocks.of(review, rule));
        } else {
            before.addAll(CutBlocks.of(review.design(), rule));
            before.addAll(BenchBlocks.of(review, rule));
            before.addAll(MonthBlocks.of(review, rule));
        }
        if (here.isEmpty() && before.isEmpty()) {
            return;
        }
        add(Block.Heading.page(heading));
        before.forEach(this::add);
        if (where == Workplace.BENCH && Questions.of(review, StockReady.class).isEmpty()) {
            year();
        }
        for (Asked<?> asked : here) {
            Optional<Block.Figure> figure = Figures.of(asked, review, rule);
            for (Finding finding : asked.findings()) {
                action(finding, figure);
                figure = Optional.empty();
            }
        }
    }

    /** Where no question of the stock shows it. */
    private void year() {
        Figures.year(review, rule).ifPresent(figure -> {
            add(Block.Heading.plain(3, "The year"));
            add(figure);
        });
    }

    private void action(Finding finding, Optional<Block.Figure> figure) {
        add(new Block.Heading(3, finding.part() + ": " + finding.question(), Optional.of(finding.verdict())));
        if (!finding.sizes().isEmpty()) {
            add(new Block.Sizes(finding.sizes().stream()
                    .map(size -> new Block.SizeLine(size.what(), rule.text(size.value())))
                    .toList()));
        }
        add(new Block.Sentence(finding.why().in(rule)));
        figure.ifPresent(this::add);
        if (!finding.missing().isEmpty()) {
            add(new Block.Items(
                    "Not known:",
                    finding.missing().stream()
                            .map(missing -> missing.what() + ": " + missing.todo())
                            .toList()));
        }
        if (!finding.remedies().isEmpty()) {
            add(new Block.Items(
                    "Any one of these mends it:",
                    finding.remedies().stream()
                            .map(Remedy::words)
                            .map(words -> words.in(rule))
                            .toList()));
        }
        finding.notes().forEach(note -> add(new Block.Sentence(note.in(rule))));
        finding.cautions().stream().sorted().forEach(caution -> add(new Block.Warning(caution)));
    }

    private void howSure() {
        add(Block.Heading.page("What holds, and how sure"));
        add(new Block.Sentence(
                "Each check stands at its likely worst case for 19 boards in 20; what is expected stands behind it."
                        + " Sizes are rounded to the safe side."));
        for (Finding finding : review.findings()) {
            add(new Block.Heading(3, finding.part() + ", " + finding.question(), Optional.of(finding.verdict())));
            if (!finding.outcomes().isEmpty()) {
                add(new Block.Checks(
                        finding.outcomes().stream().map(this::check).toList()));
            }
            add(new Block.Sentence("Rests on: " + sources.of(finding.evidence()) + ". What was checked least of it: "
                    + finding.evidence().weakest().words() + "."));
        }
    }

    private Block.CheckLine check(Outcome outcome) {
        return new Block.CheckLine(
                outcome.planned().what(), numbers(outcome.planned()), numbers(outcome.expected()), outcome.verdict());
    }

    private String numbers(Check check) {
        return rule.text(Amount.of(check.demand(), check.dimension())) + " against "
                + rule.text(Amount.of(check.capacity(), check.dimension()));
    }

    private void untold() {
        if (!review.untold().isEmpty()) {
            add(Block.Heading.plain(2, "Tell me to judge more"));
            add(new Block.Items(
                    "",
                    review.untold().stream()
                            .map(missing -> missing.what() + ": " + missing.todo())
                            .toList()));
        }
    }

    private String percent(Estimate moisture) {
        return rule.text(new MoistureContent(moisture.expected()));
    }
}
