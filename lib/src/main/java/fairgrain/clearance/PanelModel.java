package fairgrain.clearance;

import fairgrain.finding.Check;
import fairgrain.finding.Draw;
import fairgrain.finding.Model;
import fairgrain.part.Spacer;
import fairgrain.part.Tongue;
import fairgrain.quantity.Dimension;
import fairgrain.quantity.Length;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * The numbers of {@link PanelFit}. Where the moisture on the day is not known, each check is taken on the day that is worse for it.
 */
final class PanelModel implements Model<PanelFit.Fit> {
    static final int BOTTOMING = 0;
    static final int SLIPPING = 1;
    /** Everything that may differ for a panel. */
    static final int SPREADS = YearSpreads.COUNT + 2;

    private static final int SHOULDER = 2;
    private static final int CUT_SPREAD = YearSpreads.COUNT;
    private static final int GROOVE_SPREAD = YearSpreads.COUNT + 1;

    private final YearSpreads year;
    private final boolean pinned;
    private final @Nullable Tongue tongue;
    private final @Nullable Length edge;
    private final double spacer;
    private final double squeezed;
    private final double across;
    private final double grooveDepth;
    private final double grooveWidth;
    private final double wanted;
    private final double width;

    PanelModel(PanelFit asked) {
        Spacer soft = asked.panel().spacer();
        year = new YearSpreads(asked.panel().board(), asked.in());
        pinned = asked.panel().pinned();
        tongue = asked.panel().tongue();
        edge = asked.edge().orElse(null);
        spacer = soft == null ? Double.POSITIVE_INFINITY : soft.thickness().metres(); // a pin never comes loose
        squeezed = PanelFit.squeezed(asked.panel()).metres();
        across = asked.opening().across().metres();
        grooveDepth = asked.opening().groove().depth().metres();
        grooveWidth = asked.opening().groove().width().metres();
        wanted = asked.wanted().metres();
        width = asked.width().metres();
    }

    @Override
    public PanelFit.Fit at(Draw draw) {
        double cut = cut(draw);
        double depth = depth(draw);
        double atDry = cut * year.widthAtDry(draw);
        double atDamp = cut * year.widthAtDamp(draw);
        return new PanelFit.Fit(
                new Length(cut),
                new Length(atDry),
                new Length(atDamp),
                new Length(across + 2 * depth),
                new Length(hold(depth, atDry)),
                bottoming(cut, depth, atDamp),
                slipping(depth, atDry),
                tongue == null ? Optional.empty() : Optional.of(shoulder(tongue, depth, atDamp)),
                edge == null ? Optional.empty() : Optional.of(binding(edge, draw)));
    }

    @Override
    public double margin(Draw draw, int check) {
        double cut = cut(draw);
        if (check == BOTTOMING) {
            return bottoming(cut, depth(draw), cut * year.widthAtDamp(draw)).margin();
        }
        if (check == SLIPPING) {
            return slipping(depth(draw), cut * year.widthAtDry(draw)).margin();
        }
        if (check == SHOULDER && tongue != null) {
            return shoulder(tongue, depth(draw), cut * year.widthAtDamp(draw)).margin();
        }
        if (edge == null) {
            throw new IllegalArgumentException("a panel has no check " + check);
        }
        return binding(edge, draw).margin();
    }

    private double cut(Draw draw) {
        return width + PanelFit.CUT_SD * draw.of(CUT_SPREAD);
    }

    private double depth(Draw draw) {
        return grooveDepth + PanelFit.GROOVE_SD * draw.of(GROOVE_SPREAD);
    }

    /** What stays in the groove on the worse side. */
    private double hold(double depth, double atDry) {
        double middle = (atDry - across) / 2; // what lies in each groove if it stays in the middle
        return pinned ? middle - Math.max(0, depth - middle - spacer) : atDry - across - depth;
    }

    private Check bottoming(double cut, double depth, double atDamp) {
        return Check.of(
                "swelling still to come, against the gap left",
                atDamp - cut,
                across + 2 * depth - 2 * squeezed - cut,
                Dimension.LENGTH);
    }

    private Check slipping(double depth, double atDry) {
        return Check.of(
                "hold wanted at the dry end, against what stays in", wanted, hold(depth, atDry), Dimension.LENGTH);
    }

    private Check shoulder(Tongue of, double depth, double atDamp) {
        return Check.of(
                "tongue inside the frame at the damp end, against its length",
                pinned ? (atDamp - across) / 2 : depth,
                of.length().metres(),
                Dimension.LENGTH);
    }

    private Check binding(Length thickness, Draw draw) {
        return Check.of(
                "swelling of its edge in thickness, against its play in the groove",
                thickness.metres() * (year.thicknessAtDamp(draw) - 1),
                grooveWidth - thickness.metres(),
                Dimension.LENGTH);
    }
}
