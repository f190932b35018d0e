package fairgrain.sheet;

import fairgrain.design.Asked;
import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
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
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A review as blocks, in the order in which a maker needs them. */
public final class Blocks {
    private final Review review;
    private final ShopRule rule;
    private final List<Block> blocks = new ArrayList<>();

    private final Map<Citation, Integer> numbers = new LinkedHashMap<>();
    private final Map<String, String> titles;

    private Blocks(Review review, ShopRule rule, Map<String, String> titles) {
        this.titles = titles;
        this.review = review;
        this.rule = rule;
    }

    /**
     * The blocks of a review.
     *
     * @param titles of the sources by their keys; a key without a title is printed as it is
     */
    public static List<Block> of(Review review, ShopRule rule, Map<String, String> titles) {
        Blocks sheet = new Blocks(review, rule, titles);
        sheet.top();
        review.asked().forEach(sheet::asked);
        sheet.untold();
        sheet.sources();
        return List.copyOf(sheet.blocks);
    }

    private void top() {
        Design design = review.design();
        Setting setting = design.setting();
        MoistureYear year = setting.year();
        blocks.add(new Block.Heading(1, design.name(), Optional.of(review.verdict())));
        blocks.add(new Block.Sentence("The room: " + year.said() + ". Wood there lives between " + percent(year.dry())
                + " moisture content at the dry end of the year and " + percent(year.damp()) + " at the damp end. "
                + (setting.day().known()
                        ? "It is cut at " + percent(setting.day().estimate()) + " ("
                                + setting.day().said() + ")."
                        : "How wet it is on the day of cutting is not known.")));
        blocks.add(new Block.Sentence(
                "Each check stands at its likely worst case for 19 boards in 20; what is expected stands"
                        + " behind it. Sizes are rounded to the safe side."));
        if (!design.taken().isEmpty()) {
            blocks.add(new Block.Items(
                    "Taken, because it was not said:",
                    design.taken().stream().map(Taken::text).toList()));
        }
    }

    private void asked(Asked<?> asked) {
        Optional<Block.Figure> figure = Figures.of(asked.question(), rule);
        for (Finding finding : asked.findings()) {
            finding(finding, figure);
            figure = Optional.empty();
        }
    }

    private void finding(Finding finding, Optional<Block.Figure> figure) {
        blocks.add(new Block.Heading(2, finding.part() + ": " + finding.question(), Optional.of(finding.verdict())));
        if (!finding.sizes().isEmpty()) {
            blocks.add(new Block.Sizes(finding.sizes().stream()
                    .map(size -> new Block.SizeLine(size.what(), rule.text(size.value())))
                    .toList()));
        }
        blocks.add(new Block.Sentence(finding.why().in(rule)));
        figure.ifPresent(blocks::add);
        if (!finding.outcomes().isEmpty()) {
            blocks.add(new Block.Checks(
                    finding.outcomes().stream().map(this::check).toList()));
        }
        if (!finding.missing().isEmpty()) {
            blocks.add(new Block.Items(
                    "Not known:",
                    finding.missing().stream()
                            .map(missing -> missing.what() + ": " + missing.todo())
                            .toList()));
        }
        if (!finding.remedies().isEmpty()) {
            blocks.add(new Block.Items(
                    "Any one of these mends it:",
                    finding.remedies().stream()
                            .map(Remedy::words)
                            .map(words -> words.in(rule))
                            .toList()));
        }
        finding.notes().forEach(note -> blocks.add(new Block.Sentence(note.in(rule))));
        finding.cautions().stream().sorted().forEach(caution -> blocks.add(new Block.Warning(caution)));
        blocks.add(new Block.Sentence("Rests on: " + rests(finding) + "."));
    }

    private Block.CheckLine check(Outcome outcome) {
        return new Block.CheckLine(
                outcome.planned().what(), numbers(outcome.planned()), numbers(outcome.expected()), outcome.verdict());
    }

    private String numbers(Check check) {
        return rule.text(Amount.of(check.demand(), check.dimension())) + " against "
                + rule.text(Amount.of(check.capacity(), check.dimension()));
    }

    /** The numbers of its sources in the list at the end, and the basis of the one that was checked least. */
    private String rests(Finding finding) {
        List<String> marks = finding.evidence().sources().stream()
                .map(source -> numbers.computeIfAbsent(source, key -> numbers.size() + 1))
                .sorted()
                .map(String::valueOf)
                .toList();
        return "[" + String.join(", ", marks) + "]. What was checked least of it: "
                + finding.evidence().weakest().words();
    }

    private void untold() {
        if (!review.untold().isEmpty()) {
            blocks.add(Block.Heading.plain(2, "Tell me to judge more"));
            blocks.add(new Block.Items(
                    "",
                    review.untold().stream()
                            .map(missing -> missing.what() + ": " + missing.todo())
                            .toList()));
        }
    }

    private void sources() {
        blocks.add(Block.Heading.plain(2, "Where the numbers come from"));
        blocks.add(new Block.Items(
                "",
                numbers.entrySet().stream()
                        .map(entry -> "[" + entry.getValue() + "] " + source(entry.getKey()))
                        .toList()));
    }

    private String source(Citation source) {
        String title = titles.getOrDefault(source.source(), source.source());
        return title + (source.place().isEmpty() ? "" : ": " + source.place()) + " ("
                + source.basis().words() + ")";
    }

    private String percent(Estimate moisture) {
        return rule.text(new MoistureContent(moisture.expected()));
    }
}
