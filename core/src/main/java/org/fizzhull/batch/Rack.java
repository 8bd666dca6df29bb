package org.fizzhull.batch;

/**
 * A rectangle on which the pieces of a batch dry side by side, two fingers apart: columns across, rows down, the last
 * row perhaps short. Sizes count half a gap outside the outermost pieces. Immutable.
 *
 * @param columns pieces in a row
 * @param rows number of rows
 * @param length across the columns, gaps counted, m
 * @param width across the rows, gaps counted, m
 */
public record Rack(int columns, int rows, double length, double width) {
    /** Room between neighbours, m: two fingers (common practice, no source). */
    public static final double GAP = 0.02;

    /** Length over width that fits a shelf and a page (assumed). */
    private static final double SHAPE = 1.6;

    /**
     * {@return the rack for a number of pieces: the number of columns that makes |ln((length/width)/1.6)| plus the share of
     * empty places smallest}
     *
     * @param pieces number of pieces, 1 or more
     * @param pieceLength across the columns, m
     * @param pieceWidth across the rows, m
     * @throws IllegalArgumentException for no pieces or no size
     */
    public static Rack of(int pieces, double pieceLength, double pieceWidth) {
        if (!(pieces >= 1 && pieceLength > 0 && pieceWidth > 0)) {
            throw new IllegalArgumentException("a rack needs pieces of a size");
        }
        double across = pieceLength + GAP;
        double down = pieceWidth + GAP;
        int best = 1;
        double least = Double.POSITIVE_INFINITY;
        for (int columns = 1; columns <= pieces; columns++) {
            int rows = (pieces + columns - 1) / columns;
            // share of empty places in the last row, and distance from the wanted proportions
            double empty = (double) (rows * (long) columns) / pieces - 1;
            double misfit = Math.abs(Math.log(columns * across / (rows * down) / SHAPE)) + empty;
            if (misfit < least) {
                least = misfit;
                best = columns;
            }
        }
        int rows = (pieces + best - 1) / best;
        return new Rack(best, rows, best * across, rows * down);
    }

    /** {@return length times width, m2} */
    public double area() {
        return length * width;
    }
}
