package fairgrain.hanging;

import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.finding.Check;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** Distances of screws from edges and from each other, where they are known. */
final class FixingPlaces {
    private FixingPlaces() {}

    static List<Check> checks(Fixing fixing, Stud stud) {
        List<Check> all = new ArrayList<>();
        double d = fixing.screw().diameter().metres();
        if (stud instanceof WoodStud wood && d >= EdgeAndSpacing.LARGE && !hasEdge(fixing.screw())) {
            all.add(length(
                    "least distance from the edge of the stud, against what is left if it is 6 mm off centre",
                    EdgeAndSpacing.largeEdge(d, wood.level()),
                    EdgeAndSpacing.studEdge(wood.width().metres())));
        }
        if (stud instanceof WoodStud wood && fixing.screw() instanceof DeclaredScrew declared) {
            declared.edge()
                    .ifPresent(edge -> all.add(length(
                            "least distance from the edge of the stud by the maker of the screw, against what is left"
                                    + " if it is 6 mm off centre",
                            edge.metres(),
                            EdgeAndSpacing.studEdge(wood.width().metres()))));
        }
        if (fixing.screw() instanceof DeclaredAnchor anchor && fixing.studs().size() > 1) {
            double nearest = Double.MAX_VALUE;
            for (int i = 1; i < fixing.studs().size(); i++) {
                nearest = Math.min(
                        nearest,
                        fixing.studs().get(i).minus(fixing.studs().get(i - 1)).metres());
            }
            all.add(length(
                    "least distance between anchors along the wall, against theirs",
                    anchor.apart().metres(),
                    nearest));
        }
        double apart = leastApart(fixing.screw(), stud);
        fixing.rows().stream()
                .filter(row -> row.perStud() > 1)
                .flatMap(row -> row.apart().stream())
                .forEach(is ->
                        all.add(length("least distance between screws in a stud, against theirs", apart, is.metres())));
        return List.copyOf(all);
    }

    /** Between screws one above the other: along the grain of an upright stud, across that of blocking [m]. */
    static double leastApart(HangingScrew screw, Stud stud) {
        double d = screw.diameter().metres();
        if (screw instanceof DeclaredAnchor anchor) {
            return anchor.apart().metres();
        }
        if (d >= EdgeAndSpacing.LARGE) {
            return EdgeAndSpacing.largeSpacing(d);
        }
        return stud instanceof WoodStud wood && !wood.level()
                ? EdgeAndSpacing.smallAlongGrain(d, true)
                : EdgeAndSpacing.smallAcrossGrain(d, true);
    }

    /** A maker's own edge distance stands in place of the rule. */
    static boolean hasEdge(HangingScrew screw) {
        return screw instanceof DeclaredScrew declared && declared.edge().isPresent();
    }

    private static Check length(String what, double least, double there) {
        return Check.of(what, least, there, Dimension.LENGTH);
    }

    static Length leastApartLength(Fixing fixing, Stud stud) {
        return new Length(leastApart(fixing.screw(), stud));
    }
}
