package fairgrain.sheet;

import fairgrain.clearance.DoorGap;
import fairgrain.clearance.GapFit;
import fairgrain.clearance.PanelFit;
import fairgrain.design.Link;
import fairgrain.design.Review;
import fairgrain.design.Weighs;
import fairgrain.finding.Caution;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Verdict;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.HungWeight;
import fairgrain.hanging.Lift;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.part.Setting;
import fairgrain.place.Month;
import fairgrain.place.YearByMonth;
import fairgrain.quantity.Estimate;
import fairgrain.quantity.Length;
import fairgrain.quantity.Mass;
import fairgrain.quantity.RelativeHumidity;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.Temperature;
import fairgrain.shelf.ShelfSag;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * A card to stick inside the door: what it may carry, the air it was planned for, how it hangs and comes down, and what to look at
 * in its first dry and its first damp month.
 */
final class DoorCard {
    private static final double ROOM = 293.15; // K, at which moisture is told as humidity

    private final Review review;
    private final ShopRule rule;
    private final List<Block> blocks = new ArrayList<>();

    private DoorCard(Review review, ShopRule rule) {
        this.review = review;
        this.rule = rule;
    }

    static List<Block> of(Review review, ShopRule rule) {
        DoorCard card = new DoorCard(review, rule);
        card.load();
        card.air();
        card.hanging();
        card.firstYear();
        card.open();
        return List.copyOf(card.blocks);
    }

    /** What was planned to stand on one shelf; what was called heavy is left as its margin. Nothing where that does not hold. */
    static String most(Review review, Weighs shelf, ShopRule rule) {
        Mass planned = new Mass(shelf.load().expected() * shelf.span().metres());
        return most(Questions.verdict(review, shelf.name()), planned, rule);
    }

    private static String most(Verdict verdict, Mass planned, ShopRule rule) {
        return switch (verdict) {
            case HOLDS, CLOSE -> rule.text(planned);
            case NOT_JUDGED -> "not judged (" + rule.text(planned) + " planned)";
            case FAILS -> "nothing (" + rule.text(planned) + " fails)";
        };
    }

    private void load() {
        blocks.add(Block.Heading.plain(2, "A card for inside the door"));
        List<Block.SizeLine> lines = new ArrayList<>();
        for (Weighs shelf : review.design().parts(Weighs.class)) {
            lines.add(
                    new Block.SizeLine("most on each " + shelf.name() + ", spread evenly", most(review, shelf, rule)));
        }
        for (Hanging hanging : Questions.hangings(review)) {
            Mass inAll = new Mass(hanging.hung().mass(HungWeight.Stays.NOT_YET, 0));
            lines.add(new Block.SizeLine(
                    "most in and on it, all together",
                    most(
                            Questions.verdict(review, hanging.part())
                                    .worse(review.path().verdict()),
                            inAll,
                            rule)));
        }
        if (!lines.isEmpty()) {
            blocks.add(new Block.Sizes(lines));
            blocks.add(new Block.Warning(Caution.ASSUMED_CONTENTS));
        }
    }

    private void air() {
        Setting in = review.design().setting();
        blocks.add(new Block.Sentence("Planned for air between "
                + humidity(in.year().dry()) + " and " + humidity(in.year().damp())
                + " humidity, as wood feels it over weeks at " + rule.text(new Temperature(ROOM))
                + ". Drier or damper for weeks, and it moves more than is said here."));
    }

    private String humidity(Estimate moisture) {
        double wettest = HailwoodHorrobin.moisture(ROOM, 1);
        return rule.text(
                new RelativeHumidity(HailwoodHorrobin.relativeHumidity(ROOM, Math.min(moisture.expected(), wettest))));
    }

