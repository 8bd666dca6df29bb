package org.fizzhull.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.fizzhull.mesh.TriangleMesh;

/** Meshes of bodies put together from boxes and with boxes taken away, in mm: every edge lies on a common grid. */
public final class BoxBodies {
    private record Step(double[] box, boolean solid) {}

    private final List<Step> steps = new ArrayList<>();

    /** Adds a box from (x0, y0, z0) to (x1, y1, z1), mm. */
    public BoxBodies add(double x0, double y0, double z0, double x1, double y1, double z1) {
        steps.add(new Step(new double[] {x0, y0, z0, x1, y1, z1}, true));
        return this;
    }

    /** Takes such a box away. */
    public BoxBodies take(double x0, double y0, double z0, double x1, double y1, double z1) {
        steps.add(new Step(new double[] {x0, y0, z0, x1, y1, z1}, false));
        return this;
    }

    /** The surface of what is left, m. */
    public TriangleMesh mesh() {
        double[][] cuts = new double[3][];
        for (int axis = 0; axis < 3; axis++) {
            TreeSet<Double> at = new TreeSet<>();
            for (Step step : steps) {
                at.add(step.box[axis]);
                at.add(step.box[axis + 3]);
            }
            cuts[axis] = at.stream().mapToDouble(Double::doubleValue).toArray();
        }
        List<double[]> points = new ArrayList<>();
        Map<String, Integer> known = new HashMap<>();
        List<Integer> corners = new ArrayList<>();
        int[] i = new int[3];
        for (i[0] = 0; i[0] + 1 < cuts[0].length; i[0]++) {
            for (i[1] = 0; i[1] + 1 < cuts[1].length; i[1]++) {
                for (i[2] = 0; i[2] + 1 < cuts[2].length; i[2]++) {
                    for (int face = 0; face < 6 && solid(cuts, i); face++) {
                        face(cuts, i, face % 3, face / 3, points, known, corners);
                    }
                }
            }
        }
        return ShapeMeshes.mesh(points, corners);
    }

    private boolean solid(double[][] cuts, int[] i) {
        boolean solid = false;
        for (int axis = 0; axis < 3; axis++) {
            if (i[axis] < 0 || i[axis] + 1 >= cuts[axis].length) {
                return false;
            }
        }
        for (Step step : steps) {
            boolean in = true;
            for (int axis = 0; axis < 3; axis++) {
                double middle = (cuts[axis][i[axis]] + cuts[axis][i[axis] + 1]) / 2;
                in &= middle > step.box[axis] && middle < step.box[axis + 3];
            }
            solid = in ? step.solid : solid;
        }
        return solid;
    }

    private void face(
            double[][] cuts,
            int[] i,
            int axis,
            int end,
            List<double[]> points,
            Map<String, Integer> known,
            List<Integer> corners) {
        int[] beside = i.clone();
        beside[axis] += end == 1 ? 1 : -1;
        if (solid(cuts, beside)) {
            return;
        }
        int u = (axis + 1) % 3;
        int w = (axis + 2) % 3;
        int[] v = new int[4];
        for (int k = 0; k < 4; k++) {
            double[] p = new double[3];
            p[axis] = cuts[axis][i[axis] + end];
            p[u] = cuts[u][i[u] + (k == 1 || k == 2 ? 1 : 0)];
            p[w] = cuts[w][i[w] + (k >= 2 ? 1 : 0)];
            String key = p[0] + " " + p[1] + " " + p[2];
            v[k] = known.computeIfAbsent(key, name -> {
                points.add(new double[] {p[0] / 1000, p[1] / 1000, p[2] / 1000});
                return points.size() - 1;
            });
        }
        corners.addAll(
                end == 1 ? List.of(v[0], v[1], v[2], v[0], v[2], v[3]) : List.of(v[0], v[2], v[1], v[0], v[3], v[2]));
    }
}
