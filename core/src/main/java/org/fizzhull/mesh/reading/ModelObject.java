package org.fizzhull.mesh.reading;

import org.fizzhull.mesh.measure.MeshBuilder;

/**
 * One object of a 3MF model: its triangles, those of other objects placed in it included.
 *
 * @param solid whether it is to be made, and no support or loose surface
 * @param triangles in units of the file
 */
record ModelObject(boolean solid, MeshBuilder triangles) {
    /** Without a triangle yet. */
    ModelObject(boolean solid) {
        this(solid, new MeshBuilder());
    }

    /** Adds the triangles of another object, as placed; a mirror image is turned the right way round. */
    void place(ModelObject other, Placement placement) {
        MeshBuilder from = other.triangles;
        int before = triangles.vertices();
        for (int v = 0; v < from.vertices(); v++) {
            double x = from.at(v, 0);
            double y = from.at(v, 1);
            double z = from.at(v, 2);
            triangles.vertex(placement.at(0, x, y, z), placement.at(1, x, y, z), placement.at(2, x, y, z));
        }
        int second = placement.volume() < 0 ? 2 : 1;
        for (int f = 0; f < from.facets(); f++) {
            triangles.facet(
                    before + from.corner(f, 0), before + from.corner(f, second), before + from.corner(f, 3 - second));
        }
    }

    /** Puts its triangles into a weld; false where one of them is of no usable size. */
    boolean weld(VertexWeld weld) {
        float[] facet = new float[9];
        for (int f = 0; f < triangles.facets(); f++) {
            for (int i = 0; i < 9; i++) {
                double at = triangles.at(triangles.corner(f, i / 3), i % 3);
                if (!(Math.abs(at) <= VertexWeld.LARGEST)) {
                    return false;
                }
                facet[i] = (float) at;
            }
            weld.add(facet);
        }
        return true;
    }
}
