package fairgrain.material;

/**
 * Size across the grain against moisture content, one curve for one wood and one direction. Going from a to b to c along it
 * equals going from a to c.
 */
@FunctionalInterface
public interface Curve {
    /**
     * Size at a moisture content over the green size.
     *
     * @param moisture moisture content; 0.09 for 9 % [fraction]
     * @return 1 at and above the start of shrinkage, less below [ratio]
     */
    double at(double moisture);
}
