package fairgrain.entry;

import fairgrain.design.ScrewsInto;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** What the screws go into; linings and end grain are refused with the reason. */
final class IntoKind implements Kind<ScrewsInto> {
    private static final String INSTEAD = "; find studs, or have blocking or a plywood backing put in";

    private final Kind<ScrewsInto> kind = Kinds.choice(List.of(ScrewsInto.values()), ScrewsInto::word);

    @Override
    public @Nullable ScrewsInto read(Node node, Reading in) {
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
