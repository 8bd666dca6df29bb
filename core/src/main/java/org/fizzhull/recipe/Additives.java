package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.Optional;

/**
 * What in a mix acts on a fizzing surface besides acid and bicarbonate, each in kg per kg of dry powder. Oil is oils
 * and butters that stay liquid or melt; surfactant is foaming powders and the active part of foaming liquids. Fragrance
 * and emulsifiers are left out: too little of them, or nothing known.
 *
 * @param oil oils and butters, 0 or more
 * @param surfactant foaming stuff without its water, 0 or more
 * @param starch starches and flours, 0 or more
 */
public record Additives(double oil, double surfactant, double starch) implements Serializable {
    /** None of them, or nothing known of the recipe. */
    public static final Additives NONE = new Additives(0, 0, 0);

    /**
     * Refuses NaN and negative shares.
     *
     * @param oil oils and butters, 0 or more
     * @param surfactant foaming stuff without its water, 0 or more
     * @param starch starches and flours, 0 or more
     */
    public Additives {
        if (!(oil >= 0 && surfactant >= 0 && starch >= 0)) {
            throw new IllegalArgumentException("shares " + oil + ", " + surfactant + ", " + starch);
        }
    }

    /** {@return whether there is none of them} */
    public boolean none() {
        return oil == 0 && surfactant == 0 && starch == 0;
    }

    /**
     * {@return the additives of the blend, where one is known}
     *
     * @param blend the blend; empty for a piece of unknown recipe
     */
    public static Additives of(Optional<Blend> blend) {
        return blend.isPresent() ? of(blend.get()) : NONE;
    }

    /**
     * {@return the additives of a blend}
     *
     * @param blend the mix
     */
    public static Additives of(Blend blend) {
        double active = 0;
        for (Part part : blend.recipe().wet()) {
            if (part.ingredient().role() == Role.LIQUID_SURFACTANT) {
                active += part.mass() * (1 - part.ingredient().value(Property.WATER_SHARE, 0));
            }
        }
        return new Additives(
                blend.share(Role.OIL) + blend.share(Role.BUTTER),
                blend.share(Role.SURFACTANT) + active / blend.dryMass(),
                blend.share(Role.STARCH));
    }
}
