package fairgrain.design;

import fairgrain.finding.Caution;
import fairgrain.finding.Missing;
import fairgrain.finding.Question;
import fairgrain.finding.Unasked;
import fairgrain.material.Glass;
import fairgrain.quantity.Length;
import fairgrain.shelf.GlassRest;
import fairgrain.shelf.GlassShelf;
import fairgrain.shelf.GlassUse;
import fairgrain.shelf.ShelfLoad;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;

/**
 * Glass shelves that are alike, as far as was said.
 *
 * @param glass empty if its kind or its edges are not known
 * @param rest empty if it was not said where it lies
 * @param cut whether they have holes or notches
 * @param missing what was not said
 */
public record GlassShelves(
        String name,
        int count,
        Optional<Glass> glass,
        Length thickness,
        Length span,
        Length depth,
        Optional<GlassRest> rest,
        GlassUse use,
        boolean cut,
        List<Missing> missing)
        implements Weighs {
    private static final double DENSITY = 2500; // kg/m3, all window glass
    private static final double LIES_ON = 0.012; // m at each end, where it was not said

    public GlassShelves {
        missing = List.copyOf(missing);
    }

    @Override
    public List<Question<?>> questions(Design design) {
        if (glass.isEmpty() || rest.isEmpty()) {
            return List.of(new Unasked(
                    name,
                    "does the glass hold",
                    new ArrayList<>(missing),
                    use.load().evidence(),
                    EnumSet.of(Caution.GLASS, Caution.SHARDS, Caution.ASSUMED_CONTENTS, Caution.SHELF_IN_USE)));
        }
        return List.of(new GlassShelf(name, glass.get(), thickness, cut, rest.get(), use, design.setting()));
    }

    @Override
    public GlassShelves loaded(double times) {
        return new GlassShelves(name, count, glass, thickness, span, depth, rest, use.times(times), cut, missing);
    }

    @Override
    public double mass() {
        int plies = glass.map(Glass::plies).orElse(1);
        double length = span.metres() + rest.map(r -> r.bearing().metres()).orElse(LIES_ON);
        return plies * DENSITY * thickness.metres() * depth.metres() * length;
    }

    @Override
    public ShelfLoad load() {
        return use.load();
    }
}
