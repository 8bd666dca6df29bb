package org.fizzhull.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PolyhedronHull;
import org.fizzhull.shape.body.PrismMesh;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Star;
import org.fizzhull.shape.revolved.Meridian;
import org.fizzhull.shape.revolved.Profile2D;
import org.fizzhull.shape.revolved.RevolvedHull;

/** Meshes of the kinds with closed forms: turned outlines, and prisms over their outlines. */
public final class ShapeMeshes {
    private static final double SAME = 1e-10;
    private static final int CHORDS = 150;

    private ShapeMeshes() {}

    /** A mesh of a shape; round ones get {@code around} facets round the axis and 64 chords an arc. */
    public static TriangleMesh of(Shape shape, int around) {
        if (shape instanceof Block block) {
            return block.edge() == 0 ? ((PolyhedronHull) block.hull().orElseThrow()).mesh() : rounded(block, around);
        }
        if (shape instanceof Star star) {
            double[][] at = star.vertices();
            return PrismMesh.of(at[0], at[1], 0, 0, star.height());
        }
        if (shape instanceof Heart heart) {
            return heart(heart);
        }
        return turned(((RevolvedHull) shape.hull().orElseThrow()).profile(), around);
    }

    public static TriangleMesh turned(Profile2D profile, int around) {
        Meridian faces = Meridian.of(profile);
        List<double[]> points = new ArrayList<>();
        Map<String, int[]> rings = new HashMap<>();
        List<Integer> corners = new ArrayList<>();
        for (int e = 0; e < faces.count(); e++) {
            int[] a = ring(faces.r0(e), faces.z0(e), around, points, rings);
            int[] b = ring(faces.r1(e), faces.z1(e), around, points, rings);
            for (int k = 0; k < around; k++) {
                int l = (k + 1) % around;
                if (a[k] != a[l]) {
                    corners.addAll(List.of(a[k], a[l], b[k]));
                }
                if (b[k] != b[l]) {
                    corners.addAll(List.of(a[l], b[l], b[k]));
                }
            }
        }
        return mesh(points, corners);
    }

    private static int[] ring(double r, double z, int around, List<double[]> points, Map<String, int[]> rings) {
        String key = Math.round(r / SAME) + " " + Math.round(z / SAME);
        return rings.computeIfAbsent(key, name -> {
            int[] ring = new int[around];
            for (int k = 0; k < around; k++) {
                if (k == 0 || r > SAME) {
                    double angle = 2 * Math.PI * k / around;
                    points.add(new double[] {r * Math.cos(angle), r * Math.sin(angle), z});
                }
                ring[k] = points.size() - 1;
            }
            return ring;
        });
    }

    /** A ball whose eight eighths are moved apart: facets that cross a plane of symmetry become the flats. */
    private static TriangleMesh rounded(Block block, int around) {
        // an odd number of bands, so that none ends in the middle plane; the flats begin where the rounding touches
        // them
        int bands = around / 2 + 1 - around / 2 % 2;
        double[][] meridian = new double[bands + 3][];
        for (int i = 0; i <= bands; i++) {
            double t = Math.PI * ((double) i / bands - 0.5);
            double touch = i == 0 || i == bands ? 1e-5 : Math.cos(t);
            meridian[i + 1] = new double[] {touch, Math.sin(t)};
        }
        meridian[0] = new double[] {0, -1};
        meridian[bands + 2] = new double[] {0, 1};
        double[] halfStep = HullBodies.turn(0, 0, 1, Math.PI / around);
        TriangleMesh ball = HullBodies.moved(HullBodies.turned(meridian, around), halfStep, 0, 0, 0);
        double[] side = {block.length(), block.width(), block.height()};
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        for (int v = 0; v < ball.vertexCount(); v++) {
            double[] point = new double[3];
            for (int k = 0; k < 3; k++) {
                double at = ball.at(v, k);
                double apart = Math.abs(at) < SAME ? 0 : Math.signum(at) * (side[k] / 2 - block.edge());
                point[k] = block.edge() * at + apart + (k == 2 ? side[k] / 2 : 0);
            }
            points.add(point);
        }
        for (int i = 0; i < 3 * ball.facetCount(); i++) {
            corners.add(ball.corner(i / 3, i % 3));
        }
        return mesh(points, corners);
    }

    private static TriangleMesh heart(Heart heart) {
        double q = heart.side();
        double[] x = new double[2 * CHORDS + 2];
        double[] y = new double[2 * CHORDS + 2];
        int n = 1;
        for (int lobe = 0; lobe < 2; lobe++) {
            // the second lobe begins where the first ends
            for (int i = lobe; i <= CHORDS; i++) {
                double angle = Math.PI * ((double) i / CHORDS + (lobe - 1) / 2.0);
                x[n] = (lobe == 0 ? q : q / 2) + q / 2 * Math.cos(angle);
                y[n++] = (lobe == 0 ? q / 2 : q) + q / 2 * Math.sin(angle);
            }
        }
        return PrismMesh.of(x, y, 0.6 * q, 0.6 * q, heart.height());
    }

    public static TriangleMesh mesh(List<double[]> points, List<Integer> corners) {
        double[] xyz = new double[3 * points.size()];
        for (int v = 0; v < points.size(); v++) {
            System.arraycopy(points.get(v), 0, xyz, 3 * v, 3);
        }
        return new TriangleMesh(
                xyz, corners.stream().mapToInt(Integer::intValue).toArray());
    }

    /** Two meshes side by side in one, the second turned inside out where asked: then it is a hollow of the first. */
    public static TriangleMesh both(TriangleMesh one, TriangleMesh two, boolean hollow) {
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        for (boolean second : new boolean[] {false, true}) {
            TriangleMesh mesh = second ? two : one;
            int first = points.size();
            for (int v = 0; v < mesh.vertexCount(); v++) {
                points.add(new double[] {mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2)});
            }
            boolean turn = hollow && second;
            for (int f = 0; f < mesh.facetCount(); f++) {
                corners.add(first + mesh.corner(f, 0));
                corners.add(first + mesh.corner(f, turn ? 2 : 1));
                corners.add(first + mesh.corner(f, turn ? 1 : 2));
            }
        }
        return mesh(points, corners);
    }

    /** A copy turned at random about the origin. */
    public static TriangleMesh turned(TriangleMesh mesh, SplittableRandom random) {
        Vec3 w = direction(random);
        Vec3 u = direction(random).cross(w).unit();
        Vec3 v = w.cross(u);
        double[] xyz = new double[3 * mesh.vertexCount()];
        for (int i = 0; i < mesh.vertexCount(); i++) {
            Vec3 p = new Vec3(mesh.at(i, 0), mesh.at(i, 1), mesh.at(i, 2));
            xyz[3 * i] = p.dot(u);
            xyz[3 * i + 1] = p.dot(v);
            xyz[3 * i + 2] = p.dot(w);
        }
        int[] corners = new int[3 * mesh.facetCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                corners[3 * f + k] = mesh.corner(f, k);
            }
        }
        return new TriangleMesh(xyz, corners);
    }

    /** An even random direction. */
    public static Vec3 direction(SplittableRandom random) {
        double z = 2 * random.nextDouble() - 1;
        double angle = 2 * Math.PI * random.nextDouble();
        double r = Math.sqrt(1 - z * z);
        return new Vec3(r * Math.cos(angle), r * Math.sin(angle), z);
    }
}
