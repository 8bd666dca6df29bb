package org.fizzhull.mesh.measure;

import org.fizzhull.mesh.TriangleMesh;

/**
 * How far a mesh lies from the round surface that its facets seem to follow. Facets that meet at less than 30 degrees
 * are taken for chords of one smooth surface, sharper edges for edges of the body (the usual feature angle; common
 * practice, no source). The normals of the smooth surface at the corners are means of the facet normals by area; a
 * surface that turns by {@code dn} along an edge e stands {@code e . dn / 8} off the middle of the edge and, summed over
 * the three edges, a 24th of {@code e . dn} off the facet on average: exact for a quadratic (computed). An estimate, good
 * to a tenth of itself for even meshes and to a fifth for the long strips of a cylinder. Weights by area keep a flat face
 * beside a fillet flat. A surface that turns between its corners and back hides its error.
 *
 * @param volume by which the body lacks what the round surface encloses, m3; below 0 where it is hollow and holds more
 * @param spread the same with every facet counted above 0, m3: the volume between the two surfaces
 * @param height largest distance of the round surface from the middle of an edge, m
 */
public record ChordError(double volume, double spread, double height) {
    /** Cosine of the feature angle. */
    private static final double SMOOTH = Math.cos(Math.PI / 6);

    /**
     * {@return the error of a closed mesh}
     *
     * @param mesh the mesh
     */
    public static ChordError of(TriangleMesh mesh) {
        double[] normal = normals(mesh);
        double[] size = new double[mesh.facetCount()];
        for (int f = 0; f < size.length; f++) {
            size[f] = length(normal, 3 * f);
        }
        Buckets around = Buckets.of(mesh.vertexCount(), 3 * mesh.facetCount(), i -> mesh.corner(i / 3, i % 3));
        double volume = 0;
        double spread = 0;
        double height = 0;
        double[] at = new double[9];
        for (int f = 0; f < mesh.facetCount(); f++) {
            double area = size[f] / 2;
            if (!(area > 0)) {
                continue;
            }
            for (int k = 0; k < 3; k++) {
                mean(f, mesh.corner(f, k), normal, size, around, at, 3 * k);
            }
            double sum = 0;
            for (int k = 0; k < 3; k++) {
                int l = (k + 1) % 3;
                double turn = 0;
                for (int axis = 0; axis < 3; axis++) {
                    double edge = mesh.at(mesh.corner(f, l), axis) - mesh.at(mesh.corner(f, k), axis);
                    turn += edge * (at[3 * l + axis] - at[3 * k + axis]);
                }
                sum += turn;
                height = Math.max(height, Math.abs(turn) / 8);
            }
            volume += area * sum / 24;
            spread += area * Math.abs(sum) / 24;
        }
        return new ChordError(volume, spread, height);
    }

    /** Twice the area of each facet along its normal. */
    private static double[] normals(TriangleMesh mesh) {
        double[] normal = new double[3 * mesh.facetCount()];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                normal[3 * f + k] = FaceSets.doubled(mesh, f, (k + 1) % 3, (k + 2) % 3);
            }
        }
        return normal;
    }

    /** Unit normal of the round surface of a facet at one of its corners. */
    private static void mean(int f, int vertex, double[] normal, double[] size, Buckets around, double[] out, int at) {
        double own = size[f];
        out[at] = out[at + 1] = out[at + 2] = 0;
        for (int i = around.first(vertex); i < around.end(vertex); i++) {
            int other = around.at(i) / 3;
            int g = 3 * other;
            double cosine =
                    normal[3 * f] * normal[g] + normal[3 * f + 1] * normal[g + 1] + normal[3 * f + 2] * normal[g + 2];
            if (cosine > SMOOTH * own * size[other]) {
                out[at] += normal[g];
                out[at + 1] += normal[g + 1];
                out[at + 2] += normal[g + 2];
            }
        }
        double length = length(out, at);
        out[at] /= length;
        out[at + 1] /= length;
        out[at + 2] /= length;
    }

    private static double length(double[] v, int at) {
        return Math.sqrt(v[at] * v[at] + v[at + 1] * v[at + 1] + v[at + 2] * v[at + 2]);
    }
}
