package fairgrain.sheet;

import fairgrain.design.GreatestLoad;
import fairgrain.design.GreatestLoads;
import fairgrain.design.Link;
import fairgrain.design.Review;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.form.JsonText;
import fairgrain.form.Taken;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.ShopRule;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** A review for other programs: everything that the sheet says, each number in SI and as the shop writes it. */
public final class JsonSheet {
    /** Changes when a key changes its meaning or goes. */
    public static final int VERSION = 1;

    private final ShopRule rule;
    private final Map<String, String> titles;

    private JsonSheet(ShopRule rule, Map<String, String> titles) {
        this.rule = rule;
        this.titles = titles;
    }

    /**
     * The review as JSON; {@code docs/review.schema.json} describes it.
     *
     * @param titles of the sources by their keys
     */
    public static String write(Review review, ShopRule rule, Map<String, String> titles) {
        return JsonText.of(new JsonSheet(rule, titles).review(review)) + "\n";
    }

    private Map<String, Object> review(Review review) {
        return JsonText.object(
                "version", VERSION,
                "design", review.design().name(),
                "verdict", review.verdict().word(),
                "taken", review.design().taken().stream().map(Taken::text).toList(),
                "untold",
                        review.untold().stream()
                                .map(m -> JsonText.object("what", m.what(), "todo", m.todo()))
                                .toList(),
                "cautions",
                        review.cautions().stream()
                                .sorted()
                                .map(JsonSheet::caution)
                                .toList(),
                "load path", review.path().links().stream().map(this::link).toList(),
                "greatest loads",
                        (review.path().links().isEmpty() ? List.<GreatestLoad>of() : GreatestLoads.of(review.design()))
                                .stream().map(this::greatest).toList(),
                "findings", review.findings().stream().map(this::finding).toList(),
                "sheet",
                        Blocks.of(review, rule, titles).stream()
                                .map(JsonBlocks::of)
                                .toList());
    }

    private Map<String, Object> link(Link link) {
        return JsonText.object(
                "link", link.stage().words(),
                "part", link.part(),
                "verdict", link.verdict().word(),
                "checks", link.governing().stream().map(this::outcome).toList(),
                "missing",
                        link.missing().stream()
                                .map(m -> JsonText.object("what", m.what(), "todo", m.todo()))
                                .toList(),
                "sources",
                        link.told().stream()
                                .flatMap(told -> told.evidence().sources().stream())
                                .map(this::source)
                                .toList());
    }

    private Map<String, Object> greatest(GreatestLoad load) {
        return JsonText.object(
                "on", load.on(),
                "planned", quantity(load.planned()),
                "most", quantity(load.most()),
                "set by",
                        load.setBy().stream()
                                .map(by -> JsonText.object(
                                        "link", by.stage().words(), "part", by.part(), "check", by.check()))
                                .toList());
    }

    private Map<String, Object> finding(Finding finding) {
        return JsonText.object(
                "part", finding.part(),
                "question", finding.question(),
                "verdict", finding.verdict().word(),
                "why", finding.why().in(rule),
                "sizes",
                        finding.sizes().stream()
                                .map(size -> JsonText.object("what", size.what(), "value", quantity(size.value())))
                                .toList(),
                "checks", finding.outcomes().stream().map(this::outcome).toList(),
                "missing",
                        finding.missing().stream()
                                .map(m -> JsonText.object("what", m.what(), "todo", m.todo()))
                                .toList(),
                "remedies",
                        finding.remedies().stream().map(r -> r.words().in(rule)).toList(),
                "notes", finding.notes().stream().map(note -> note.in(rule)).toList(),
                "cautions",
                        finding.cautions().stream()
                                .sorted()
                                .map(JsonSheet::caution)
                                .toList(),
                "weakest basis", finding.evidence().weakest().words(),
                "sources",
                        finding.evidence().sources().stream().map(this::source).toList());
    }

    private Map<String, Object> outcome(Outcome outcome) {
        return JsonText.object(
                "what", outcome.planned().what(),
                "verdict", outcome.verdict().word(),
                "planned", check(outcome.planned()),
                "expected", check(outcome.expected()));
    }

    private Map<String, Object> check(Check check) {
        return JsonText.object(
                "demand", quantity(Amount.of(check.demand(), check.dimension())),
                "capacity", quantity(Amount.of(check.capacity(), check.dimension())),
                "required factor", check.required());
    }

    private Map<String, Object> quantity(Quantity quantity) {
        return JsonText.object(
                "si",
                quantity.si(),
                "dimension",
                quantity.dimension().name().toLowerCase(Locale.ROOT).replace('_', ' '),
                "shop",
                rule.text(quantity));
    }

    private static Map<String, Object> caution(Caution caution) {
        return JsonText.object(
                "key", caution.name().toLowerCase(Locale.ROOT).replace('_', ' '), "sentence", caution.sentence());
    }

    private Map<String, Object> source(Citation source) {
        return JsonText.object(
                "key", source.source(),
                "title", titles.getOrDefault(source.source(), source.source()),
                "place", source.place(),
                "basis", source.basis().words());
    }
}
