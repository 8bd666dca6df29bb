package org.fizzhull.fizz;

import java.io.Serializable;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.recipe.Additives;

/**
 * The uncertain parameters of fizzing. Every default is assumed, with a wide prior in the forecast
 * (docs/physics/uncertainty.md, 2); what each rests on stands in docs/physics/fizz.md, 4 to 7, and unknowns.md.
 *
 * <p>The physics knows no spread: a draw of a forecast is one such record. {@link #in} turns the parameters of plain acid
 * and bicarbonate into those of a mix with oil, foam or starch. Ranges are not checked here. Immutable.
 *
 * @param recession38 v38, speed at which a wet surface of the usual mix moves inward at 38 C and porosity 0.24, m/s
 * @param porositySlope b, growth of the logarithm of that speed per unit of porosity
 * @param activationEnergy Ea of that speed, J/mol
 * @param reactiveExponent n, power with which the gas capacity acts on that speed
 * @param bubbleDiameter diameter of a clinging bubble as it leaves, m
 * @param layerRatio kappa, clinging gas per area of a fully covered face over that diameter; see {@link GasLayer}
 * @param undersideExcess q, what faces that look down hold beyond the mean, assumed 0 to 1; beyond 4 a face that looks up
 *     would hold less than nothing
 * @param gasShare g, share of the carbon dioxide that is gas at the surface, 0 to 1
 * @param oilFactor recession with 5 % of oil over that without
 * @param surfactantFactor recession with 5 % of foaming powder over that without
 * @param starchFactor recession with 10 % of starch over that without
 */
public record FizzParameters(
        double recession38,
        double porositySlope,
        double activationEnergy,
        double reactiveExponent,
        double bubbleDiameter,
        double layerRatio,
        double undersideExcess,
        double gasShare,
        double oilFactor,
        double surfactantFactor,
        double starchFactor)
        implements Serializable {
    /**
     * Refuses what is no number, and, the slope aside, what is below 0.
     *
     * @param recession38 v38, speed at which a wet surface of the usual mix moves inward at 38 C and porosity 0.24, m/s
     * @param porositySlope b, growth of the logarithm of that speed per unit of porosity
     * @param activationEnergy Ea of that speed, J/mol
     * @param reactiveExponent n, power with which the gas capacity acts on that speed
     * @param bubbleDiameter diameter of a clinging bubble as it leaves, m
     * @param layerRatio kappa, clinging gas per area of a fully covered face over that diameter; see {@link GasLayer}
     * @param undersideExcess q, what faces that look down hold beyond the mean, assumed 0 to 1; beyond 4 a face that looks up would hold less than nothing
     * @param gasShare g, share of the carbon dioxide that is gas at the surface, 0 to 1
     * @param oilFactor recession with 5 % of oil over that without
     * @param surfactantFactor recession with 5 % of foaming powder over that without
     * @param starchFactor recession with 10 % of starch over that without
     */
    public FizzParameters {
        Given.notNegative("recession38", recession38);
        Given.finite("porosity slope", porositySlope);
        Given.notNegative("activation energy", activationEnergy);
        Given.notNegative("reactive exponent", reactiveExponent);
        Given.notNegative("bubble diameter", bubbleDiameter);
        Given.notNegative("layer ratio", layerRatio);
        Given.notNegative("underside excess", undersideExcess);
        Given.notNegative("gas share", gasShare);
        Given.notNegative("oil factor", oilFactor);
        Given.notNegative("surfactant factor", surfactantFactor);
        Given.notNegative("starch factor", starchFactor);
    }

    /**
     * Parameters with the usual effect of oil, foaming powder and starch: 0.6, 0.75, 0.95.
     *
     * @param recession38 v38, m/s
     * @param porositySlope b, per unit of porosity
     * @param activationEnergy Ea, J/mol
     * @param reactiveExponent n
     * @param bubbleDiameter diameter of a clinging bubble, m
     * @param layerRatio kappa
     * @param undersideExcess q, 0 to 1
     * @param gasShare g, 0 to 1
     */
    public FizzParameters(
            double recession38,
            double porositySlope,
            double activationEnergy,
            double reactiveExponent,
            double bubbleDiameter,
            double layerRatio,
            double undersideExcess,
            double gasShare) {
        this(
                recession38,
                porositySlope,
                activationEnergy,
                reactiveExponent,
                bubbleDiameter,
                layerRatio,
                undersideExcess,
                gasShare,
                0.6,
                0.75,
                0.95);
    }

    /** {@return the defaults: 4.4 mm/min, 2.3, 30 kJ/mol, 0.5, 1.0 mm, 0.45, 0.5, 0.65, 0.6, 0.75, 0.95} */
    public static FizzParameters standard() {
        return new FizzParameters(4.4e-3 / 60, 2.3, 30e3, 0.5, 1e-3, 0.45, 0.5, 0.65);
    }

    /**
     * {@return the parameters of a mix that holds so much oil, foaming powder and starch; see {@link MixEffects}}
     *
     * @param additives additives of the mix, kg per kg of dry powder
     */
    public FizzParameters in(Additives additives) {
        return additives.none() ? this : MixEffects.of(this, additives);
    }
}
