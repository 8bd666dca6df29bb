package org.fizzhull.shape.meshed;

import java.util.Objects;
import org.fizzhull.mesh.ChordError;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.cutting.Silhouette;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.hollow.OpenHollows;
import org.fizzhull.uncertainty.Workers;
import org.jspecify.annotations.Nullable;

/** What is measured of a mesh by itself, each part by a worker: its tree, its chords, its shadow, its open hollows. */
final class Measured {
    private static final int PARTS = 4;

    private final TriangleMesh mesh;
    private @Nullable FacetTree tree;
    private @Nullable ChordError chords;
    private @Nullable OpenHollows hollows;
    private double shadow;

    /** Measures a closed mesh that faces outward. */
    Measured(TriangleMesh mesh, Workers workers) {
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

    FacetTree tree() {
        return Objects.requireNonNull(tree, "the workers have run every part");
    }

    ChordError chords() {
        return Objects.requireNonNull(chords, "the workers have run every part");
    }

    OpenHollows hollows() {
        return Objects.requireNonNull(hollows, "the workers have run every part");
    }

    /** Area of the shadow along z, m2. */
    double shadow() {
        return shadow;
    }
}
