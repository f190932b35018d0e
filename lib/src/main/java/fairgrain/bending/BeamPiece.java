package fairgrain.bending;

/**
 * A part of a beam with one section, one straight load line and no force inside, integrated exactly from its left end:
 *
 * <p>V = V₀ − ∫ q dx, M = M₀ + ∫ V dx, θ = θ₀ − ∫ M / (E I) dx, w = w₀ + ∫ (θ + V / (G A′)) dx
 *
 * <p>w counts downwards, θ is the turn of the section with the clock, M sags, V is what the part left of a cut pushes up.
 */
record BeamPiece(
        double start,
        double end,
        double bendingStiffness,
        double shearStiffness,
        double q,
        double steepness,
        double w,
        double theta,
        double moment,
        double shear) {

    double[] shearForces() {
        return new double[] {shear, -q, -steepness / 2};
    }

    double[] moments() {
        return new double[] {moment, shear, -q / 2, -steepness / 6};
    }

    double[] slopes() {
        double c = -1 / bendingStiffness;
        return new double[] {theta, moment * c, shear / 2 * c, -q / 6 * c, -steepness / 24 * c};
    }

    double[] deflections() {
        double c = -1 / bendingStiffness;
        double s = 1 / shearStiffness; // 0 for a beam that does not give in shear
        return new double[] {
            w,
            theta + shear * s,
            moment / 2 * c - q / 2 * s,
            shear / 6 * c - steepness / 6 * s,
            -q / 24 * c,
            -steepness / 120 * c
        };
    }

    double length() {
        return end - start;
    }
}
