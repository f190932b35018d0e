package fairgrain.sheet;

import fairgrain.clearance.ClosingEdge;
import fairgrain.clearance.DoorGap;
import fairgrain.clearance.GapFit;
import fairgrain.clearance.GlassInRebate;
import fairgrain.clearance.Pane;
import fairgrain.clearance.PanelFit;
import fairgrain.clearance.StockReady;
import fairgrain.design.Asked;
import fairgrain.design.Box;
import fairgrain.design.CutList;
import fairgrain.design.Piece;
import fairgrain.design.Review;
import fairgrain.design.Wall;
import fairgrain.design.Weighs;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.LedgerHold;
import fairgrain.hanging.Lift;
import fairgrain.hanging.Masonry;
import fairgrain.part.Setting;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.ShopRule;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What to do in which order, each step with its number and its caution. Only steps for which the design has something to do; a
 * step that is not judged says the one thing to do first.
 */
final class OrderOfWork {
    private final Review review;
    private final ShopRule rule;
    private final List<Piece> pieces;
    /** Panels that are cut already: what is asked of them is whether they fit, not how wide to cut them. */
    private final Set<PanelFit> cut;

    /** What was found of each part. */
    private final Map<String, Verdict> worst = new HashMap<>();

    private final List<Block> blocks = new ArrayList<>();
    private int number;

    private OrderOfWork(Review review, ShopRule rule) {
        this.review = review;
        this.rule = rule;
        this.pieces = CutList.of(review.design()).pieces();
        this.cut = Set.copyOf(Questions.of(review, PanelFit.class));
        review.findings().forEach(finding -> worst.merge(finding.part(), finding.verdict(), Verdict::worse));
    }

    static List<Block> of(Review review, ShopRule rule) {
        OrderOfWork order = new OrderOfWork(review, rule);
        order.stock();
        order.frames();
        order.panes();
        order.whole();
        order.wall();
        if (order.blocks.isEmpty()) {
            return List.of();
        }
        List<Block> all = new ArrayList<>();
        all.add(Block.Heading.plain(2, "The order of work"));
        if (review.verdict().compareTo(Verdict.NOT_JUDGED) >= 0) {
            all.add(new Block.Sentence(
                    "Not everything here holds or is judged: settle that first, before wood is cut for" + " it."));
        }
        all.addAll(order.blocks);
        return List.copyOf(all);
    }

    private void step(String text, Caution... cautions) {
        number++;
        blocks.add(new Block.Step(number, text));
        for (Caution caution : cautions) {
            blocks.add(new Block.Warning(caution));
        }
    }

    private void stock() {
        List<Piece> solid = pieces.stream().filter(piece -> !piece.sheet()).toList();
        for (Asked<?> asked : review.asked()) {
            if (asked.question() instanceof StockReady ready) {
                List<Finding> findings = asked.findings();
                if (findings.get(0).missing().isEmpty()) {
                    double wait = ready.rest().si();
                    step(
                            wait == 0
                                    ? "The stock suits the room already: it need not wait."
                                    : "Lay the stock on stickers in the room for " + rule.text(ready.rest())
                                            + ", then measure it again.");
                } else {
                    step("Stock: " + findings.get(0).missing().get(0).todo() + ".");
                }
            }
        }
        Setting in = review.design().setting();
        if (!in.day().known() && !solid.isEmpty()) {
            step("Measure the moisture of the stock, and enter it: every size here is for the day of cutting.");
        }
        if (!solid.isEmpty()) {
            List<String> thick = solid.stream()
                    .map(Piece::thickness)
                    .distinct()
                    .map(rule::text)
                    .toList();
            step(
                    "Mill every piece a little over size, let it rest on stickers overnight or longer, then mill it to"
                            + " thickness: " + String.join(", ", thick) + ".",
                    Caution.WOOD_DUST);
        }
    }

