package fairgrain.moisture;

/** How the diffusivity of a slab goes with its moisture content. Asked often: keep it quick and without side effects. */
@FunctionalInterface
public interface Diffusivity {
    /**
     * Diffusivity at a moisture content.
     *
     * @param moisture M, as a fraction; may lie a little beyond the moistures of the air [-]
     * @return D, above zero [m²/s]
     */
    double at(double moisture);
}
