package org.fizzhull.shape.meshed;

import java.util.Objects;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.hollow.OpenHollows;
import org.fizzhull.mesh.measure.ChordError;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/**
 * What is measured of a mesh by itself, each part by a worker: its tree of facets, the error of its chords, its shadow,
 * its open hollows. The parts do not depend on one another, so the answer is the same on one thread or on four.
 *
 * <p>Cost: with four threads that of the slowest part. Complete when the constructor
 * returns; used by {@link MeshShape}.
 */
final class MeshMeasurements {
    /** Number of independent parts. */
    private static final int PARTS = 4;

    /** The mesh, in the body frame, m. */
    private final TriangleMesh mesh;
    /** Part 0: the facets in a tree, for distances and plane cuts. */
    private @Nullable FacetTree tree;
    /** Part 3: how far the facets lie from the surface they follow. */
    private @Nullable ChordError chords;
    /** Part 1: hollows open to the top. */
    private @Nullable OpenHollows hollows;
    /** Part 2: area of the shadow along z, m2. */
    private double shadow;

    /** Measures a closed mesh that faces outward. */
    MeshMeasurements(TriangleMesh mesh, Workers workers) {
        this.mesh = mesh;
        Workers.all(workers, PARTS, this::measure);
    }

    /** Each part has a field of its own, read once all are done. */
    private void measure(int part) {
        switch (part) {
            case 0 -> tree = new FacetTree(mesh);
            case 1 -> hollows = OpenHollows.of(mesh);
            case 2 -> shadow = Silhouette.area(mesh);
            default -> chords = ChordError.of(mesh);
        }
    }

    /** The facets in a tree. */
    FacetTree tree() {
        return Objects.requireNonNull(tree, "the workers have run every part");
    }

    /** How far the facets lie from the round surface they seem to follow. */
    ChordError chords() {
        return Objects.requireNonNull(chords, "the workers have run every part");
    }

    /** The hollows that are open to the top as the mesh lies. */
    OpenHollows hollows() {
        return Objects.requireNonNull(hollows, "the workers have run every part");
    }

    /** Area of the shadow along z, m2. */
    double shadow() {
        return shadow;
    }
}
