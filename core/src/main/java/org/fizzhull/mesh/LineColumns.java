package org.fizzhull.mesh;

/**
 * Number of grid lines left of each vertex of a range: a facet whose vertices agree meets none, and in a fine mesh most
 * do.
 */
final class LineColumns implements Runnable {
    private final LineGrid grid;
    private final Vertices vertices;
    private final byte[] column;
    private final int fromVertex;
    private final int toVertex;

    LineColumns(LineGrid grid, Vertices vertices, byte[] column, int fromVertex, int toVertex) {
        this.grid = grid;
        this.vertices = vertices;
        this.column = column;
        this.fromVertex = fromVertex;
        this.toVertex = toVertex;
    }

    @Override
    public void run() {
        int v = fromVertex;
        while (v < toVertex) {
            int end = fromVertex + Chunks.end(v - fromVertex, toVertex - fromVertex);
            columns(v, end);
            v = end;
        }
    }

    private void columns(int from, int to) {
        for (int v = from; v < to; v++) {
            column[v] = (byte) grid.column(vertices.at(3 * v));
        }
    }
}
