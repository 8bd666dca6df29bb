package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;

/** Pieces taller than the bath is deep: on the bottom they stand out of the water. */
class ShallowBathTest {
    private static final double DEPTH = 0.05;
    private static final Bath BATH = Bath.at(celsius(38)).withDepth(DEPTH);

    /** 5 mm/min, no layer of gas, no plume, no water in the pores: only the ball's own buoyancy is left. */
    private static final FizzParameters FIZZ = new FizzParameters(5e-3 / 60, 0, 0, 0, 1e-3, 0, 0, 0.65);

    private static final VoyageParameters DRY = new VoyageParameters(0, 0);

    /** ANALYTIC: a cap of a depth H covers x^2 (3 - 2 x) of a ball, x = H/2R; where that is its density it lifts off. */
    @Test
    void aBallRunsAgroundAndLiftsOffWhenItIsSmallEnough() {
        Shape ball = ShapeText.read("sphere(diameter=65 mm)");
        Voyage voyage = full(ball, 950, BATH);
        Voyage.Event lift = event(voyage, Voyage.Event.Kind.LIFT_OFF);
        assertThat(event(voyage, Voyage.Event.Kind.BOTTOM).time()).isLessThan(1);
        assertThat(voyage.outcome()).isEqualTo(Voyage.Outcome.RISES_LATER);
        assertThat(voyage.riseTime().orElseThrow()).isEqualTo(lift.time());
        double low = 0.5;
        double high = 1;
        for (int i = 0; i < 60; i++) {
            double x = (low + high) / 2;
            if (x * x * (3 - 2 * x) < 950 / BATH.density()) {
                low = x;
            } else {
                high = x;
            }
        }
        int row = 0;
        while (voyage.series().time()[row] < lift.time()) {
            row++;
        }
        assertThat(voyage.series().size()[row]).isCloseTo(DEPTH / low, within(1e-5 * DEPTH));
        assertThat(voyage.notices()).extracting(Notice::code).containsExactly("shallow-bath");
        QuickVoyage quick = quick(ball, 950, BATH);
        assertThat(quick.outcome()).isEqualTo(Voyage.Outcome.RISES_LATER);
        assertThat(quick.riseTime()).isCloseTo(lift.time(), within(0.5));
        assertThat(quick.fizzTime()).isCloseTo(voyage.fizzTime(), within(5.0));
    }

    /** What does not reach the bottom floats as in deep water; what is heavy stays down; the quick voyage agrees. */
    @Test
    void lightOnesFloatAndHeavyOnesStay() {
        Bath deep = Bath.at(celsius(38));
        for (String text :
                new String[] {"sphere(diameter=65 mm)", "block(length=140 mm, width=120 mm, height=110 mm)"}) {
            Shape shape = ShapeText.read(text);
            Voyage light = full(shape, 300, BATH);
            assertThat(light.outcome()).isEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);
            assertThat(light.fizzTime()).isCloseTo(full(shape, 300, deep).fizzTime(), within(0.5));
            assertThat(full(shape, 1300, BATH).outcome()).isEqualTo(Voyage.Outcome.STAYS_DOWN);
            assertThat(quick(shape, 300, BATH).outcome()).isEqualTo(Voyage.Outcome.FLOATS_AT_ONCE);
            assertThat(quick(shape, 1300, BATH).outcome()).isEqualTo(Voyage.Outcome.STAYS_DOWN);
        }
    }

    /**
     * ANALYTIC: a cube's draft over its side is its density over that of the water; where that is the depth it is let
     * off the bottom, however large, and lies there at rest.
     */
    @Test
    void aLargeCubeLiftsOffAndComesToRest() {
        Bath tub = Bath.at(celsius(38));
        Shape cube = ShapeText.read("cube(side=791 mm)");
        Voyage voyage = full(cube, 600, tub);
        Voyage.Event lift = event(voyage, Voyage.Event.Kind.LIFT_OFF);
        List<Voyage.Event> after = voyage.events().stream()
                .filter(e -> e.time() >= lift.time() && e.kind() == Voyage.Event.Kind.SETTLES)
                .toList();
        assertThat(after).as(voyage.events().toString()).hasSize(1);
        assertThat(after.get(0).time()).isCloseTo(lift.time(), within(1.0));
        int row = 0;
        while (voyage.series().time()[row] < lift.time()) {
            row++;
        }
        double side = tub.depth() * tub.density() / 600;
        assertThat(voyage.series().size()[row]).isCloseTo(side, within(1e-5 * side));
    }

    /** An egg lies on its side: 5 cm of water just cover it, and it goes down and comes up as in deep water. */
    @Test
    void whatIsJustCoveredSinks() {
        Shape egg = ShapeText.read("egg(length=70 mm, diameter=50 mm)");
        Voyage voyage = full(egg, 1100, BATH);
        assertThat(voyage.outcome()).isEqualTo(Voyage.Outcome.STAYS_DOWN);
        assertThat(voyage.events().get(0).kind()).isEqualTo(Voyage.Event.Kind.BOTTOM);
        assertThat(voyage.notices()).isEmpty();
    }

    private static Voyage.Event event(Voyage voyage, Voyage.Event.Kind kind) {
        List<Voyage.Event> found =
                voyage.events().stream().filter(e -> e.kind() == kind).toList();
        assertThat(found).as(voyage.events().toString()).isNotEmpty();
        return found.get(0);
    }

    private static Voyage full(Shape shape, double density, Bath bath) {
        return FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), bath)
                .run(new Piece(shape, density * shape.volume(), Piece.Makeup.usual()), FIZZ, DRY);
    }

    private static QuickVoyage quick(Shape shape, double density, Bath bath) {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(shape, Release.DROPPED), bath);
        Piece piece = new Piece(shape, density * shape.volume(), Piece.Makeup.usual());
        voyage.run(Launch.of(piece, bath, FIZZ, DRY));
        return voyage;
    }
}
