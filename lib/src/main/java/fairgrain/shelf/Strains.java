package fairgrain.shelf;

/**
 * How hard a shelf is strained by one set of loads.
 *
 * @param board largest bending stress in the board [Pa]
 * @param front largest bending stress in the front strip; 0 without one [Pa]
 * @param back largest bending stress in the back strip; 0 without one [Pa]
 * @param shear largest shear force [N]
 * @param end larger force on an end support [N]
 * @param all of the load [N]
 * @param inner largest force on a middle support or a bracket; 0 without one [N]
 * @param least smallest force on a support; below nothing the shelf lifts there [N]
 */
record Strains(
        double board, double front, double back, double shear, double end, double all, double inner, double least) {
    Strains times(double factor) {
        return new Strains(
                factor * board,
                factor * front,
                factor * back,
                factor * shear,
                factor * end,
                factor * all,
                factor * inner,
                factor * least);
    }
}
