package fairgrain.program;

import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** How numbers are printed. */
final class Units {
    @Spec(Spec.Target.MIXEE)
    private @Nullable CommandSpec command;

    @Option(
            names = "--units",
            paramLabel = "UNITS",
            description = "Print in inches or millimetres, whatever the design is written in.")
    private @Nullable String units;

    /** What was asked for, or else what the design is written in. */
    ShopRule or(ShopRule own) {
        if (units == null) {
            return own;
        }
        for (UnitSystem system : UnitSystem.values()) {
            if (system.word().equals(units) || system.also().contains(units)) {
                return ShopRule.of(system);
            }
        }
        if (command == null) {
            throw new IllegalStateException("the option was not read by the command line");
        }
        throw new ParameterException(
                command.commandLine(), "--units must be inches or millimetres, but was '" + units + "'");
    }
}