    private void frames() {
        List<PanelFit> panels = Figures.panels(review);
        for (PanelFit fit : panels) {
            step("Groove the frame (" + fit.part() + "): "
                    + rule.text(fit.opening().groove().depth()) + " deep, "
                    + rule.text(fit.opening().groove().width()) + " wide.");
            step((cut.contains(fit) ? "The panel is cut already" : "Cut the panel") + " (" + fit.part() + "): "
                    + rule.text(fit.width()) + " wide across the grain" + today(fit.in()) + "." + ungood(fit.part()));
        }
        for (PanelFit fit : panels) {
            Length gap = fit.answer().room().minus(fit.width());
            step("Put the frame together dry (" + fit.part() + "). "
                    + (fit.panel().pinned()
                            ? "Gap from the edge to the floor of the groove, at each side: "
                                    + rule.text(rule.down(gap.times(0.5)))
                            : "Gap from the edges to the floors of the grooves, both together: "
                                    + rule.text(rule.down(gap)))
                    + ".");
        }
        if (!panels.isEmpty()) {
            step(
                    "Finish the panel on both faces, tongue and all, before its frame is glued (" + names(panels)
                            + "): what the dry end of the year brings into sight must not be bare.",
                    Caution.OILY_RAGS);
            step("Glue the joints of the frame only, nothing in the grooves: the panel must slide." + pins(panels));
        }
    }

    /** Glass goes in behind stops when its frame is glued; into a groove it can only go before. */
    private void panes() {
        for (GlassInRebate glass : Questions.of(review, GlassInRebate.class)) {
            String name = glass.part();
            GlassInRebate.Fit fit = glass.answer();
            boolean groove = glass.pane().held() == Pane.Held.GROOVE;
            step((groove ? "Groove" : "Rebate") + " the frame (" + name + "): " + rule.text(glass.rebate())
                    + " deep behind the sight line.");
            step((groove ? "Put the frame together dry" : "Glue the frame") + " (" + name
                    + "), measure its opening, then order the glass: " + rule.text(fit.width()) + " wide, "
                    + rule.text(fit.height()) + " high." + ungood(name));
            step(
                    "Stand the glass (" + name + ") on two blocks "
                            + rule.text(glass.pane().clearance())
                            + " thick on the lower rail, a quarter of its width from each side"
                            + (groove
                                    ? ", as the frame is glued: glue in the joints only."
                                    : "; fix the stops to the frame alone, none pressing on the glass."),
                    Caution.GLASS);
        }
    }

    private static String names(List<PanelFit> panels) {
        return String.join(", ", panels.stream().map(PanelFit::part).toList());
    }

    private static String pins(List<PanelFit> panels) {
        List<PanelFit> pinned = panels.stream()
                .filter(fit -> fit.panel().pinned() && fit.panel().spacer() == null)
                .toList();
        List<PanelFit> spaced =
                panels.stream().filter(fit -> fit.panel().spacer() != null).toList();
        return (pinned.isEmpty()
                        ? ""
                        : " Then pin " + names(pinned)
                                + " at the middle of its width, one pin at the top and one at the bottom.")
                + (spaced.isEmpty()
                        ? ""
                        : " Before that lay the soft spacers into the grooves at both sides of " + names(spaced) + ".");
    }

    private String today(Setting in) {
        return in.day().known()
                ? ", on a day when the stock is at "
                        + rule.text(new MoistureContent(in.day().estimate().expected()))
                : "";
    }

    /** A warning in the same breath, where what was asked of a part does not hold. */
    private String ungood(String part) {
        return ungood(worst.getOrDefault(part, Verdict.NOT_JUDGED));
    }

    private static String ungood(Verdict verdict) {
        return verdict.compareTo(Verdict.NOT_JUDGED) < 0 ? "" : " This " + said(verdict) + ": settle it first.";
    }

    private static String said(Verdict verdict) {
        return verdict == Verdict.NOT_JUDGED ? "is not judged" : verdict.word();
    }

    private void whole() {
        review.design()
                .box()
                .ifPresent(box -> step("Put the case together, " + rule.text(box.width()) + " by "
                        + rule.text(box.height()) + ". Both diagonals alike: " + rule.text(diagonal(box)) + "."));
        for (Asked<?> asked : review.asked()) {
            if (asked.question() instanceof DoorGap gap) {
                boolean across = gap.side() == DoorGap.Side.WIDTH;
                GapFit set = gap.set();
                step("Plane " + gap.part() + " to " + rule.text(gap.size()) + (across ? " wide" : " high")
                        + ": today's "
                        + word(set) + " " + set.where() + " is " + rule.text(set.today()) + bevel(set) + "."
                        + ungood(asked.verdict()));
            }
        }
        if (!pieces.isEmpty()) {
            step(
                    "Finish inside and out alike, as many coats on every face: a face left bare takes up damp faster,"
                            + " and the part cups.",
                    Caution.OILY_RAGS);
        }
    }

    private static Length diagonal(Box box) {
        return new Length(Math.hypot(box.width().metres(), box.height().metres()));
    }

