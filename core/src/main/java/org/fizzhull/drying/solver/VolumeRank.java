package org.fizzhull.drying.solver;

/**
 * Carries what the cells hold from one set of open faces to another, for example from the mould to the rack: by rank of
 * volume, the outermost tenth to the outermost tenth. Keeps the total to rounding; where each part lies is an
 * approximation [assumed], forgotten within the time vapour needs to cross the piece.
 */
public final class VolumeRank {
    private VolumeRank() {}

    /**
     * Replaces the values (per volume) of the old cells by those of the new ones; both grids have as many cells.
     *
     * @param from the old cells
     * @param to the new cells
     * @param values amount per volume in each cell; replaced
     */
    public static void carry(DryingGrid from, DryingGrid to, double[] values) {
        int n = from.cells;
        double scale = from.total / to.total;
        double[] carried = new double[n];
        int j = 0;
        double left = from.volume[0];
        for (int i = 0; i < n; i++) {
            // fill the new cell from the old ones, where the last new cell stopped
            double wanted = to.volume[i] * scale;
            double sum = 0;
            while (wanted > 0) {
                double part = j == n - 1 ? wanted : Math.min(wanted, left);
                sum += part * values[j];
                wanted -= part;
                left -= part;
                if (left <= 0 && j < n - 1) {
                    j++;
                    left = from.volume[j];
                }
            }
            carried[i] = to.volume[i] > 0 ? sum / (to.volume[i] * scale) : values[j];
        }
        System.arraycopy(carried, 0, values, 0, n);
    }
}
