package fairgrain.hanging;

import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.PilotHole;
import fairgrain.finding.Finding;
import fairgrain.quantity.Length;
import java.util.List;

/** What to mark on the wall, from the lower left corner of the cabinet, and what to bore. */
final class HangingSizes {
    private HangingSizes() {}

    static void add(Finding.Draft draft, Hanging hanging) {
        Fixing fixing = hanging.fixing();
        List<Row> rows = fixing.rows();
        draft.size(
                "lowest screws above the lower edge", rows.get(rows.size() - 1).height());
        for (int i = 0; i < rows.size() - 1; i++) {
            draft.size(
                    "row " + (i + 1) + " of screws above the lower edge",
                    rows.get(i).height());
        }
        String place = hanging.stud() instanceof Masonry ? "anchor " : "stud ";
        int number = 0;
        for (Length stud : fixing.studs()) {
            number++;
            draft.size(place + number + " from the left end", stud);
        }
        if (hanging.stud() instanceof SteelStud) {
            return;
        }
        if (fixing.screw() instanceof DeclaredAnchor anchor) {
            draft.size("anchors reach into the wall itself at least", anchor.embedment())
                    .size("anchors at least so far apart", hanging.in().rule().up(anchor.apart()))
                    .size("washer under each head at least", anchor.washer());
            return;
        }
        if (fixing.screw() instanceof Screw screw) {
            draft.size(
                    "pilot hole in the stud at most",
                    pilot(screw, hanging.stud().gravity().orElseThrow()));
            draft.size(
                    "hole in the rail for the shank", shank(screw, fixing.rail().gravity()));
        }
        draft.size("screws reach into the stud", hanging.hold().point());
        if (fixing.rows().stream().anyMatch(row -> row.perStud() > 1)) {
            draft.size(
                    "screws in one stud at least so far apart",
                    hanging.in().rule().up(FixingPlaces.leastApartLength(fixing, hanging.stud())));
        }
        draft.size(
                "screws from the end of the rail at least",
                hanging.in().rule().up(new Length(StudPattern.endDistance(fixing.screw()))));
    }

    /** Pulled and loaded sideways at once: the smaller hole, which keeps the thread. */
    static Length pilot(Screw screw, double gravity) {
        if (screw.lag()) {
            return new Length(
                    PilotHole.lagScrewThread(gravity, screw.diameter().metres()).most());
        }
        double sideways = PilotHole.sidewaysWoodScrew(gravity, screw.root().metres());
        double pulled = PilotHole.pulledWoodScrew(gravity, screw.root().metres());
        return new Length(pulled > 0 ? Math.min(pulled, sideways) : sideways);
    }

    private static Length shank(Screw screw, double railGravity) {
        return screw.lag() || screw.diameter().metres() >= EdgeAndSpacing.LARGE
                ? screw.diameter()
                : new Length(PilotHole.sidewaysWoodScrew(
                        railGravity, screw.diameter().metres()));
    }
}
