package fairgrain.design;

import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the screws go into; linings and end grain are refused with the reason. */
final class IntoKind implements Kind<IntoKind.Into> {
    private static final String INSTEAD = "; find studs, or have blocking or a plywood backing put in";

    private final Kind<Into> kind = Kinds.choice(List.of(Into.values()), Into::word);

    /** Wood that a screw may go into. */
    enum Into {
        STUDS("studs"),
        BLOCKING("blocking"),
        BACKING("plywood backing");

        private final String word;

        Into(String word) {
            this.word = word;
        }

        String word() {
            return word;
        }
    }

    @Override
    public @Nullable Into read(Node node, Reading in) {
        if (node instanceof Node.Scalar scalar) {
            String text = scalar.text().toLowerCase(Locale.ROOT);
            if (text.contains("end grain")) {
                in.refuse(node, "must not be end grain: a screw in end grain holds no pull" + INSTEAD);
                return null;
            }
            if (text.matches(".*(drywall|gypsum|plaster|tile|lath|wall ?board|board alone).*")) {
                in.refuse(node, "must not be " + scalar.text().strip() + " alone: it holds no cabinet" + INSTEAD);
                return null;
            }
            if (text.matches(".*(mdf|particleboard|chipboard|osb).*")) {
                in.refuse(
                        node,
                        "must not be particleboard, OSB or MDF: no figure is known for a screw loaded sideways in it"
                                + INSTEAD);
                return null;
            }
        }
        return kind.read(node, in);
    }

    @Override
    public String says() {
        return kind.says();
    }

    @Override
    public Map<String, Object> schema() {
        return kind.schema();
    }

    @Override
    public String example() {
        return kind.example();
    }
}
