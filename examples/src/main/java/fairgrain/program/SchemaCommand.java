package fairgrain.program;

import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import java.io.PrintStream;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

@Command(
        name = "schema",
        mixinStandardHelpOptions = true,
        description = {
            "Writes the JSON Schema (2020-12) of a design file: an editor that is given it completes and checks the"
                    + " keys while they are typed.",
            "docs/design.schema.json is the same."
        },
        footer = {"", "Example: fairgrain schema > design.schema.json"})
final class SchemaCommand implements Callable<Integer> {
    private final PrintStream out;

    SchemaCommand(PrintStream out) {
        this.out = out;
    }

    @Override
    public Integer call() {
        out.print(new DesignForm(Catalog.shipped()).jsonSchema());
        return Exit.HOLDS;
    }
}
