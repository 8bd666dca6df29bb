package org.fizzhull.fizz;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.medium.Bath;
import org.fizzhull.medium.relation.Kell1975;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;

/**
 * The bath with everything dissolved: its pH by the balance of charges,
 *
 * <pre>  [Na+] + [K+] + [H+] + 2 [Mg++] = [OH-] + [HCO3-] + 2 [CO3--] + 2 [SO4--] + [MgCit-] + sum of i [anions of charge i]</pre>
 *
 * <p>molal, with activities by {@link Davies1962}. Three states: {@link #closed}, with all carbon still in the water;
 * {@link #degassed}, with part of it gone; {@link #open}, in balance with a gas above it. Of the ion pairs only that of
 * magnesium and citrate counts (docs/physics/fizz.md, 3: 0.1 in pH where there is much Epsom salt); the others make 0.003.
 *
 * <p>Method: the pH is halved into its place at a fixed ionic strength, which then follows, until it stands to 1e-13. Range:
 * ionic strength up to 0.5 mol/kg, temperatures of the constants; outside, the result carries a notice. Error: 0.002 against
 * an independent equilibrium code for closed baths, 0.17 against measured tablets (fizz.md, 3). What it leaves out: heat of the
 * reaction, solids that do not dissolve, speed (the balance is reached). Immutable.
 *
 * <pre>{@code
 * BathWater water = BathChemistry.of(bath, Reagents.none().withBicarbonate(1.19).withAcid(Acid.CITRIC, 0.26)).open();
 * double ph = water.ph();
 * }</pre>
 */
public final class BathChemistry {
    /** Carbon dioxide in a room's air, Pa: 425 ppm. */
    public static final double ROOM_GAS_PRESSURE = 425e-6 * PhysicalConstants.ATMOSPHERE;

    /** Largest charge of an anion, that of citrate. */
    private static final int MOST_CHARGE = 3;
    /** Passes of the ionic strength at most. */
    private static final int STRENGTH_PASSES = 100;
    /** Halvings of the pH from 14: beyond the last bit of a double. */
    private static final int HALVINGS = 60;

    private final Bath bath;
    private final Reagents reagents;
    /** Of the tap water, as dissolved bicarbonate, mol/m3. */
    private final double alkalinity;
    /** Mass of the water, kg. */
    private final double waterMass;
    /** Debye-Hueckel slope, (kg/mol)^(1/2). */
    private final double slope;
    /** Solubility of carbon dioxide, mol/(kg atm). */
    private final double k0;
    /** First and second constant of carbonic acid, mol/kg. */
    private final double k1;

    private final double k2;
    /** Ion product of water, (mol/kg)^2. */
    private final double kw;
    /** Stability of the magnesium citrate ion, kg/mol. */
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
        Given.all("bath, reagents", bath, reagents);
        return new BathChemistry(bath, reagents);
    }

    /**
     * {@return the same in tap water of another alkalinity}
     *
     * @param molPerCubicMetre total alkalinity of the tap water, mol/m3 (mmol/L)
     */
    public BathChemistry withTapAlkalinity(double molPerCubicMetre) {
        return new BathChemistry(bath.withTapAlkalinity(molPerCubicMetre), reagents);
    }

    /** {@return the state just dissolved, before any gas has left} */
    public BathWater closed() {
        return degassed(0);
    }

    /**
     * {@return the state after part of the carbon dioxide has left as gas}
     *
     * @param share share of the largest yield that has left, 0 to 1
     * @throws Refusal {@code out-of-range} for any other share
     */
    public BathWater degassed(double share) {
        if (!(share >= 0 && share <= 1)) {
            throw new Refusal("out-of-range", "share of the gas", Double.toString(share), "0 to 1", "All of it is 1.");
        }
        double gone = share * reagents.theoreticalYield().carbonDioxide();
        double carbon = (reagents.carbon() + alkalinity * bath.volume() - gone) / waterMass;
        return balanced(carbon, Double.NaN);
    }

    /** {@return the state in the end, after hours in a room's air, {@link #ROOM_GAS_PRESSURE}} */
    public BathWater open() {
        return open(ROOM_GAS_PRESSURE);
    }

    /**
     * {@return the state in balance with a partial pressure of carbon dioxide}
     *
     * @param gasPressure partial pressure of carbon dioxide over the water, Pa; 0 to 10 atm
     * @throws IllegalArgumentException for any other pressure
     */
    public BathWater open(double gasPressure) {
        if (!(gasPressure >= 0 && gasPressure <= 10 * PhysicalConstants.ATMOSPHERE)) {
            throw new IllegalArgumentException("partial pressure " + gasPressure + " Pa");
        }
        return balanced(Double.NaN, gasPressure);
    }

    /** The state for all carbon in the water, mol/kg, or, where that is NaN, for a partial pressure, Pa. */
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

    /** What of the relations is used outside its range. */
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
        /** All carbon, mol/kg; NaN where the pressure is given instead. */
        private final double carbonGiven;
        /** Partial pressure of carbon dioxide, Pa; NaN where the carbon is given. */
        private final double gasPressure;
        /** Sodium chloride, mol/kg: it only adds to the ionic strength. */
        private final double salt;
        /** Activity coefficient by charge, 0 to 3. */
        private final double[] activity = new double[MOST_CHARGE + 1];
        /** Ionic strength, mol/kg. */
        private double strength;

        private double ph;
        /** Dissolved carbon dioxide, mol/kg. */
        private double gas;
        /** Bicarbonate and carbonate ions, mol/kg. */
        private double bicarbonate;

        private double carbonate;
        /** Positive less negative charge, mol/kg; falls with pH. */
        private double charge;
        /** Sum of c z^2 without the salt, mol/kg: twice its share of the ionic strength. */
        private double squares;
        /** Magnesium in the pair with citrate, mol/kg. */
        private double bound;

        Solution(double carbonGiven, double gasPressure, double salt) {
            this.carbonGiven = carbonGiven;
            this.gasPressure = gasPressure;
            this.salt = salt;
            strength = salt;
        }

        /** All carbon in the water, mol/kg. */
        double carbon() {
            return gas + bicarbonate + carbonate;
        }

        /** Finds the pH at the present ionic strength, then the ionic strength that follows. */
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

        /** Works out every species, the charge and the sum of squares at an activity of H+, mol/kg. */
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

        /** Takes the anions of an acid from the charge: fractions of its steps, less what magnesium binds. */
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
