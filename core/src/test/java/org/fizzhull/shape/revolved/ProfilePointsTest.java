package org.fizzhull.shape.revolved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;

/** Drawn meridians. Expected values are ANALYTIC (cones, cylinders, Pappus) or Pappus with area and centroid by JTS. */
class ProfilePointsTest {
    private static final double MM = 1e-3;

    private static Profile2D profile(double... rz) {
        double[] r = new double[rz.length / 2];
        double[] z = new double[r.length];
        for (int i = 0; i < r.length; i++) {
            r[i] = rz[2 * i] * MM;
            z[i] = rz[2 * i + 1] * MM;
        }
        return ProfilePoints.profile(r, z);
    }

    private static Refusal refusal(double... rz) {
        return catchThrowableOfType(Refusal.class, () -> profile(rz));
    }

    @Test
    void coneAndCylinderAreExactInBothDirections() {
        double cone = Math.PI * 30 * 30 * 70 / 3 * 1e-9;
        assertThat(profile(0, 0, 30, 0, 0, 70).volume()).isCloseTo(cone, within(1e-14 * cone));
        assertThat(profile(0, 70, 30, 0, 0, 0).volume()).isCloseTo(cone, within(1e-14 * cone));
        double cylinder = Math.PI * 30 * 30 * 20 * 1e-9;
        assertThat(profile(0, 5, 30, 5, 30, 25, 0, 25).volume()).isCloseTo(cylinder, within(1e-14 * cylinder));
    }

    @Test
    void theLowestPointIsMovedToHeightNought() {
        assertThat(profile(0, -40, 30, -40, 0, 30).centroid().z()).isCloseTo(70 * MM / 4, within(1e-15));
    }

    /** ANALYTIC: what is off by no more than rounding is the cone, and the ring, without it. */
    @Test
    void roundingOfADrawingCountsForNothing() {
        double cone = Math.PI * 30 * 30 * 70 / 3 * 1e-9;
        for (double off : new double[] {1e-320, 1e-200, 3e-16}) {
            Profile2D drawn = profile(off, off, 30, 0, off, 70);
            assertThat(drawn.volume()).isCloseTo(cone, within(1e-14 * cone));
            assertThat(drawn.surface()).isCloseTo(Math.PI * 30 * (30 + Math.hypot(30, 70)) * 1e-6, within(1e-16));
            assertThat(drawn.pieces()).hasSize(1);
        }
        double twice = profile(0, 0, 30, 0, 30, 0, 30, 1e-14, 0, 70, 0, 70).volume();
        assertThat(twice).isCloseTo(cone, within(1e-14 * cone));
        double ring = 2 * Math.PI * 30 * 100 * 1e-9;
        Profile2D closed = profile(25, 0, 35, 0, 35, 10, 25, 10, 25, 1e-321, 25, 0);
        assertThat(closed.volume()).isCloseTo(ring, within(1e-13 * ring));
    }

    @Test
    void aSquareRingClosesOnItself() {
        double ring = 2 * Math.PI * 30 * 100 * 1e-9;
        assertThat(profile(25, 0, 35, 0, 35, 10, 25, 10, 25, 0).volume()).isCloseTo(ring, within(1e-13 * ring));
    }

    @Test
    void anOutlineThatFoldsBackTakesAwayWhatIsNotThere() {
        double cup = Math.PI * (40 * 40 * 50 - 30 * 30 * 40) * 1e-9;
        Profile2D drawn = profile(0, 0, 40, 0, 40, 50, 30, 50, 30, 10, 0, 10);
        assertThat(drawn.volume()).isCloseTo(cup, within(1e-13 * cup));
        double cupSurface = Math.PI * (2 * 40 * 40 + 2 * 40 * 50 + 2 * 30 * 40) * 1e-6;
        assertThat(drawn.surface()).isCloseTo(cupSurface, within(1e-12 * cupSurface));
        // a stalk of 10 under a cap of 40 whose brim of 30 to 40 hangs down beside it
        Profile2D umbrella = profile(0, 0, 10, 0, 10, 20, 30, 20, 30, 0, 40, 0, 40, 30, 0, 30);
        double hook = Math.PI * (40 * 40 * 10 + (40 * 40 - 30 * 30) * 20 + 10 * 10 * 20) * 1e-9;
        assertThat(umbrella.volume()).isCloseTo(hook, within(1e-13 * hook));
        double hookSurface = Math.PI * (2 * 40 * 40 + 2 * 40 * 30 + 2 * 30 * 20 + 2 * 10 * 20) * 1e-6;
        assertThat(umbrella.surface()).isCloseTo(hookSurface, within(1e-12 * hookSurface));
    }

