package org.fizzhull.shape.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.hollow.OpenHollows;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.shape.BoxBodies;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.revolved.ProfilePoints;
import org.fizzhull.shape.revolved.RevolvedShape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Open hollows of meshes against closed forms and sums of boxes. ANALYTIC. */
class MeshHollowTest {
    private static final double CM3 = 1e-6;
    private static final double[] UPSIDE_DOWN = {1, 0, 0, 0, -1, 0, 0, 0, -1};

    private static MeshHollow found(TriangleMesh mesh) {
        return MeshHollow.of(new PolyhedronHull(mesh, 0), OpenHollows.of(mesh));
    }

    private static Hollow hollow(TriangleMesh mesh) {
        Hollow hollow = found(mesh).hollow().orElseThrow();
        // what was closed is what the hollow held
        double closed = hollow.closed().volume() - MassProperties.of(mesh).volume();
        assertThat(hollow.volume())
                .isCloseTo(closed, within(1e-12 * hollow.closed().volume()));
        return hollow;
    }

    private static BoxBodies tray() {
        return new BoxBodies().add(-40, -30, 0, 40, 30, 40).take(-30, -20, 10, 30, 20, 40);
    }

    /** A turned mesh is the bowl it is made from, up to n sin(2 pi/n)/(2 pi) around and 64 chords an arc. */
    @ParameterizedTest
    @CsvSource({"90, 15, 48", "90, 15, 128", "80, 4, 100", "60, 15, 64"})
    void bowl(double diameter, double wall, int around) {
        Bowl bowl = Bowl.ofDiameterAndWall(diameter / 1000, wall / 1000);
        Hollow exact = bowl.hollow().orElseThrow();
        Hollow mesh = hollow(ShapeMeshes.of(bowl, around));
        double turned = around * Math.sin(2 * Math.PI / around) / (2 * Math.PI);
        assertThat(mesh.volume()).isCloseTo(turned * exact.volume(), within(1.5e-3 * exact.volume()));
        assertThat(mesh.carried()).isCloseTo(turned * exact.carried(), within(1.5e-3 * exact.carried()));
        assertThat(mesh.carried()).isCloseTo(mesh.closed().volume(), within(1e-8 * mesh.carried()));
        assertThat(mesh.rimHeight()).isCloseTo(exact.rimHeight(), within(1e-12));
        assertThat(mesh.rim().lowest(1, 0, 0)).isCloseTo(-diameter / 2000, within(1e-12));
        assertThat(mesh.rim().lowest(0, 0, 1)).isCloseTo(mesh.rimHeight(), within(1e-12));
        // between two chords that are side by side
        assertThat(mesh.wall()).isBetween(exact.wall() * Math.cos(Math.PI / around) * 0.999, exact.wall() * 1.0001);
    }

    /** A jar with a neck, its outline 3.1 times as wide inside as at the lip. */
    @Test
    void jar() {
        double[] r = {0, 0.04, 0.04, 0.02, 0.02, 0.03, 0.03, 0.005, 0.005, 0};
        double[] z = {0, 0, 0.05, 0.06, 0.05, 0.04, 0.01, 0.01, 0.03, 0.03};
        RevolvedShape jar = RevolvedShape.of("a.csv", ProfilePoints.profile(r, z));
        Hollow exact = jar.hollow().orElseThrow();
        int around = 90;
        Hollow mesh = hollow(ShapeMeshes.turned(jar.profile(), around));
        double turned = around * Math.sin(2 * Math.PI / around) / (2 * Math.PI);
        assertThat(mesh.volume()).isCloseTo(turned * exact.volume(), within(1e-9 * exact.volume()));
        assertThat(mesh.carried()).isCloseTo(turned * exact.carried(), within(1e-8 * exact.carried()));
        assertThat(exact.wall()).isCloseTo(0.01, within(1e-12));
        assertThat(mesh.wall()).isBetween(0.01 * Math.cos(Math.PI / around) - 1e-9, 0.01 + 1e-9);
    }

    @Test
    void trayWithItsPocket() {
        Hollow hollow = hollow(tray().mesh());
        assertThat(hollow.rimHeight()).isCloseTo(0.04, within(1e-12));
        assertThat(hollow.volume()).isCloseTo(72 * CM3, within(1e-12));
        assertThat(hollow.carried()).isCloseTo(192 * CM3, within(1e-11));
        assertThat(hollow.wall()).isCloseTo(0.01, within(1e-12));
        // its outer corner
        double d = Math.sqrt(0.5);
        assertThat(hollow.rim().lowest(-d, -d, 0)).isCloseTo(-0.07 * d, within(1e-12));
    }

