package fairgrain.fixing;

import fairgrain.movement.FastenerSlip;
import fairgrain.quantity.Length;
import fairgrain.quantity.Limits;
import org.jspecify.annotations.Nullable;

/** How one part is held to another. */
public sealed interface Fastening {
    Limits DIAMETER = new Limits("screw diameter", 0.002, 0.015, "m");
    Limits SCREWS = new Limits("screws in a row", 2, 40, "(screws)");
    Limits SLOT = new Limits("slot length", 0.003, 0.08, "m");
    Limits HOLE = new Limits("hole diameter", 0.002, 0.03, "m");
    Limits GLUED = new Limits("glued width", 0.002, 3, "m");

    /** A wood screw of the commonest size, No. 8. */
    Length USUAL_DIAMETER = Length.inches(0.164);

    /**
     * Glued over some width, the rest left to slide.
     *
     * @param width that carries glue
     */
    record Glued(Length width) implements Fastening {
        public Glued {
            GLUED.check(width);
        }
    }

    /**
     * Screwed through round holes.
     *
     * @param slip how far each screw gives
     */
    record TightScrews(Length slip) implements Fastening {
        /** In holes that fit. */
        public static final TightScrews SNUG = new TightScrews(Length.mm(FastenerSlip.TIGHT_SCREW_MM));

        /** In round holes wider than the screws, each screw in the middle of its hole. */
        public static TightScrews inHoles(Length hole, Length screw) {
            double wide = FastenerSlip.ofHole(hole.metres(), screw.metres());
            return new TightScrews(new Length(Math.max(wide, SNUG.slip.metres())));
        }
    }

    /**
     * Screwed through slots, but for a place that stays fixed.
     *
     * @param count screws in the row, evenly apart
     * @param diameter of a screw where the slot is
     * @param at where the parts stay fixed
     * @param slot length of each slot; null while it is planned
     */
    record SlottedScrews(
            int count,
            Length diameter,
            FixedAt at,
            @Nullable Length slot) implements Fastening {
        public SlottedScrews {
            SCREWS.check(count);
            DIAMETER.check(diameter);
            if (slot != null && SLOT.check(slot).compareTo(diameter) < 0) {
                throw new IllegalArgumentException("a slot must be at least as long as its screw is thick");
            }
        }
    }

    /**
     * Held at one place only, by a pin, a screw or a spot of glue; the rest slides.
     *
     * @param at where
     * @param room what the free end of the first part has to grow into; null if it may stand out
     */
    record Pinned(FixedAt at, @Nullable Length room) implements Fastening {}
}
