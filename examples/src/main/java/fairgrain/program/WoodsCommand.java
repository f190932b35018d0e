package fairgrain.program;

import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.Shrinkage;
import fairgrain.material.ShrinkageCoefficient;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.material.Woods;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

@Command(
        name = "woods",
        mixinStandardHelpOptions = true,
        description = "Looks a wood up by any name it goes by, and shows its figures with their sources.",
        footer = {"", "Example: fairgrain woods black walnut"})
final class WoodsCommand implements Callable<Integer> {
    private final PrintStream out;
    private final PrintStream err;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Parameters(arity = "1..*", paramLabel = "NAME", description = "A common, trade or scientific name.")
    private List<String> words = new ArrayList<>();

    WoodsCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        String name = String.join(" ", words);
        Woods woods = tables.catalog().woods();
        List<Wood> found = woods.find(name);
        if (found.isEmpty()) {
            List<String> near = woods.nearest(name);
            err.println("No wood is called '" + name + "'."
                    + (near.isEmpty() ? "" : " Did you mean " + String.join(", ", near) + "?"));
            return Exit.WRONG;
        }
        if (found.size() > 1) {
            out.println("'" + name + "' could be any of these; ask for one of them:");
            found.forEach(
                    wood -> out.println("  " + wood.name() + " (" + wood.names().scientific() + ")"));
            return Exit.HOLDS;
        }
        show(found.get(0));
        return Exit.HOLDS;
    }

    private void show(Wood wood) {
        out.println(wood.name() + ", " + wood.names().scientific());
        if (!wood.names().trade().isEmpty()) {
            out.println("  also called " + String.join(", ", wood.names().trade()));
        }
        Shrinkage shrinkage = wood.shrinkage();
        if (shrinkage == null) {
            out.println("  shrinkage: not known, so its movement cannot be judged");
        } else {
            out.println("  shrinkage, green to oven-dry: " + percent(shrinkage.tangential()) + " flatsawn, "
                    + percent(shrinkage.radial()) + " quartersawn, from "
                    + percent(shrinkage.start()) + " moisture content down");
            out.println("  a flatsawn foot moves "
                    + rounded(12 * ShrinkageCoefficient.of(shrinkage.tangential(), shrinkage.start()), 3)
                    + " in (a metre "
                    + rounded(1000 * ShrinkageCoefficient.of(shrinkage.tangential(), shrinkage.start()), 1)
                    + " mm) for each 1 % of moisture content");
            sources(shrinkage.evidence());
        }
        SpecificGravity gravity = wood.gravity();
        if (gravity != null) {
            out.println("  density at 12 %: " + rounded(gravity.density(0.12), 0) + " kg/m3; printed as "
                    + rounded(gravity.value(), 2) + ", " + gravity.basis().words());
        }
        Strength strength = wood.strength();
        if (strength == null) {
            out.println("  strength and stiffness: not known");
        } else {
            out.println("  small clear pieces: stiffness " + scaled(strength.elasticity(), 1e9, 1)
                    + " GPa, bending strength " + scaled(strength.rupture(), 1e6, 0) + " MPa");
            sources(strength.evidence());
        }
        if (!wood.note().isEmpty()) {
            out.println("  note: " + wood.note());
        }
    }

    private void sources(Evidence evidence) {
        out.println("    from "
                + String.join(
                        "; ",
                        evidence.sources().stream().map(Citation::toString).toList()));
    }

    private static String percent(double fraction) {
        return rounded(100 * fraction, 1) + " %";
    }

    private static String scaled(@Nullable Double value, double unit, int places) {
        return value == null ? "not known" : rounded(value / unit, places);
    }

    private static String rounded(double value, int places) {
        return BigDecimal.valueOf(value)
                .setScale(places, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
