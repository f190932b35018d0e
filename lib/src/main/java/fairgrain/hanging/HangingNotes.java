package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.PilotHole;
import fairgrain.fastener.ShortTimeStrength;
import fairgrain.fastener.YieldMargin;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Quantity;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What else {@link Hanging} has to tell: the strength of a screw, the safety in the figures, what each assumption costs. */
final class HangingNotes {
    static final Length DEEPEST_UNSEEN = Length.inches(1.25);

    static final Citation TEST = Citation.of("kcma-a161-1", "5.2", Basis.SECOND_HAND);

    private static final double YIELD_DIVISOR = 2.2;
    private static final double TEST_LOAD = 2669; // N, 600 lbf on a hung cabinet over 24 in high
    private static final double BETTER_STUD = 0.42; // spruce-pine-fir, the lightest common stamp

    private final Hanging hanging;
    private final Hanging.Held heavy;
    private final Hanging.Use worst;
    private final ScrewHold hold;

    HangingNotes(Hanging hanging, Hanging.Held heavy, Hanging.Use worst) {
        this.hanging = hanging;
        this.heavy = heavy;
        this.worst = worst;
        this.hold = hanging.hold();
    }

    void add(Finding.Draft draft) {
        draft.note(studs()).note(strength());
        draft.note("The weakest link of that screw: " + worst.mode() + ".");
        draft.note(
                "By the plain sum of weight and pull the same screw would use {}.", Amount.ratio(worst.straightLine()));
        safety(draft);
        costs(draft);
        wall(draft);
        test(draft);
        draft.note((hanging.stud() instanceof Masonry
                        ? "This says that the anchors hold in the wall."
                        : "This says that the screws hold in the studs.")
                + " The cabinet's own joints, back and rail are not"
                + " judged here.");
    }

    private Words studs() {
        StringBuilder text = new StringBuilder(hanging.stud() instanceof Masonry ? "It hangs on " : "It catches ");
        List<Quantity> numbers = new ArrayList<>();
        List<Hanging.Use> uses = heavy.uses();
        for (int i = 0; i < uses.size(); i++) {
            text.append(i == 0 ? "" : i == uses.size() - 1 ? " and " : ", ");
            text.append(
                    hanging.stud() instanceof Masonry
                            ? "an anchor at {} (each there uses up to {})"
                            : "a stud at {} (each screw there uses up to {})");
            numbers.add(uses.get(i).stud());
            numbers.add(Amount.ratio(uses.get(i).used()));
        }
        text.append(hanging.stud() instanceof Masonry ? ", {} at each place." : ", {} screws in each.");
        numbers.add(Amount.count(hanging.fixing().inEachStud()));
        return new Words(text.toString(), numbers);
    }

    private Words strength() {
        boolean anchored = hanging.stud() instanceof Masonry;
        Words one = Words.of(
                anchored
                        ? "One anchor may carry {} along the wall for good (first: " + hold.sideways()
                                + "); the wall holds {} in pull, the rail under the washer {}."
                        : "One screw may carry {} along the wall for good (it would yield so: " + hold.sideways()
                                + "); its thread may carry {} in pull, its head {}.",
                new Force(hold.lateral()),
                new Force(hold.withdrawal()),
                new Force(hold.head()));
        return hold.ungapped() <= hold.lateral()
                ? one
                : one.and(Words.of(
                        anchored
                                ? "Were the rail straight on the wall, it would be {} along it."
                                : "Were the rail straight on the stud, it would be {} along the wall.",
                        new Force(hold.ungapped())));
    }

