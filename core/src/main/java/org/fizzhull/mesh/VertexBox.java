package org.fizzhull.mesh;

/** The box around vertices as they come. */
final class VertexBox {
    private float lowX = Float.POSITIVE_INFINITY;
    private float lowY = Float.POSITIVE_INFINITY;
    private float lowZ = Float.POSITIVE_INFINITY;
    private float highX = Float.NEGATIVE_INFINITY;
    private float highY = Float.NEGATIVE_INFINITY;
    private float highZ = Float.NEGATIVE_INFINITY;

    /** Takes vertices from one index up to another; their coordinates as bits of float32 numbers. */
    void widen(int[] bits, int from, int to) {
        for (int i = 3 * from; i < 3 * to; i += 3) {
            float x = Float.intBitsToFloat(bits[i]);
            float y = Float.intBitsToFloat(bits[i + 1]);
            float z = Float.intBitsToFloat(bits[i + 2]);
            lowX = x < lowX ? x : lowX;
            lowY = y < lowY ? y : lowY;
            lowZ = z < lowZ ? z : lowZ;
            highX = x > highX ? x : highX;
            highY = y > highY ? y : highY;
            highZ = z > highZ ? z : highZ;
        }
    }

    /** Longest side, in units of the file. */
    double longest() {
        return Math.max((double) highX - lowX, Math.max((double) highY - lowY, (double) highZ - lowZ));
    }

    /**
     * The box as a free body.
     *
     * @param facets number of facets
     * @param volume enclosed volume, m3
     * @param metresPerUnit length of one unit of the file, m
     */
    MeshBody body(int facets, double volume, double metresPerUnit) {
        return new MeshBody(
                facets,
                volume,
                0,
                lowX * metresPerUnit,
                lowY * metresPerUnit,
                lowZ * metresPerUnit,
                highX * metresPerUnit,
                highY * metresPerUnit,
                highZ * metresPerUnit);
    }
}
