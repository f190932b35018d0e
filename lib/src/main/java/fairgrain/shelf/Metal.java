package fairgrain.shelf;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;

/** What pins and rods are made of. The yield stress is that of the softest sort sold under the name. */
public enum Metal {
    STEEL("steel", 235e6, 200e9),
    STAINLESS_STEEL("stainless steel", 210e6, 190e9),
    BRASS("brass", 120e6, 100e9);

    public static final Citation SOURCE =
            Citation.of("own", "least yield stress and stiffness of common bar metals", Basis.MEMORY);

    private final String word;
    private final double yield;
    private final double elasticity;

    Metal(String word, double yield, double elasticity) {
        this.word = word;
        this.yield = yield;
        this.elasticity = elasticity;
    }

    /** As it is written in a design. */
    public String word() {
        return word;
    }

    /** Yield stress [Pa]. */
    double yieldStress() {
        return yield;
    }

    /** Modulus of elasticity [Pa]. */
    double elasticity() {
        return elasticity;
    }
}
