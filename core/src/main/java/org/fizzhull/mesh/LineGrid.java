package org.fizzhull.mesh;

/** Lines parallel to z on a square grid over the box of a body, off round numbers, where edges of drawn bodies are. */
final class LineGrid {
    private static final double OFF_X = 0.4142135623730951;
    private static final double OFF_Y = 0.5773502691896258;

    private final int lines;
    private final double lowX;
    private final double lowY;
    private final double scaleX;
    private final double scaleY;

    /** {@code lines} by {@code lines} of them over a box. */
    LineGrid(int lines, MeshBody box) {
        this.lines = lines;
        lowX = box.lowX();
        lowY = box.lowY();
        scaleX = lines / (box.highX() - lowX);
        scaleY = lines / (box.highY() - lowY);
    }

    /** Number of lines. */
    int count() {
        return lines * lines;
    }

    /** Number of the line in a column and a row. */
    int line(int column, int row) {
        return row * lines + column;
    }

    /** Number of columns left of some x, m. */
    int column(double x) {
        return (int) ((x - lowX) * scaleX + (1 - OFF_X));
    }

    /** Number of rows before some y, m. */
    int row(double y) {
        return (int) ((y - lowY) * scaleY + (1 - OFF_Y));
    }

    /** Where a column stands, m. */
    double x(int column) {
        return lowX + (column + OFF_X) / scaleX;
    }

    /** Where a row stands, m. */
    double y(int row) {
        return lowY + (row + OFF_Y) / scaleY;
    }

    /** A place on a line, in words. */
    String point(int line, double z) {
        return Where.point(x(line % lines), y(line / lines), z);
    }

    /** Area of the box that a line stands for, m2. */
    double cell() {
        return 1 / scaleX / scaleY;
    }
}
