package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.finding.Answer;
import fairgrain.finding.Basis;
import fairgrain.finding.Caution;
import fairgrain.finding.Check;
import fairgrain.finding.Citation;
import fairgrain.finding.Finding;
import fairgrain.finding.Missing;
import fairgrain.finding.Model;
import fairgrain.finding.Outcome;
import fairgrain.finding.Question;
import fairgrain.finding.Reliability;
import fairgrain.finding.Remedy;
import fairgrain.finding.Spread;
import fairgrain.finding.Words;
import fairgrain.part.Setting;
import fairgrain.quantity.Amount;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Do the ties keep a standing piece from tipping forward? Empty, everything open that may stand open at once, a child on the front edge
 * of that; an earthquake if a coefficient is given.
 *
 * <p>T = max(0, m_o g (r/2 + b) + F (r + b) − 0.9 m g (D/2 − b) + k m g z)/h
 *
 * @param piece the piece
 * @param tie what ties it
 * @param peopleFactor what the child's weight is multiplied by
 * @param earthquake coefficient times the weight, outward at half height
 * @param in the setting
 */
public record TiedBack(StandingPiece piece, Tie tie, double peopleFactor, OptionalDouble earthquake, Setting in)
        implements Question<TiedBack.Held> {
    public static final Citation SOURCE = Citation.of("own", "a piece turning about its front feet", Basis.DERIVED);
    /** A corner is pulled: one tie of a pair takes all, and the piece may be a tenth lighter than entered. */
    public static final Citation HABITS =
            Citation.of("own", "one tie of a pair takes all of a child; a tenth lighter", Basis.JUDGEMENT);

    private static final double LIGHT = 0.9;
    private static final int MOST = 6;

    public static final String QUESTION = "do the ties keep it from tipping";

    public TiedBack {
        LoadCases.FACTOR.check(peopleFactor);
        earthquake.ifPresent(LoadCases.COEFFICIENT::check);
        new Limits("height of the ties above the floor", 0.3, piece.height().metres(), "m, no higher than the piece")
                .check(tie.height());
    }

    /** In numbers: pull on all ties, everything open; the same with a child. */
    public record Held(Force open, Force child, List<Check> checks) implements Answer {}

    @Override
    public String part() {
        return piece.name();
    }

    /** None: each figure stands at its worse end. */
    @Override
    public List<Spread> spreads() {
        return List.of();
    }

    @Override
    public Model<Held> model() {
        double child = LoadCase.CHILD_CLIMBING.person() * peopleFactor;
        double open = pull(0, 0);
        double climbed = pull(child, 0);
        List<Check> checks = new ArrayList<>();
        each("everything open", open / tie.count(), LoadDuration.SEVEN_DAYS, checks);
        each("child on the front edge", climbed / Math.max(1, tie.count() / 2), LoadDuration.TEN_MINUTES, checks);
        earthquake.ifPresent(k -> each("earthquake", pull(0, k) / tie.count(), LoadDuration.TEN_MINUTES, checks));
        checks.add(Check.of(
                "least depth of the screw in the wall, against the depth reached",
                tie.leastDepth().metres(),
                tie.depth().metres(),
                Dimension.LENGTH));
        Held held = new Held(new Force(open), new Force(climbed), List.copyOf(checks));
        return draw -> held;
    }

    /** Pull on all ties together [N]. */
    private double pull(double person, double coefficient) {
        double g = Force.STANDARD_GRAVITY;
        double back = piece.feetBack().metres();
        double reach = piece.openReach().metres();
        double stays = LIGHT * piece.mass() * g * (piece.depth().metres() / 2 - back);
        double tips = piece.openMass() * g * (reach / 2 + back) + person * (reach + back);
        double shaken = coefficient
                * (piece.mass() + piece.openMass())
                * g
                * piece.height().metres()
                / 2;
        return Math.max(0, tips + shaken - stays) / tie.height().metres();
    }

    private void each(String when, double pull, LoadDuration duration, List<Check> checks) {
        double damp = in.year().damp().at(Reliability.NINETEEN_IN_TWENTY);
        checks.add(force(
                "pull on a tie, " + when + ", against what its screw in the wall holds",
                pull,
                tie.wall(damp, duration)));
        if (tie.member().kind() != Rail.Kind.BOARD) {
            checks.add(force(
                    "pull on a tie, " + when + ", against what its screw in the piece holds",
                    pull,
                    tie.piece(damp, duration)));
        }
        tie.strap()
                .ifPresent(strap -> checks.add(
                        force("pull on a tie, " + when + ", against what the strap holds", pull, strap.newtons())));
    }

    private static Check force(String what, double pull, double holds) {
        return Check.of(what, pull, holds, Dimension.FORCE);
    }

    @Override
    public List<Finding> findings() {
        Held held = answer();
        Finding.Draft draft = Finding.about(
                        part(),
                        QUESTION,
                        Words.of(
                                "Empty, with everything open, it pulls at its ties with {} together; with a child on"
                                        + " the front edge with {}.",
                                held.open(),
                                held.child()),
                        tie.screw()
                                .evidence()
                                .and(tie.stud().evidence())
                                .and(tie.member().evidence())
                                .and(
                                        SOURCE,
                                        HABITS,
                                        LoadCase.CHILD,
                                        LoadDuration.SOURCE,
                                        Adjustment.SOURCE,
                                        ReferenceWithdrawal.SOURCE))
                .outcomes(held.checks().stream().map(Outcome::certain).toList())
                .size("ties above the floor", tie.height())
                .size("ties, each into a stud of its own", Amount.count(tie.count()))
                .missing(missing())
                .note("It is taken empty, a tenth lighter than entered: a full piece stands more firmly, and an open"
                        + " drawer or door does not.")
                .note(
                        "The child's weight of {} is multiplied by {}, since children move.",
                        new Force(LoadCase.CHILD_CLIMBING.person()),
                        Amount.ratio(peopleFactor))
                .note("Keep the straps level and tight: one that slopes steeply pulls harder and across its screws,"
                        + " which is not judged; neither is a thick carpet under the front feet.")
                .note("It is taken that every screw is pulled straight out of the back of the piece and of the wall."
                        + " Angle brackets pry, and pull their screws harder: they are not judged.")
                .note("A tie is for a slip, not for climbing: drawers that lock one another do more.")
                .cautions(
                        Caution.LOCAL_CODE,
                        Caution.STUDS_ONLY,
                        Caution.HIDDEN_SERVICES,
                        Caution.CHILDREN,
                        Caution.EARTHQUAKE,
                        Caution.DRY_SOUND_WOOD);
        if (!held.checks().stream().allMatch(Check::holds)) {
            draft.remedies(cures());
        }
        return List.of(draft.done());
    }

    private List<Missing> missing() {
        List<Missing> all = new ArrayList<>();
        if (tie.strap().isEmpty()) {
            all.add(new Missing("what a strap itself holds", "ask its maker and enter 'strap holds'"));
        }
        if (tie.member().kind() == Rail.Kind.BOARD) {
            all.add(new Missing(
                    "what a screw holds in " + tie.member().name() + " when it is jerked",
                    "fix the tie to solid wood or to plywood"));
        }
        if (tie.stud() instanceof SteelStud steel && steel.mils() < SteelStud.THICK_ENOUGH) {
            all.add(new Missing(
                    "whether so thin a steel stud bends or crushes, and stays in its track",
                    "tie it to wood blocking or a plywood backing, and enter that"));
        }
        if (tie.screw() instanceof DeclaredAnchor anchor
                && tie.stud() instanceof Masonry wall
                && anchor.in() != wall.kind()) {
            all.add(new Missing(
                    "what the anchor holds in " + wall.name(),
                    "its values are for " + anchor.in().word() + ": ask its maker for values in " + wall.name()));
        }
        if (tie.screw() instanceof DeclaredAnchor && earthquake.isPresent()) {
            all.add(new Missing(
                    "whether the anchor holds in cracked walls in an earthquake",
                    "have a licensed professional choose the anchors"));
        }
        return all;
    }

    /** A longer screw in the wall if that is all it lacks, else more ties. */
    private List<Remedy> cures() {
        List<Remedy> all = new ArrayList<>();
        for (Length longer : tie.screw().shopLengths()) {
            if (longer.compareTo(tie.length()) > 0 && all.isEmpty()) {
                add(
                        new TiedBack(piece, tie.length(longer), peopleFactor, earthquake, in),
                        all,
                        Words.of("Use screws {} long in the wall.", longer));
            }
        }
        for (int n = tie.count() + 1; n <= MOST; n++) {
            if (add(
                    new TiedBack(piece, tie.count(n), peopleFactor, earthquake, in),
                    all,
                    Words.of("Use {} ties, each into a stud of its own.", Amount.count(n)))) {
                break;
            }
        }
        return List.copyOf(all);
    }

    private static boolean add(TiedBack then, List<Remedy> all, Words words) {
        boolean holds = then.answer().checks().stream().allMatch(Check::holds);
        if (holds) {
            all.add(new Remedy(words, then));
        }
        return holds;
    }
}
