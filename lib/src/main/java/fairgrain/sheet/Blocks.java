package fairgrain.sheet;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.form.Taken;
import fairgrain.part.MoistureYear;
import fairgrain.part.Setting;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A review as blocks, in the order in which a maker needs them. */
public final class Blocks {
    private final Review review;
    private final ShopRule rule;
    private final List<Block> blocks = new ArrayList<>();

    private Blocks(Review review, ShopRule rule) {
        this.review = review;
        this.rule = rule;
    }

    public static List<Block> of(Review review, ShopRule rule) {
        Blocks sheet = new Blocks(review, rule);
        sheet.top();
        review.findings().forEach(sheet::finding);
        sheet.untold();
        sheet.cautions();
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

    private void finding(Finding finding) {
        blocks.add(new Block.Heading(2, finding.part() + ": " + finding.question(), Optional.of(finding.verdict())));
        if (!finding.sizes().isEmpty()) {
            blocks.add(new Block.Sizes(finding.sizes().stream()
                    .map(size -> new Block.Sizes.Line(size.what(), rule.text(size.value())))
                    .toList()));
        }
        blocks.add(new Block.Sentence(finding.why().in(rule)));
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

    private Block.Checks.Line check(Outcome outcome) {
        return new Block.Checks.Line(
                outcome.planned().what(), numbers(outcome.planned()), numbers(outcome.expected()), outcome.verdict());
    }

    private String numbers(Check check) {
        return rule.text(Amount.of(check.demand(), check.dimension())) + " against "
                + rule.text(Amount.of(check.capacity(), check.dimension()));
    }

    private static String rests(Finding finding) {
        List<Citation> sources = finding.evidence().sources();
        Set<String> keys = new LinkedHashSet<>();
        sources.forEach(source -> keys.add(source.toString()));
        return String.join("; ", keys) + ". Least checked: "
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

    private void cautions() {
        if (!review.cautions().isEmpty()) {
            blocks.add(Block.Heading.plain(2, "Before you act on this"));
            review.cautions().forEach(caution -> blocks.add(new Block.Warning(caution)));
        }
    }

    private void sources() {
        blocks.add(Block.Heading.plain(2, "Where the numbers come from"));
        blocks.add(new Block.Sentence(
                "The keys above stand in data/sources.csv; the methods are explained in docs. Each figure"
                        + " carries how far it was checked: read, worked out here, second-hand, common practice,"
                        + " from memory or judgement."));
    }

    private String percent(Estimate moisture) {
        return rule.text(new MoistureContent(moisture.expected()));
    }
}
