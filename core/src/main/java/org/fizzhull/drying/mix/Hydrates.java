package org.fizzhull.drying.mix;

import org.fizzhull.quantity.Refusal;

/**
 * Crystals of a dry mix that stand between two hydrates: Epsom salt, which comes with seven molecules of water and gives
 * one up in dry air, and anhydrous citric acid, which takes one up in damp air. At which humidity both forms stand side
 * by side is known, how fast they get there is not: the parameters' {@code hydrateShare} and {@code acidHydration}.
 *
 * <p>Sources and what is left out: docs/physics/drying.md, 2. Bound water counts with the water of the piece, at
 * 1 cm3/g; in the monohydrate of citric acid it takes 1.16 cm3/g.
 *
 * @param gives water that leaves below {@link #GIVING_HUMIDITY}, kg per kg of dry mix as weighed
 * @param takes water that is bound above {@link #TAKING_HUMIDITY}, kg per kg of dry mix as weighed
 */
public record Hydrates(double gives, double takes) {
    /** Nothing that binds water of its own. */
    public static final Hydrates NONE = new Hydrates(0, 0);

    /**
     * Air below which epsomite becomes hexahydrite and gives water to the mix: about 51 % RH (SSHADE database [seen]).
     */
    public static final double GIVING_HUMIDITY = 0.51;

    /**
     * Air above which anhydrous citric acid becomes the monohydrate: 0.58 at 20 C, 0.62 at 25 C, ± 0.04, from its
     * transition point and its heats of solution [computed]; one value serves all rooms, whose hygrometers are worse.
     */
    public static final double TAKING_HUMIDITY = 0.60;

    /**
     * Refuses more water than a crystal can hold.
     *
     * @param gives water that leaves below {@link #GIVING_HUMIDITY}, kg per kg of dry mix as weighed
     * @param takes water that is bound above {@link #TAKING_HUMIDITY}, kg per kg of dry mix as weighed
     */
    public Hydrates {
        check(gives);
        check(takes);
    }

    private static void check(double water) {
        if (!(water >= 0 && water <= 0.6)) {
            throw new Refusal(
                    "out-of-range",
                    "water of crystallisation per dry mix",
                    water + " kg/kg",
                    "0 to 0.6 kg/kg",
                    "Check the amounts of hydrated salts and of acid.");
        }
    }
}
