package fairgrain.bending;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class GeneralBeamPropertyTest {
    private record Beam(List<BeamStretch> stretches, List<BeamSupport> supports, List<BeamLoad> loads) {
        static Beam any(long seed, boolean lifting) {
            Random r = new Random(seed);
            List<BeamStretch> stretches = new ArrayList<>();
            double length = 0;
            for (int i = 0; i < 1 + r.nextInt(3); i++) {
                double l = 0.2 + r.nextDouble();
                length += l;
                double ei = Math.pow(10, 1 + 2 * r.nextDouble());
                stretches.add(r.nextBoolean() ? BeamStretch.withoutShear(l, ei) : new BeamStretch(l, ei, 500 * ei));
            }
            int n = 2 + r.nextInt(4);
            List<BeamSupport> supports = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                double x = length * (i + 0.1 + 0.8 * r.nextDouble()) / n;
                BeamSupport s =
                        r.nextInt(3) == 0 ? BeamSupport.spring(x, 1e3 + 1e5 * r.nextDouble()) : BeamSupport.pin(x);
                if (lifting) {
                    s = s.pushesOnly();
                } else if (r.nextInt(3) == 0) {
                    s = r.nextBoolean() ? BeamSupport.clamp(x) : s.turning(100 * r.nextDouble());
                }
                supports.add(s);
            }
            List<BeamLoad> loads = new ArrayList<>();
            for (int i = 0; i < 1 + r.nextInt(4); i++) {
                double a = length * r.nextDouble();
                double b = length * r.nextDouble();
                loads.add(
                        switch (r.nextInt(lifting ? 2 : 3)) {
                            case 0 -> new BeamLoad.Point(a, 500 * r.nextDouble());
                            case 1 ->
                                new BeamLoad.Line(
                                        Math.min(a, b),
                                        Math.max(a, b) == Math.min(a, b) ? length : Math.max(a, b),
                                        400 * r.nextDouble(),
                                        400 * r.nextDouble());
                            default -> new BeamLoad.Couple(a, 50 * (r.nextDouble() - 0.5));
                        });
            }
            return new Beam(stretches, supports, loads);
        }

        BeamResponse solve() {
            return GeneralBeam.solve(stretches, supports, loads);
        }

        double length() {
            return stretches.stream().mapToDouble(BeamStretch::length).sum();
        }

        Beam with(List<BeamLoad> newLoads) {
            return new Beam(stretches, supports, newLoads);
        }
    }

    private static double force(BeamLoad load) {
        return load instanceof BeamLoad.Point p
                ? p.force()
                : load instanceof BeamLoad.Line l ? (l.to() - l.from()) * (l.atFrom() + l.atTo()) / 2 : 0;
    }

    /** Moment of a load about the left end, with the clock. */
    private static double turning(BeamLoad load) {
        if (load instanceof BeamLoad.Line l) {
            double d = l.to() - l.from();
            return d * (l.atFrom() * (l.from() / 2 + d / 6) + l.atTo() * (l.from() / 2 + d / 3));
        }
        return load instanceof BeamLoad.Couple c ? c.moment() : force(load) * load.to();
    }

    @Property
    void reactionsHoldTheLoadsInForceAndInMoment(@ForAll long seed) {
        Beam beam = Beam.any(seed, false);
        double load =
                beam.loads.stream().mapToDouble(GeneralBeamPropertyTest::force).sum();
        double turn = beam.loads.stream()
                .mapToDouble(GeneralBeamPropertyTest::turning)
                .sum();
        double force = 0;
        double moment = 0;
        double size = 1;
        for (BeamReaction r : beam.solve().reactions()) {
            force += r.force();
            moment += r.moment() + r.force() * r.support().position();
            size += Math.abs(r.force()) + Math.abs(r.moment());
        }
        assertThat(force).isCloseTo(load, within(1e-9 * size));
        assertThat(moment).isCloseTo(turn, within(1e-8 * size));
    }

    @Property
    void freeEndsCarryNothingAndRigidSupportsDoNotMove(@ForAll long seed) {
        Beam beam = Beam.any(seed, false);
        BeamResponse response = beam.solve();
        double size = Math.abs(response.largestMoment().value())
                + Math.abs(response.largestShear().value());
        double sag = Math.abs(response.largestSag().value())
                + Math.abs(response.largestRise().value());
        assertThat(response.moment(beam.length())).isCloseTo(0, within(1e-9 * size));
        assertThat(response.shear(beam.length())).isCloseTo(0, within(1e-9 * size));
        assertThat(response.moment(0)).isCloseTo(0, within(1e-9 * size));
        for (BeamReaction r : response.reactions()) {
            double w = response.deflection(r.support().position());
            if (r.support().rigid()) {
                assertThat(w).isCloseTo(0, within(1e-9 * sag));
            } else {
                assertThat(r.force()).isCloseTo(r.support().stiffness() * w, within(1e-7 * size));
            }
            if (r.support().clamped()) {
                assertThat(response.slope(r.support().position())).isCloseTo(0, within(1e-8 * sag));
            }
        }
    }

    @Property
    void loadsAddUp(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Beam beam = Beam.any(seed, false);
        List<BeamLoad> all = beam.loads;
        List<BeamLoad> tripled = all.stream().map(l -> l.times(3)).toList();
        double x = share * beam.length();
        double once = beam.solve().deflection(x);
        double sum = 0;
        double moments = 0;
        for (BeamLoad load : all) {
            BeamResponse part = beam.with(List.of(load)).solve();
            sum += part.deflection(x);
            moments += part.moment(x);
        }
        BeamResponse whole = beam.solve();
        double sag = whole.largestSag().value() - whole.largestRise().value();
        double moment = Math.abs(whole.largestMoment().value()) + 1;
        assertThat(once).isCloseTo(sum, within(1e-7 * sag));
        assertThat(beam.solve().moment(x)).isCloseTo(moments, within(1e-7 * moment));
        assertThat(beam.with(tripled).solve().deflection(x)).isCloseTo(3 * once, within(1e-8 * sag));
    }

    @Property
    void aLoadSagsThereWhatItWouldSagHereFromThere(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 1) double here,
            @ForAll @DoubleRange(min = 0, max = 1) double there) {
        Beam beam = Beam.any(seed, false);
        double a = here * beam.length();
        double b = there * beam.length();
        BeamResponse atA = beam.with(List.of(new BeamLoad.Point(a, 100))).solve();
        BeamResponse atB = beam.with(List.of(new BeamLoad.Point(b, 100))).solve();
        double sag = atA.largestSag().value() + atB.largestSag().value();
        assertThat(atA.deflection(b)).isCloseTo(atB.deflection(a), within(1e-8 * sag));
    }

    @Property
    @SuppressWarnings("ArgumentSelectionDefectChecker") // mirrored on purpose
    void theMirrorImageSagsTheSame(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Beam beam = Beam.any(seed, false);
        double l = beam.length();
        List<BeamStretch> stretches = new ArrayList<>();
        beam.stretches.forEach(s -> stretches.add(0, s));
        List<BeamSupport> supports = beam.supports.stream()
                .map(s -> new BeamSupport(l - s.position(), s.stiffness(), s.turningStiffness(), false))
                .toList();
        List<BeamLoad> loads = new ArrayList<>();
        for (BeamLoad load : beam.loads) {
            if (load instanceof BeamLoad.Point p) {
                loads.add(new BeamLoad.Point(l - p.at(), p.force()));
            } else if (load instanceof BeamLoad.Couple c) {
                loads.add(new BeamLoad.Couple(l - c.at(), -c.moment()));
            } else if (load instanceof BeamLoad.Line n) {
                loads.add(new BeamLoad.Line(l - n.to(), l - n.from(), n.atTo(), n.atFrom()));
            }
        }
        BeamResponse one = beam.solve();
        BeamResponse other = GeneralBeam.solve(stretches, supports, loads);
        double sag = one.largestSag().value() - one.largestRise().value();
        assertThat(other.deflection(share * l)).isCloseTo(one.deflection(l - share * l), within(1e-7 * sag));
        assertThat(other.largestSag().value()).isCloseTo(one.largestSag().value(), within(1e-7 * sag));
    }

    @Property
    void sagSlopeMomentAndShearAreDerivativesOfOneAnother(
            @ForAll long seed, @ForAll @DoubleRange(min = 0.01, max = 0.99) double share) {
        Beam drawn = Beam.any(seed, false);
        Beam beam = new Beam(List.of(BeamStretch.withoutShear(drawn.length(), 100)), drawn.supports, drawn.loads);
        BeamResponse r = beam.solve();
        double x = share * beam.length();
        double d = 1e-5;
        boolean smooth = beam.supports.stream().allMatch(s -> Math.abs(s.position() - x) > 2 * d)
                && beam.loads.stream().allMatch(p -> Math.abs(p.from() - x) > 2 * d && Math.abs(p.to() - x) > 2 * d);
        if (smooth) {
            double m = Math.abs(r.largestMoment().value()) + 1;
            double v = Math.abs(r.largestShear().value()) + 1;
            assertThat((r.deflection(x + d) - r.deflection(x - d)) / (2 * d))
                    .isCloseTo(r.slope(x), within(1e-6 * m / 100));
            assertThat(100 * (r.slope(x - d) - r.slope(x + d)) / (2 * d)).isCloseTo(r.moment(x), within(1e-5 * m));
            assertThat((r.moment(x + d) - r.moment(x - d)) / (2 * d)).isCloseTo(r.shear(x), within(1e-4 * (v + m)));
        }
    }

    @Property
    void nothingExceedsTheExtremes(@ForAll long seed, @ForAll @DoubleRange(min = 0, max = 1) double share) {
        Beam beam = Beam.any(seed, false);
        BeamResponse r = beam.solve();
        double x = share * beam.length();
        double tiny = 1e-9;
        assertThat(r.deflection(x))
                .isBetween(r.largestRise().value() - tiny, r.largestSag().value() + tiny);
        assertThat(r.moment(x))
                .isBetween(
                        r.largestHoggingMoment().value() - tiny,
                        r.largestSaggingMoment().value() + tiny);
        assertThat(Math.abs(r.shear(x)))
                .isLessThanOrEqualTo(Math.abs(r.largestShear().value()) + tiny);
        assertThat(r.deflection(r.largestSag().position()))
                .isCloseTo(r.largestSag().value(), within(tiny));
        assertThat(r.largestSagBetween(0, x).value())
                .isLessThanOrEqualTo(r.largestSag().value())
                .isGreaterThanOrEqualTo(r.deflection(x) - tiny);
    }

    @Property
    void aStifferBeamOrOneMoreSupportNeverSagsMoreUnderALoad(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 1) double at,
            @ForAll @DoubleRange(min = 1, max = 10) double factor) {
        Beam beam = Beam.any(seed, false);
        double x = at * beam.length();
        Beam loaded = beam.with(List.of(new BeamLoad.Point(x, 100)));
        double sag = loaded.solve().deflection(x);
        List<BeamStretch> stiffer = beam.stretches.stream()
                .map(s -> new BeamStretch(s.length(), factor * s.bendingStiffness(), s.shearStiffness()))
                .toList();
        assertThat(new Beam(stiffer, beam.supports, loaded.loads).solve().deflection(x))
                .isLessThanOrEqualTo(sag + 1e-12);
        List<BeamSupport> more = new ArrayList<>(beam.supports);
        more.add(BeamSupport.pin(0));
        assertThat(new Beam(beam.stretches, more, loaded.loads).solve().deflection(x))
                .isLessThanOrEqualTo(sag + 1e-12);
    }

    @Property
    void moreLoadOnASingleSpanNeverSagsLessAnywhere(
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0, max = 1) double at,
            @ForAll @DoubleRange(min = 0, max = 1) double where) {
        Beam drawn = Beam.any(seed, true);
        double l = drawn.length();
        List<BeamSupport> ends = List.of(BeamSupport.pin(0), BeamSupport.clamp(l));
        List<BeamLoad> more = new ArrayList<>(drawn.loads);
        more.add(new BeamLoad.Point(at * l, 100));
        double before = new Beam(drawn.stretches, ends, drawn.loads).solve().deflection(where * l);
        double after = new Beam(drawn.stretches, ends, more).solve().deflection(where * l);
        assertThat(after).isGreaterThanOrEqualTo(before - 1e-12);
    }

    @Property
    void doublingAllLengthsSagsSixteenTimes(@ForAll long seed) {
        Beam drawn = Beam.any(seed, false);
        double l = drawn.length();
        List<BeamSupport> pins =
                drawn.supports.stream().map(s -> BeamSupport.pin(s.position())).toList();
        List<BeamSupport> doubled = drawn.supports.stream()
                .map(s -> BeamSupport.pin(2 * s.position()))
                .toList();
        BeamResponse once = GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(l, 100)), pins, List.of(BeamLoad.Line.uniform(0, l, 100)));
        BeamResponse twice = GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(2 * l, 100)), doubled, List.of(BeamLoad.Line.uniform(0, 2 * l, 100)));
        double sag = once.largestSag().value() - once.largestRise().value();
        assertThat(twice.largestSag().value()).isCloseTo(16 * once.largestSag().value(), within(1e-7 * sag));
    }

    @Property
    void supportsThatOnlyPushNeverPullAndTheBeamNeverPassesThem(@ForAll long seed) {
        Beam beam = Beam.any(seed, true);
        double first = beam.supports.get(0).position();
        double last = beam.supports.get(beam.supports.size() - 1).position();
        List<BeamLoad> inside = new ArrayList<>();
        for (BeamLoad load : beam.loads) {
            double x = Math.min(Math.max(load.to(), first), last);
            inside.add(new BeamLoad.Point(x, 1 + force(load)));
        }
        BeamResponse r = beam.with(inside).solve();
        double load =
                inside.stream().mapToDouble(GeneralBeamPropertyTest::force).sum();
        double held = 0;
        for (BeamReaction reaction : r.reactions()) {
            assertThat(reaction.force()).isGreaterThan(-1e-6 * load);
            if (reaction.lifted()) {
                assertThat(reaction.force()).isZero();
                assertThat(r.deflection(reaction.support().position()))
                        .isLessThanOrEqualTo(1e-9 * r.largestSag().value());
            }
            held += reaction.force();
        }
        assertThat(held).isCloseTo(load, within(1e-8 * load));
    }

    @Property
    void pinsAlmostTogetherActLikeAClamp(@ForAll @DoubleRange(min = 1, max = 1000) double force) {
        BeamResponse close = GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(1.001, 100)),
                List.of(BeamSupport.pin(0), BeamSupport.pin(0.001)),
                List.of(new BeamLoad.Point(1.001, force)));
        double sag = force * (1 + 0.001) / 300; // P L^3/3EI + P L^2 d/3EI
        assertThat(close.deflection(1.001)).isCloseTo(sag, within(1e-10 * sag));
        assertThat(close.reactions().get(0).force()).isCloseTo(-1000 * force, within(1e-7 * force));
    }

    @Example
    void manySpansKeepTheirAccuracy() {
        int n = 40;
        List<BeamSupport> supports = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            supports.add(BeamSupport.pin(i));
        }
        BeamResponse r = GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(n, 1)), supports, List.of(BeamLoad.Line.uniform(0, n, 1)));
        // far from the ends each span is clamped by its neighbours
        assertThat(r.deflection(20.5)).isCloseTo(1.0 / 384, within(1e-12));
        assertThat(r.reactions().get(20).force()).isCloseTo(1, within(1e-9));
    }

    private static BeamResponse overhung(double a) {
        return GeneralBeam.solve(
                List.of(BeamStretch.withoutShear(1, 1)),
                List.of(BeamSupport.pin(a), BeamSupport.pin(1 - a)),
                List.of(BeamLoad.Line.uniform(0, 1, 1)));
    }

    @Example
    void refusesWhatIsOffTheBeam() {
        List<BeamStretch> beam = List.of(BeamStretch.withoutShear(0.9, 100));
        List<BeamSupport> pins = List.of(BeamSupport.pin(0), BeamSupport.pin(0.9));
        refuses(beam, pins, new BeamLoad.Point(0.95, 10), "a load at 0.95 m is off the beam, which ends at 0.9 m");
        refuses(beam, pins, BeamLoad.Line.uniform(0.1, 1, 10), "a load at 1.0 m is off the beam, which ends at 0.9 m");
        refuses(
                beam,
                List.of(BeamSupport.pin(0), BeamSupport.pin(90)),
                new BeamLoad.Point(0.5, 10),
                "a support at 90.0 m is off the beam, which ends at 0.9 m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BeamLoad.Point(Double.NaN, 10))
                .withMessage("position of the load must be from 0 to 100 m, but was NaN");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BeamLoad.Line(0.5, 0.4, 10, 10))
                .withMessage(
                        "a load along the beam must end to the right of where it begins, but runs from 0.5 to 0.4 m");
    }

    @Example
    void refusesWhatDoesNotHold() {
        List<BeamStretch> beam = List.of(BeamStretch.withoutShear(0.9, 100));
        BeamLoad middle = new BeamLoad.Point(0.45, 10);
        refuses(beam, List.of(), middle, "the beam has no support");
        refuses(
                beam,
                List.of(BeamSupport.pin(0.3)),
                middle,
                "the beam turns about its only support, at 0.3 m; a second one or a clamp is needed");
        refuses(
                beam,
                List.of(BeamSupport.pin(0.3), BeamSupport.pin(0.3)),
                middle,
                "two supports are at the same place, 0.3 m");
        refuses(
                beam,
                List.of(BeamSupport.pin(0.1).pushesOnly(), BeamSupport.pin(0.3).pushesOnly()),
                middle,
                "the beam tips off its supports: they can only push, and this load lifts it");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BeamSupport.clamp(0.1).pushesOnly())
                .withMessage("a support that the beam can lift off cannot hold its slope");
        List<BeamSupport> eleven = new ArrayList<>();
        for (int i = 0; i < 11; i++) {
            eleven.add(BeamSupport.pin(0.08 * i).pushesOnly());
        }
        refuses(beam, eleven, middle, "at most 10 supports may be such that the beam can lift off, but there are 11");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GeneralBeam.solve(List.of(), List.of(BeamSupport.clamp(0)), List.of(middle)))
                .withMessage("a beam needs at least one stretch");
    }

    private static void refuses(List<BeamStretch> beam, List<BeamSupport> supports, BeamLoad load, String message) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> GeneralBeam.solve(beam, supports, List.of(load)))
                .withMessage(message);
    }

    @Example
    void readsAnywhereOnTheBeamAndNowhereElse() {
        BeamResponse r = overhung(0.2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> r.deflection(1.5))
                .withMessage("position on the beam must be from 0 to 1 m, but was 1.5");
        assertThat(r.shear(0.2)).isCloseTo(0.3, within(1e-12)); // to the right of the support
        assertThat(r.moment(0.2)).isCloseTo(-0.02, within(1e-12));
    }
}
