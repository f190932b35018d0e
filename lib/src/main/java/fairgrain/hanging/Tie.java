package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.PanelScrew;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ScrewSteel;
import fairgrain.fastener.SteelStudScrew;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import fairgrain.quantity.Require;
import java.util.List;
import java.util.Optional;

/**
 * Straps or brackets that tie a standing piece back to a wall, all alike.
 *
 * @param count how many
 * @param height above the floor
 * @param strap what one holds by its maker's value, already divided; empty if not known
 * @param screw the one that holds each to the wall
 * @param length of it
 * @param stud what it goes into
 * @param layers what lies before that
 * @param caseScrew the one that holds each to the piece
 * @param caseLength of it
 * @param member what that one goes into
 */
public record Tie(
        int count,
        Length height,
        Optional<Force> strap,
        HangingScrew screw,
        Length length,
        Stud stud,
        List<Layer> layers,
        HangingScrew caseScrew,
        Length caseLength,
        Rail member) {
    public static final Limits HEIGHT = new Limits("height of the ties above the floor", 0.3, 4, "m");

    private static final double STRAP = 0.001; // m, of the strap under the head

    public Tie {
        Require.between("number of ties", count, 1, 12, "ties");
        HEIGHT.check(height);
        Fixing.LENGTH.check(length);
        Fixing.LENGTH.check(caseLength);
        layers = List.copyOf(layers);
        if (stud instanceof Masonry != screw instanceof DeclaredAnchor) {
            throw new IllegalArgumentException(
                    "masonry takes anchors with values of their maker, and nothing else takes them");
        }
        if (caseScrew instanceof DeclaredAnchor) {
            throw new IllegalArgumentException("the piece is held by screws, not by anchors");
        }
    }

    /** Pull that the wall holds, in such a time [N]. */
    double wall(double dampest, LoadDuration duration) {
        double before = Layer.gap(layers).metres() + STRAP;
        return pull(screw, length.metres(), stud, before, dampest, duration);
    }

    /** Pull that the piece holds [N]. */
    double piece(double dampest, LoadDuration duration) {
        Stud into = member.kind() == Rail.Kind.SOLID
                ? new WoodStud(
                        "case",
                        member.name(),
                        List.of(),
                        member.gravity(),
                        Length.mm(50),
                        member.thickness(),
                        true,
                        member.evidence())
                : new Backing(member.name(), member.gravity(), member.thickness(), member.evidence());
        return pull(caseScrew, caseLength.metres(), into, STRAP, dampest, duration);
    }

    /** How deep the wall screw reaches, and must at least. */
    Length depth() {
        return new Length(Math.max(0, length.metres() - Layer.gap(layers).metres() - STRAP));
    }

    Length leastDepth() {
        double d = screw.diameter().metres();
        if (screw instanceof DeclaredAnchor anchor) {
            return anchor.embedment();
        }
        return stud instanceof SteelStud steel
                ? steel.sheet().plus(Length.mm(10))
                : new Length((screw.lag() ? Penetration.LAG_SCREW_LEAST : Penetration.WOOD_SCREW_LEAST) * d);
    }

    private static double pull(
            HangingScrew with, double length, Stud into, double before, double dampest, LoadDuration duration) {
        double wet = Adjustment.wetServiceWithdrawal(dampest);
        if (with instanceof DeclaredAnchor anchor) {
            return anchor.tension().newtons() / anchor.factor();
        }
        if (with instanceof DeclaredScrew declared) {
            return declared.withdrawal().newtons() / declared.factor() * wet;
        }
        Screw screw = (Screw) with;
        double d = screw.diameter().metres();
        double steel = ScrewSteel.tension(screw.root().metres(), screw.bendingYield());
        if (into instanceof SteelStud sheet) {
            return Math.min(
                    steel,
                    SteelStudScrew.allowable(
                            SteelStudScrew.pullOut(sheet.sheet().metres(), d, sheet.tensile())));
        }
        double deep = into instanceof WoodStud wood
                ? wood.depth().metres()
                : ((Backing) into).thickness().metres();
        double thread = Penetration.thread(
                length, length * screw.threadShare(), screw.lag() ? screw.tip().metres() : 0, before, deep);
        double g = into.gravity().orElseThrow();
        double reference = into instanceof Backing
                ? (thread <= 0 ? 0 : PanelScrew.plywoodFace(g, d, thread) / PanelScrew.PLYWOOD)
                : thread * (screw.lag() ? ReferenceWithdrawal.lagScrew(g, d) : ReferenceWithdrawal.woodScrew(g, d));
        return Math.min(steel, Adjustment.axial(reference, duration, wet, 1));
    }

    public Tie count(int other) {
        return new Tie(other, height, strap, screw, length, stud, layers, caseScrew, caseLength, member);
    }

    public Tie length(Length other) {
        return new Tie(count, height, strap, screw, other, stud, layers, caseScrew, caseLength, member);
    }
}
