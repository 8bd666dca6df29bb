package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Recession;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** The quick voyage against closed forms, against the drop it starts with, and as directions makers know. */
class QuickVoyageTest {
    private static final Bath BATH = Bath.at(celsius(38));
    private static final FizzParameters FIZZ = FizzParameters.standard();
    private static final VoyageParameters WATER = VoyageParameters.standard();
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    /** ANALYTIC: a sunken ball of radius R is down to 1 % of its mass after (1 - 0.01^(1/3)) R/v. */
    @Test
    void fizzTimeOfASunkenBall() {
        QuickVoyage voyage = run(BALL, 0.19, Release.DROPPED, Piece.Makeup.usual(), BATH, FIZZ);
        Piece piece = new Piece(BALL, 0.19, Piece.Makeup.usual());
        double v = Recession.speed(FIZZ, BATH.temperature(), piece.porosity(), Piece.Makeup.USUAL_GAS_CAPACITY);
        assertThat(voyage.outcome()).isEqualTo(Voyage.Outcome.STAYS_DOWN);
        double exact = (1 - Math.cbrt(0.01)) * 0.0325 / v;
        assertThat(voyage.fizzTime()).isCloseTo(exact, within(1e-9 * exact));
    }

    /** ANALYTIC: it starts with the drop: where that balance turns, so does the outcome; the margin is its size. */
    @Test
    void itStartsWithTheDrop() {
        for (Shape shape : new Shape[] {BALL, Puck.ofDiameterAndHeight(0.07, 0.028), Dome.ofDiameter(0.08)}) {
            DropBalance drop = new DropBalance(shape, BATH);
            for (double density = 900; density <= 1150; density += 10) {
                double mass = density * shape.volume();
                double spare = drop.fizzing(Launch.of(new Piece(shape, mass, Piece.Makeup.usual()), BATH, FIZZ, WATER));
                QuickVoyage voyage = run(shape, mass, Release.DROPPED, Piece.Makeup.usual(), BATH, FIZZ);
                double displaced = BATH.density() * shape.volume();
                if (Math.abs(spare) > 0.01 * displaced) {
                    assertThat(voyage.outcome() == Voyage.Outcome.FLOATS_AT_ONCE)
                            .isEqualTo(spare > 0);
                }
                if (spare > 0) {
                    assertThat(voyage.margin()).isCloseTo(spare / displaced, within(1e-9));
                }
            }
        }
    }

