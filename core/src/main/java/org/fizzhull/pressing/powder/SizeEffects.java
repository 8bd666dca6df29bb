package org.fizzhull.pressing.powder;

/**
 * How grains of two sizes disturb each other, worked out once per set of sizes: de Larrard's loosening effect
 * a = sqrt(1 - (1 - d_small/d_large)^1.02) and wall effect b = 1 - (1 - d_small/d_large)^1.50; 0 for very different
 * sizes, 1 for equal ones (from memory, docs/physics/packing.md, 3).
 */
final class SizeEffects {
    /** Grain sizes, m. */
    final double[] diameter;
    /** Row i, column j: a where j is the smaller, b where j is the larger; 1 where equal. */
    final double[][] effect;

    /** Works out all pairs of sizes, m. */
    SizeEffects(double[] diameter) {
        this.diameter = diameter.clone();
        int n = diameter.length;
        effect = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double r = Math.min(diameter[i], diameter[j]) / Math.max(diameter[i], diameter[j]);
                effect[i][j] = diameter[j] < diameter[i] ? loosening(r) : wall(r);
            }
        }
    }

    /** a: loosening of large grains by small ones, 0 to 1; {@code ratio} small over large size. */
    static double loosening(double ratio) {
        return Math.sqrt(1 - Math.pow(1 - ratio, 1.02));
    }

    /** b: wall effect of large grains on small ones, 0 to 1; {@code ratio} small over large size. */
    static double wall(double ratio) {
        return 1 - Math.pow(1 - ratio, 1.50);
    }
}
