package org.fizzhull.pressing.powder;

/**
 * Compressible packing model of F. de Larrard, Concrete Mixture Proportioning (1999), equations from memory; the limits of
 * a single size, of no interaction and of full interaction are checked. Solid fraction phi of a mix at a compaction index K:
 *
 * <pre>
 * K = sum_i (y_i/beta_i)/(1/phi - 1/gamma_i),     phi &lt; min gamma_i
 * </pre>
 *
 * y_i share of the solid volume, beta_i densest packing of powder i alone, gamma_i that of the mix if size i alone set it
 * (docs/physics/packing.md, 3, has its equation). K grows with pressure, K(P) = K0 (1 + P/Pk) (assumed), which for one
 * powder is exactly Kawakita's law with a = 1/(K0 + 1) and 1/b = Pk.
 *
 * <p>Stated mean error for aggregates: 0.8 to 1.8 % of the solid fraction (second-hand); 0.015 on phi is taken for powders.
 * Cost: n^2 operations for n powders. Stateless.
 */
public final class DeLarrard1999 implements PackingModel {
    /** Newton steps at most. */
    private static final int MOST_STEPS = 100;

    /** The model, which holds nothing. */
    public DeLarrard1999() {}

    @Override
    public double solidFraction(Powders powders, double squeeze) {
        return atIndex(powders, powders.indexAt(squeeze));
    }

    /**
     * {@return the solid fraction at a compaction index} Newton on 1/phi from the dense side, where the sum is falling and
     * convex, so that every step stays on that side and no bracket is needed.
     *
     * @param powders powders of the mix
     * @param index compaction index K, above 0; 9 for tapped powder
     * @throws IllegalArgumentException for an index of 0 or less
     */
    public double atIndex(Powders powders, double index) {
        if (!(index > 0)) {
            throw new IllegalArgumentException("compaction index " + index + " is not above 0");
        }
        int n = powders.share.length;
        double[] dominant = inverseVirtual(powders);
        // 1/phi at which a single term of the sum already is K: never more than the answer
        double volume = 0;
        for (int i = 0; i < n; i++) {
            volume = Math.max(volume, dominant[i] + powders.share[i] / powders.beta[i] / index);
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            double sum = 0;
            double slope = 0;
            for (int i = 0; i < n; i++) {
                double gap = volume - dominant[i];
                double term = powders.share[i] / powders.beta[i] / gap;
                sum += term;
                slope -= term / gap;
            }
            double move = (index - sum) / slope;
            volume += move;
            if (!(Math.abs(move) > 1e-14 * volume)) {
                return 1 / volume;
            }
        }
        return 1 / volume;
    }

    /**
     * {@return the densest packing thinkable, with every grain placed by hand: the limit of the solid fraction as K grows}
     *
     * @param powders powders of the mix
     */
    public double virtual(Powders powders) {
        double largest = 0;
        for (double v : inverseVirtual(powders)) {
            largest = Math.max(largest, v);
        }
        return 1 / largest;
    }

    /**
     * {@return the compaction index that gives a solid fraction below {@link #virtual}; infinite at and above it}
     *
     * @param powders powders of the mix
     * @param solidFraction volume of solids over the volume of the bed, above 0
     */
    public double indexOf(Powders powders, double solidFraction) {
        return indexOf(powders, inverseVirtual(powders), solidFraction);
    }

    /** The same with 1/gamma known, {@link #inverseVirtual}, for a search that asks often. */
    double indexOf(Powders powders, double[] dominant, double solidFraction) {
        double index = 0;
        for (int i = 0; i < dominant.length; i++) {
            double gap = 1 / solidFraction - dominant[i];
            if (!(gap > 0)) {
                return Double.POSITIVE_INFINITY;
            }
            index += powders.share[i] / powders.beta[i] / gap;
        }
        return index;
    }

    /**
     * {@return the pressure ratio P/Pk that gives a solid fraction; negative where it is looser than poured, infinite at and
     * above the virtual packing}
     *
     * @param powders powders of the mix
     * @param solidFraction volume of solids over the volume of the bed, above 0
     */
    public double squeezeOf(Powders powders, double solidFraction) {
        return powders.squeezeAt(indexOf(powders, solidFraction));
    }

    /**
     * 1/gamma_i of each powder: volume of the bed over solid volume if that size alone set the packing (equation of gamma_i in
     * docs/physics/packing.md, 3); negative infinity for a powder without a share.
     */
    static double[] inverseVirtual(Powders p) {
        int n = p.share.length;
        double[] inverse = new double[n];
        for (int i = 0; i < n; i++) {
            if (p.share[i] == 0) {
                inverse[i] = Double.NEGATIVE_INFINITY; // a size that is not there sets nothing
                continue;
            }
            double room = 1;
            for (int j = 0; j < n; j++) {
                double effect = p.sizes.effect[i][j];
                if (p.sizes.diameter[j] > p.sizes.diameter[i]) {
                    room -= (1 - p.beta[i] + effect * p.beta[i] * (1 - 1 / p.beta[j])) * p.share[j];
                } else {
                    room -= (1 - effect * p.beta[i] / p.beta[j]) * p.share[j];
                }
            }
            inverse[i] = room / p.beta[i];
        }
        return inverse;
    }
}
