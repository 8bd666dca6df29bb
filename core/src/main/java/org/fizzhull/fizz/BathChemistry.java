package org.fizzhull.fizz;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.PhysicalConstants;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.Kell1975;
import org.fizzhull.quantity.Refusal;

/**
 * The bath with everything dissolved: its pH by the balance of charges,
 *
 * <pre>  [Na+] + [K+] + [H+] + 2 [Mg++] = [OH-] + [HCO3-] + 2 [CO3--] + 2 [SO4--] + [MgCit-] + sum of i [anions of charge i]</pre>
 *
 * <p>molal, with activities. Of the ion pairs only that of magnesium and citrate counts (docs/physics/fizz.md: 0.1 in
 * pH where there is much Epsom salt); the others make 0.003.
 */
public final class BathChemistry {
    /** Carbon dioxide in a room's air, Pa: 425 ppm. */
    public static final double ROOM_GAS_PRESSURE = 425e-6 * PhysicalConstants.ATMOSPHERE;

    private static final int MOST_CHARGE = 3;
    private static final int STRENGTH_PASSES = 100;
    private static final int HALVINGS = 60;

    private final Bath bath;
    private final Reagents reagents;
    private final double alkalinity;
    private final double waterMass;
    private final double slope;
    private final double k0;
    private final double k1;
    private final double k2;
    private final double kw;
    private final double pairing;

    private BathChemistry(Bath bath, Reagents reagents) {
        double kelvin = bath.temperature();
        double density = Kell1975.density(kelvin);
        this.bath = bath;
        this.reagents = reagents;
        alkalinity = bath.alkalinity();
        waterMass = density * bath.volume();
        slope = Davies1962.slope(kelvin, density);
        k0 = Math.pow(10, PlummerBusenberg1982.lgSolubility(kelvin));
        k1 = Math.pow(10, PlummerBusenberg1982.lgFirst(kelvin));
        k2 = Math.pow(10, PlummerBusenberg1982.lgSecond(kelvin));
        kw = Math.pow(10, MarshallFranck1981.lgIonProduct(kelvin, density));
        pairing = Math.pow(10, MagnesiumCitrate.lgStability(kelvin));
    }

    /**
     * {@return the reagents dissolved in a bath whose alkalinity is that of dissolved bicarbonate}
     *
     * @param bath the water
     * @param reagents moles that dissolve
     */
    public static BathChemistry of(Bath bath, Reagents reagents) {
        return new BathChemistry(bath, reagents);
    }

    /**
     * {@return the same in tap water of an alkalinity, mol/m3 (mmol/L)}
     *
     * @param molPerCubicMetre total alkalinity of the tap water, mol/m3
     */
    public BathChemistry withTapAlkalinity(double molPerCubicMetre) {
        return new BathChemistry(bath.withTapAlkalinity(molPerCubicMetre), reagents);
    }

    /** {@return the state just dissolved, before any gas has left} */
    public BathWater closed() {
        return degassed(0);
    }

