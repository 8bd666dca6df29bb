package org.fizzhull.mesh;

/** The box around vertices as they come, m. */
final class VertexBox {
    private double lowX = Double.POSITIVE_INFINITY;
    private double lowY = Double.POSITIVE_INFINITY;
    private double lowZ = Double.POSITIVE_INFINITY;
    private double highX = Double.NEGATIVE_INFINITY;
    private double highY = Double.NEGATIVE_INFINITY;
    private double highZ = Double.NEGATIVE_INFINITY;

    /** Takes vertices from one index up to another. */
    void widen(double[] xyz, int from, int to) {
        for (int i = 3 * from; i < 3 * to; i += 3) {
            double x = xyz[i];
            double y = xyz[i + 1];
            double z = xyz[i + 2];
            lowX = x < lowX ? x : lowX;
            lowY = y < lowY ? y : lowY;
            lowZ = z < lowZ ? z : lowZ;
            highX = x > highX ? x : highX;
            highY = y > highY ? y : highY;
            highZ = z > highZ ? z : highZ;
        }
    }

    /** Longest side, m. */
    double longest() {
        return Math.max(highX - lowX, Math.max(highY - lowY, highZ - lowZ));
    }

    /** The box as a free body of so many facets and some volume, m3. */
    MeshBody body(int facets, double volume) {
        return new MeshBody(facets, volume, 0, lowX, lowY, lowZ, highX, highY, highZ);
    }
}
