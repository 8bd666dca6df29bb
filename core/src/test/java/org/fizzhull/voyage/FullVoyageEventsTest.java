package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.fizzhull.quantity.Units.celsius;

import java.util.List;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.hydrostatics.Draft;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Makeup;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.voyage.result.Outcome;
import org.fizzhull.voyage.result.Voyage;
import org.fizzhull.voyage.result.VoyageEvent;
import org.fizzhull.voyage.result.VoyageEvent.Kind;
import org.junit.jupiter.api.Test;

/** Events of the full voyage in their order and at their times, for balls and bowls without gas, by Archimedes and geometry. */
class FullVoyageEventsTest {
    private static final double R = 0.0325;
    private static final double WHOLE = 4 * Math.PI / 3 * R * R * R;
    private static final double SPEED = 5e-3 / 60;
    private static final Bath BATH = Bath.at(celsius(38));
    private static final double RHO = BATH.density();
    private static final Shape BALL = Sphere.ofDiameter(2 * R);
    private static final FizzParameters FIZZ = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 0.65);
    private static final VoyageParameters DRY = new VoyageParameters(0, 0);

    private static Voyage voyage(Shape shape, double mass, Release release) {
        return FullVoyage.of(VoyageForm.of(shape, release), BATH)
                .run(new Piece(shape, mass, Makeup.usual()), FIZZ, DRY);
    }

    private static List<Kind> kinds(Voyage voyage) {
        return voyage.events().stream().map(VoyageEvent::kind).distinct().toList();
    }

    private static double time(Voyage voyage, Kind kind) {
        return voyage.events().stream()
                .filter(it -> it.kind() == kind)
                .mapToDouble(VoyageEvent::time)
                .findFirst()
                .orElseThrow();
    }

    /** Heavier than water it goes under, comes to lie on the bottom and stays; wet all over it lasts (1 - 0.01^(1/3)) R/v. */
    @Test
    void aBallThatSinks() {
        Voyage voyage = voyage(BALL, 1.2 * RHO * WHOLE, Release.DROPPED);
        assertThat(kinds(voyage)).containsExactly(Kind.SINKS, Kind.BOTTOM, Kind.END);
        assertThat(voyage.outcome()).isEqualTo(Outcome.STAYS_DOWN);
        // half of it is dry for the moment in which it goes under
        assertThat(voyage.fizzTime())
                .isCloseTo(R * (1 - Math.cbrt(0.01)) / SPEED, within(time(voyage, Kind.SINKS) + 0.05));
        assertThat(voyage.floatsToTheEnd()).isFalse();
    }

    /** At half the density of water it lies half under at once, x = 1/2, and dissolves at half the speed. */
    @Test
    void aBallThatFloats() {
        Voyage voyage = voyage(BALL, 0.5 * RHO * WHOLE, Release.DROPPED);
        assertThat(kinds(voyage)).containsExactly(Kind.SETTLES, Kind.END);
        assertThat(time(voyage, Kind.SETTLES)).isLessThan(0.1);
        assertThat(voyage.fizzTime()).isCloseTo(2 * R * (1 - Math.cbrt(0.01)) / SPEED, withinPercentage(0.1));
        assertThat(voyage.outcome()).isEqualTo(Outcome.FLOATS_AT_ONCE);
        assertThat(voyage.floatsToTheEnd()).isTrue();
        assertThat(voyage.sinksLater()).isFalse();
    }

    /** Round a core it floats until V (rho - rho_b) = m_c - rho V_c, then goes down to the bottom. */
    @Test
    void aCoreThatPullsItUnder() {
        Shape shape = Loaded.with(BALL, new Inset(0.020, 10e-6));
        double light = 0.8 * RHO;
        Voyage voyage = voyage(shape, light * shape.volume() + 0.020, Release.DROPPED);
        assertThat(voyage.sinksLater()).isTrue();
        assertThat(voyage.floatsToTheEnd()).isFalse();
        double under = (0.020 - RHO * 10e-6) / (RHO - light);
        double time = 0;
        double end = Math.cbrt(3 * (under + 10e-6) / (4 * Math.PI));
        int steps = 4000;
        for (int i = 0; i < steps; i++) {
            double r = end + (R - end) * (i + 0.5) / steps;
            double room = 4 * Math.PI / 3 * r * r * r;
            double load = light * (room - 10e-6) + 0.020;
            time += (R - end) / steps / (SPEED * Draft.ballDraft(Math.min(1, load / (RHO * room))));
        }
        // it bobs under for a moment after the drop; then down for good
        double sinks = voyage.events().stream()
                .filter(it -> it.kind() == Kind.SINKS)
                .mapToDouble(VoyageEvent::time)
                .max()
                .orElseThrow();
        assertThat(sinks).isCloseTo(time, within(4.0));
        assertThat(time(voyage, Kind.BOTTOM)).isBetween(sinks, sinks + 10);
        assertThat(kinds(voyage)).endsWith(Kind.BOTTOM, Kind.END);
    }

    /** A boat at its limit swamps at once; a light one lies still until its wall of 15 mm is eaten through, 180 s. */
    @Test
    void boats() {
        Shape bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        double closed = 2 * Math.PI / 3 * Math.pow(0.045, 3);
        Voyage heavy = voyage(bowl, 1.01 * RHO * closed, Release.PLACED);
        assertThat(heavy.events().get(0)).isEqualTo(new VoyageEvent(Kind.SWAMPS, 0));
        assertThat(kinds(heavy)).contains(Kind.BOTTOM).endsWith(Kind.END);
        assertThat(heavy.outcome()).isEqualTo(Outcome.STAYS_DOWN);
        Voyage light = voyage(bowl, 0.4 * RHO * closed, Release.PLACED);
        assertThat(light.outcome()).isEqualTo(Outcome.FLOATS_AT_ONCE);
        if (kinds(light).contains(Kind.PIERCED)) {
            assertThat(time(light, Kind.PIERCED)).isCloseTo(0.015 / SPEED, within(1e-3));
        } else {
            assertThat(time(light, Kind.SWAMPS)).isLessThan(0.015 / SPEED);
        }
        // its depth in the first row: the share of the closed half ball that its weight displaces
        assertThat(light.series().immersed()[0]).isCloseTo(0.4, within(1e-6));
    }

    @Test
    void tolerances() {
        FullVoyage voyages = FullVoyage.of(VoyageForm.of(BALL, Release.DROPPED), BATH);
        Piece piece = new Piece(BALL, 1.2 * RHO * WHOLE, Makeup.usual());
        double usual = voyages.run(piece, FIZZ, DRY).fizzTime();
        // by the error that is told of the usual tolerance, 3e-4
        for (double tolerance : new double[] {1e-3, 1e-10}) {
            assertThat(voyages.accurateTo(tolerance).run(piece, FIZZ, DRY).fizzTime())
                    .isCloseTo(usual, withinPercentage(tolerance > 1e-6 ? 0.3 : 0.03));
        }
        for (double wrong : new double[] {0.9e-12, 1.1e-3, Double.NaN}) {
            assertThatThrownBy(() -> voyages.accurateTo(wrong)).isInstanceOf(IllegalArgumentException.class);
        }
    }
}