    private void safety(Finding.Draft draft) {
        if (hanging.fixing().screw() instanceof DeclaredScrew declared) {
            draft.note(
                    "Safety in these figures: the maker's " + declared.given().word()
                            + " values are divided by {}; nothing is gained for short loads. No extra factor is"
                            + " added to weights.",
                    Amount.ratio(declared.factor()));
        } else if (hanging.fixing().screw() instanceof DeclaredAnchor anchor) {
            draft.note(
                    "Safety in these figures: the maker's " + anchor.given().word()
                            + " values of the anchor are divided by {}; nothing is gained for short loads. Weak,"
                            + " cracked or wet masonry asks for more: enter a larger factor.",
                    Amount.ratio(anchor.factor()));
            draft.note("The values hold only for an anchor set as its maker says: this wall, hole, depth, edges and"
                    + " distances. In hollow masonry bore without hammering.");
        } else if (hanging.stud() instanceof SteelStud) {
            draft.note("Safety in these figures: a third of the nominal strength of the steel; nothing is gained for"
                    + " short loads. No extra factor is added to weights. Use self-drilling screws of that size.");
            draft.note("The bending of the steel stud and its hold in the track are not judged: backing across the"
                    + " studs is better.");
        } else {
            boolean lag = hanging.fixing().screw().lag();
            draft.note(
                    "Safety in these figures: a load that stays counts 0.9; the lateral value stands at 1/{} of"
                            + " yielding, the thread at 1/{} of its average strength, both with the load staying. No"
                            + " extra factor is added.",
                    Amount.ratio(YieldMargin.atPermanentLoad(YIELD_DIVISOR)),
                    Amount.ratio(YieldMargin.atPermanentLoad(lag ? YieldMargin.LAG_SCREW : YieldMargin.WOOD_SCREW)));
        }
        if (!hanging.cases().people().isEmpty()) {
            draft.note(
                    "The weight of people is multiplied by {}, since people move."
                            + (hold.timeless()
                                    ? ""
                                    : " It is there for ten minutes, for which wood carries 1.6 in place of 0.9."),
                    Amount.ratio(hanging.cases().peopleFactor()));
        }
        if (hanging.cases().earthquake().isPresent()) {
            draft.note(
                    "In the earthquake {} of the weight pulls outward and sideways at once; the coefficient is yours.",
                    Amount.ratio(hanging.cases().earthquake().getAsDouble()));
        }
        if (hold.group() < 1) {
            draft.note("Large screws in a column share unevenly: {} of each is counted.", Amount.ratio(hold.group()));
        }
        if (hanging.fixing().rail().held() != Rail.Held.BOTH_EDGES) {
            draft.note(
                    "The case holds the rail "
                            + (hanging.fixing().rail().held() == Rail.Held.ENDS
                                    ? "by its ends only"
                                    : "along its top edge only")
                            + ", so the rail rolls and the screws are pulled {}"
                            + " times as hard as by the case alone; a rail held along both edges does not.",
                    Amount.ratio(hanging.fixing().rail().rolling()));
        }
    }

    /** What each assumption costs the standing use. */
    private void costs(Finding.Draft draft) {
        Demand demand = hanging.demand(LoadCase.STANDING, 1, Demand.Side.RIGHT);
        ScrewLoads loads = hanging.loads();
        LoadCase standing = LoadCase.STANDING;
        if (hold.ungapped() > hold.lateral() && worst.used() < ScrewHold.USED_UP) {
            draft.note(
                    hanging.stud() instanceof Masonry
                            ? "The {} between rail and wall leave {} of the lateral value; with the lining cut away the"
                                    + " use would be {}."
                            : "The {} between rail and stud leave {} of the lateral value; a rail let in or packed out"
                                    + " solid on the studs wins the rest back, and the use would be {}.",
                    hanging.gap(),
                    Amount.ratio(hold.lateral() / hold.ungapped()),
                    Amount.ratio(Hanging.worst(loads.of(demand), hold.straightOnTheStud(), standing.duration())));
        }
        double stiff = Hanging.worst(loads.stiff(demand), hold, standing.duration());
        if (stiff < worst.used() * 0.99) {
            draft.note(
                    "The worse of a stiff cabinet and a limber rail is taken; were the cabinet stiff, the use would be"
                            + " {}.",
                    Amount.ratio(stiff));
        }
        if (hanging.stud() instanceof WoodStud wood && wood.specificGravity() < BETTER_STUD) {
            ScrewHold better = hanging.stud(wood.specificGravity(BETTER_STUD)).hold();
            draft.note(
                    "The studs are taken as light as {}; with studs stamped spruce-pine-fir the use would be {}.",
                    Amount.ratio(wood.specificGravity()),
                    Amount.ratio(Hanging.worst(loads.of(demand), better, standing.duration())));
        }
        if (hanging.fixing().share() < 1) {
            draft.note(
                    "It rests on a ledger: these screws are judged for {} of the weight, as their number is to that of"
                            + " the ledger's, and for all of the pull; in an earthquake for all of both.",
                    Amount.ratio(hanging.fixing().share()));
        }
        draft.note("No friction between cabinet and wall is counted, nor the squeeze of tight screws.");
        if (hanging.fixing().rows().size() > 1) {
            draft.note("The rows share the weight alike: bore the holes so that every screw fits. In slack holes the"
                    + " upper row may carry all of it.");
        } else if (hanging.fixing().studs().size() > 1) {
            draft.note("There is one row of screws: the lower edge is free to swing out when it is pulled.");
        }
        if (hanging.fixing().studs().size() == 1) {
            draft.note("On a single stud only the couple of screws one above the other keeps it level; an eighth of"
                    + " the width is taken as the least that its load stands to one side.");
        }
    }

