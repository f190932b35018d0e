package fairgrain.hanging;

import fairgrain.fastener.Adjustment;
import fairgrain.fastener.DowelBearing;
import fairgrain.fastener.DowelConnection;
import fairgrain.fastener.EdgeAndSpacing;
import fairgrain.fastener.GroupAction;
import fairgrain.fastener.HeadPullThrough;
import fairgrain.fastener.LoadDuration;
import fairgrain.fastener.ModeLoads;
import fairgrain.fastener.PanelScrew;
import fairgrain.fastener.Penetration;
import fairgrain.fastener.ReductionTerm;
import fairgrain.fastener.ReferenceWithdrawal;
import fairgrain.fastener.ScrewSteel;
import fairgrain.fastener.ShortTimeStrength;
import fairgrain.fastener.SteelStudScrew;
import fairgrain.fastener.YieldLimit;
import fairgrain.fastener.YieldMargin;
import fairgrain.fastener.YieldMode;
import fairgrain.quantity.Length;

/** The strength of one screw of a {@link Fixing} in what it goes into, by the formulas of {@code fastener}. */
final class ScrewStrength {
    private static final double ACROSS = Math.PI / 2; // a rail is loaded across its grain, an upright stud along it
    private static final double ELASTICITY = 7e9; // Pa, low for framing; from memory. A low one gives the lower C_g
    private static final double WIDEST_APART = 0.1; // m, of lag screws whose distance was not said: more gives less
    private static final double RAIL_PART = 4; // diameters of rail that work with a column, across its grain
    private static final double PAST_THE_SHEET = 0.010; // m; three threads and the drill point

    private final Fixing fixing;
    private final double gap;
    private final double wetLateral;
    private final double wetAxial;

    /**
     * For a fixing.
     *
     * @param dampest moisture content of the wood in its dampest month, as a fraction
     */
    ScrewStrength(Fixing fixing, Length gap, double dampest) {
        this.fixing = fixing;
        this.gap = gap.metres();
        this.wetLateral = Adjustment.wetServiceLateral(dampest);
        this.wetAxial = Adjustment.wetServiceWithdrawal(dampest);
    }

    ScrewHold in(Stud stud) {
        if (fixing.screw() instanceof DeclaredScrew declared) {
            return declared(declared, stud);
        }
        if (fixing.screw() instanceof DeclaredAnchor anchor) {
            return anchored(anchor);
        }
        Screw screw = (Screw) fixing.screw();
        if (stud instanceof SteelStud steel) {
            return inSteel(screw, steel);
        }
        return stud instanceof Backing backing ? inPlywood(screw, backing) : inWood(screw, (WoodStud) stud);
    }

    private ScrewHold inWood(Screw screw, WoodStud stud) {
        double d = screw.diameter().metres();
        double deep = stud.depth().metres();
        double depth = screw.lag()
                ? Penetration.lagScrewBearing(
                        length(), rail(), gap, deep, screw.tip().metres())
                : Penetration.depth(length(), rail(), gap, deep);
        Length point = new Length(Penetration.depth(length(), rail(), gap, deep));
        Length least = new Length((screw.lag() ? Penetration.LAG_SCREW_LEAST : Penetration.WOOD_SCREW_LEAST) * d);
        double bearing = screw.lag() ? depth : Penetration.woodScrewBearing(depth, d);
        double thread = thread(screw, deep);
        if (bearing <= 0 || thread <= 0) {
            return ScrewHold.nothing(new Length(depth), point, least);
        }
        double along = DowelBearing.wood(stud.specificGravity(), d, stud.level() ? ACROSS : 0);
        double withdrawal = screw.lag()
                ? ReferenceWithdrawal.lagScrew(stud.specificGravity(), d)
                : ReferenceWithdrawal.woodScrew(stud.specificGravity(), d);
        double ratio = screw.lag() ? YieldMargin.LAG_SCREW : YieldMargin.WOOD_SCREW;
        double group = group(screw, stud);
        return hold(screw, new Length(depth), point, least, bearing, along, withdrawal * thread, ratio, group);
    }

