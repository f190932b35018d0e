package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Evidence;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.hanging.DeclaredAnchor;
import fairgrain.hanging.HangingScrew;
import fairgrain.hanging.Layer;
import fairgrain.hanging.Masonry;
import fairgrain.hanging.Rail;
import fairgrain.hanging.StandingPiece;
import fairgrain.hanging.Stud;
import fairgrain.hanging.Tie;
import fairgrain.hanging.TiedBack;
import fairgrain.quantity.Force;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A free-standing piece that is tied back to a wall, as far as it was said.
 *
 * @param piece the piece
 * @param ties how many
 * @param height of them above the floor
 * @param strap what one holds, already divided
 * @param into studs, or masonry
 * @param screw what holds each to the wall
 * @param caseScrew what holds each to the piece
 */
public record TiedPiece(
        StandingPiece piece,
        int ties,
        Length height,
        Optional<Force> strap,
        Optional<Stud> into,
        Optional<List<Layer>> layers,
        Optional<HangingScrew> screw,
        Optional<Length> screwLength,
        HangingScrew caseScrew,
        Length caseScrewLength,
        Material wood,
        Length thickness,
        double peopleFactor,
        OptionalDouble earthquake)
        implements Part {
    @Override
    public String name() {
        return piece.name();
    }

    @Override
    public Workplace where() {
        return Workplace.WALL;
    }

    @Override
    public List<Question<?>> questions(Design design) {
        Optional<Rail> member =
                WallHardware.wood(wood, thickness, Optional.empty(), Optional.empty(), Rail.Held.BOTH_EDGES);
        List<Missing> missing = missing(member);
        if (!missing.isEmpty() || member.isEmpty()) {
            return List.of(new Unasked(
                    name(),
                    TiedBack.QUESTION,
                    missing,
                    Evidence.of(TiedBack.SOURCE),
                    EnumSet.of(
                            Caution.LOCAL_CODE,
                            Caution.STUDS_ONLY,
                            Caution.HIDDEN_SERVICES,
                            Caution.CHILDREN,
                            Caution.EARTHQUAKE)));
        }
        return List.of(new TiedBack(
                piece,
                new Tie(
                        ties,
                        height,
                        strap,
                        screw.orElseThrow(),
                        screwLength.orElseThrow(),
                        into.orElseThrow(),
                        layers.orElseThrow(),
                        caseScrew,
                        caseScrewLength,
                        member.get()),
                peopleFactor,
                earthquake,
                design.setting()));
    }

    private List<Missing> missing(Optional<Rail> member) {
        List<Missing> all = new ArrayList<>();
        Wall.need(
                all,
                into.isPresent(),
                "what it is tied to",
                "read the stamp on a stud and enter 'stud', or enter 'wall' as concrete or masonry");
        Wall.need(
                all,
                layers.isPresent(),
                "what lies between tie and stud",
                "bore a pilot hole, feel with a bent wire where the wood begins, and enter the depth as 'wall board'"
                        + " (0 if nothing)");
        Wall.need(
                all,
                screw.isPresent(),
                "which screws hold the ties to the wall",
                "enter 'screw', such as No. 10 wood screw, or in masonry 'anchor' with its maker's values");
        Wall.need(all, screwLength.isPresent(), "how long these screws are", "measure one and enter 'screw length'");
        Wall.need(
                all,
                member.isPresent(),
                "how dense the wood of the piece is",
                "choose a wood whose density and its basis are in the table");
        if (into.isPresent() && screw.isPresent()) {
            boolean anchored = screw.get() instanceof DeclaredAnchor;
            boolean masonry = into.get() instanceof Masonry;
            Wall.need(
                    all,
                    anchored == masonry,
                    "what holds in such a wall",
                    "enter 'anchor' with its maker's values for masonry, 'screw' for studs");
        }
        return all;
    }
}
