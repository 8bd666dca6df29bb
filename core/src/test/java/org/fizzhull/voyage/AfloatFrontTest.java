package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.SplittableRandom;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A piece that floats with a flat face up and dry. */
class AfloatFrontTest {
    private static final Bath BATH = Bath.at(celsius(38));

    /** Speed of the front of {@code bare}, m/s: slow, so that the first seconds, in which it bobs, count for nothing. */
    private static final double SPEED = 1e-5;

    /** No gas, no water in the pores: the recession alone. */
    private static final FizzParameters SLOW = new FizzParameters(SPEED, 0, 0, 0, 1e-3, 0, 0, 1);

    /** Usual parameters of the fizz. */
    private static final FizzParameters FIZZ = FizzParameters.standard();

    /**
     * ANALYTIC: of a sharp puck whose top alone stays dry, (1 - e/R)^2 (1 - e/H) is left at depth e, 0.01 of it at
     * 24.75 mm of 35 and 28 mm (solved by hand to 0.01 mm).
     */
    @Test
    void aPuckIsEatenFromBelowAndFromItsSide() {
        Shape puck = Puck.ofDiameterAndHeight(millimetres(70), millimetres(28));
        double way = SPEED * full(puck, 940, SLOW).fizzTime();
        assertThat(way).isCloseTo(24.75e-3, within(0.05e-3));
    }

    /** ANALYTIC: on the bottom every face recedes, whatever side is up: (1 - e/R)^2 (1 - 2 e/H), 13.63 mm. */
    @Test
    void aSunkPuckIsEatenFromEverySide() {
        Shape puck = Puck.ofDiameterAndHeight(millimetres(70), millimetres(28));
        double way = SPEED * full(puck, 1200, SLOW).fizzTime();
        assertThat(way).isCloseTo(13.63e-3, within(0.03e-3));
    }

    /** ANALYTIC: one body, in closed form or as a mesh, upright, upside down or turned at random: one life within 2 %. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "puck(diameter=70 mm, height=28 mm)",
                "dome(diameter=65 mm)",
                "cone(diameter=60 mm, height=30 mm, top=50 mm)",
                "block(length=25 mm, width=60 mm, height=40 mm)",
                "heart(width=70 mm, height=25 mm)",
                "sphere(diameter=65 mm)"
            })
    void aMeshLastsAsLongAsItsClosedForm(String text) {
        Shape known = ShapeText.read(text);
        double life = quick(known, 940, FIZZ).fizzTime();
        SplittableRandom random = new SplittableRandom(5);
        for (int turn = 0; turn < 2; turn++) {
            var mesh = ShapeMeshes.of(known, 48);
            Shape meshed = MeshShape.of("a.stl", "m", turn == 0 ? mesh : ShapeMeshes.turned(mesh, random));
            assertThat(quick(meshed, 940, FIZZ).fizzTime()).as(text).isCloseTo(life, within(0.02 * life));
        }
    }

    /**
     * ANALYTIC: the quick and the full voyage are one model, but for the few seconds in which the full one bobs with its
     * top awash: fizz times within 2 s.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            puck(diameter=70 mm, height=28 mm)                      | 930
            puck(diameter=70 mm, height=28 mm)                      | 980
            puck(diameter=70 mm, height=28 mm, edge=4 mm)           | 980
            dome(diameter=65 mm)                                    | 960
            heart(width=70 mm, height=25 mm)                        | 960
            block(length=60 mm, width=40 mm, height=25 mm)          | 1000
            bowl(diameter=80 mm, wall=12 mm)                        | 940
            """)
    void quickAndFullAgree(String text, double density) {
        Shape shape = ShapeText.read(text);
        double full = full(shape, density, FIZZ).fizzTime();
        assertThat(quick(shape, density, FIZZ).fizzTime()).isCloseTo(full, within(2.0));
    }

    /** ANALYTIC: a form for one voyage has the values of a whole one to the last bit. */
    @Test
    void oneVoyageIsThatOfTheWholeForm() {
        Shape heart = ShapeText.read("heart(width=70 mm, height=25 mm)");
        QuickVoyage once =
                new QuickVoyage(VoyageForm.forOneVoyage(heart, heart.restingAttitude(), Release.DROPPED), BATH);
        once.run(launch(heart, 960, FIZZ));
        assertThat(once.fizzTime()).isEqualTo(quick(heart, 960, FIZZ).fizzTime());
    }

    private static QuickVoyage quick(Shape shape, double density, FizzParameters fizz) {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(shape, Release.DROPPED), BATH);
        voyage.run(launch(shape, density, fizz));
        return voyage;
    }

    private static Voyage full(Shape shape, double density, FizzParameters fizz) {
        return FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), BATH).run(launch(shape, density, fizz));
    }

    private static Launch launch(Shape shape, double density, FizzParameters fizz) {
        VoyageParameters water = fizz.equals(SLOW) ? new VoyageParameters(0, 0) : VoyageParameters.standard();
        return Launch.of(new Piece(shape, density * shape.volume(), Piece.Makeup.usual()), BATH, fizz, water);
    }
}
