package fairgrain.hanging;

import fairgrain.fastener.CombinedLoad;
import fairgrain.finding.Answer;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/**
 * Do the hangers on the case hold, by their maker's values? A link by itself: what they hook on is asked about beside it. Weight and
 * pull are added in a straight line, and short loads gain nothing.
 *
 * @param hanging the case
 * @param hangers what it hangs on
 */
public record HangerHold(Hanging hanging, Hangers hangers) implements Question<HangerHold.Held> {
    public HangerHold {
        for (Length place : hangers.at()) {
            if (place.metres() < 0 || place.compareTo(hanging.cabinet().width()) > 0) {
                throw new IllegalArgumentException("every hanger must sit on the case, between its ends");
            }
        }
        if (hangers.height().metres() < 3 * Hanging.CONTACT.metres()) {
            throw new IllegalArgumentException("the hangers must sit well above the lower edge of the case");
        }
    }

    /** In numbers: the use of the hardest worked hanger in each case. */
    public record Held(List<Check> checks) implements Answer {}

    @Override
    public String part() {
        return hanging.part();
    }

    @Override
    public List<Spread> spreads() {
        return hanging.spreads();
    }

    @Override
    public Model<Held> model() {
        Fixing places = new Fixing(
                hanging.fixing().screw(),
                hanging.fixing().length(),
                new Row(hangers.height(), 1),
                hangers.at(),
                hanging.fixing().rail().held(Rail.Held.BOTH_EDGES));
        ScrewLoads loads = new ScrewLoads(places, hanging.cabinet().width(), Hanging.CONTACT);
        return draw -> {
            double heaviness = draw.of(0) / Reliability.NINETEEN_IN_TWENTY;
            List<Check> checks = new ArrayList<>();
            for (LoadCase which : hanging.cases().of(hanging.cabinet())) {
                if (which == LoadCase.SCREW_GONE && isPair()) {
                    continue; // nothing would keep it level: said in words
                }
                double worst = 0;
                for (Demand.Side side : Demand.Side.values()) {
                    worst = Math.max(worst, used(which, hanging.demand(which, heaviness, side), loads));
                }
                checks.add(Check.of(
                        "use of the hardest worked hanger, " + which.word().replace("screw", "hanger")
                                + ", against all of it",
                        worst,
                        1,
                        Dimension.RATIO));
            }
            return new Held(List.copyOf(checks));
        };
    }

    private boolean isPair() {
        return hangers.at().size() == 2;
    }

    private double used(LoadCase which, Demand demand, ScrewLoads loads) {
        List<List<ScrewLoads.OnScrew>> ways =
                which == LoadCase.SCREW_GONE ? loads.oneGone(demand) : List.of(loads.of(demand));
        double down = hangers.down().newtons() / hangers.factor();
        double out = hangers.out().orElse(hangers.down()).newtons() / hangers.factor();
        double worst = 0;
        for (List<ScrewLoads.OnScrew> way : ways) {
            worst = Math.max(
                    worst,
                    way.stream()
                            .mapToDouble(on -> CombinedLoad.straightLine(on.shear(), on.pull(), down, out))
                            .max()
                            .orElse(ScrewHold.USED_UP));
        }
        return worst;
    }

    @Override
    public List<Finding> findings() {
        List<Outcome> outcomes = Reliability.outcomes(this, Reliability.NINETEEN_IN_TWENTY);
        Finding.Draft draft = Finding.about(
                        part(),
                        "do its hangers hold",
                        Words.of(
                                "The maker of the " + hangers.name()
                                        + " declares {} downward for one, which is divided by {}; the hardest worked"
                                        + " one uses {} of what is left.",
                                hangers.down(),
                                Amount.ratio(hangers.factor()),
                                Amount.ratio(outcomes.get(0).planned().demand())),
                        hangers.evidence().and(Demand.SOURCE, ScrewGroup.SOURCE, CombinedLoad.STRAIGHT_LINE_SOURCE))
                .outcomes(outcomes)
                .missing(missing())
                .size("hangers above the lower edge", hangers.height())
                .note("The values hold only for hangers fixed to the case as their maker says, in wood like his.")
                .note("What they hook on is judged by itself. A screw that a keyhole plate hooks on must stand in a"
                        + " stud or in a rail across studs, never in board.")
                .note("Hook, then keep it from being lifted off: a screw through the back does.")
                .cautions(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD,
                        Caution.ASSUMED_CONTENTS);
        if (!hanging.cases().coverChildren(hanging.cabinet())) {
            draft.cautions(Caution.CHILDREN);
        }
        if (isPair()) {
            draft.note(
                    "If one of the two lets go the case falls: no verdict here covers that. A third hanger, or a screw"
                            + " through a rail into a stud, holds it then.");
        }
        int number = 0;
        for (Length place : hangers.at()) {
            number++;
            draft.size("hanger " + number + " from the left end", place);
        }
        return List.of(draft.done());
    }

    private List<Missing> missing() {
        List<Missing> all = new ArrayList<>();
        if (hangers.out().isEmpty()) {
            all.add(new Missing(
                    "what a hanger holds against a pull away from the wall", "ask its maker and enter 'out'"));
        }
        if (hanging.cases().earthquake().isPresent()) {
            all.add(new Missing(
                    "what keeps the case on its hangers in an earthquake",
                    "screw the case to the studs through a rail"));
        }
        return all;
    }
}
