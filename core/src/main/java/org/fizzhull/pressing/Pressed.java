package org.fizzhull.pressing;

import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * A damp piece as it comes out of its mould, made by {@link Press}. SI. Immutable.
 *
 * @param topPressure pressure under the plunger, Pa; 0 where the mix stands looser than it pours
 * @param meanPressure pressure averaged over the mould, Pa
 * @param solidFraction phi, volume of dry solids over volume of the piece
 * @param trueDensity density of the dry solids, kg/m3
 * @param liquidRatio M, kg of liquid per kg of dry powder
 * @param saturation S, volume of liquid over volume of pores
 * @param airPorosity eps_g, volume of pores without liquid over volume of the piece
 * @param dampMass mass of the damp piece, kg
 * @param handForce force on the whole face, N
 * @param strength tensile strength of the damp piece, Pa
 * @param selfWeight stress of its own weight at the foot, Pa
 * @param modelSpread phi of the second packing model less this one; 0 for a draw and where none was asked
 * @param feel how it feels
 * @param notices what the reader must know
 */
public record Pressed(
        double topPressure,
        double meanPressure,
        double solidFraction,
        double trueDensity,
        double liquidRatio,
        double saturation,
        double airPorosity,
        double dampMass,
        double handForce,
        double strength,
        double selfWeight,
        double modelSpread,
        Feel feel,
        List<Notice> notices) {

    /** {@return the porosity eps = 1 - phi} */
    public double porosity() {
        return 1 - solidFraction;
    }

    /** {@return the mass of dry powder over the volume of the piece, kg/m3} */
    public double dryDensity() {
        return solidFraction * trueDensity;
    }

    /** {@return the density of the damp piece, kg/m3} */
    public double dampDensity() {
        return dryDensity() * (1 + liquidRatio);
    }

    /** {@return the mass of the powder in it, kg} */
    public double dryMass() {
        return dampMass / (1 + liquidRatio);
    }

    /** How a piece feels when it comes out of the mould; {@link DampFeel} decides. */
    public enum Feel {
        /** Weaker than the stress of its own weight, or not pressed at all. */
        CRUMBLES("crumbles"),
        /** Carries its own weight. */
        HOLDS("holds"),
        /** Liquid bridges merge, the mix foams in the bowl, or it reacts faster than it can dry. */
        TOO_WET("too wet");

        /** The word shown to people. */
        private final String words;

        Feel(String words) {
            this.words = words;
        }

        /** {@return the words shown to people} */
        public String words() {
            return words;
        }
    }

    /**
     * How much liquid a mix takes: the amounts at which a piece holds rather than crumbles or is too wet. With draws, an
     * amount lies inside where at least as many draws hold as crumble and as are too wet, so that the window and the
     * verdict on the recipe's own amount never disagree. All amounts are kg of the recipe's liquid per kg of dry powder,
     * its proportions kept.
     *
     * @param low least inside; not below {@code high} where no amount is inside
     * @param high most inside
     * @param best amount at which most hold, its middle where several do
     * @param share of the draws that hold at the best, 0 to 1
     */
    public record LiquidWindow(double low, double high, double best, double share) {
        /** {@return whether no amount is inside} */
        public boolean isEmpty() {
            return !(low < high);
        }
    }
}
