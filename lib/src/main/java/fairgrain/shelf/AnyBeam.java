package fairgrain.shelf;

import fairgrain.bending.BeamLoad;
import fairgrain.bending.BeamReaction;
import fairgrain.bending.BeamResponse;
import fairgrain.bending.BeamStretch;
import fairgrain.bending.BeamSupport;
import fairgrain.bending.BendingStress;
import fairgrain.bending.GeneralBeam;
import fairgrain.bending.PlateLoad;
import fairgrain.bending.RectangularSection;
import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import java.util.ArrayList;
import java.util.List;

/** One board on any supports under the whole depth: several bays, overhangs, part-filled. */
final class AnyBeam implements Bends {
    static final Citation SPOTS =
            Citation.of("own", "spots on a beam: sag twice and stress three times that of the beam", Basis.JUDGEMENT);

    /** A load at the front edge sags a board 1.93 times as much as the beam, and strains it two to three times as much. */
    static final double SPOT_SAG = 2;

    static final double SPOT_STRESS = 3;

    private final Supports supports;
    private final double depth;
    private final double modulus;
    private final List<BeamStretch> stretches;
    private final List<BeamSupport> stands = new ArrayList<>();

    AnyBeam(ShelfSag shelf) {
        supports = shelf.supports();
        depth = shelf.depth().metres();
        double t = shelf.thickness().metres();
        modulus = RectangularSection.sectionModulus(depth, t);
        double stiffness = shelf.stock().elasticity() * RectangularSection.secondMoment(depth, t);
        stretches = List.of(BeamStretch.withoutShear(supports.length(), stiffness));
        for (double at : supports.stands()) {
            stands.add(BeamSupport.pin(supports.left().metres() + at));
        }
    }

    @Override
    public Sags under(List<PlateLoad> loads) {
        return sags(solve(loads, SPOT_SAG));
    }

    @Override
    public Strains strains(List<PlateLoad> loads) {
        return strains(solve(loads, SPOT_STRESS), solve(loads, 1));
    }

    @Override
    public Bent bent(List<PlateLoad> loads) {
        if (loads.stream().anyMatch(load -> load.width() < depth)) {
            return Bends.super.bent(loads);
        }
        BeamResponse response = solve(loads, 1);
        return new Bent(sags(response), strains(response, response));
    }

    private Sags sags(BeamResponse response) {
        double from = supports.left().metres();
        double to = from + supports.span().metres();
        double sag = ShelfSag.PLATE_FACTOR
                * Math.max(0, response.largestSagBetween(from, to).value());
        double tip = Math.max(response.deflection(0), response.deflection(supports.length()));
        return new Sags(sag, sag, sag, sag, supports.overhang() > 0 ? ShelfSag.PLATE_FACTOR * Math.max(0, tip) : 0);
    }

    private Strains strains(BeamResponse response, BeamResponse plain) {
        double stress = BendingStress.bending(response.largestMoment().value(), modulus);
        List<BeamReaction> reactions = plain.reactions();
        double all = 0;
        double least = Double.POSITIVE_INFINITY;
        for (BeamReaction reaction : reactions) {
            all += reaction.force();
            least = Math.min(least, reaction.force());
        }
        double inner = reactions.subList(1, reactions.size() - 1).stream()
                .mapToDouble(BeamReaction::force)
                .max()
                .orElse(0);
        double end = Math.max(
                reactions.get(0).force(), reactions.get(reactions.size() - 1).force());
        return new Strains(stress, 0, 0, Math.abs(plain.largestShear().value()), end, all, inner, least);
    }

    private BeamResponse solve(List<PlateLoad> loads, double spots) {
        List<BeamLoad> on = new ArrayList<>();
        for (PlateLoad load : loads) {
            double force = load.force() * (load.width() < depth ? spots : 1);
            double from = Math.max(0, load.x() - load.length() / 2);
            on.add(BeamLoad.Line.uniform(from, load.x() + load.length() / 2, force / load.length()));
        }
        return GeneralBeam.solve(stretches, stands, on);
    }
}
