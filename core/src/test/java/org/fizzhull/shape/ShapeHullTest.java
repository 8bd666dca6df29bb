package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.HashSet;
import java.util.Set;
import org.fizzhull.geometry.Extents;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The surface handed to hydrostatics is that of the shape. Origin of every expectation: analytic. */
class ShapeHullTest {

    @ParameterizedTest
    @MethodSource("org.fizzhull.shape.ShapeBattery#texts")
    void enclosesTheShape(String text) {
        Shape shape = ShapeText.read(text);
        Extents box = shape.extents();
        if (shape.hull().isEmpty()) {
            assertThat(text).containsAnyOf("like=shell", "like=figure");
            return;
        }
        Hull hull = shape.hull().get();
        double size = box.length() + box.width() + box.height();
        assertThat(hull.volume()).isCloseTo(shape.volume(), within(1e-12 * shape.volume()));
        // Facets of a heart have the area of its lobes, not their centroid: that is what relativeError covers.
        double slack = size * (1e-12 + hull.relativeError());
        assertThat(hull.centroid().minus(shape.centroid()).norm()).isLessThan(slack);
        assertThat(hull.reach(0, 0, -1)).isCloseTo(0, within(1e-12 * size));
        assertThat(hull.reach(0, 0, 1)).isCloseTo(box.height(), within(1e-12 * size));
        assertThat(hull.reach(1, 0, 0) + hull.reach(-1, 0, 0)).isCloseTo(box.length(), within(slack));
        assertThat(hull.reach(0, 1, 0) + hull.reach(0, -1, 0)).isCloseTo(box.width(), within(slack));
        assertThat(hull.relativeError()).isBetween(0.0, 0.01);
    }

    @Test
    void bowlClosedByItsRimIsHalfABall() {
        Hollow hollow = Bowl.ofDiameterAndWall(0.09, 0.015).hollow().orElseThrow();
        double half = 2 * Math.PI * Math.pow(0.045, 3) / 3;
        assertThat(hollow.closed().volume()).isCloseTo(half, within(1e-12 * half));
        assertThat(hollow.rimHeight()).isEqualTo(0.045);
        assertThat(-hollow.rim().lowest(1, 0, 0)).isEqualTo(0.045);
        double inside = 2 * Math.PI * Math.pow(0.03, 3) / 3;
        assertThat(hollow.volume()).isCloseTo(inside, within(1e-12 * inside));
    }

    /** Every edge of a closed surface is run once each way, and no facet is flat to nothing. */
    @Test
    void meshesAreClosed() {
        closed(((PolyhedronHull) Block.ofSides(0.06, 0.04, 0.03).hull().orElseThrow()).mesh(), 12);
        closed(
                ((PolyhedronHull) Block.ofSidesAndEdge(0.06, 0.04, 0.03, 0.008)
                                .hull()
                                .orElseThrow())
                        .mesh(),
                1300);
        closed(
                ((PolyhedronHull) Block.ofSidesAndEdge(0.03, 0.03, 0.03, 0.015)
                                .hull()
                                .orElseThrow())
                        .mesh(),
                1300);
        closed(Heart.ofWidthAndHeight(0.07, 0.028).mesh(), 300);
    }

    private static void closed(TriangleMesh mesh, int most) {
        assertThat(mesh.facetCount()).isLessThanOrEqualTo(most);
        Set<Long> edges = new HashSet<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                long from = mesh.corner(f, k);
                long to = mesh.corner(f, (k + 1) % 3);
                assertThat(from).isNotEqualTo(to);
                assertThat(edges.add(from << 32 | to)).isTrue();
            }
        }
        for (long edge : edges) {
            assertThat(edges).contains(edge << 32 | edge >>> 32);
        }
    }

    /** Cut volumes of the facets against the exact part under a level plane, V(z) - at most the stated error. */
    @ParameterizedTest
    @CsvSource({"0.06, 0.04, 0.03, 0.008", "0.05, 0.05, 0.05, 0.02"})
    void roundedBlockUnderALevelPlane(double l, double w, double h, double e) {
        Hull hull = Block.ofSidesAndEdge(l, w, h, e).hull().orElseThrow();
        double x = l - 2 * e;
        double y = w - 2 * e;
        // The lower rim up to height e: section xy + 2(x + y) rho + pi rho^2 over a quarter arc.
        double rim = x * y * e + (x + y) * Math.PI * e * e / 2 + 2 * Math.PI * e * e * e / 3;
        PlaneCut cut = new PlaneCut();
        hull.cut(0, 0, 1, e, cut);
        assertThat(cut.volume).isCloseTo(rim, within(hull.relativeError() * hull.volume()));
    }
}
