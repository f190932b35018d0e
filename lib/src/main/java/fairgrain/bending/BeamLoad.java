package fairgrain.bending;

import fairgrain.quantity.Require;

/** What a beam carries. Forces count downwards; a negative one lifts. */
public sealed interface BeamLoad {
    /** Where the load begins [m]. */
    double from();

    /** Where the load ends [m]. */
    double to();

    /**
     * The same load, so many times as large.
     *
     * @param factor how many times [-]
     * @return the load [-]
     */
    BeamLoad times(double factor);

    /**
     * A force at one place.
     *
     * @param at position from the left end of the beam [m]
     * @param force downwards [N]
     */
    record Point(double at, double force) implements BeamLoad {
        public Point {
            position(at);
            Require.between("load", force, -1e7, 1e7, "N");
        }

        @Override
        public double from() {
            return at;
        }

        @Override
        public double to() {
            return at;
        }

        @Override
        public BeamLoad times(double factor) {
            return new Point(at, factor * force);
        }
    }

    /**
     * A turning moment at one place.
     *
     * @param at position from the left end of the beam [m]
     * @param moment clockwise, with the beam seen from the side and its left end at the left [N·m]
     */
    record Couple(double at, double moment) implements BeamLoad {
        public Couple {
            position(at);
            Require.between("turning moment", moment, -1e7, 1e7, "N m");
        }

        @Override
        public double from() {
            return at;
        }

        @Override
        public double to() {
            return at;
        }

        @Override
        public BeamLoad times(double factor) {
            return new Couple(at, factor * moment);
        }
    }

    /**
     * A load spread along a part of the beam, changing steadily from one value to another.
     *
     * @param from where it begins, from the left end of the beam [m]
     * @param to where it ends [m]
     * @param atFrom load per length at the beginning, downwards [N/m]
     * @param atTo load per length at the end, downwards [N/m]
     */
    record Line(double from, double to, double atFrom, double atTo) implements BeamLoad {
        public Line {
            position(from);
            position(to);
            if (!(to > from)) {
                throw new IllegalArgumentException(
                        "a load along the beam must end to the right of where it begins, but runs from " + from + " to "
                                + to + " m");
            }
            Require.between("load per length", atFrom, -1e7, 1e7, "N/m");
            Require.between("load per length", atTo, -1e7, 1e7, "N/m");
        }

        /** The same all along. */
        public static Line uniform(double from, double to, double perLength) {
            return new Line(from, to, perLength, perLength);
        }

        @Override
        public BeamLoad times(double factor) {
            return new Line(from, to, factor * atFrom, factor * atTo);
        }

        double steepness() {
            return (atTo - atFrom) / (to - from);
        }

        double at(double x) {
            return atFrom + steepness() * (x - from);
        }
    }

    private static void position(double x) {
        Require.between("position of the load", x, 0, 100, "m");
    }
}
