package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.RestingAttitude;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How bodies lie, in closed form, and that it does not hang on how they are listed. */
class RestingAttitudeTest {
    /** ANALYTIC: heights and shadows of bodies on their nearest side, mm and mm2. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sphere(diameter=65 mm)                                    | 65 | 3318.307
            dome(diameter=80 mm)                                      | 40 | 5026.548
            puck(diameter=70 mm, height=28 mm)                        | 28 | 3848.451
            puck(diameter=20 mm, height=200 mm)                       | 20 | 4000
            block(length=60 mm, width=40 mm, height=30 mm)            | 30 | 2400
            block(length=30 mm, width=60 mm, height=40 mm)            | 30 | 2400
            capsule(diameter=40 mm, length=90 mm)                     | 40 | 3256.637
            ring(diameter=90 mm, tube=30 mm)                          | 30 | 5654.867
            star(points=5, diameter=80 mm, inner=45 mm, height=30 mm) | 30 | 2645.033
            """)
    void heightAndShadow(String text, double height, double area) {
        RestingAttitude rest = ShapeText.read(text).restingAttitude();
        assertThat(rest.height()).isCloseTo(height / 1e3, within(1e-9));
        assertThat(rest.planArea()).isCloseTo(area / 1e6, within(2e-4 * area / 1e6));
    }

    /** ANALYTIC: a full cone of radius R and height H lies on its side where H/4 is more than 3/4 H R/sqrt(R^2 + H^2). */
    @ParameterizedTest
    @CsvSource({"60, 60, false", "60, 84, false", "60, 86, true", "60, 120, true"})
    void cones(double diameter, double height, boolean onItsSide) {
        String text = "cone(diameter=" + diameter + " mm, top=0 mm, height=" + height + " mm)";
        RestingAttitude rest = ShapeText.read(text).restingAttitude();
        assertThat(Math.abs(rest.nearest().z()) < 0.9).isEqualTo(onItsSide);
    }