    /** Water gets in over a notch; the walls beside it stand above the rim plane. */
    @Test
    void spout() {
        Hollow hollow = hollow(tray().take(30, -10, 30, 40, 10, 40).mesh());
        assertThat(hollow.rimHeight()).isCloseTo(0.03, within(1e-12));
        assertThat(hollow.volume()).isCloseTo(48 * CM3, within(1e-12));
        assertThat(hollow.carried()).isCloseTo(144 * CM3, within(1e-11));
        assertThat(hollow.closed().volume()).isCloseTo((144 + 24 - 2) * CM3, within(1e-12));
        // towards the notch its outer edge is reached first, away from it the far wall, which is higher
        double lean = Math.toRadians(30);
        double c = Math.cos(lean);
        double s = Math.sin(lean);
        assertThat(hollow.rim().lowest(-s, 0, c)).isCloseTo(0.03 * c - 0.04 * s, within(1e-12));
        assertThat(hollow.rim().lowest(s, 0, c)).isCloseTo(0.04 * c - 0.04 * s, within(1e-12));
        assertThat(hollow.rim().lowest(0, 0, 1)).isCloseTo(0.03, within(1e-12));
    }

    /** Under an overhang, with a skirt that hangs down from the mouth, and something hung in from above the rim. */
    @Test
    void overhangs() {
        BoxBodies pot = new BoxBodies().add(-40, -40, 0, 40, 40, 50).take(-30, -30, 10, 30, 30, 40);
        Hollow inkwell = hollow(pot.take(-10, -10, 40, 10, 10, 50).mesh());
        assertThat(inkwell.rimHeight()).isCloseTo(0.05, within(1e-12));
        assertThat(inkwell.volume()).isCloseTo((108 + 4) * CM3, within(1e-12));
        pot.add(-15, -15, 25, 15, 15, 40).take(-10, -10, 25, 10, 10, 40);
        Hollow skirt = hollow(pot.mesh());
        assertThat(skirt.rimHeight()).isCloseTo(0.05, within(1e-12));
        assertThat(skirt.volume()).isCloseTo((108 + 4 - 5 * 1.5) * CM3, within(1e-12));
        BoxBodies handle =
                tray().add(-40, -5, 40, -35, 5, 60).add(35, -5, 40, 40, 5, 60).add(-40, -5, 60, 40, 5, 70);
        Hollow hung = hollow(handle.add(-5, -5, 25, 5, 5, 60).mesh());
        assertThat(hung.rimHeight()).isCloseTo(0.04, within(1e-12));
        assertThat(hung.volume()).isCloseTo((72 - 1.5) * CM3, within(1e-12));
        assertThat(hung.carried()).isCloseTo(192 * CM3, within(1e-11));
    }

    /** A post stands in the hollow, a separate body lies in it: both take room. */
    @Test
    void thingsInIt() {
        Hollow post = hollow(tray().add(-5, -5, 10, 5, 5, 60).mesh());
        assertThat(post.volume()).isCloseTo((72 - 3) * CM3, within(1e-12));
        assertThat(post.carried()).isCloseTo(192 * CM3, within(1e-11));
        Hollow loose = hollow(tray().add(-5, -5, 20, 5, 5, 60).mesh());
        assertThat(loose.volume()).isCloseTo((72 - 2) * CM3, within(1e-12));
    }

    /** Compartments: behind a lower wall one hollow, level with the rim all dry, lower ones full and said so. */
    @Test
    void severalHollows() {
        Hollow joined = hollow(tray().add(-5, -20, 10, 5, 20, 25).mesh());
        assertThat(joined.volume()).isCloseTo((72 - 6) * CM3, within(1e-12));
        MeshHollow level = found(tray().add(-5, -20, 10, 5, 20, 40).mesh());
        assertThat(level.hollow().orElseThrow().volume()).isCloseTo(60 * CM3, within(1e-12));
        assertThat(level.notices()).isEmpty();
        BoxBodies shelf = tray().add(40, -30, 0, 70, 30, 20).take(45, -25, 10, 65, 25, 20);
        MeshHollow lower = found(shelf.mesh());
        assertThat(lower.hollow().orElseThrow().volume()).isCloseTo(72 * CM3, within(1e-12));
        assertThat(lower.notices()).extracting(Notice::code).containsExactly("mesh-lower-hollow");
        assertThat(lower.notices().get(0).text()).contains(" 10.0 cm3");
    }

    /** The gutter of a square ring, and of a round one. */
    @Test
    void gutters() {
        BoxBodies square = new BoxBodies().add(-50, -50, 0, 50, 50, 30).take(-20, -20, 0, 20, 20, 30);
        square.take(-45, -45, 5, 45, 45, 30).add(-25, -25, 5, 25, 25, 30).take(-20, -20, 0, 20, 20, 30);
        Hollow gutter = hollow(square.mesh());
        assertThat(gutter.volume()).isCloseTo((90 * 90 - 50 * 50) * 25e-3 * CM3, within(1e-12));
        assertThat(gutter.carried()).isCloseTo((100 * 100 - 40 * 40) * 30e-3 * CM3, within(1e-11));
        double[][] outline = {{20, 0}, {50, 0}, {50, 30}, {45, 30}, {40, 10}, {30, 10}, {25, 25}, {20, 25}, {20, 0}};
        List<double[]> metres = new ArrayList<>();
        for (double[] at : outline) {
            metres.add(new double[] {at[0] / 1000, at[1] / 1000});
        }
        int around = 72;
        TriangleMesh ring = HullBodies.turned(metres.toArray(new double[0][]), around);
        Hollow round = hollow(ring);
        // full to the inner rim, at 25: rings under straight walls, pi h/3 (R^2 + R r + r^2)
        double outer = Math.PI * 15 / 3 * (40 * 40 + 40 * 43.75 + 43.75 * 43.75);
        double inner = Math.PI * 15 / 3 * (30 * 30 + 30 * 25 + 25 * 25);
        double turned = around * Math.sin(2 * Math.PI / around) / (2 * Math.PI);
        assertThat(round.rimHeight()).isCloseTo(0.025, within(1e-12));
        assertThat(round.volume()).isCloseTo(turned * (outer - inner) * 1e-9, within(1e-12));
        PlaneCut cut = new PlaneCut();
        round.closed().cut(0, 0, 1, 0.02, cut);
        assertThat(cut.volume).isCloseTo(turned * Math.PI * (50 * 50 - 20 * 20) * 20 * 1e-9, within(1e-12));
    }

