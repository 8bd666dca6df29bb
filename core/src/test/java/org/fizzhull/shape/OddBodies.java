package org.fizzhull.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.shape.body.PrismMesh;

/** Meshes with slivers, needles, creases and facets without area, and finer copies of one solid. */
public final class OddBodies {
    private OddBodies() {}

    /** A lump without any symmetry, of {@code n} bands; 60 mm long. The surface is no function of the number of bands. */
    public static TriangleMesh lump(int n) {
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        points.add(lump(0, 0));
        for (int i = 1; i < n; i++) {
            for (int j = 0; j < 2 * n; j++) {
                points.add(lump(Math.PI * i / n, Math.PI * j / n));
            }
        }
        points.add(lump(Math.PI, 0));
        int last = points.size() - 1;
        for (int j = 0; j < 2 * n; j++) {
            int next = (j + 1) % (2 * n);
            corners.addAll(List.of(0, 1 + j, 1 + next));
            for (int i = 0; i < n - 2; i++) {
                int row = 1 + 2 * n * i;
                corners.addAll(List.of(row + j, row + 2 * n + j, row + 2 * n + next));
                corners.addAll(List.of(row + j, row + 2 * n + next, row + next));
            }
            corners.addAll(List.of(last, 1 + 2 * n * (n - 2) + next, 1 + 2 * n * (n - 2) + j));
        }
        return ShapeMeshes.mesh(points, corners);
    }

    private static double[] lump(double t, double p) {
        double r = 0.03 * (1 + 0.12 * Math.sin(t) * Math.cos(2 * p + 1) + 0.08 * Math.cos(3 * t + 0.5));
        return new double[] {r * Math.sin(t) * Math.cos(p), 0.8 * r * Math.sin(t) * Math.sin(p), 0.7 * r * Math.cos(t)};
    }

    /** A box with a needle on every facet, a tenth of its width and half as long as the box is high. */
    public static TriangleMesh spiked() {
        TriangleMesh box = HullBodies.box(0.05, 0.04, 0.03);
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        for (int f = 0; f < box.facetCount(); f++) {
            int at = points.size();
            double[] middle = new double[3];
            for (int c = 0; c < 3; c++) {
                points.add(point(box, f, c, c));
                for (int k = 0; k < 3; k++) {
                    middle[k] += points.get(at + c)[k] / 3;
                }
            }
            double[] tip = middle.clone();
            int axis = 0;
            for (int k = 0; k < 3; k++) {
                axis = points.get(at)[k] == points.get(at + 1)[k] && points.get(at)[k] == points.get(at + 2)[k]
                        ? k
                        : axis;
            }
            tip[axis] += Math.signum(tip[axis]) * 0.015;
            for (int c = 0; c < 3; c++) {
                double[] foot = new double[3];
                for (int k = 0; k < 3; k++) {
                    foot[k] = middle[k] + 0.1 * (points.get(at + c)[k] - middle[k]);
                }
                points.add(foot);
            }
            points.add(tip);
            for (int c = 0; c < 3; c++) {
                int d = (c + 1) % 3;
                corners.addAll(List.of(at + c, at + d, at + 3 + d));
                corners.addAll(List.of(at + c, at + 3 + d, at + 3 + c));
                corners.addAll(List.of(at + 3 + c, at + 3 + d, at + 6));
            }
        }
        return ShapeMeshes.mesh(points, corners);
    }

    /** A prism of 80 thin blades: a star whose tips are needles and whose valleys are creases. */
    public static TriangleMesh blades() {
        int n = 160;
        double[] x = new double[n];
        double[] y = new double[n];
        for (int i = 0; i < n; i++) {
            double r = i % 2 == 0 ? 0.03 : 0.01;
            x[i] = r * Math.cos(2 * Math.PI * i / n);
            y[i] = r * Math.sin(2 * Math.PI * i / n);
        }
        return PrismMesh.of(x, y, 0, 0, 0.03);
    }

