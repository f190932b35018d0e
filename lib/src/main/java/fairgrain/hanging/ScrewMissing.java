package fairgrain.hanging;

import fairgrain.fastener.HeadPullThrough;
import fairgrain.finding.Missing;
import fairgrain.quantity.Length;
import java.util.List;

/** What is not known of a screw: when its head pulls through, and what its maker did not declare. */
final class ScrewMissing {
    private ScrewMissing() {}

    static void head(List<Missing> all, HangingScrew screw, Rail rail) {
        if (rail.kind() == Rail.Kind.BOARD) {
            all.add(new Missing(
                    "when a head pulls through " + rail.name(),
                    "use a rail of solid wood or plywood, or put a strip of wood under the heads"));
        } else if (!(screw instanceof DeclaredScrew)
                && !HeadPullThrough.isInStatedRange(
                        screw instanceof DeclaredAnchor anchor
                                ? Math.min(
                                        DeclaredAnchor.WIDEST_COUNTED,
                                        anchor.washer().metres())
                                : ((Screw) screw).head().metres(),
                        rail.thickness().metres())) {
            all.add(new Missing(
                    "whether the heads pull through a rail so thin or so thick",
                    "use a rail from 5/16 to 1 1/2 in (8 to 38 mm) thick under round heads or washers"));
        }
    }

    /** Of an anchor in such a wall. */
    static void anchor(List<Missing> all, DeclaredAnchor anchor, Masonry wall, Hanging hanging) {
        if (anchor.in() != wall.kind()) {
            all.add(new Missing(
                    "what the anchor holds in " + wall.name(),
                    "its values are for " + anchor.in().word() + ": ask its maker for values in " + wall.name()));
        }
        if (hanging.gap().compareTo(anchor.acrossGap()) > 0) {
            all.add(new Missing(
                    "what the anchor holds sideways across what lies between rail and wall",
                    "ask its maker for a value across such a gap, or cut the lining away under the rail"));
        }
        if (hanging.cases().earthquake().isPresent()) {
            all.add(new Missing(
                    "whether the anchor holds in cracked walls in an earthquake",
                    "have a licensed professional choose the anchors"));
        }
    }

    /** Of a screw with values of its maker, in such wood, across such a gap. */
    static void declared(List<Missing> all, HangingScrew screw, Stud stud, Length gap) {
        if (!(screw instanceof DeclaredScrew declared)) {
            return;
        }
        if (stud.gravity().orElse(0) < declared.leastGravity()) {
            all.add(new Missing(
                    "what the screw holds in wood as light as " + stud.name(),
                    "ask its maker for values in such wood, or take a screw of the table"));
        }
        if (gap.compareTo(declared.acrossGap()) > 0) {
            all.add(new Missing(
                    "what the screw holds sideways across what lies between rail and stud",
                    "ask its maker for a value across such a gap, or let the rail in so that it lies on the studs"));
        }
        if (declared.pullThrough().isEmpty()) {
            all.add(new Missing(
                    "the pull at which its head goes through the rail", "ask its maker and enter 'pull through'"));
        }
    }
}
