package org.fizzhull.mesh;

/**
 * Number of grid lines left of each vertex of a range: a facet whose vertices agree meets none, and in a fine mesh most
 * do.
 */
final class LineColumns implements Runnable {
    /** Vertices in one call of the inner loop: one that is called often is compiled early. */
    private static final int FEW = 64;

    private final LineGrid grid;
    private final double[] xyz;
    private final int[] column;
    private final int fromVertex;
    private final int toVertex;

    LineColumns(LineGrid grid, double[] xyz, int[] column, int fromVertex, int toVertex) {
        this.grid = grid;
        this.xyz = xyz;
        this.column = column;
        this.fromVertex = fromVertex;
        this.toVertex = toVertex;
    }

    @Override
    public void run() {
        for (int v = fromVertex; v < toVertex; v += FEW) {
            columns(v, Math.min(toVertex, v + FEW));
        }
    }

    private void columns(int from, int to) {
        for (int v = from; v < to; v++) {
            column[v] = grid.column(xyz[3 * v]);
        }
    }
}