    @Test
    void randomOutlinesAgreeWithPappusByJts() {
        Random random = new Random(7);
        for (int round = 0; round < 50; round++) {
            int n = 5 + random.nextInt(40);
            double[] r = new double[n + 1];
            double[] z = new double[n + 1];
            for (int i = 0; i < n; i++) {
                double reach = 0.004 + 0.02 * random.nextDouble();
                r[i] = 0.03 + reach * Math.cos(2 * Math.PI * i / n);
                z[i] = reach * Math.sin(2 * Math.PI * i / n);
            }
            r[n] = r[0];
            z[n] = z[0];
            Polygon section = new GeometryFactory().createPolygon(coordinates(r, z));
            double pappus = 2 * Math.PI * section.getCentroid().getX() * section.getArea();
            assertThat(ProfilePoints.profile(r, z).volume()).isCloseTo(pappus, within(1e-12 * pappus));
        }
    }

    @Test
    void crossingIsFoundExactlyWhereJtsFindsIt() {
        Random random = new Random(11);
        int crossing = 0;
        for (int round = 0; round < 300; round++) {
            double[] r = new double[6];
            double[] z = new double[6];
            for (int i = 0; i < 6; i++) {
                r[i] = i == 0 || i == 5 ? 0 : 0.001 + 0.03 * random.nextDouble();
                z[i] = 0.05 * random.nextDouble();
            }
            LineString outline = new GeometryFactory().createLineString(coordinates(r, z));
            Refusal refusal = catchThrowableOfType(Refusal.class, () -> ProfilePoints.profile(r, z));
            boolean refused = refusal != null && refusal.code().equals("profile-crossing");
            assertThat(refused).isEqualTo(!outline.isSimple());
            crossing += refused ? 1 : 0;
        }
        assertThat(crossing).isBetween(50, 250);
    }

    private static Coordinate[] coordinates(double[] r, double[] z) {
        Coordinate[] points = new Coordinate[r.length];
        for (int i = 0; i < r.length; i++) {
            points[i] = new Coordinate(r[i], z[i]);
        }
        return points;
    }

    @Test
    void openOutlinesAreRefusedWithTheEnd() {
        assertThat(refusal(5, 0, 30, 0, 0, 70).code()).isEqualTo("profile-open");
        assertThat(refusal(5, 0, 30, 0, 0, 70)).hasMessageContaining("first point at r = 5.0 mm");
        assertThat(refusal(0, 0, 30, 0, 12, 70)).hasMessageContaining("last point at r = 12.0 mm, z = 70.0 mm");
    }

    @Test
    void crossingOutlinesAreRefusedWithTheLines() {
        Refusal crossed = refusal(0, 0, 30, 0, 10, 40, 40, 30, 0, 20);
        assertThat(crossed.code()).isEqualTo("profile-crossing");
        assertThat(crossed).hasMessageContaining("point 2 to 3").hasMessageContaining("4 to 5");
        assertThat(refusal(0, 0, 30, 0, 30, 20, 30, 10, 0, 10).code()).isEqualTo("profile-crossing");
        assertThat(refusal(0, 0, 30, 0, 40, 20, 30, 0, 0, 40).code()).isEqualTo("profile-crossing");
    }

    @Test
    void uselessNumbersAreRefusedWithThePoint() {
        assertThat(refusal(0, 0, -30, 0, 0, 70)).hasMessageContaining("point 2").hasMessageContaining("one half");
        assertThat(refusal(0, 0, 30, Double.NaN, 0, 70).code()).isEqualTo("profile-number");
        assertThat(refusal(0, 0, 30, 0).code()).isEqualTo("profile-points");
        assertThat(refusal(0, 0, 0, 10, 0, 20).code()).isEqualTo("profile-flat");
        assertThat(refusal(0, 0, 30_000, 0, 0, 70)).hasMessageContaining("unit");
    }

    @Test
    void aDrawnBallTendsToTheBallWithOrderTwo() {
        double ball = 4.0 / 3 * Math.PI * Math.pow(0.035, 3);
        double coarse = ball - drawnBall(50).volume();
        double fine = ball - drawnBall(100).volume();
        assertThat(coarse / fine).isBetween(3.95, 4.05);
    }

    private static Profile2D drawnBall(int lines) {
        double[] r = new double[lines + 1];
        double[] z = new double[lines + 1];
        for (int i = 0; i <= lines; i++) {
            r[i] = i == 0 || i == lines ? 0 : 0.035 * Math.sin(Math.PI * i / lines);
            z[i] = -0.035 * Math.cos(Math.PI * i / lines);
        }
        return ProfilePoints.profile(r, z);
    }
}
