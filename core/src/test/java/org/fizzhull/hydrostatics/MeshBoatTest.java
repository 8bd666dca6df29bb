package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.BoxBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.meshed.MeshShape;
import org.fizzhull.shape.revolved.ProfilePoints;
import org.fizzhull.shape.revolved.RevolvedShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Meshes as boats: bowls against their closed forms, box trays against the formulas of wall-sided bodies. ANALYTIC. */
class MeshBoatTest {
    private static final double WATER = 1000;

    private static MeshShape shape(TriangleMesh mesh) {
        DepthProfile any = Sphere.ofDiameter(0.05).depthProfile(DepthProfile.Exposure.ALL);
        return MeshShape.of("a.stl", "mm", mesh, exposure -> any);
    }

    private static MeshShape tray(double from, double to) {
        return shape(new BoxBodies()
                .add(-40, -30, 0, 40, 30, 40)
                .take(from, -20, 10, to, 20, 40)
                .mesh());
    }

    /** Bowl 90/15 mm of more and more facets: errors of the second order, so a quarter each time. */
    @ParameterizedTest
    @ValueSource(ints = {24, 48, 96})
    void bowl(int around) {
        Bowl bowl = Bowl.ofDiameterAndWall(0.09, 0.015);
        MeshShape mesh = shape(ShapeMeshes.of(bowl, around));
        Hollow hollow = mesh.hollow().orElseThrow();
        double turned = 1 - around * Math.sin(2 * Math.PI / around) / (2 * Math.PI);
        double error = 1.5 * turned + 1e-3;
        double mass = 0.15;
        Boat exact = Boat.of(bowl.hollow().orElseThrow(), bowl.centroid(), mass / WATER);
        Boat found = Boat.of(hollow, mesh.centroid(), mass / WATER);
        assertThat(found.up().z()).isCloseTo(1, within(1e-12));
        assertThat(found.draft()).isCloseTo(exact.draft(), within(error * 0.045));
        assertThat(found.rimFreeboard()).isCloseTo(exact.rimFreeboard(), within(error * 0.045));
        assertThat(found.rimDips()).isCloseTo(exact.rimDips(), within(error * 1.5));
        assertThat(found.gmSmaller()).isCloseTo(exact.gmSmaller(), within(3 * error * exact.gmSmaller()));
        assertThat(found.gmLarger()).isCloseTo(exact.gmLarger(), within(3 * error * exact.gmLarger()));
        assertThat(BoatLimit.displaced(mesh, WATER))
                .isCloseTo(BoatLimit.displaced(bowl, WATER), within(error * bowl.hullVolume()));
        assertThat(BoatLimit.stands(mesh, mass, WATER)).isTrue();
    }

    /** A tray of 80 x 60 x 40 mm lies m/(a b) deep; a corner of it dips at tan = freeboard over the half diagonal. */
    @ParameterizedTest
    @CsvSource({"0.144, 30", "0.168, 35"})
    void levelTray(double mass, double draft) {
        MeshShape tray = tray(-30, 30);
        Boat boat = Boat.of(tray.hollow().orElseThrow(), tray.centroid(), mass / WATER);
        assertThat(boat.draft()).isCloseTo(draft / 1000, within(1e-9));
        assertThat(boat.rimFreeboard()).isCloseTo((40 - draft) / 1000, within(1e-9));
        assertThat(Math.tan(boat.rimDips())).isCloseTo((40 - draft) / 50, within(1e-7));
        // KB + BM - KG
        double kg = (192 * 20 - 72 * 25) / 120.0;
        assertThat(boat.gmSmaller()).isCloseTo((draft / 2 + 60 * 60 / (12 * draft) - kg) / 1000, within(1e-8));
        assertThat(boat.gmLarger()).isCloseTo((draft / 2 + 80 * 80 / (12 * draft) - kg) / 1000, within(1e-8));
        assertThat(BoatLimit.displaced(tray, WATER)).isCloseTo(192e-6, within(1e-11));
    }