    /**
     * {@return the state after a share (0 to 1) of the largest yield of carbon dioxide has left as gas}
     *
     * @param share share of the largest yield that has left, 0 to 1
     * @throws Refusal {@code out-of-range} for any other share
     */
    public BathWater degassed(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new Refusal("out-of-range", "share of the gas", Double.toString(share), "0 to 1", "All of it is 1.");
        }
        double gone = share * Yield.of(reagents).carbonDioxide();
        double carbon = (reagents.carbon() + alkalinity * bath.volume() - gone) / waterMass;
        return balanced(carbon, Double.NaN);
    }

    /** {@return the state in the end, after hours in a room's air} */
    public BathWater open() {
        return open(ROOM_GAS_PRESSURE);
    }

    /**
     * {@return the state in balance with a partial pressure of carbon dioxide, Pa}
     *
     * @param gasPressure partial pressure of carbon dioxide over the water, Pa; 0 to 10 atm
     */
    public BathWater open(double gasPressure) {
        if (!(gasPressure >= 0 && gasPressure <= 10 * PhysicalConstants.ATMOSPHERE)) {
            throw new IllegalArgumentException("partial pressure " + gasPressure + " Pa");
        }
        return balanced(Double.NaN, gasPressure);
    }

    private BathWater balanced(double carbon, double gasPressure) {
        double salt = bath.salt() / MolarMass.SODIUM_CHLORIDE / waterMass;
        Solution solution = new Solution(carbon, gasPressure, salt);
        for (int pass = 0; pass < STRENGTH_PASSES; pass++) {
            double before = solution.strength;
            solution.balance();
            if (Math.abs(solution.strength - before) <= 1e-13 * (1 + before)) {
                break;
            }
        }
        double gas = solution.gas;
        double pressure = gas * solution.activity[0] / k0 * PhysicalConstants.ATMOSPHERE;
        return new BathWater(
                solution.ph,
                solution.strength,
                gas,
                solution.carbon(),
                pressure,
                waterMass,
                notices(solution.strength));
    }

    private List<Notice> notices(double strength) {
        List<Notice> notices = new ArrayList<>(2);
        Davies1962.VALIDITY.notice(strength).ifPresent(notices::add);
        for (Acid acid : Acid.values()) {
            if (reagents.acid(acid) > 0) {
                acid.constants().validity().notice(bath.temperature()).ifPresent(notices::add);
            }
        }
        return notices;
    }

    /** The search: pH halved into its place at a fixed ionic strength, which then follows. */
    private final class Solution {
        private final double carbonGiven;
        private final double gasPressure;
        private final double salt;
        private final double[] activity = new double[MOST_CHARGE + 1];
        private double strength;
        private double ph;
        private double gas;
        private double bicarbonate;
        private double carbonate;
        private double charge;
        private double squares;
        private double bound;

        Solution(double carbonGiven, double gasPressure, double salt) {
            this.carbonGiven = carbonGiven;
            this.gasPressure = gasPressure;
            this.salt = salt;
            strength = salt;
        }

        double carbon() {
            return gas + bicarbonate + carbonate;
        }

        void balance() {
            for (int z = 0; z <= MOST_CHARGE; z++) {
                activity[z] = Math.pow(10, Davies1962.lgCoefficient(slope, z, strength));
            }
            double low = 0;
            double high = 14;
            for (int pass = 0; pass < HALVINGS; pass++) {
                ph = (low + high) / 2;
                at(Math.pow(10, -ph));
                if (charge > 0) {
                    low = ph;
                } else {
                    high = ph;
                }
            }
            strength = salt + squares / 2;
        }

        /** Positive less negative charge, and the sum of c z^2, at an activity of H+. */
        private void at(double proton) {
            double first = k1 * activity[0] / (proton * activity[1]);
            double second = k2 * activity[1] / (proton * activity[2]);
            gas = carbonGiven >= 0
                    ? carbonGiven / (1 + first + first * second)
                    : k0 * gasPressure / PhysicalConstants.ATMOSPHERE / activity[0];
            bicarbonate = gas * first;
            carbonate = bicarbonate * second;
            double cations =
                    (reagents.bicarbonate() + 2 * reagents.carbonate() + alkalinity * bath.volume()) / waterMass;
            double free = proton / activity[1];
            double hydroxide = kw / (proton * activity[1]);
            charge = free - hydroxide - bicarbonate - 2 * carbonate;
            squares = free + hydroxide + bicarbonate + 4 * carbonate;
            bound = 0;
            for (Acid acid : Acid.values()) {
                double moles = reagents.acid(acid) / waterMass;
                if (moles > 0) {
                    cations += acid.replaced() * moles;
                    anions(acid, moles, proton);
                }
            }
            charge += cations;
            squares += cations;
            double magnesium = reagents.magnesium() / waterMass;
            // what no citrate binds, and the sulfate it came with
            charge += 2 * (magnesium - bound) - 2 * magnesium;
            squares += 4 * (magnesium - bound) + 4 * magnesium;
        }

        private void anions(Acid of, double moles, double proton) {
            AcidConstants acid = of.constants();
            double whole = 1;
            double species = 1;
            double charges = 0;
            double chargeSquares = 0;
            for (int z = 1; z <= acid.steps(); z++) {
                double k = Math.pow(10, -acid.pK(z, bath.temperature()));
                species *= k * activity[z - 1] / (proton * activity[z]);
                whole += species;
                charges += z * species;
                chargeSquares += z * z * species;
            }
            double open = moles;
            double magnesium = reagents.magnesium() / waterMass;
            if (of == Acid.CITRIC && magnesium > 0) {
                double constant = pairing * activity[3] * activity[2] / activity[1];
                bound = MagnesiumCitrate.bound(constant, whole / species, moles, magnesium);
                open -= bound;
                charge -= bound;
                squares += bound;
            }
            charge -= open * charges / whole;
            squares += open * chargeSquares / whole;
        }
    }
}