    private void hanging() {
        for (Hanging hanging : Questions.hangings(review)) {
            Fixing fixing = hanging.fixing();
            blocks.add(new Block.Sentence("It hangs on "
                    + fixing.inEachStud() * fixing.studs().size() + " x "
                    + fixing.screw().name() + ", " + rule.text(fixing.length()) + " long, " + fixing.inEachStud()
                    + " in each " + Questions.place(hanging) + "; they sit "
                    + String.join(
                            " and ", fixing.studs().stream().map(rule::text).toList())
                    + " from its left end."));
        }
        for (Lift lift : Questions.of(review, Lift.class)) {
            Lift.Plan plan = lift.answer();
            String off = "To take it down: empty it; take doors, shelves and glass off (" + rule.text(plan.takenOff())
                    + "); ";
            String people = "people to lift " + rule.text(plan.lifted()) + ": " + WallBlocks.people(plan.people());
            blocks.add(new Block.Sentence(
                    lift.hooked()
                            ? off + people + "; lift it straight up off its strip."
                            : off + "screw a ledger to the wall under it; " + people
                                    + "; draw the screws last, one high at each place at the very end."));
        }
    }

    private void firstYear() {
        Setting in = review.design().setting();
        List<String> dry = new ArrayList<>();
        List<String> damp = new ArrayList<>();
        for (PanelFit fit : Figures.panels(review)) {
            PanelFit.Fit expected = fit.answer();
            Length shows = expected.comesIntoSight(fit.panel().pinned());
            if (shows.metres() > 0) {
                dry.add("edges of " + fit.part() + ": " + rule.text(shows)
                        + " of what was hidden may come into sight at a side");
            } else {
                dry.add("edges of " + fit.part() + ": nothing that was hidden should come into sight");
            }
            damp.add(fit.part() + ": it should still slide; it is expected to be "
                    + rule.text(expected.atDamp().minus(fit.width())) + " wider than on the day of cutting");
        }
        for (DoorGap gap : Questions.of(review, DoorGap.class)) {
            GapFit.Gap expected = gap.set().answer();
            String what = gap.part() + ", " + (gap.set().kind() == GapFit.Kind.GAP ? "gap " : "overlap ")
                    + gap.set().where() + ": about ";
            dry.add(what + rule.text(expected.atDry()));
            damp.add(what + rule.text(expected.atDamp()));
        }
        for (ShelfSag shelf : Questions.of(review, ShelfSag.class)) {
            damp.add("middle of " + shelf.part() + ", loaded: a sag of about "
                    + rule.text(shelf.answer().firstDay()) + " on the first day, on the way to "
                    + rule.text(shelf.answer().afterYears()) + " after years");
        }
        for (Hanging hanging : Questions.hangings(review)) {
            String screws = "screws of the " + hanging.part() + ": tight, and no gap behind the upper edge";
            dry.add(screws);
            damp.add(screws);
        }
        looks("At the dry end of the year" + month(in, true) + ", look at", dry);
        looks("At the damp end of the year" + month(in, false) + ", look at", damp);
    }

    private void looks(String when, List<String> what) {
        if (!what.isEmpty()) {
            blocks.add(new Block.Items(when + ":", what));
        }
    }

    private static String month(Setting in, boolean driest) {
        return in.year()
                .byMonth()
                .map(months -> ", about " + extreme(months, driest).word())
                .orElse("");
    }

    private static Month extreme(YearByMonth months, boolean driest) {
        Month found = Month.JANUARY;
        for (Month month : Month.values()) {
            int compared =
                    Double.compare(months.in(month).expected(), months.in(found).expected());
            if (driest ? compared < 0 : compared > 0) {
                found = month;
            }
        }
        return found;
    }

    /** What stays open: each with its one thing to do. */
    private void open() {
        Set<String> all = new LinkedHashSet<>();
        review.findings().stream()
                .filter(finding -> !finding.missing().isEmpty())
                .forEach(finding -> all.add(todo(finding)));
        for (Link link : review.path().notJudged()) {
            if (link.told().isEmpty()) {
                all.add(PathBlocks.name(link) + ": " + link.missing().get(0).todo());
            }
        }
        if (!all.isEmpty()) {
            blocks.add(new Block.Items("Not judged when this was printed:", List.copyOf(all)));
        }
    }

    private static String todo(Finding finding) {
        Missing first = finding.missing().get(0);
        return finding.part() + ", " + finding.question() + ": " + first.todo();
    }
}
