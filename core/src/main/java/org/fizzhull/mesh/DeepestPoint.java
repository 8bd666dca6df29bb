package org.fizzhull.mesh;

/** Largest distance from open facets inside a body: the best of some thousand points, and from there uphill. */
final class DeepestPoint {
    private static final double POINTS = 2000;
    private static final double ACCURACY = 2e-5;
    /** Distances may be long by this share: at the middle of a ball all facets are almost equally near. */
    private static final double SLACK = 1e-5;

    private DeepestPoint() {}

    /** The distance, m, to {@value #ACCURACY} of itself unless a wall much thinner than the rest hides the place. */
    static double distance(TriangleMesh mesh, boolean[] body, FacetTree open, double volume) {
        double[] box = mesh.box();
        double h = Math.cbrt(volume / POINTS);
        double[] at = {box[0], box[1], box[2]};
        double best = 0;
        FacetTree.Probe probe = open.probe();
        // a lattice off the middle, halved until it finds the inside of a thin shell
        for (int pass = 0; best == 0 && pass < 6; pass++, h /= 2) {
            best = scan(mesh, body, probe, box, h, at);
        }
        if (!(best > 0)) {
            throw new IllegalArgumentException("a body too thin for its box, or one that is not closed");
        }
        double step = Math.min(h, best) / 2;
        while (step > ACCURACY / 2 * best) {
            double better = best;
            double[] to = at.clone();
            for (int m = 0; m < 27; m++) {
                double x = at[0] + (m % 3 - 1) * step;
                double y = at[1] + (m / 3 % 3 - 1) * step;
                double z = Math.max(box[2], at[2] + (m / 9 - 1) * step);
                double d = probe.distance(x, y, z, SLACK * best, better);
                if (d > better) {
                    better = d;
                    to = new double[] {x, y, z};
                }
            }
            if (better > best) {
                best = better;
                at = to;
            } else {
                step /= 2;
            }
        }
        return best;
    }

    private static double scan(
            TriangleMesh mesh, boolean[] body, FacetTree.Probe probe, double[] box, double h, double[] at) {
        int nx = (int) Math.ceil((box[3] - box[0]) / h);
        int ny = (int) Math.ceil((box[4] - box[1]) / h);
        int nz = (int) Math.ceil((box[5] - box[2]) / h);
        double x0 = box[0] + 0.4873 * h;
        double y0 = box[1] + 0.4691 * h;
        RayTable rays = new RayTable(mesh, body, 2, x0, y0, h, nx, ny);
        double floor = FaceSets.floor(box);
        double best = 0;
        for (int k = 0; k <= nz; k++) {
            double z = box[2] + k * h;
            for (int j = 0; j < ny; j++) {
                for (int i = 0; i < nx; i++) {
                    if (rays.inside(i, j, Math.max(z, floor))) {
                        double d = probe.distance(x0 + i * h, y0 + j * h, z, SLACK * best, best);
                        if (d > best) {
                            best = d;
                            at[0] = x0 + i * h;
                            at[1] = y0 + j * h;
                            at[2] = z;
                        }
                    }
                }
            }
        }
        return best;
    }
}
