package fairgrain.sheet;

import fairgrain.design.GreatestLoad;
import fairgrain.design.GreatestLoads;
import fairgrain.design.Link;
import fairgrain.design.LoadPath;
import fairgrain.design.Review;
import fairgrain.design.Wall;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Outcome;
import fairgrain.finding.Verdict;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Mass;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.List;

/** The way of every load, link by link, and what may stand where. */
final class PathBlocks {
    private final LoadPath path;
    private final List<GreatestLoad> greatest;
    private final ShopRule rule;
    private final SourceList sources;
    private final List<Block> blocks = new ArrayList<>();

    private PathBlocks(Review review, ShopRule rule, SourceList sources) {
        path = review.path();
        greatest = GreatestLoads.of(review.design());
        this.rule = rule;
        this.sources = sources;
    }

    /** Nothing for a piece that does not hang. */
    static List<Block> of(Review review, ShopRule rule, SourceList sources) {
        if (review.path().links().isEmpty()) {
            return List.of();
        }
        PathBlocks way = new PathBlocks(review, rule, sources);
        way.write();
        return List.copyOf(way.blocks);
    }

    private void write() {
        blocks.add(Block.Heading.plain(2, "The way of every load, from the shelf to the studs"));
        blocks.add(new Block.Sentence(weakest()));
        blocks.add(new Block.Figure(
                PathFigure.of(path, rule),
                "How many times what is asked of it each link could carry, at the likely worst for 19 boards in 20, the"
                        + " factor that is required taken off. A full bar is all that it may carry."));
        blocks.add(new Block.Checks(path.links().stream()
                .flatMap(link -> link.governing().stream().map(outcome -> line(link, outcome)))
                .toList()));
        List<Link> unknown = path.notJudged();
        if (!unknown.isEmpty()) {
            blocks.add(new Block.Items(
                    "Links that are not judged; as long as there is one, nobody can say that the piece holds:",
                    unknown.stream()
                            .flatMap(link -> link.missing().stream()
                                    .map(each -> name(link) + ": " + each.what() + ": " + each.todo()))
                            .toList()));
        }
        if (!greatest.isEmpty()) {
            blocks.add(new Block.Items(
                    "What may stand there, the rest of the piece loaded as planned"
                            + (unknown.isEmpty() ? ":" : " (only by the links that could be judged; no permission):"),
                    greatest.stream().map(this::most).toList()));
        }
    }

    private String weakest() {
        return path.weakest()
                .map(link -> "The weakest link of those that could be judged is "
                        + name(link) + " ("
                        + link.governing().map(o -> o.planned().what()).orElse("") + "). " + first(link))
                .orElse("No link could be judged.");
    }

    private String first(Link link) {
        List<String> cures = link.told().map(Finding::remedies).orElse(List.of()).stream()
                .map(remedy -> remedy.words().in(rule))
                .toList();
        if (!cures.isEmpty()) {
            return "Change first: " + cures.get(0);
        }
        return link.verdict() == Verdict.FAILS
                ? "Change it first."
                : "It carries what is planned; to carry more, begin with it.";
    }

    private Block.CheckLine line(Link link, Outcome outcome) {
        String rests =
                link.told().map(finding -> " " + sources.of(finding.evidence())).orElse("");
        return new Block.CheckLine(
                name(link) + ": " + outcome.planned().what() + rests,
                numbers(outcome.planned()),
                numbers(outcome.expected()),
                link.verdict());
    }

    private String numbers(Check check) {
        return rule.text(Amount.of(check.demand(), check.dimension())) + " against "
                + rule.text(Amount.of(check.capacity(), check.dimension()));
    }

    private String most(GreatestLoad load) {
        String where = load.on().equals(Wall.CASE) ? "in and on the whole case, all told" : "on each " + load.on();
        String planned = " (planned: " + rule.text(load.planned()) + ")";
        return load.setBy()
                .map(by -> where + ": " + rule.text(down(load.most())) + planned + ", set by "
                        + by.stage().words() + " (" + by.part() + ", " + by.check() + ")")
                .orElseGet(() ->
                        where + ": " + rule.text(down(load.most())) + planned + "; more than that was not looked at");
    }

    /** Whole pounds or kilograms, never more than it is. */
    private Mass down(Mass mass) {
        double one = rule.system().unit(Dimension.MASS).toSi(1);
        return Mass.kilograms(one * Math.floor(mass.kilograms() / one + 1e-9));
    }

    /** A link as it is called on the sheet. */
    static String name(Link link) {
        return link.stage().words() + ", " + link.part();
    }
}