    /** The screw goes right through the panel and bears on all of it. */
    private ScrewHold inPlywood(Screw screw, Backing backing) {
        double thick = backing.thickness().metres();
        double d = screw.diameter().metres();
        Length point = new Length(Math.max(0, length() - rail() - gap));
        double thread = thread(screw, thick);
        if (point.metres() <= 0 || thread <= 0) {
            return ScrewHold.nothing(point, point, backing.thickness());
        }
        double mean = PanelScrew.plywoodFace(backing.specificGravity(), d, thread);
        return hold(
                screw,
                point,
                point,
                backing.thickness(),
                Math.min(point.metres(), thick),
                DowelBearing.wood(backing.specificGravity(), d, ACROSS),
                mean / PanelScrew.PLYWOOD,
                PanelScrew.PLYWOOD,
                1);
    }

    private ScrewHold hold(
            Screw screw,
            Length depth,
            Length point,
            Length least,
            double bearing,
            double mainBearing,
            double withdrawal,
            double ratio,
            double group) {
        double d = screw.diameter().metres();
        DowelConnection connection = new DowelConnection(
                bearing, rail(), mainBearing, railBearing(d), screw.root().metres(), screw.bendingYield());
        ModeLoads gapped = YieldLimit.reference(connection, gap, d, ACROSS);
        ModeLoads touching = YieldLimit.reference(connection, 0, d, ACROSS);
        YieldMode mode = gapped.governing();
        double divisor = ReductionTerm.divisor(d, screw.root().metres(), ACROSS, mode);
        return new ScrewHold(
                depth,
                point,
                least,
                lateral(gapped.least(), group),
                lateral(touching.least(), group),
                axial(withdrawal),
                head(screw.head().metres()),
                ScrewSteel.tension(screw.root().metres(), screw.bendingYield()),
                mode.words(),
                false,
                false,
                ShortTimeStrength.lateral(gapped.least(), divisor) * wetLateral * group,
                ShortTimeStrength.withdrawal(withdrawal, ratio) * wetAxial,
                group);
    }

    private ScrewHold inSteel(Screw screw, SteelStud stud) {
        double d = screw.diameter().metres();
        double sheet = stud.sheet().metres();
        double reach = length() - rail() - gap;
        Length point = new Length(Math.max(0, reach));
        Length least = new Length(sheet + PAST_THE_SHEET);
        if (reach <= 0) {
            return ScrewHold.nothing(point, point, least);
        }
        double root = screw.root().metres();
        ModeLoads gapped =
                SteelStudScrew.woodSide(rail(), railBearing(d), sheet, stud.tensile(), root, screw.bendingYield(), gap);
        ModeLoads touching =
                SteelStudScrew.woodSide(rail(), railBearing(d), sheet, stud.tensile(), root, screw.bendingYield(), 0);
        double shear = onSheet(gapped, stud, d);
        double pull = SteelStudScrew.allowable(SteelStudScrew.pullOut(sheet, d, stud.tensile()));
        boolean bare = shear < SteelStudScrew.allowable(gapped.least()) * wetLateral;
        return new ScrewHold(
                point,
                point,
                least,
                shear,
                onSheet(touching, stud, d),
                pull,
                head(screw.head().metres()),
                ScrewSteel.tension(root, screw.bendingYield()),
                bare
                        ? "the screw tilts in the steel of the stud or tears it"
                        : gapped.governing().words(),
                true,
                true,
                0,
                0,
                1);
    }

    /** The sheet gives way, or the rail, which is of wood and may be wet. */
    private double onSheet(ModeLoads woodSide, SteelStud stud, double diameter) {
        return Math.min(
                SteelStudScrew.allowable(woodSide.least()) * wetLateral,
                SteelStudScrew.woodRailShear(woodSide, stud.sheet().metres(), stud.tensile(), diameter));
    }

