package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.fizz.Recession;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.shape.load.Topping;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** What a piece carries on its voyage. */
class LoadedVoyageTest {
    private static final Bath BATH = Bath.at(celsius(38));
    private static final FizzParameters FIZZ = FizzParameters.standard();
    private static final VoyageParameters WATER = VoyageParameters.standard();
    private static final double RADIUS = 0.0325;
    private static final Shape BALL = Sphere.ofDiameter(2 * RADIUS);
    private static final Inset TOY = new Inset(0.020, 10e-6);
    private static final Topping SALT = new Topping("salt", 0.006, 2165, 0.5);
    private static final Shape BOTH = Loaded.with(Loaded.with(BALL, TOY), SALT);

    /** ANALYTIC: a sunken ball of radius R round a core is at its end where core and 1 % of the rest are left. */
    @Test
    void fizzTimeRoundACore() {
        Shape ball = Loaded.with(BALL, TOY);
        Piece piece = new Piece(ball, 0.2, Piece.Makeup.usual());
        QuickVoyage voyage = quick(piece, Release.DROPPED);
        double v = Recession.speed(FIZZ, BATH.temperature(), piece.porosity(), Piece.Makeup.USUAL_GAS_CAPACITY);
        double left = 10e-6 + 0.01 * (BALL.volume() - 10e-6);
        double exact = (RADIUS - Math.cbrt(3 * left / (4 * Math.PI))) / v;
        assertThat(voyage.outcome()).isEqualTo(Voyage.Outcome.STAYS_DOWN);
        assertThat(voyage.fizzTime()).isCloseTo(exact, within(1e-4 * exact));
    }

    /** ANALYTIC: the mass at a depth d is that of the ball less its core, the core's, and the salt not yet let go. */
    @Test
    void massOnTheWay() {
        Piece piece = new Piece(BOTH, 0.2, Piece.Makeup.usual());
        Voyage.Series series = full(piece, Release.DROPPED).series();
        double thickness = 0.006 / 2165 / 0.5 / (Math.PI * RADIUS * RADIUS);
        int rows = series.time().length;
        assertThat(rows).isGreaterThan(20);
        int salted = 0;
        for (int i = 0; i < rows; i++) {
            double d = series.eroded()[i];
            double body = 4 * Math.PI / 3 * Math.pow(RADIUS - d, 3) - 10e-6;
            double salt = 0.006 * Math.max(0, 1 - d / thickness);
            salted += salt > 0 ? 1 : 0;
            assertThat(series.mass()[i]).isCloseTo(piece.density() * body + 0.020 + salt, within(2e-6));
        }
        assertThat(salted).isBetween(2, rows - 10);
    }

    /** CONSISTENCY: both voyages tell the same outcome wherever the balance is more than a hundredth from zero. */
    @Test
    void quickAgreesWithFull() {
        int told = 0;
        for (Shape shape : new Shape[] {BOTH, Loaded.with(BALL, SALT), Loaded.with(BALL, new Inset(0.008, 25e-6))}) {
            for (double mass = 0.115; mass < 0.18; mass += 0.005) {
                Piece piece = new Piece(shape, mass, Piece.Makeup.usual());
                QuickVoyage quick = quick(piece, Release.DROPPED);
                if (quick.margin() > 0.01) {
                    assertThat(quick.outcome())
                            .isEqualTo(full(piece, Release.DROPPED).outcome());
                    told++;
                }
            }
        }
        assertThat(told).isGreaterThan(25);
    }

    /** A sunken piece lets go of its salt first: with the same body it comes up when it did without, or before. */
    @Test
    void saltDoesNotHoldItDown() {
        double body = 0.150;
        QuickVoyage plain = quick(new Piece(BALL, body, Piece.Makeup.usual()), Release.DROPPED);
        double rise = plain.riseTime();
        assertThat(plain.outcome()).isEqualTo(Voyage.Outcome.RISES_LATER);
        QuickVoyage salted =
                quick(new Piece(Loaded.with(BALL, SALT), body + 0.006, Piece.Makeup.usual()), Release.DROPPED);
        assertThat(salted.outcome()).isEqualTo(Voyage.Outcome.RISES_LATER);
        assertThat(salted.riseTime()).isCloseTo(rise, within(1e-3 * rise));
    }

    /** ANALYTIC: a thing in the wall of a boat takes no room from it: the rim limit is that of the whole outside. */
    @Test
    void thingInTheWallOfABoat() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        Shape loaded = Loaded.with(bowl, new Inset(0.004, 4e-6), new Vec3(0, 0, 0.0075));
        double limit = BATH.density() * bowl.hullVolume();
        // the wet skin weighs as well: none is set
        for (Shape shape : new Shape[] {bowl, loaded}) {
            double mass = heaviestBoat(shape);
            assertThat(mass).isCloseTo(limit, within(1e-3 * limit));
        }
    }

    private static double heaviestBoat(Shape shape) {
        double low = 0.15;
        double high = 0.25;
        for (int i = 0; i < 30; i++) {
            double middle = (low + high) / 2;
            boolean boat = FullVoyage.of(VoyageForm.of(shape, Release.PLACED), BATH)
                    .run(new Piece(shape, middle, Piece.Makeup.usual()), FIZZ, new VoyageParameters(0, 0.1))
                    .events()
                    .stream()
                    .noneMatch(event -> event.kind() == Voyage.Event.Kind.SWAMPS && event.time() == 0);
            low = boat ? middle : low;
            high = boat ? high : middle;
        }
        return low;
    }

    private static QuickVoyage quick(Piece piece, Release release) {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(piece.shape(), release), BATH);
        voyage.run(Launch.of(piece, BATH, FIZZ, WATER));
        return voyage;
    }

    private static Voyage full(Piece piece, Release release) {
        return FullVoyage.of(VoyageForm.of(piece.shape(), release), BATH).run(Launch.of(piece, BATH, FIZZ, WATER));
    }
}
