package org.fizzhull.fizz;

import java.util.List;
import org.fizzhull.evidence.Notice;

/**
 * What the bath becomes once the piece has dissolved in it: an answer of {@link BathChemistry}. Immutable.
 *
 * @param ph negative decimal logarithm of the activity of H+, molal; good to 0.01 for citric and tartaric acid, less for
 *     others
 * @param ionicStrength mol/kg of water
 * @param dissolvedGas carbon dioxide dissolved as such, mol/kg of water
 * @param inorganicCarbon dissolved carbon dioxide, bicarbonate and carbonate, mol/kg of water
 * @param gasPressure partial pressure of carbon dioxide the water is in balance with, Pa
 * @param waterMass mass of the water, kg
 * @param notices what the reader must know: relations outside their range
 */
public record BathWater(
        double ph,
        double ionicStrength,
        double dissolvedGas,
        double inorganicCarbon,
        double gasPressure,
        double waterMass,
        List<Notice> notices) {

    /**
     * Copies the list.
     *
     * @param ph negative decimal logarithm of the activity of H+, molal; 0.01 for citric and tartaric acid, more for
     *     others
     * @param ionicStrength mol/kg of water
     * @param dissolvedGas carbon dioxide dissolved as such, mol/kg of water
     * @param inorganicCarbon dissolved carbon dioxide, bicarbonate and carbonate, mol/kg of water
     * @param gasPressure partial pressure of carbon dioxide the water is in balance with, Pa
     * @param waterMass mass of the water, kg
     * @param notices what the reader must know
     */
    public BathWater {
        notices = List.copyOf(notices);
    }
}
