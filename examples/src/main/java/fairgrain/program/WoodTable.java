package fairgrain.program;

import fairgrain.material.Shrinkage;
import fairgrain.material.ShrinkageCoefficient;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.quantity.UnitSystem;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/** Woods side by side: how much they move, how stiff they are, what they weigh. What is not known stands last. */
final class WoodTable {
    private static final double INCHES_IN_A_FOOT = 12;
    private static final double MILLIMETRES_IN_A_METRE = 1000;
    private static final double PA_PER_GPA = 1e9;
    private static final double PA_PER_MILLION_PSI = 6.894757293168e9;
    private static final double KG_PER_M3_IN_LB_PER_FT3 = 16.018463;
    private static final double SHOP_MOISTURE = 0.12;

    /** What woods are put in order by. */
    enum Order {
        /** Least movement first. */
        MOVEMENT,
        /** Stiffest first. */
        STIFFNESS,
        /** Lightest first. */
        WEIGHT;

        List<Wood> of(List<Wood> woods) {
            List<Wood> ordered = new ArrayList<>(woods);
            ordered.sort(Comparator.comparingDouble(this::rank));
            return ordered;
        }

        private double rank(Wood wood) {
            OptionalDouble figure = switch (this) {
                case MOVEMENT -> tangential(wood);
                case STIFFNESS -> elasticity(wood);
                case WEIGHT -> density(wood);
            };
            double upwards = figure.orElse(Double.POSITIVE_INFINITY);
            return this == STIFFNESS && figure.isPresent() ? -upwards : upwards;
        }
    }

    private WoodTable() {}

    /** One line a wood, under a heading. */
    static List<String> lines(List<Wood> woods, UnitSystem units) {
        boolean inches = units == UnitSystem.INCHES;
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("", "flatsawn", "quartersawn", "stiffness", "weight"));
        rows.add(
                inches
                        ? List.of("", "in in a foot", "in in a foot", "million psi", "lb/ft3")
                        : List.of("", "mm in a metre", "mm in a metre", "GPa", "kg/m3"));
        double span = inches ? INCHES_IN_A_FOOT : MILLIMETRES_IN_A_METRE;
        int places = inches ? 3 : 1;
        for (Wood wood : woods) {
            rows.add(List.of(
                    wood.name(),
                    text(tangential(wood), 1 / span, places),
                    text(radial(wood), 1 / span, places),
                    text(elasticity(wood), inches ? PA_PER_MILLION_PSI : PA_PER_GPA, inches ? 2 : 1),
                    text(density(wood), inches ? KG_PER_M3_IN_LB_PER_FT3 : 1, 0)));
        }
        return aligned(rows);
    }

    private static List<String> aligned(List<List<String>> rows) {
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < row.size(); i++) {
                int column = i;
                int width = rows.stream()
                        .mapToInt(r -> r.get(column).length())
                        .max()
                        .orElse(0);
                String blanks = " ".repeat(width - row.get(i).length());
                line.append(i == 0 ? row.get(i) + blanks : "  " + blanks + row.get(i));
            }
            lines.add(line.toString());
        }
        return lines;
    }

    private static OptionalDouble tangential(Wood wood) {
        Shrinkage shrinkage = wood.shrinkage();
        return shrinkage == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(ShrinkageCoefficient.of(shrinkage.tangential(), shrinkage.start()));
    }

    private static OptionalDouble radial(Wood wood) {
        Shrinkage shrinkage = wood.shrinkage();
        return shrinkage == null
                ? OptionalDouble.empty()
                : OptionalDouble.of(ShrinkageCoefficient.of(shrinkage.radial(), shrinkage.start()));
    }

    private static OptionalDouble elasticity(Wood wood) {
        Strength strength = wood.strength();
        Double elasticity = strength == null ? null : strength.elasticity();
        return elasticity == null ? OptionalDouble.empty() : OptionalDouble.of(elasticity);
    }

    private static OptionalDouble density(Wood wood) {
        SpecificGravity gravity = wood.gravity();
        return gravity == null ? OptionalDouble.empty() : OptionalDouble.of(gravity.density(SHOP_MOISTURE));
    }

    private static String text(OptionalDouble value, double unit, int places) {
        return value.isEmpty()
                ? "not known"
                : BigDecimal.valueOf(value.getAsDouble() / unit)
                        .setScale(places, RoundingMode.HALF_EVEN)
                        .toPlainString();
    }
}
