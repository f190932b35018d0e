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

    /** A pair of doors in a case on a wall, everything said. */
    static Review cupboard(String name, String hung) {
        return cupboard(name, hung, "door");
    }

    static Review cupboard(String name, String hung, String door) {
        return cupboard(name, hung, door, "25");
    }

    static Review cupboard(String name, String hung, String door, String screws) {
        Reading in = Given.inInches();
        boolean inset = hung.equals("inset");
        Design design = new DesignForm(CATALOG)
                .design(
                        block(
                                "name", name,
                                "units", "inches",
                                "place", in("climate", "weekend cabin"),
                                "cutting", in("moisture", "11.5 %"),
                                "doors",
                                        blocks(in(
                                                "name",
                                                door,
                                                "count",
                                                "2",
                                                "stiles",
                                                in(
                                                        "wood",
                                                        "white oak",
                                                        "sawn",
                                                        "quarter",
                                                        "width",
                                                        "1 3/4",
                                                        "thickness",
                                                        "7/8",
                                                        "length",
                                                        "28 7/8"),
                                                "rails",
                                                in(
                                                        "wood",
                                                        "white oak",
                                                        "sawn",
                                                        "quarter",
                                                        "width",
                                                        "2 1/4",
                                                        "thickness",
                                                        "7/8",
                                                        "between stiles",
                                                        "11 3/8"),
                                                "groove",
                                                in("depth", "7/16", "width", "1/4"),
                                                "panel",
                                                in(
                                                        "wood", "white oak",
                                                        "sawn", "quarter",
                                                        "thickness", "1/2",
                                                        "tongue", in("thickness", "0.23", "length", "1/2"),
                                                        "pinned at centre", "yes"),
                                                "opening",
                                                in("width", inset ? "30" : "14", "height", "29"),
                                                "hung",
                                                hung,
                                                "pair",
                                                inset ? "yes" : "no",
                                                inset ? "hinge leaf" : "overlap",
                                                inset ? "0.09" : "1/2")),
                                "shelves",
                                        blocks(in(
                                                "name", "shelf",
                                                "material", "white ash",
                                                "span", "30",
                                                "depth", "10",
                                                "thickness", "7/8",
                                                "load", "books")),
                                "case",
                                        in(
                                                "material",
                                                "white oak",
                                                "width",
                                                "31 1/2",
                                                "height",
                                                "30 1/2",
                                                "depth",
                                                "11",
                                                "thickness",
                                                "3/4",
                                                "back",
                                                in("material", "birch plywood 6 5 mm along", "thickness", "1/4")),
                                "wall",
                                        in(
                                                "stud",
                                                "spruce-pine-fir",
                                                "studs at",
                                                List.of("8", "24"),
                                                "wall board",
                                                "0",
                                                "rail",
                                                in(
                                                        "wood",
                                                        "yellow-poplar",
                                                        "thickness",
                                                        "3/4",
                                                        "depth",
                                                        "5 1/2",
                                                        "held",
                                                        "both edges"),
                                                "screw",
                                                "1/4 in lag screw",
                                                "screw length",
                                                "3",
                                                "screws in each stud",
                                                "3",
                                                "screws apart",
                                                "1 1/2",
                                                "screws above lower edge",
                                                screws,
                                                "on the bottom",
                                                "books",
                                                "on top",
                                                "nothing")),
                        in);
        if (design == null) {
            throw new AssertionError(in.problems().stream().map(p -> p.text()).toList());
        }
        return Review.of(Objects.requireNonNull(design));
    }

    /** A case and a wall of which nothing is told. */
    static Review onlyACase(String name) {
        Reading in = Given.inInches();
        Design design = new DesignForm(CATALOG)
                .design(
                        block(
                                "name",
                                name,
                                "units",
                                "inches",
                                "case",
                                in(
                                        "material",
                                        "white oak",
                                        "width",
                                        "30",
                                        "height",
                                        "30",
                                        "depth",
                                        "11",
                                        "thickness",
                                        "3/4",
                                        "back",
                                        in("material", "birch plywood 6 5 mm along", "thickness", "1/4")),
                                "wall",
                                in("stud", "spruce-pine-fir")),
                        in);
        return Review.of(Objects.requireNonNull(design));
    }

    static List<Block> sheet(Review review) {
        return Blocks.of(review, review.design().setting().rule(), CATALOG.sources());
    }
}
