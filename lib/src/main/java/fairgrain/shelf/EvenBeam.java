package fairgrain.shelf;

import fairgrain.bending.BendingStress;
import fairgrain.bending.PlateLoad;
import fairgrain.bending.RectangularSection;
import fairgrain.bending.UniformLoad;
import java.util.List;

/** One board on two ends, loaded evenly all along. */
final class EvenBeam implements Bends {
    private final double span;
    private final double elasticity;
    private final double secondMoment;
    private final double modulus;

    EvenBeam(ShelfSag shelf) {
        double b = shelf.depth().metres();
        double t = shelf.thickness().metres();
        span = shelf.span().metres();
        elasticity = shelf.stock().elasticity();
        secondMoment = RectangularSection.secondMoment(b, t);
        modulus = RectangularSection.sectionModulus(b, t);
    }

    @Override
    public Sags under(List<PlateLoad> loads) {
        double sag = ShelfSag.PLATE_FACTOR * UniformLoad.deflection(perLength(loads), span, elasticity, secondMoment);
        return new Sags(sag, sag, sag, sag, 0);
    }

    @Override
    public Strains strains(List<PlateLoad> loads) {
        double w = perLength(loads);
        double stress = BendingStress.bending(UniformLoad.largestMoment(UniformLoad.Ends.SIMPLE, w, span), modulus);
        double end = UniformLoad.reaction(w, span);
        return new Strains(stress, 0, 0, end, end, 2 * end, 0, end);
    }

    private double perLength(List<PlateLoad> loads) {
        double all = 0;
        for (PlateLoad load : loads) {
            all += load.force();
        }
        return all / span;
    }
}