    /** Each facet divided into four. */
    public static TriangleMesh divided(TriangleMesh mesh, int times) {
        TriangleMesh left = mesh;
        for (int k = 0; k < times; k++) {
            List<double[]> points = new ArrayList<>();
            List<Integer> corners = new ArrayList<>();
            for (int f = 0; f < left.facetCount(); f++) {
                int at = points.size();
                for (int c = 0; c < 3; c++) {
                    points.add(point(left, f, c, c));
                }
                for (int c = 0; c < 3; c++) {
                    points.add(point(left, f, c, (c + 1) % 3));
                }
                corners.addAll(List.of(at, at + 3, at + 5, at + 3, at + 1, at + 4));
                corners.addAll(List.of(at + 5, at + 4, at + 2, at + 3, at + 4, at + 5));
            }
            left = ShapeMeshes.mesh(points, corners);
        }
        return left;
    }

    /**
     * A coarser copy with at most so many facets: short edges shrunk to their middles, none where the ends have other
     * neighbours in common than the two across it, so that the copy stays closed.
     */
    public static TriangleMesh coarsened(TriangleMesh mesh, int facets) {
        List<double[]> points = new ArrayList<>();
        for (int v = 0; v < mesh.vertexCount(); v++) {
            points.add(new double[] {mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2)});
        }
        List<int[]> left = new ArrayList<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            left.add(new int[] {mesh.corner(f, 0), mesh.corner(f, 1), mesh.corner(f, 2)});
        }
        while (left.size() > facets) {
            shrink(points, left, (left.size() - facets + 1) / 2);
        }
        return ShapeMeshes.mesh(
                points, left.stream().flatMapToInt(Arrays::stream).boxed().toList());
    }

    /** Shrinks up to so many edges, the shortest first, of which no two are near each other. */
    private static void shrink(List<double[]> points, List<int[]> facets, int most) {
        Map<Integer, TreeSet<Integer>> near = new HashMap<>();
        for (int[] f : facets) {
            for (int k = 0; k < 3; k++) {
                near.computeIfAbsent(f[k], v -> new TreeSet<>()).add(f[(k + 1) % 3]);
                near.computeIfAbsent(f[(k + 1) % 3], v -> new TreeSet<>()).add(f[k]);
            }
        }
        List<int[]> edges = new ArrayList<>();
        near.forEach((v, others) -> others.tailSet(v).forEach(w -> edges.add(new int[] {v, w})));
        edges.sort(Comparator.comparingDouble(e -> distance(points.get(e[0]), points.get(e[1]))));
        Set<Integer> touched = new HashSet<>();
        Map<Integer, Integer> gone = new HashMap<>();
        for (int[] e : edges) {
            Set<Integer> one = Objects.requireNonNull(near.get(e[0]));
            Set<Integer> other = Objects.requireNonNull(near.get(e[1]));
            long common = one.stream().filter(other::contains).count();
            if (gone.size() < most && common == 2 && !touched.contains(e[0]) && !touched.contains(e[1])) {
                for (int k = 0; k < 3; k++) {
                    points.get(e[0])[k] = (points.get(e[0])[k] + points.get(e[1])[k]) / 2;
                }
                gone.put(e[1], e[0]);
                touched.addAll(one);
                touched.addAll(other);
            }
        }
        facets.forEach(f -> Arrays.setAll(f, k -> gone.getOrDefault(f[k], f[k])));
        facets.removeIf(f -> f[0] == f[1] || f[1] == f[2] || f[2] == f[0]);
    }

    private static double distance(double[] a, double[] b) {
        return Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
    }

    private static double[] point(TriangleMesh mesh, int f, int c, int d) {
        double[] at = new double[3];
        for (int k = 0; k < 3; k++) {
            at[k] = (mesh.at(mesh.corner(f, c), k) + mesh.at(mesh.corner(f, d), k)) / 2;
        }
        return at;
    }

    /** Every edge's first facet divided at many places along it, and facets without area over the places. */
    public static TriangleMesh slivered(TriangleMesh mesh, int places) {
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            int at = points.size();
            for (int c = 0; c < 3; c++) {
                points.add(point(mesh, f, c, c));
            }
            int before = at;
            for (int i = 1; i < places; i++) {
                double[] between = new double[3];
                for (int k = 0; k < 3; k++) {
                    double t = (double) i / places;
                    between[k] = (1 - t) * points.get(at)[k] + t * points.get(at + 1)[k];
                }
                points.add(between);
                int now = points.size() - 1;
                corners.addAll(List.of(before, now, at + 2));
                // three distinct corners on one line
                corners.addAll(List.of(before, at + 1, now));
                before = now;
            }
            corners.addAll(List.of(before, at + 1, at + 2));
        }
        return ShapeMeshes.mesh(points, corners);
    }
}
