package fairgrain.sheet;

import static fairgrain.form.Given.block;
import static fairgrain.form.Given.blocks;
import static fairgrain.form.Given.in;

import fairgrain.design.Design;
import fairgrain.design.Review;
import fairgrain.entry.Catalog;
import fairgrain.entry.DesignForm;
import fairgrain.form.Given;
import fairgrain.form.Reading;
import java.util.List;
import java.util.Objects;

/** Reviews to write down. */
final class Sheets {
    static final Catalog CATALOG = Catalog.shipped();

    private Sheets() {}

    /** A door, a shelf and a wall of which little is known. */
    static Review review(String name) {
        return review(name, "yes");
    }

    static Review review(String name, String pinned) {
        Reading in = Given.inInches();
        Design design = new DesignForm(CATALOG)
                .design(
                        block(
                                "name", name,
                                "units", "inches",
                                "place", in("climate", "weekend cabin"),
                                "cutting", in("moisture", "9 %"),
                                "panels",
                                        blocks(in(
                                                "name",
                                                name + ", panel",
                                                "between stiles",
                                                "10 3/4",
                                                "groove",
                                                in("depth", "7/16", "width", "1/4"),
                                                "panel",
                                                in(
                                                        "wood", "white oak",
                                                        "sawn", "quarter",
                                                        "thickness", "1/2",
                                                        "tongue", in("thickness", "0.23", "length", "1/2"),
                                                        "pinned at centre", pinned))),
                                "shelves",
                                        blocks(in(
                                                "name", "shelf",
                                                "material", "white ash",
                                                "span", "30",
                                                "depth", "10",
                                                "thickness", "7/8",
                                                "load", "books")),
                                "wall", in("stud", "spruce-pine-fir")),
                        in);
        if (design == null) {
            throw new AssertionError(in.problems().stream().map(p -> p.text()).toList());
        }
        return Review.of(Objects.requireNonNull(design));
    }

    static List<Block> sheet(Review review) {
        return Blocks.of(review, review.design().setting().rule(), CATALOG.sources());
    }
}