    private void wall(Finding.Draft draft) {
        draft.note("It is taken that the lower edge bears on the wall all along; shim it where the wall is hollow.");
        linings(draft);
        if (hanging.fixing().screw() instanceof Screw) {
            draft.note("The pull of the head is for round heads or washers, not for countersunk ones.");
        }
        if (!(hanging.stud() instanceof SteelStud) && !(hanging.stud() instanceof Masonry)) {
            draft.note("Bore the stud for every screw, within 6 mm of its centre.");
            draft.evidence(PilotHole.SOURCE);
        }
        if (hanging.dampest() > Adjustment.DRY_UP_TO) {
            draft.note(
                    "The wood may get wetter than {} there: every figure of wood is taken at 0.7 for it.",
                    new MoistureContent(Adjustment.DRY_UP_TO));
        }
        if (HangingWords.maybeCables(hold.point()) && !(hanging.stud() instanceof Masonry)) {
            draft.note(
                    "The points reach {} into the studs, deeper than cables are kept from: make sure that none run"
                            + " there.",
                    hold.point());
        }
    }

    /** Linings that break when they are bored. */
    private void linings(Finding.Draft draft) {
        if (lined("plaster")) {
            draft.note("Old plaster breaks off its laths when it is hammered or drawn on: bore it, do not punch it, and"
                    + " pack behind the rail where it sounds hollow.");
        }
        if (lined("tile")) {
            draft.note(
                    "Bore tile with a bit for tile, without hammering, and wider than the screw: a screw that bears on"
                            + " the tile cracks it. Shim the lower edge where the tiles end.");
        }
    }

    private boolean lined(String word) {
        return hanging.layers().stream()
                .anyMatch(layer -> layer.name().toLowerCase(Locale.ROOT).contains(word)
                        && !layer.name().toLowerCase(Locale.ROOT).contains("plasterboard"));
    }

    /** A published test of hung cabinets, against a strength of its own: information only. */
    private void test(Finding.Draft draft) {
        if (hanging.cabinet().depth().isEmpty() || hold.shortLateral() <= 0) {
            return;
        }
        double reach = hanging.cabinet().depth().get().metres() / 2;
        Demand bare = new Demand(LoadCase.STANDING, TEST_LOAD, TEST_LOAD * reach, 0, 0, 0, 0, 0, 0, Demand.Side.RIGHT);
        double used = hanging.loads().stiff(bare).stream()
                .mapToDouble(on -> hold.usedInATest(on.shear(), on.pull()))
                .max()
                .orElse(ScrewHold.USED_UP);
        draft.note(
                "For information, no part of the verdict: American kitchen cabinets are tested with {} on them. Against"
                        + " the strength in a short test these screws would use {} of theirs"
                        + (used <= 1 ? " and probably pass." : " and might not pass."),
                new Force(TEST_LOAD),
                Amount.ratio(used));
        draft.evidence(TEST, ShortTimeStrength.SOURCE);
    }
}
