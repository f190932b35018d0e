package fairgrain.sheet;

import fairgrain.clearance.GlassInRebate;
import fairgrain.design.CutList;
import fairgrain.design.Door;
import fairgrain.design.Piece;
import fairgrain.design.Review;
import fairgrain.design.Shelf;
import fairgrain.door.Hinges;
import fairgrain.hanging.Fixing;
import fairgrain.hanging.Hanging;
import fairgrain.hanging.Lift;
import fairgrain.quantity.Length;
import fairgrain.quantity.ShopRule;
import fairgrain.quantity.UnitSystem;
import fairgrain.shelf.Support;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What is to be bought besides boards: sheets, glass, hinges, screws by where they go, pins. */
final class ToBuy {
    private static final int PINS = 4; // under each shelf
    private static final double SQUARE_FOOT = 0.3048 * 0.3048; // m2

    private final Review review;
    private final ShopRule rule;
    private final List<String> all = new ArrayList<>();

    private ToBuy(Review review, ShopRule rule) {
        this.review = review;
        this.rule = rule;
    }

    static Optional<Block> of(Review review, ShopRule rule) {
        ToBuy buy = new ToBuy(review, rule);
        buy.sheets();
        buy.glass();
        buy.hinges();
        buy.screws();
        buy.pins();
        return buy.all.isEmpty() ? Optional.empty() : Optional.of(new Block.Items("To buy besides boards:", buy.all));
    }

    /** By what they are and how thick; waste is not counted. */
    private void sheets() {
        Map<String, Double> areas = new LinkedHashMap<>();
        for (Piece piece : CutList.of(review.design()).pieces()) {
            if (piece.sheet() && piece.length().isPresent()) {
                double area = piece.count()
                        * piece.length().get().metres()
                        * piece.width().metres();
                areas.merge(piece.material() + ", " + rule.text(piece.thickness()) + " thick", area, Double::sum);
            }
        }
        areas.forEach((sheet, area) -> all.add(sheet + ": " + area(area) + ", waste not counted"));
    }

    /** Rounded up, to a tenth of a square foot or a hundredth of a square metre. */
    private String area(double area) {
        boolean inches = rule.system() == UnitSystem.INCHES;
        return inches
                ? Math.ceil(area / SQUARE_FOOT * 10 - 1e-6) / 10 + " square feet"
                : Math.ceil(area * 100 - 1e-6) / 100 + " m²";
    }

    private void glass() {
        for (GlassInRebate glass : Questions.of(review, GlassInRebate.class)) {
            GlassInRebate.Fit pane = glass.answer();
            int count = review.design().parts(Door.class).stream()
                    .filter(door -> door.glass().isPresent() && glass.part().equals(door.name() + ", glass"))
                    .mapToInt(Door::count)
                    .findFirst()
                    .orElse(1);
            all.add(count + " x pane of glass, " + rule.text(pane.width()) + " by " + rule.text(pane.height()) + ", "
                    + rule.text(glass.pane().thickness()) + " thick, for " + glass.part());
        }
    }

    private void hinges() {
        for (Door door : review.design().parts(Door.class)) {
            door.hung().ifPresent(hung -> {
                Hinges hinges = hung.hinges();
                int number = door.count() * hinges.number();
                all.add(number + " hinges, for " + door.name());
                all.add(2 * number * hinges.screws() + " x " + hinges.screw().name() + ", " + rule.text(hinges.length())
                        + " long, for its hinges, as many in the side as in the stile");
            });
        }
    }

    private void screws() {
        for (Hanging hanging : Questions.hangings(review)) {
            Fixing fixing = hanging.fixing();
            all.add(screws(fixing.inEachStud() * fixing.studs().size(), fixing, fixing.length()) + ", into the wall");
        }
        for (Lift lift : Questions.of(review, Lift.class)) {
            Fixing fixing = lift.hanging().fixing();
            if (!lift.hooked()) {
                all.add(screws(lift.answer().inEachStud() * fixing.studs().size(), fixing, lift.ledgerScrews())
                        + ", for the ledger it is put up on");
            }
        }
    }

    private String screws(int count, Fixing fixing, Length length) {
        return count + " x " + fixing.screw().name() + ", " + rule.text(length) + " long";
    }

    private void pins() {
        for (Shelf shelf : review.design().parts(Shelf.class)) {
            if (shelf.supports().ends() == Support.PINS) {
                all.add(PINS * shelf.count() + " shelf pins, for " + shelf.name());
            }
        }
    }
}
