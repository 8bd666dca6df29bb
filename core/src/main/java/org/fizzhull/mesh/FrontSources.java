package org.fizzhull.mesh;

/**
 * What the points inside a closed mesh can be nearest to: its open facets, the edges at which the material stands more
 * than a half turn wide, and such corners. From each goes out a bundle of straight ways, inward and at right angles to
 * the surface: prisms from facets, wedges from edges, cones from corners. A front that eats inwards from the open facets
 * follows them, so together they fill the body once: Steiner's formula for parallel bodies, piece by piece. Shallow edges
 * are taken for the chords of a smooth surface, whose normals turn evenly along the facets.
 */
final class FrontSources {
    private static final double HALF = 0.5;
    private static final double THIRD = 1.0 / 3;

    /** Facets whose ways meet soon weigh at least this share of the prism over them. */
    private static final double LEAST = 0.1;

    private final FacetPrisms prisms;
    private final EdgeWedges wedges;
    private final CornerCones cones;
    private final double[] share;

    /**
     * @param open facets from which the front starts
     * @param order the same facets, neighbours near each other
     */
    FrontSources(TriangleMesh mesh, boolean[] open, int[] order) {
        VertexStars stars = new VertexStars(mesh);
        FacetNormals normals = new FacetNormals(mesh, stars, open);
        prisms = new FacetPrisms(mesh, stars, normals, open, order);
        wedges = new EdgeWedges(mesh, stars, normals, open, order);
        cones = new CornerCones(mesh, stars, normals, open, wedges);
        share = new double[prisms.count() + wedges.count() + cones.count()];
    }

    /** Weighs the bundles by their volume down to a depth, m. */
    void weigh(double depth) {
        FrontBundle bundle = new FrontBundle();
        double sum = 0;
        for (int i = 0; i < share.length; i++) {
            bundle(i, bundle);
            bundle.way(bundle.triangle ? THIRD : HALF, bundle.triangle ? THIRD : HALF);
            sum += Math.max(bundle.content(Math.min(depth, bundle.focus())), LEAST * depth * bundle.at(0));
            share[i] = sum;
        }
    }

    /** Number of bundles. */
    int count() {
        return share.length;
    }

    /** Share of all bundles up to and with one, m3. */
    double upTo(int i) {
        return share[i];
    }

    /** Sets a bundle. */
    void bundle(int i, FrontBundle out) {
        int wedge = i - prisms.count();
        if (wedge < 0) {
            prisms.bundle(i, out);
        } else if (wedge < wedges.count()) {
            wedges.bundle(wedge, out);
        } else {
            cones.bundle(wedge - wedges.count(), out);
        }
    }
}
