package org.fizzhull.mesh.reading;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.mesh.MeshBuilder;

/** One object of a 3MF model: triangles over vertices of its own, or other objects placed in it. */
final class ModelObject {
    /** Another object, and where it lies in this one. */
    private record Component(ModelObject object, Placement placement) {}

    /** Whether it is to be made, and no support or loose surface. */
    final boolean solid;

    /** Counting ends here: far more than is read. */
    private static final long MANY = 1L << 40;

    private final List<Component> components = new ArrayList<>();
    private long facetsWithin;
    private long placed = 1;
    private int depth;
    private final MeshBuilder own = new MeshBuilder();

    ModelObject(boolean solid) {
        this.solid = solid;
    }

    /** Its own triangles. */
    MeshBuilder own() {
        return own;
    }

    /** Places an object in this one. */
    void add(ModelObject object, Placement placement) {
        components.add(new Component(object, placement));
        facetsWithin = Math.min(MANY, facetsWithin + object.facetsInAll());
        placed = Math.min(MANY, placed + object.placed);
        depth = Math.max(depth, object.depth + 1);
    }

    /** Facets, with those of all objects placed in it. */
    long facetsInAll() {
        return own.facets() + facetsWithin;
    }

    /** How many objects are placed in it, at any depth, and itself. */
    long placed() {
        return placed;
    }

    /** Depth of objects in objects; 0 where it has none. */
    int depth() {
        return depth;
    }

    /**
     * Puts its facets into a weld, as placed, with those of all objects in it; a mirror image is turned the right way round.
     *
     * @return whether all of them are of a usable size
     */
    boolean place(Placement placement, VertexWeld weld) {
        for (Component component : components) {
            if (!component.object().place(component.placement().in(placement), weld)) {
                return false;
            }
        }
        boolean mirrored = placement.volume() < 0;
        float[] facet = new float[9];
        for (int f = 0; f < own.facets(); f++) {
            for (int k = 0; k < 3; k++) {
                int v = own.corner(f, mirrored ? 2 - k : k);
                for (int axis = 0; axis < 3; axis++) {
                    double at = placement.at(axis, own.at(v, 0), own.at(v, 1), own.at(v, 2));
                    if (!(Math.abs(at) <= VertexWeld.LARGEST)) {
                        return false;
                    }
                    facet[3 * k + axis] = (float) at;
                }
            }
            weld.add(facet);
        }
        return true;
    }
}
