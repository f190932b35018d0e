package fairgrain.door;

import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Outcome;
import fairgrain.finding.Remedy;
import fairgrain.finding.Verdict;
import fairgrain.finding.Words;
import fairgrain.joint.JointWood;
import fairgrain.joint.ScrewHoles;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Length;
import fairgrain.quantity.Quantity;
import fairgrain.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What {@link HingesHold} says to a maker. */
final class HingeWords {
    private static final double NEAREST_END = 0.05; // m from the middle of a hinge to the end of the door
    private static final int MOST_SCREWS = 6;
    private static final Length ON_TWO = Length.mm(900);
    private static final Length ON_THREE = Length.mm(1800);
    private static final Citation USUAL_NUMBER =
            Citation.of("czech-furniture", "hinges by the height of the door", Basis.SECOND_HAND);

    private final HingesHold hold;

    HingeWords(HingesHold hold) {
        this.hold = hold;
    }

    Finding finding() {
        HingesHold.Held held = hold.answer();
        List<Outcome> outcomes = held.checks().stream().map(Outcome::certain).toList();
        Finding.Draft draft = Finding.about(
                        hold.part(),
                        "do its hinges hold",
                        Words.of(
                                "The door pulls at its top hinge with {}, and with {} when a hand leans on it open;"
                                        + " one of the screws there is pulled with {} by the door alone.",
                                held.pull(),
                                held.leaningPull(),
                                held.perScrew()),
                        hold.evidence())
                .outcomes(outcomes)
                .missing(missing())
                .cautions(Caution.CHILDREN);
        if (held.mayPull().newtons() > 0) {
            draft.size("pull that one screw may bear for good", held.mayPull());
        }
        ScrewHoles.into(draft, hold.hinges().screw(), stile(), "in the stile");
        draft.note(
                "For each tenth of a millimetre of play in the hinges its closing edge drops {}: let them in snugly.",
                held.drop());
        draft.note(
                "Shut and open the same pull comes along the screws of one leaf and across those of the other; both are"
                        + " counted on each, and all of the weight on one hinge.");
        tests(held, draft);
        usualNumber(draft);
        draft.note("Hinge screws are shorter than the six diameters that the timber code asks for; they are reckoned by"
                + " how deep they bear.");
        if (hold.hinges().number() > 2) {
            draft.note("Hinges between the top and the bottom one are not counted.");
        }
        if (hold.hinges().brass()) {
            draft.note(
                    "Cut the thread with a steel screw of the same size first, waxed, then drive the brass one: a brass"
                            + " screw twists off in dense wood.");
        }
        draft.note("Give the door a stop: without one it pries its hinges off when it swings too far. A catch holds it"
                + " shut, nothing more.");
        if (outcomes.stream().anyMatch(o -> o.verdict() == Verdict.FAILS)) {
            draft.remedies(cures());
        }
        return draft.done();
    }

    private void tests(HingesHold.Held held, Finding.Draft draft) {
        if (held.tests().isEmpty()) {
            return;
        }
        String each = held.tests().stream().map(in -> in.test().said() + " {}").collect(Collectors.joining(", "));
        draft.note(
                "For information, no part of the verdict: of what nineteen of twenty such screws stand in a short test,"
                        + " published tests would use, a weight hung on the open door, " + each
                        + ". Above 1 they would likely be failed.",
                held.tests().stream()
                        .map(in -> Amount.ratio(Math.ceil(in.use() * 100) / 100))
                        .toArray(Quantity[]::new));
    }

    private void usualNumber(Finding.Draft draft) {
        int usual = hold.height().compareTo(ON_TWO) <= 0 ? 2 : 3;
        if (hold.hinges().number() < usual) {
            draft.note(
                    "A furniture rule wants two hinges up to {} of height and three up to {}: the third keeps the stile"
                            + " straight; it is not counted for strength.",
                    ON_TWO,
                    ON_THREE);
            draft.evidence(USUAL_NUMBER);
        }
    }

    private JointWood stile() {
        LeafIn in = hold.door();
        return new JointWood(
                in.name(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                in.gravity(),
                OptionalDouble.empty(),
                in.evidence());
    }

    private List<Missing> missing() {
        return Stream.of(hold.door(), hold.side())
                .filter(in -> !in.isJudged())
                .map(in -> in.kind() == LeafIn.Kind.BOARD
                        ? new Missing(
                                "what hinge screws hold sideways in " + in.name(),
                                "let a strip of solid wood in behind the hinges, or use hinges with their maker's"
                                        + " value for such a board")
                        : new Missing(
                                "how dense " + in.name() + " is",
                                "choose a wood whose density and its basis are in the table"))
                .distinct()
                .toList();
    }

    private List<Remedy> cures() {
        List<Remedy> cures = new ArrayList<>();
        farther()
                .ifPresent(h -> cures.add(new Remedy(
                        Words.of("Set the hinges {} apart.", h.hinges().spacing()), h)));
        longer().ifPresent(h ->
                cures.add(new Remedy(Words.of("Use screws {} long.", h.hinges().length()), h)));
        more().ifPresent(h ->
                cures.add(new Remedy(Words.of("Use hinges with " + h.hinges().screws() + " screws in each leaf."), h)));
        return cures;
    }

    private Optional<HingesHold> farther() {
        double step = step().metres();
        int first = (int) Math.floor(hold.hinges().spacing().metres() / step) + 1;
        int last = (int) Math.floor((hold.height().metres() - 2 * NEAREST_END) / step);
        return IntStream.rangeClosed(first, last)
                .mapToObj(steps -> hold.hinges(hold.hinges().spacing(new Length(steps * step))))
                .filter(HingesHold::holds)
                .findFirst();
    }

    private Optional<HingesHold> longer() {
        return Stream.of(0.5, 0.625, 0.75, 1.0, 1.25, 1.5, 2.0)
                .map(Length::inches)
                .filter(length -> length.compareTo(hold.hinges().length()) > 0)
                .map(length -> hold.hinges(hold.hinges().length(length)))
                .filter(HingesHold::holds)
                .findFirst();
    }

    private Optional<HingesHold> more() {
        return IntStream.rangeClosed(hold.hinges().screws() + 1, MOST_SCREWS)
                .mapToObj(screws -> hold.hinges(hold.hinges().screws(screws)))
                .filter(HingesHold::holds)
                .findFirst();
    }

    private Length step() {
        return hold.rule().system() == UnitSystem.INCHES ? Length.inches(0.5) : Length.mm(10);
    }
}
