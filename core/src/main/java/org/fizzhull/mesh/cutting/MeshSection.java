package org.fizzhull.mesh.cutting;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;

/** Closed outlines in which a plane meets the surface of a closed mesh; for pictures, so it may allocate. */
public final class MeshSection {
    private MeshSection() {}

    /**
     * {@return outlines in the plane through a point with the two unit vectors right and up, as (right . x, up . x) in
     * metres}
     *
     * <p>Every facet that the plane crosses gives one directed segment from the edge by which it enters to the edge by
     * which it leaves; the neighbour across that edge carries on.
     *
     * @param mesh the mesh
     * @param point a point of the plane, m
     * @param right unit vector
     * @param up unit vector at right angles to it
     */
    public static List<double[][]> of(TriangleMesh mesh, Vec3 point, Vec3 right, Vec3 up) {
        Vec3 normal = right.cross(up);
        double level = normal.dot(point);
        double[] side = new double[mesh.vertexCount()];
        for (int v = 0; v < side.length; v++) {
            side[v] = normal.x() * mesh.at(v, 0) + normal.y() * mesh.at(v, 1) + normal.z() * mesh.at(v, 2) - level;
        }
        Map<Long, Long> follows = new LinkedHashMap<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            long enter = -1;
            long leave = -1;
            for (int k = 0; k < 3; k++) {
                int i = mesh.corner(f, k);
                int j = mesh.corner(f, (k + 1) % 3);
                if (side[i] < 0 && side[j] >= 0) {
                    leave = key(i, j);
                } else if (side[i] >= 0 && side[j] < 0) {
                    enter = key(i, j);
                }
            }
            if (enter >= 0) {
                follows.put(enter, leave);
            }
        }
        List<double[][]> outlines = new ArrayList<>();
        for (long start : List.copyOf(follows.keySet())) {
            List<double[]> points = new ArrayList<>();
            Long edge = start;
            while (edge != null && follows.containsKey(edge)) {
                points.add(at(mesh, side, edge, right, up));
                edge = follows.remove(edge);
            }
            if (points.size() > 2) {
                outlines.add(points.toArray(new double[0][]));
            }
        }
        return outlines;
    }

    private static long key(int i, int j) {
        return ((long) Math.min(i, j) << 32) | Math.max(i, j);
    }

    private static double[] at(TriangleMesh mesh, double[] side, long edge, Vec3 right, Vec3 up) {
        int i = (int) (edge >>> 32);
        int j = (int) edge;
        double t = side[i] / (side[i] - side[j]);
        double x = mesh.at(i, 0) + t * (mesh.at(j, 0) - mesh.at(i, 0));
        double y = mesh.at(i, 1) + t * (mesh.at(j, 1) - mesh.at(i, 1));
        double z = mesh.at(i, 2) + t * (mesh.at(j, 2) - mesh.at(i, 2));
        return new double[] {right.x() * x + right.y() * y + right.z() * z, up.x() * x + up.y() * y + up.z() * z};
    }
}
