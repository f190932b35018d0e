package fairgrain.clearance;

import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.moisture.HailwoodHorrobin;
import fairgrain.moisture.HumidAir;
import fairgrain.moisture.SaturationPressure;
import fairgrain.part.Setting;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.MoistureContent;
import fairgrain.quantity.Require;
import java.util.ArrayList;
import java.util.List;

/**
 * What does a lamp do in a shut case, and is its cable hole far enough from an edge?
 *
 * @param part the lamp, as the maker calls it
 * @param watts that stay on for hours
 * @param surface of the case without its back, which lies on the wall [m²]
 * @param hole diameter of the cable hole
 * @param fromEdge from its middle to the nearest edge
 */
public record LampInCase(String part, double watts, double surface, Length hole, Length fromEdge, Setting in)
        implements Question<LampInCase.Warm> {
    public static final Limits WATTS = new Limits("power of the lamps", 0.1, 500, "W");
    public static final Limits HOLE = new Limits("diameter of the cable hole", 0.002, 0.08, "m");
    public static final Limits FROM_EDGE = new Limits("cable hole from the edge", 0.002, 1, "m");
    public static final Citation SOURCE =
            Citation.of("own", "heat of a lamp through the walls of a shut case, 2 W/m² and degree", Basis.JUDGEMENT);

    // W/(m² K), low: 25 mm of a light wood, 0.10 W/(m K), and 0.13 m² K/W of still air on each face, all from memory
    private static final double WALLS = 2;
    private static final double HOTTEST = 60; // K; far beyond what holds, and still within the sorption equation
    private static final double ROOM = 293.15; // K
    private static final double DRIER = 0.01; // moisture that the dry end may be lower than planned
    private static final double TIMES = 1.5; // diameters of the hole from its middle to an edge

    public LampInCase {
        WATTS.check(watts);
        Require.between("surface of the case", surface, 0.02, 50, "m²");
        HOLE.check(hole);
        FROM_EDGE.check(fromEdge);
    }

    /**
     * The case with the lamp on.
     *
     * @param warmer by so many degrees inside [K]
     * @param dryEnd what wood inside tends to at the dry end of the year [fraction]
     */
    public record Warm(double warmer, double dryEnd, List<Check> checks) implements Answer {
        public Warm {
            checks = List.copyOf(checks);
        }
    }

    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Warm> model() {
        double warmer = watts / (WALLS * surface);
        double dry = in.year().dry().expected();
        double humidity = HailwoodHorrobin.relativeHumidity(ROOM, dry);
        double hot = ROOM + Math.min(HOTTEST, warmer);
        double there = HailwoodHorrobin.moisture(hot, HumidAir.broughtIn(ROOM, humidity, hot));
        Warm warm = new Warm(
                warmer,
                there,
                List.of(
                        Check.of(
                                "how much drier wood gets inside than is planned, against one point",
                                dry - there,
                                DRIER,
                                Dimension.MOISTURE),
                        Check.of(
                                "one and a half diameters of the cable hole, against its distance from the edge",
                                TIMES * hole.metres(),
                                fromEdge.metres(),
                                Dimension.LENGTH)));
        return draw -> warm;
    }

    @Override
    public List<Finding> findings() {
        Warm warm = answer();
        List<Outcome> outcomes = warm.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        part,
                        "what do lamps do in a shut case",
                        Words.of(
                                "Left on for days, {} W warm a shut case by about " + Math.round(warm.warmer())
                                        + " degrees C; wood inside then tends to {} at the dry end of the year where"
                                        + " {} is planned.",
                                Amount.count(watts),
                                new MoistureContent(warm.dryEnd()),
                                new MoistureContent(in.year().dry().expected())),
                        in.year().evidence().and(SOURCE, HailwoodHorrobin.SOURCE, SaturationPressure.SOURCE))
                .outcomes(outcomes)
                .cautions(Caution.MAINS)
                .note("Their weight counts with what hangs; enter it with 'weight'.");
        if (!warm.checks().get(0).holds()) {
            draft.remedies(cures());
        }
        return List.of(draft.done());
    }

    private List<Remedy> cures() {
        List<Remedy> cures = new ArrayList<>();
        double least = watts;
        while (least > 1 && !with(least).answer().checks().get(0).holds()) {
            least -= 0.5;
        }
        LampInCase weaker = with(Math.max(least, WATTS.least()));
        if (weaker.answer().checks().stream().allMatch(Check::holds)) {
            cures.add(new Remedy(
                    Words.of(
                            "Let no more than {} W burn in it, or vent it above and below.",
                            Amount.count(weaker.watts())),
                    weaker));
        }
        return cures;
    }

    private LampInCase with(double other) {
        return new LampInCase(part, Math.max(WATTS.least(), other), surface, hole, fromEdge, in);
    }
}
