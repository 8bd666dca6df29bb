package org.fizzhull.voyage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.celsius;

import java.util.SplittableRandom;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.medium.Bath;
import org.fizzhull.piece.Piece;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.voyage.result.Voyage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** ANALYTIC: the answer belongs to the body, not to the way it is listed. */
class TurnedVoyageTest {
    private static final Bath BATH = Bath.at(celsius(38));
    private static final FizzParameters FIZZ = FizzParameters.standard();
    private static final VoyageParameters WATER = VoyageParameters.standard();

    /** A block listed three ways: the same drop, the same voyages. */
    @Test
    void aBlockListedThreeWays() {
        String[] sizes = {
            "length=70 mm, width=50 mm, height=35 mm",
            "length=35 mm, width=70 mm, height=50 mm",
            "length=50 mm, width=35 mm, height=70 mm"
        };
        Shape first = ShapeText.read("block(" + sizes[0] + ")");
        for (double density : new double[] {980, 1010, 1050}) {
            for (String size : sizes) {
                same(first, ShapeText.read("block(" + size + ")"), density, 1e-9, 1e-3);
            }
        }
    }

    /** Meshes of the kinds that were found to hang on their listing, upside down and turned at random. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            dome(diameter=80 mm)                            | 1000
            capsule(diameter=40 mm, length=90 mm)           | 1015
            block(length=70 mm, width=50 mm, height=35 mm)  | 1030
            """)
    void aMeshTurned(String text, double density) {
        SplittableRandom random = new SplittableRandom(11);
        Shape known = MeshShape.of("a.stl", "m", ShapeMeshes.of(ShapeText.read(text), 24));
        for (int turn = 0; turn < 2; turn++) {
            Shape turned =
                    MeshShape.of("b.stl", "m", ShapeMeshes.turned(ShapeMeshes.of(ShapeText.read(text), 24), random));
            same(known, turned, density, 2e-4, 0.01);
        }
        assertThat(spare(ShapeText.read(text), density))
                .isCloseTo(spare(known, density), within(0.02 * known.volume() * 1000));
    }

    private static void same(Shape one, Shape other, double density, double near, double times) {
        double displaced = 1000 * one.volume();
        assertThat(spare(other, density)).isCloseTo(spare(one, density), within(near * displaced));
        QuickVoyage a = quick(one, density);
        QuickVoyage b = quick(other, density);
        assertThat(b.outcome()).isEqualTo(a.outcome());
        assertThat(b.fizzTime()).isCloseTo(a.fizzTime(), within(times * a.fizzTime()));
        Voyage c = full(one, density);
        Voyage d = full(other, density);
        assertThat(d.outcome()).isEqualTo(c.outcome());
        assertThat(d.fizzTime()).isCloseTo(c.fizzTime(), within(times * c.fizzTime()));
    }

    private static Piece piece(Shape shape, double density) {
        return new Piece(shape, density * shape.volume(), Piece.Makeup.usual());
    }

    private static double spare(Shape shape, double density) {
        return new DropBalance(shape, BATH).fizzing(Launch.of(piece(shape, density), BATH, FIZZ, WATER));
    }

    private static QuickVoyage quick(Shape shape, double density) {
        QuickVoyage voyage = new QuickVoyage(VoyageForm.of(shape, Release.DROPPED), BATH);
        voyage.run(Launch.of(piece(shape, density), BATH, FIZZ, WATER));
        return voyage;
    }

    private static Voyage full(Shape shape, double density) {
        return FullVoyage.of(VoyageForm.of(shape, Release.DROPPED), BATH).run(piece(shape, density), FIZZ, WATER);
    }
}
