package org.fizzhull.drying.mix;

import java.io.Serializable;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.pressing.powder.EarlyRates;

/**
 * The uncertain parameters of drying and of the reaction before the bath. All but the boundary layer are assumed or
 * rest on one argument; {@code forecast} draws them from the priors of docs/physics/uncertainty.md, 2.
 *
 * @param diffusivityFactor factor on D_e = D_va eps_g^(4/3); 1, x/÷1.6 [Millington and Quirk's law from memory]
 * @param transfer h_m in still air, m/s; 2.5e-3, x/÷1.5 [computed for a 65 mm ball]
 * @param fanFactor factor of a gentle fan on h_m; 2, 1.5 to 3 [assumed]
 * @param filmActivity a_film, water activity of the film solution without further salts; 0.72 ± 0.08 [assumed: Ross
 *     product of citric acid 0.75 and bicarbonate 0.96]
 * @param promptYield Y, mol of CO2 per kg of water when liquid meets powder; 7, x/÷2 [assumed: solubility argument]
 * @param filmRate k at 25 C, mol of CO2 per kg of free water and second; 6e-5, x/÷4 [assumed]
 * @param activationEnergy of k, J/mol; 50e3 ± 20e3 [assumed]
 * @param oilFactor s_oil, factor on k where oil coats the grains, from 2 % of oil; 0.7, 0.3 to 1 [assumed]
 * @param acidLastFactor s_acidlast, factor on k where the acid went in last; 0.7, 0.3 to 1 [assumed; no figure in any
 *     source, set like oil]
 * @param reactionOrder p; 1, 2/3 to 2 [assumed]
 * @param hydrateWaters h, water bound per citrate, 0 to 2; 1 [assumed]
 * @param startActivity water activity at which the powders are bought; 0.50 [assumed]
 * @param retainedGas factor on the share of gas that swells the piece; 1, x/÷5 [assumed]
 * @param sealLeak vapour through seals and holes of a wrap against what its film passes; 3, x/÷3 [assumed]
 * @param hydrateShare share of the water hydrated salts can give back that comes within the time of a course; 1/2,
 *     anything from 0 to 1 [assumed: where it settles is known, how fast is not, days to weeks]
 * @param acidHydration rate at which anhydrous citric acid becomes its monohydrate and back, 1/s; 1/(10 d), x/÷4
 *     [assumed: where it settles is known, how fast is not]
 */
public record DryingParameters(
        double diffusivityFactor,
        double transfer,
        double fanFactor,
        double filmActivity,
        double promptYield,
        double filmRate,
        double activationEnergy,
        double oilFactor,
        double acidLastFactor,
        double reactionOrder,
        double hydrateWaters,
        double startActivity,
        double retainedGas,
        double sealLeak,
        double hydrateShare,
        double acidHydration)
        implements Serializable {

    /**
     * Refuses what cannot be computed with.
     *
     * @param diffusivityFactor factor on D_e = D_va eps_g^(4/3); 1, x/÷1.6 [Millington and Quirk's law from memory]
     * @param transfer h_m in still air, m/s; 2.5e-3, x/÷1.5 [computed for a 65 mm ball]
     * @param fanFactor factor of a gentle fan on h_m; 2, 1.5 to 3 [assumed]
     * @param filmActivity a_film, water activity of the film solution without further salts; 0.72 ± 0.08 [assumed: Ross
     *     product of citric acid 0.75 and bicarbonate 0.96]
     * @param promptYield Y, mol of CO2 per kg of water when liquid meets powder; 7, x/÷2 [assumed: solubility argument]
     * @param filmRate k at 25 C, mol of CO2 per kg of free water and second; 6e-5, x/÷4 [assumed]
     * @param activationEnergy of k, J/mol; 50e3 ± 20e3 [assumed]
     * @param oilFactor s_oil, factor on k where oil coats the grains, from 2 % of oil; 0.7, 0.3 to 1 [assumed]
     * @param acidLastFactor s_acidlast, factor on k where the acid went in last; 0.7, 0.3 to 1 [assumed; no figure in
     *     any source, set like oil]
     * @param reactionOrder p; 1, 2/3 to 2 [assumed]
     * @param hydrateWaters h, water bound per citrate, 0 to 2; 1 [assumed]
     * @param startActivity water activity at which the powders are bought; 0.50 [assumed]
     * @param retainedGas factor on the share of gas that swells the piece; 1, x/÷5 [assumed]
     * @param sealLeak vapour through seals and holes of a wrap against what its film passes; 3, x/÷3 [assumed]
     * @param hydrateShare share of the water hydrated salts can give back that comes within the time of a course; 1/2,
     *     anything from 0 to 1 [assumed: where it settles is known, how fast is not, days to weeks]
     * @param acidHydration rate at which anhydrous citric acid becomes its monohydrate and back, 1/s; 1/(10 d), x/÷4
     *     [assumed: where it settles is known, how fast is not]
     * @throws IllegalArgumentException for a value outside its range, NaN included
     */
    public DryingParameters {
        within("diffusivity factor", diffusivityFactor, 1e-3, 1e3);
        within("transfer", transfer, 1e-9, 1e6);
        within("fan factor", fanFactor, 1, 20);
        within("film activity", filmActivity, 0.05, 0.95);
        within("prompt yield", promptYield, 0, 1000);
        within("film rate", filmRate, 0, 1);
        within("activation energy", activationEnergy, 0, 3e5);
        within("oil factor", oilFactor, 0, 1);
        within("acid-last factor", acidLastFactor, 0, 1);
        within("reaction order", reactionOrder, 0.5, 3);
        within("hydrate waters", hydrateWaters, 0, 2);
        within("start activity", startActivity, 0, 0.95);
        within("retained gas", retainedGas, 0, 1000);
        within("seal leak", sealLeak, 0, 1e3);
        within("hydrate share", hydrateShare, 0, 1);
        within("acid hydration", acidHydration, 0, 1);
    }

    /** The medians of the priors, in the order of the components. */
    private static final DryingParameters STANDARD = new DryingParameters(
            1,
            EarlyRates.SKIN_TRANSFER,
            2,
            EarlyRates.FILM_ACTIVITY,
            EarlyRates.PROMPT_YIELD,
            EarlyRates.FILM_RATE,
            50e3,
            EarlyRates.OIL_FACTOR,
            EarlyRates.ACID_LAST_FACTOR,
            EarlyRates.ORDER,
            EarlyRates.HYDRATE_WATERS,
            0.50,
            1,
            3,
            0.5,
            1 / (10 * 86400.0));

    /** {@return the defaults, docs/physics/drying.md} */
    public static DryingParameters standard() {
        return STANDARD;
    }

    /** {@return a builder that starts from these values: {@code standard().but().filmActivity(0.75).build()}} */
    public DryingParametersBuilder but() {
        return new DryingParametersBuilder(this);
    }

    /**
     * {@return the film reaction constant at a temperature in K, mol/(kg s), before the factors of oil and order of
     * mixing}
     *
     * @param kelvin temperature, K
     */
    public double filmRateAt(double kelvin) {
        return filmRate * Math.exp(-activationEnergy / PhysicalConstants.GAS_CONSTANT * (1 / kelvin - 1 / 298.15));
    }

    /** Refuses a number outside its range, NaN included. */
    private static void within(String name, double x, double low, double high) {
        if (!(x >= low && x <= high)) {
            throw new IllegalArgumentException(name + " " + x + " is not within " + low + " to " + high);
        }
    }
}