    @Test
    void noBoats() {
        assertThat(found(HullBodies.box(0.06, 0.04, 0.03)).hollow()).isEmpty();
        assertThat(found(ShapeMeshes.of(Sphere.ofDiameter(0.05), 64)).hollow()).isEmpty();
        assertThat(found(HullBodies.moved(tray().mesh(), UPSIDE_DOWN, 0, 0, 0)).hollow())
                .isEmpty();
        assertThat(found(ShapeMeshes.of(Ring.ofDiameterAndTube(0.09, 0.03), 64)).hollow())
                .isEmpty();
        // a drain in the floor
        assertThat(found(tray().take(-5, -5, 0, 5, 5, 10).mesh()).hollow()).isEmpty();
        // sealed
        assertThat(found(new BoxBodies()
                                .add(-40, -30, 0, 40, 30, 40)
                                .take(-30, -20, 10, 30, 20, 30)
                                .mesh())
                        .hollow())
                .isEmpty();
        MeshHollow dimple = found(new BoxBodies()
                .add(-40, -30, 0, 40, 30, 40)
                .take(-30, -20, 37, 30, 20, 40)
                .mesh());
        assertThat(dimple.hollow()).isEmpty();
        assertThat(dimple.notices()).extracting(Notice::code).containsExactly("dimple");
    }

    /** Noise of single precision on the rim changes nothing but the digits it is in. */
    @Test
    void singlePrecision() {
        TriangleMesh exact = ShapeMeshes.of(Bowl.ofDiameterAndWall(0.09, 0.015), 64);
        double[] xyz = new double[3 * exact.vertexCount()];
        int[] corners = new int[3 * exact.facetCount()];
        for (int i = 0; i < xyz.length; i++) {
            xyz[i] = (float) (exact.at(i / 3, i % 3) * 1000 + 7.3) * 1e-3;
        }
        for (int i = 0; i < corners.length; i++) {
            corners[i] = exact.corner(i / 3, i % 3);
        }
        Hollow plain = hollow(exact);
        MeshHollow rounded = found(new TriangleMesh(xyz, corners));
        assertThat(rounded.hollow().orElseThrow().volume()).isCloseTo(plain.volume(), within(1e-6 * plain.volume()));
    }

    /**
     * From outside: the shrinking outer ball less the air, to 0.5 % of the whole volume and 1 % in area over the first 90 % of the
     * volume. The chords of 192 facets take 0.05 % of the outer ball, 0.2 % of a wall of 4 mm: an error of the mesh that stays the
     * same while what is left of the wall gets less, so that it is counted by the whole.
     */
    @ParameterizedTest
    @CsvSource({"90, 15", "90, 4"})
    void outside(double diameter, double wall) {
        Bowl bowl = Bowl.ofDiameterAndWall(diameter / 1000, wall / 1000);
        DepthProfile exact = bowl.depthProfile(DepthProfile.Exposure.OUTSIDE);
        DepthProfile mesh = found(ShapeMeshes.of(bowl, 192)).outside().orElseThrow();
        double whole = exact.volume(0);
        for (int i = 0; i <= 400 && exact.volume(exact.deepest() * i / 400) >= 0.1 * whole; i++) {
            double d = exact.deepest() * i / 400;
            assertThat(mesh.volume(d)).as("V at %s", d).isCloseTo(exact.volume(d), within(0.005 * whole));
            assertThat(mesh.area(d)).as("A at %s", d).isCloseTo(exact.area(d), within(0.01 * exact.area(d)));
        }
        assertThat(mesh.deepest()).isCloseTo(exact.deepest(), within(0.01 * exact.deepest()));
    }

    @Test
    void outsideOfATray() {
        DepthProfile mesh = found(tray().mesh()).outside().orElseThrow();
        for (int i = 0; i < 10; i++) {
            double d = i;
            double left = (80 - 2 * d) * (60 - 2 * d) * (40 - d) - 72e3;
            double area = 2 * (140 - 4 * d) * (40 - d) + (80 - 2 * d) * (60 - 2 * d);
            assertThat(mesh.volume(d / 1000) * 1e9).isCloseTo(left, within(0.005 * 120e3));
            assertThat(mesh.area(d / 1000) * 1e6).isCloseTo(area, within(0.01 * area));
        }
    }
}