    /** COMMON PRACTICE, no source: each direction follows from the term named beside it; none is forced. */
    @Test
    void whatMakersKnow() {
        QuickVoyage cold = run(BALL, 0.138, Release.DROPPED, Piece.Makeup.usual(), Bath.at(celsius(32)), FIZZ);
        double coldTime = cold.fizzTime();
        QuickVoyage hot = run(BALL, 0.138, Release.DROPPED, Piece.Makeup.usual(), Bath.at(celsius(42)), FIZZ);
        assertThat(hot.fizzTime()).as("activation energy").isLessThan(0.8 * coldTime);

        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        assertThat(run(bowl, 0.170, Release.PLACED, Piece.Makeup.usual(), BATH, FIZZ)
                        .outcome())
                .as("boat")
                .isEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);
        assertThat(run(bowl, 0.170, Release.DROPPED, Piece.Makeup.usual(), BATH, FIZZ)
                        .outcome())
                .isNotEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);

        assertThat(heaviest(Puck.ofDiameterAndHeight(0.07, 0.028)))
                .as("layer times surface over volume")
                .isGreaterThan(heaviest(Dome.ofDiameter(0.08)))
                .isLessThan(heaviest(bowl));
        assertThat(heaviest(Dome.ofDiameter(0.08))).isGreaterThan(heaviest(BALL));
        assertThat(heaviest(Sphere.ofDiameter(0.025))).as("a small test ball").isGreaterThan(heaviest(BALL) + 50);

        Piece.Makeup spent = new Piece.Makeup(Piece.Makeup.USUAL_TRUE_DENSITY, 0.7);
        assertThat(run(BALL, 0.140, Release.DROPPED, Piece.Makeup.usual(), BATH, FIZZ)
                        .outcome())
                .isEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);
        assertThat(run(BALL, 0.140, Release.DROPPED, spent, BATH, FIZZ).outcome())
                .as("soaking and a thinner layer, at the same mass and size")
                .isEqualTo(Voyage.Outcome.STAYS_DOWN);
    }

    /** COMMON PRACTICE, no source: slower fizz of a foaming powder lasts longer; the foam carries as much. */
    @Test
    void foamFizzesSlower() {
        FizzParameters foam =
                new FizzParameters(0.75 * FIZZ.recession38(), 2.3, 30e3, 0.5, 0.63e-3, 1.6 * 0.45, 0.5, 0.65);
        double plain = run(BALL, 0.138, Release.DROPPED, Piece.Makeup.usual(), BATH, FIZZ)
                .fizzTime();
        QuickVoyage light = run(BALL, 0.130, Release.DROPPED, Piece.Makeup.usual(), BATH, foam);
        assertThat(light.outcome()).isEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);
        QuickVoyage same = run(BALL, 0.138, Release.DROPPED, Piece.Makeup.usual(), BATH, foam);
        assertThat(same.fizzTime()).isGreaterThan(1.2 * plain);
    }

    /** A larger mould is a larger piece: ratios of volume and surface stretch the same table. ANALYTIC. */
    @Test
    void ratiosScaleTheTable() {
        double k = 1.02;
        Shape larger = Sphere.ofDiameter(0.065 * k);
        QuickVoyage direct = run(larger, 0.16, Release.DROPPED, Piece.Makeup.usual(), BATH, FIZZ);
        QuickVoyage scaled = new QuickVoyage(VoyageForm.of(BALL, Release.DROPPED), BATH);
        scaled.run(
                new Launch(new Piece(BALL, 0.16, Piece.Makeup.usual()), BATH.temperature(), k * k * k, 1, FIZZ, WATER));
        assertThat(scaled.fizzTime()).isCloseTo(direct.fizzTime(), within(1e-4 * direct.fizzTime()));
        assertThat(scaled.outcome()).isEqualTo(direct.outcome());
    }

    @Test
    void itAllocatesNothing() {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(BALL, Release.DROPPED), BATH);
        Launch floats = Launch.of(new Piece(BALL, 0.138, Piece.Makeup.usual()), BATH, FIZZ, WATER);
        Launch rises = Launch.of(new Piece(BALL, 0.150, Piece.Makeup.usual()), BATH, FIZZ, WATER);
        for (int i = 0; i < 2000; i++) {
            voyage.run(i % 2 == 0 ? floats : rises);
        }
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        for (int i = 0; i < 2000; i++) {
            voyage.run(i % 2 == 0 ? floats : rises);
        }
        long spent = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        assertThat(spent).as("bytes in 2,000 voyages of 200 steps").isLessThan(100_000);
    }

    /** Density, kg/m3, up to which the drop floats. */
    private static double heaviest(Shape shape) {
        DropBalance drop = new DropBalance(shape, BATH);
        double low = 800;
        double high = 1500;
        while (high - low > 0.01) {
            double middle = (low + high) / 2;
            double mass = middle * shape.volume();
            if (drop.fizzing(Launch.of(new Piece(shape, mass, Piece.Makeup.usual()), BATH, FIZZ, WATER)) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static QuickVoyage run(
            Shape shape, double mass, Release release, Piece.Makeup makeup, Bath bath, FizzParameters fizz) {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(shape, release), bath);
        voyage.run(Launch.of(new Piece(shape, mass, makeup), bath, fizz, WATER));
        return voyage;
    }
}