    private ScrewHold declared(DeclaredScrew screw, Stud stud) {
        double deep = stud instanceof WoodStud wood
                ? wood.depth().metres()
                : stud instanceof Backing b ? b.thickness().metres() : 0.1;
        Length point = new Length(Penetration.depth(length(), rail(), gap, deep));
        Length least =
                new Length(Penetration.WOOD_SCREW_LEAST * screw.diameter().metres());
        if (point.metres() <= 0) {
            return ScrewHold.nothing(point, point, least);
        }
        double sideways = screw.sideways().newtons() / screw.factor() * wetLateral;
        double thread = screw.withdrawal().newtons() / screw.factor() * wetAxial;
        double head = screw.pullThrough()
                .map(each -> each.newtons() / screw.factor() * wetAxial)
                .orElse(thread);
        return new ScrewHold(
                point,
                point,
                least,
                sideways,
                sideways,
                thread,
                head,
                Math.min(thread, head),
                "as its maker says",
                true,
                true,
                0,
                0,
                1);
    }

    /**
     * The wall by the maker's values; the rail by the yield modes of a mild bolt held in concrete, its thread in the joint, and by
     * the washer.
     */
    private ScrewHold anchored(DeclaredAnchor anchor) {
        Length depth = new Length(Math.max(0, length() - rail() - gap));
        if (depth.metres() <= 0) {
            return ScrewHold.nothing(depth, depth, anchor.embedment());
        }
        double d = anchor.diameter().metres();
        DowelConnection connection = new DowelConnection(
                depth.metres(),
                rail(),
                DeclaredAnchor.CONCRETE_BEARING,
                railBearing(d),
                DeclaredAnchor.ROOT * d,
                DeclaredAnchor.MILD_STEEL);
        ModeLoads gapped = YieldLimit.reference(connection, gap, d, ACROSS);
        double wood = lateral(gapped.least(), 1);
        double touching = lateral(YieldLimit.reference(connection, 0, d, ACROSS).least(), 1);
        double shear = anchor.shear().newtons() / anchor.factor();
        double pull = anchor.tension().newtons() / anchor.factor();
        return new ScrewHold(
                depth,
                depth,
                anchor.embedment(),
                Math.min(shear, wood),
                Math.min(shear, touching),
                pull,
                head(Math.min(DeclaredAnchor.WIDEST_COUNTED, anchor.washer().metres())),
                pull,
                wood < shear ? gapped.governing().words() : "the wall gives way, by its maker's value",
                true,
                true,
                0,
                0,
                1);
    }

    /** C_g of a column of large screws; one for screws under a quarter inch. */
    private double group(Screw screw, WoodStud stud) {
        double d = screw.diameter().metres();
        int n = fixing.rows().stream().mapToInt(Row::perStud).max().orElse(1);
        if (d < EdgeAndSpacing.LARGE || n == 1) {
            return 1;
        }
        double apart = fixing.rows().stream()
                .flatMap(row -> row.apart().stream())
                .mapToDouble(Length::metres)
                .max()
                .orElse(WIDEST_APART);
        double studPart = stud.level()
                ? RAIL_PART * d * stud.depth().metres()
                : stud.width().metres() * stud.depth().metres();
        return GroupAction.factor(
                n, apart, ELASTICITY * studPart, ELASTICITY * RAIL_PART * d * rail(), GroupAction.slipWoodToWood(d));
    }

    private double thread(Screw screw, double memberDepth) {
        return Penetration.thread(
                length(),
                length() * screw.threadShare(),
                screw.lag() ? screw.tip().metres() : 0,
                rail() + gap,
                memberDepth);
    }

    private double railBearing(double diameter) {
        return DowelBearing.wood(fixing.rail().gravity(), diameter, ACROSS);
    }

    private double head(double diameter) {
        return axial(HeadPullThrough.capacity(fixing.rail().gravity(), diameter, rail()));
    }

    private double lateral(double reference, double group) {
        return Adjustment.lateral(reference, LoadDuration.PERMANENT, wetLateral, 1, group, 1, 1);
    }

    private double axial(double reference) {
        return Adjustment.axial(reference, LoadDuration.PERMANENT, wetAxial, 1);
    }

    private double length() {
        return fixing.length().metres();
    }

    private double rail() {
        return fixing.rail().thickness().metres();
    }
}
