package fairgrain.entry;

import fairgrain.finding.Basis;
import fairgrain.finding.Citation;
import fairgrain.finding.Evidence;
import fairgrain.form.Kind;
import fairgrain.form.Kinds;
import fairgrain.form.Node;
import fairgrain.form.Reading;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.ShopNumber;
import fairgrain.shelf.Contents;
import fairgrain.shelf.ShelfLoad;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/** What stands on a shelf: contents by kind, a weight in all, or a weight by length. */
final class LoadKind implements Kind<Function<ShelfForm.Sized, ShelfLoad>> {
    private static final double ENTERED_CV = 0.10; // judgement: a weight that somebody wrote down
    private static final Evidence ENTERED = Evidence.of(Citation.of("maker", "load on the shelf", Basis.ENTERED));

    private final Kind<Contents> contents;

    LoadKind(Catalog catalog) {
        contents = Kinds.named("contents", catalog.contentsFinder());
    }

    @Override
    public @Nullable Function<ShelfForm.Sized, ShelfLoad> read(Node node, Reading in) {
        if (node instanceof Node.Scalar scalar
                && !scalar.text().isEmpty()
                && Character.isDigit(scalar.text().strip().codePointAt(0))) {
            return weight(scalar, in);
        }
        Contents found = contents.read(node, in);
        return found == null ? null : sized -> found.on(sized.depth());
    }

    private static @Nullable Function<ShelfForm.Sized, ShelfLoad> weight(Node.Scalar scalar, Reading in) {
        boolean perLength = scalar.text().contains("/");
        boolean perArea = scalar.text().matches(".*(ft2|ft²|m2|m²|psf).*");
        Dimension dimension = perArea ? Dimension.AREA_MASS : perLength ? Dimension.LINE_MASS : Dimension.MASS;
        try {
            double value = ShopNumber.si(scalar.text(), dimension);
            return sized -> {
                double along = switch (dimension) {
                    case AREA_MASS -> value * sized.depth().metres();
                    case MASS -> value / sized.span().metres();
                    default -> value;
                };
                return new ShelfLoad("what you entered", along, along * (1 + ENTERED_CV), ENTERED_CV, ENTERED);
            };
        } catch (IllegalArgumentException e) {
            in.refuse(scalar, String.valueOf(e.getMessage()));
            return null;
        }
    }

    @Override
    public String says() {
        return "contents by kind, such as books, or a weight such as 60 lb, 20 lb/ft or 15 lb/ft2";
    }

    @Override
    public Map<String, Object> schema() {
        return contents.schema();
    }

    @Override
    public String example() {
        return "books";
    }
}
