package fairgrain.fixing;

import fairgrain.finding.Remedy;
import fairgrain.finding.Words;
import fairgrain.fixing.Fastening.Glued;
import fairgrain.fixing.Fastening.Pinned;
import fairgrain.fixing.Fastening.SlottedScrews;
import fairgrain.fixing.Fastening.TightScrews;
import fairgrain.quantity.Length;
import java.util.ArrayList;
import java.util.List;

/** What would let the wood move, in the order of least change. */
final class FixedCures {
    private static final double APART = 0.15; // m, judgement: screws no farther apart

    private FixedCures() {}

    static List<Remedy> of(Fixed fixed) {
        List<Remedy> cures = new ArrayList<>();
        if (fixed.by() instanceof Glued glued) {
            lessGlue(fixed, glued, cures);
            slots(fixed, FixedAt.MIDDLE, cures);
        } else if (fixed.by() instanceof TightScrews) {
            slots(fixed, FixedAt.FRONT, cures);
        } else if (fixed.by() instanceof SlottedScrews screws) {
            longer(fixed, screws, cures);
        } else if (fixed.by() instanceof Pinned pinned) {
            room(fixed, pinned, cures);
        }
        return cures;
    }

    private static void lessGlue(Fixed fixed, Glued glued, List<Remedy> cures) {
        Length sure = fixed.in().rule().down(new Length(Fixed.TRADE.sure()));
        if (sure.compareTo(glued.width()) < 0) {
            Fixed then = fixed.by(new Glued(sure));
            add(cures, Words.of("Glue only the middle {}, and let the rest slide.", sure), then);
            add(
                    cures,
                    Words.of(
                            "Divide it, as a wide tenon is divided: glue one part no wider than {}, and leave the"
                                    + " other dry with room to move.",
                            sure),
                    then);
        }
    }

    private static void slots(Fixed fixed, FixedAt at, List<Remedy> cures) {
        int count = Math.max(3, (int) Math.ceil(fixed.between().metres() / APART) + 1);
        SlottedScrews screws = new SlottedScrews(count, Fastening.USUAL_DIAMETER, at, null);
        Fixed then = fixed.by(screws);
        add(
                cures,
                Words.of(
                        "Screw it through slots, fixed at the " + at.word()
                                + ": the slots farthest from there {} long.",
                        then.slotAt(screws, then.arm(), then.worst()).length()),
                then);
    }

    private static void longer(Fixed fixed, SlottedScrews screws, List<Remedy> cures) {
        Fixed then = fixed.by(new SlottedScrews(screws.count(), screws.diameter(), screws.at(), null));
        add(
                cures,
                Words.of(
                        "Lengthen the slots farthest from the fixed place to {}.",
                        then.slotAt(screws, then.arm(), then.worst()).length()),
                then);
        if (screws.at() != FixedAt.MIDDLE) {
            add(
                    cures,
                    Words.of("Fix it at the middle, and let both ends move."),
                    fixed.by(new SlottedScrews(screws.count(), screws.diameter(), FixedAt.MIDDLE, screws.slot())));
        }
    }

    private static void room(Fixed fixed, Pinned pinned, List<Remedy> cures) {
        Fixed.Worst worst = fixed.worst();
        double grows = fixed.arm() * worst.towards();
        Length room = fixed.in().rule().up(new Length(grows).plus(Length.mm(0.5)));
        add(cures, Words.of("Leave its free end {} to grow into.", room), fixed.by(new Pinned(pinned.at(), room)));
    }

    private static void add(List<Remedy> cures, Words words, Fixed then) {
        if (then.holds()) {
            cures.add(new Remedy(words, then));
        }
    }
}
