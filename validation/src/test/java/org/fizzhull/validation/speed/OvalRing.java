package org.fizzhull.validation.speed;

import org.fizzhull.mesh.TriangleMesh;

/** Mesh of an oval ring, 84 x 70 x 25 mm: no direction about its axis is like another, and its middle is open. */
final class OvalRing {
    private OvalRing() {}

    /** The ring in about so many facets: 4 n n for a whole n. */
    static TriangleMesh of(int facets) {
        int across = (int) Math.round(Math.sqrt(facets / 4.0));
        int around = 2 * across;
        double[] xyz = new double[3 * around * across];
        int[] corners = new int[6 * around * across];
        for (int i = 0; i < around; i++) {
            for (int j = 0; j < across; j++) {
                double u = 2 * Math.PI * i / around;
                double v = 2 * Math.PI * j / across;
                int a = i * across + j;
                int b = (i + 1) % around * across + j;
                int c = (i + 1) % around * across + (j + 1) % across;
                int d = i * across + (j + 1) % across;
                double radius = 0.0225 + 0.0125 * Math.cos(v);
                xyz[3 * a] = 1.2 * radius * Math.cos(u);
                xyz[3 * a + 1] = radius * Math.sin(u);
                xyz[3 * a + 2] = 0.0125 * Math.sin(v);
                int[] two = {a, b, c, a, c, d};
                System.arraycopy(two, 0, corners, 6 * a, 6);
            }
        }
        return new TriangleMesh(xyz, corners);
    }
}