    private static String word(GapFit set) {
        return set.kind() == GapFit.Kind.GAP ? "gap" : "overlap";
    }

    private String bevel(GapFit set) {
        ClosingEdge edge = set.edge();
        return edge == null || edge.setBack().metres() == 0
                ? ""
                : "; plane the back of that edge " + rule.text(edge.setBack()) + " back";
    }

    private void wall() {
        List<Finding> findings = Questions.about(review, wallName());
        List<String> first = findings.stream()
                .filter(finding -> finding.verdict().compareTo(Verdict.NOT_JUDGED) >= 0)
                .map(this::toSettle)
                .toList();
        if (!first.isEmpty()) {
            step("Do not hang it yet. " + first.get(0), Caution.STUDS_ONLY, Caution.HIDDEN_SERVICES);
            return;
        }
        Questions.hangings(review).forEach(this::studs);
        Questions.of(review, Lift.class).forEach(this::lift);
        doors();
        load();
    }

    /** The first thing that would change an answer. */
    private String toSettle(Finding finding) {
        if (!finding.missing().isEmpty()) {
            Missing missing = finding.missing().get(0);
            return "Not judged: " + missing.what() + "; " + missing.todo() + ".";
        }
        String fails = "This fails: " + finding.question() + ". ";
        return finding.remedies().isEmpty()
                ? fails + "Change the design and ask again."
                : fails + finding.remedies().get(0).words().in(rule);
    }

    private void doors() {
        Map<String, List<String>> gaps = new LinkedHashMap<>();
        for (DoorGap gap : Questions.of(review, DoorGap.class)) {
            GapFit set = gap.set();
            gaps.computeIfAbsent(gap.part(), part -> new ArrayList<>())
                    .add(word(set) + " " + set.where() + " " + rule.text(set.today()));
        }
        gaps.forEach((door, each) ->
                step("Hang " + door + ", and look, on a day like that of cutting: " + String.join(", ", each) + "."));
    }

    private String wallName() {
        return review.design().parts(Wall.class).stream()
                .map(Wall::name)
                .findFirst()
                .orElse("");
    }

    private void studs(Hanging hanging) {
        List<String> at = hanging.fixing().studs().stream().map(rule::text).toList();
        String where = String.join(" and ", at) + " from the left end of the case";
        step(
                hanging.stud() instanceof Masonry
                        ? "Mark where the anchors go, " + where + "."
                        : "Find the studs " + where + " and prove each by a pilot hole.",
                Caution.STUDS_ONLY,
                Caution.HIDDEN_SERVICES);
    }

    private void lift(Lift lift) {
        Lift.Plan plan = lift.answer();
        String weight = rule.text(plan.lifted()) + ", people: " + WallBlocks.people(plan.people()) + ".";
        if (lift.hooked()) {
            Questions.hangings(review).forEach(this::strip);
            step("Lift the case, doors, shelves and glass off, and hook it over the strip: " + weight);
            return;
        }
        step("Screw a straight ledger to the wall, its upper edge " + rule.text(lift.aboveFloor())
                + " above the floor, " + plan.inEachStud() + (plan.inEachStud() == 1 ? " screw" : " screws")
                + " at each place.");
        step("Lift the case onto it, doors, shelves and glass off: " + weight);
        boolean stays = !Questions.of(review, LedgerHold.class).isEmpty();
        for (Hanging hanging : Questions.hangings(review)) {
            step("Hang it: " + screws(hanging) + " All tight" + (stays ? "." : "; then take the ledger off."));
        }
    }

    private void strip(Hanging hanging) {
        step("Screw the strip to the wall, its bevel up and towards the wall: " + screws(hanging));
    }

    private String screws(Hanging hanging) {
        Fixing fixing = hanging.fixing();
        return fixing.inEachStud() + " x " + fixing.screw().name() + ", " + rule.text(fixing.length())
                + " long, in each of " + fixing.studs().size() + " " + Questions.place(hanging) + "s.";
    }

    private void load() {
        List<String> all = new ArrayList<>();
        for (Weighs shelf : review.design().parts(Weighs.class)) {
            all.add(DoorCard.most(review, shelf, rule) + " on each " + shelf.name());
        }
        if (!all.isEmpty()) {
            step(
                    "Load it, evenly and not all at once, with no more than was planned: " + String.join(", ", all)
                            + ".",
                    Caution.ASSUMED_CONTENTS,
                    Caution.SHELF_IN_USE);
        }
    }
}