    /** With its pocket off the middle it leans: e = tan (GM + BM tan^2/2) for a wall-sided body. */
    @Test
    void trayThatLeans() {
        MeshShape tray = tray(-30, 20);
        double e = 5 * 60 / 132.0;
        double kg = (192 * 20 - 60 * 25) / 132.0;
        assertThat(tray.centroid().x()).isCloseTo(e / 1000, within(1e-12));
        double tangent = lean(80, e, kg, 30);
        Boat boat = Boat.of(tray.hollow().orElseThrow(), tray.centroid(), 144e-6);
        assertThat(-boat.up().x() / boat.up().z()).isCloseTo(tangent, within(1e-8));
        double freeboard = (10 - 40 * tangent) / Math.hypot(1, tangent);
        assertThat(boat.rimFreeboard()).isCloseTo(freeboard / 1000, within(1e-9));
        assertThat(BoatLimit.stands(tray, 0.144, WATER)).isTrue();
        // the edge dips where 40 - T = 40 tan
        double dry = 30;
        double wet = 40;
        while (wet - dry > 1e-9) {
            double middle = (dry + wet) / 2;
            if (40 - middle > 40 * lean(80, e, kg, middle)) {
                dry = middle;
            } else {
                wet = middle;
            }
        }
        assertThat(BoatLimit.displaced(tray, WATER)).isCloseTo(80 * 60 * dry * 1e-9, within(1e-9));
        assertThat(BoatLimit.stands(tray, 80 * 60 * (dry + 0.1) * 1e-6, WATER)).isFalse();
    }

    /** Tangent of the lean of a body with vertical sides a beam apart, mm. */
    private static double lean(double beam, double e, double kg, double draft) {
        double bm = beam * beam / (12 * draft);
        double gm = draft / 2 + bm - kg;
        double t = 0;
        for (int pass = 0; pass < 60; pass++) {
            t -= (t * (gm + bm * t * t / 2) - e) / (gm + 1.5 * bm * t * t);
        }
        return t;
    }

    /** Over a notch water gets in before the walls go under: 80 x 60 x 30 mm. */
    @Test
    void spout() {
        MeshShape cup = shape(new BoxBodies()
                .add(-40, -30, 0, 40, 30, 40)
                .take(-30, -20, 10, 30, 20, 40)
                .take(-10, 20, 30, 10, 30, 40)
                .mesh());
        Hollow hollow = cup.hollow().orElseThrow();
        assertThat(Boat.limitMass(hollow, WATER)).isCloseTo(0.144, within(1e-8));
        Boat boat = Boat.of(hollow, cup.centroid(), 120e-6);
        // the notch lacks 2 cm3, so that its side comes up, and its inner edge is the lower one then
        double tangent = lean(60, 2 * 25 / 118.0, (192 * 20 - 72 * 25 - 2 * 35) / 118.0, 25);
        double freeboard = (30 - 25 + 20 * tangent) / Math.hypot(1, tangent);
        assertThat(boat.up().y() / boat.up().z()).isCloseTo(tangent, within(1e-8));
        assertThat(boat.rimFreeboard()).isCloseTo(freeboard / 1000, within(1e-9));
    }

    /** A tall cup tips where KB + BM is below KG, and not where the cup is low; of revolution and as a mesh. */
    @Test
    void tallCups() {
        double[] r = {0, 0.02, 0.02, 0.015, 0.015, 0};
        RevolvedShape tall =
                RevolvedShape.of("a.csv", ProfilePoints.profile(r, new double[] {0, 0, 0.09, 0.09, 0.005, 0.005}));
        RevolvedShape low =
                RevolvedShape.of("a.csv", ProfilePoints.profile(r, new double[] {0, 0, 0.02, 0.02, 0.005, 0.005}));
        for (Shape cup : new Shape[] {tall, shape(ShapeMeshes.of(tall, 60))}) {
            double draft = 0.06;
            double displaced = Math.PI * 0.02 * 0.02 * draft;
            assertThat(draft / 2 + 0.02 * 0.02 / (4 * draft))
                    .isLessThan(cup.centroid().z());
            assertThat(BoatLimit.stands(cup, displaced * WATER, WATER)).isFalse();
        }
        double draft = 0.012;
        assertThat(draft / 2 + 0.02 * 0.02 / (4 * draft))
                .isGreaterThan(low.centroid().z());
        assertThat(BoatLimit.stands(low, Math.PI * 0.02 * 0.02 * draft * WATER, WATER))
                .isTrue();
    }
}