    /** By hulls: what a kind says in closed form is what the search over its closed surface finds. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "egg(length=70 mm, diameter=50 mm)",
                "egg(length=51 mm, diameter=50 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm)",
                "block(length=30 mm, width=60 mm, height=40 mm)",
                "block(length=60 mm, width=30 mm, height=40 mm)",
                "block(length=60 mm, width=30 mm, height=40 mm, edge=6 mm)",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "star(points=5, diameter=80 mm, inner=20 mm, height=64 mm)",
                "star(points=5, diameter=80 mm, inner=20 mm, height=66 mm)",
                "star(points=4, diameter=80 mm, inner=70 mm, height=68 mm)",
                "star(points=4, diameter=80 mm, inner=70 mm, height=72 mm)",
                "star(points=3, diameter=80 mm, inner=60 mm, height=80 mm)",
                "heart(width=70 mm, height=28 mm)",
                "heart(width=70 mm, height=60 mm)",
                "dome(diameter=80 mm)",
                "dome(diameter=80 mm, height=12 mm)",
                "ring(diameter=90 mm, tube=30 mm)",
                "ring(diameter=90 mm, tube=45 mm)",
                "cone(diameter=60 mm, height=70 mm)",
                "cone(diameter=60 mm, height=84.8 mm)",
                "cone(diameter=60 mm, height=84.9 mm)",
                "cone(diameter=60 mm, height=50 mm, top=40 mm)",
                "cone(diameter=60 mm, height=50 mm, top=60 mm)",
                "cone(diameter=60 mm, height=90 mm, top=60 mm)",
                "bowl(diameter=90 mm, wall=15 mm)",
                "bowl(diameter=90 mm, wall=44 mm)",
                "bowl(diameter=90 mm, wall=2 mm)"
            })
    void closedFormsFindWhatTheSearchFinds(String text) {
        Shape shape = ShapeText.read(text);
        RestingAttitude told = shape.restingAttitude();
        RestingAttitude found = RestingAttitude.of(shape.hull().orElseThrow(), shape.planArea());
        assertThat(told.height())
                .isCloseTo(
                        found.height(), within(1e-9 + 1e-3 * shape.hull().get().relativeError()));
        // a shadow of a rounded block is that of its facets, an egg's a sum of strips
        assertThat(told.planArea()).isCloseTo(found.planArea(), within(2e-3 * found.planArea()));
        assertThat(Math.abs(told.nearest().z()))
                .isCloseTo(Math.abs(found.nearest().z()), within(1e-6));
    }

    /** ANALYTIC: twenty random turns change nothing: nearest side, height, shadow, to the rounding of the search. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "dome(diameter=80 mm)",
                "puck(diameter=70 mm, height=28 mm)",
                "puck(diameter=70 mm, height=28 mm, edge=5 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm, edge=6 mm)",
                "egg(length=70 mm, diameter=50 mm)",
                "capsule(diameter=40 mm, length=90 mm)",
                "cone(diameter=60 mm, height=80 mm)",
                "ring(diameter=90 mm, tube=30 mm)",
                "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                "heart(width=70 mm, height=28 mm)",
                "bowl(diameter=90 mm, wall=15 mm)",
                "geode(diameter=80 mm, wall=14 mm, crystals=20 g)"
            })
    void turningChangesNothing(String text) {
        Shape shape = ShapeText.read(text);
        TriangleMesh mesh = ShapeMeshes.of(shape, 24);
        RestingAttitude listed = RestingAttitude.of(new PolyhedronHull(mesh, 0), shadow(mesh));
        SplittableRandom random = new SplittableRandom(16);
        for (int turn = 0; turn < 20; turn++) {
            TriangleMesh turned = ShapeMeshes.turned(mesh, random);
            RestingAttitude there = RestingAttitude.of(new PolyhedronHull(turned, 0), shadow(turned));
            assertThat(there.height()).isCloseTo(listed.height(), within(1e-6 * listed.height()));
            assertThat(there.planArea()).isCloseTo(listed.planArea(), within(2e-4 * listed.planArea()));
        }
        // and the closed form of the kind is near its mesh of 24 sides
        assertThat(shape.restingAttitude().height()).isCloseTo(listed.height(), within(0.02 * listed.height()));
        assertThat(shape.restingAttitude().planArea()).isCloseTo(listed.planArea(), within(0.02 * listed.planArea()));
    }

    /**
     * ANALYTIC: nearly awash, no other way up has less potential energy: height of the centroid over that of the displaced
     * water, by cuts of the hull in 300 random directions.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "dome(diameter=80 mm)",
                "puck(diameter=70 mm, height=28 mm)",
                "block(length=60 mm, width=40 mm, height=30 mm)",
                "egg(length=70 mm, diameter=50 mm)",
                "capsule(diameter=40 mm, length=90 mm)",
                "cone(diameter=60 mm, height=80 mm)",
                "heart(width=70 mm, height=28 mm)"
            })
    void nearlyAwashItIsTheLeastEnergy(String text) {
        Shape shape = ShapeText.read(text);
        Hull hull = shape.hull().orElseThrow();
        double least = energy(hull, shape.restingAttitude().nearest());
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 300; i++) {
            assertThat(energy(hull, ShapeMeshes.direction(random))).isGreaterThan(least - 1e-7);
        }
    }

    /** ANALYTIC: a ball by outline has no side: any of its facets is as near as any other to the chord error. */
    @Test
    void aBallLiesAnyWay() {
        TriangleMesh mesh = ShapeMeshes.of(ShapeText.read("sphere(diameter=65 mm)"), 48);
        SplittableRandom random = new SplittableRandom(5);
        for (int turn = 0; turn < 20; turn++) {
            TriangleMesh turned = ShapeMeshes.turned(mesh, random);
            RestingAttitude rest = RestingAttitude.of(new PolyhedronHull(turned, 0), shadow(turned));
            assertThat(rest.height()).isCloseTo(0.065, within(5e-3 * 0.065));
            assertThat(rest.planArea()).isCloseTo(Math.PI / 4 * 0.065 * 0.065, within(5e-3 * 3.318e-3));
        }
    }

    @Test
    void shapesWithoutAHullLieAsListed() {
        Shape figure = ShapeText.read("filled(water=143 g, like=figure)");
        assertThat(figure.restingAttitude().planArea()).isEqualTo(figure.planArea());
    }

    private static double energy(Hull hull, Vec3 up) {
        double low = -hull.reach(-up.x(), -up.y(), -up.z());
        double high = hull.reach(up.x(), up.y(), up.z());
        PlaneCut cut = new PlaneCut();
        for (int pass = 0; pass < 60; pass++) {
            double level = (low + high) / 2;
            hull.cut(up.x(), up.y(), up.z(), level, cut);
            if (cut.volume < 0.998 * hull.volume()) {
                low = level;
            } else {
                high = level;
            }
        }
        Vec3 buoyancy = new Vec3(cut.mx, cut.my, cut.mz).times(1 / cut.volume);
        return up.dot(hull.centroid()) - up.dot(buoyancy);
    }

    private static double shadow(TriangleMesh mesh) {
        return Silhouette.area(mesh);
    }
}
