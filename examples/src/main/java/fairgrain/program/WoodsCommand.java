package fairgrain.program;

import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.material.Shrinkage;
import fairgrain.material.ShrinkageCoefficient;
import fairgrain.material.SpecificGravity;
import fairgrain.material.Strength;
import fairgrain.material.Wood;
import fairgrain.material.Woods;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import java.io.PrintStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

@Command(
        name = "woods",
        mixinStandardHelpOptions = true,
        description = "Looks a wood up by any name it goes by, and shows its figures with their sources.",
        footer = {
            "",
            "Examples:",
            "  fairgrain woods black walnut",
            "  fairgrain woods --by movement 'white oak' cherry 'black walnut'",
            "  fairgrain woods --by stiffness"
        })
final class WoodsCommand implements Callable<Integer> {
    private final PrintStream out;
    private final PrintStream err;

    @Mixin
    private OwnTables tables = new OwnTables();

    @Option(
            names = "--by",
            paramLabel = "ORDER",
            description =
                    "Set woods side by side, by movement, stiffness or weight: those named, each name in quotes if it"
                            + " has several words; all of them if none is named.")
    private WoodTable.@Nullable Order by;

    @Mixin
    private Units units = new Units();

    @Parameters(arity = "0..*", paramLabel = "NAME", description = "A common, trade or scientific name.")
    private List<String> words = new ArrayList<>();

    @Spec
    private @Nullable CommandSpec spec;

    WoodsCommand(PrintStream out, PrintStream err) {
        this.out = out;
        this.err = err;
    }

    @Override
    public Integer call() {
        Woods woods = tables.catalog().woods();
        if (by != null) {
            return compare(woods, by);
        }
        if (words.isEmpty() && spec != null) {
            throw new ParameterException(spec.commandLine(), "give the name of a wood, or --by to see them all");
        }
        String name = String.join(" ", words);
        List<Wood> found = woods.find(name);
        if (found.isEmpty()) {
            refuse(woods, name);
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

    private int compare(Woods woods, WoodTable.Order order) {
        List<Wood> chosen = new ArrayList<>();
        boolean wrong = false;
        for (String name : words) {
            List<Wood> found = woods.find(name);
            if (found.isEmpty()) {
                refuse(woods, name);
                wrong = true;
            }
            chosen.addAll(found);
        }
        if (wrong) {
            return Exit.WRONG;
        }
        List<Wood> all =
                words.isEmpty() ? woods.all() : chosen.stream().distinct().toList();
        UnitSystem system = units.or(ShopRule.INCHES).system();
        WoodTable.lines(order.of(all), system).forEach(out::println);
        out.println();
        out.println("""
            Movement is across the grain for each percent of moisture content, in flatsawn
            and in quartersawn boards. Stiffness is that of small clear pieces, weight that
            at 12 %. Where each figure comes from: fairgrain woods NAME\
            """);
        return Exit.HOLDS;
    }

    private void refuse(Woods woods, String name) {
        List<String> near = woods.nearest(name);
        err.println("No wood is called '" + name + "'."
                + (near.isEmpty() ? "" : " Did you mean " + String.join(", ", near) + "?"));
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
