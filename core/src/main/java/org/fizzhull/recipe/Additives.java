package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.Optional;

/**
 * Oil, foaming powder and starch in a mix: what changes the speed at which a wetted face recedes, besides acid and
 * bicarbonate (docs/physics/fizz.md, 5). Each is kg per kg of dry powder.
 *
 * <p>Oil is oils and butters, whether they stay liquid or set; surfactant is foaming powders and the active part (all but
 * the water) of foaming liquids. Fragrance and emulsifiers are left out: there is too little of them, or nothing is known
 * of what they do. Read by the priors of the recession and by the drying of a piece; the factors themselves are those of
 * fizz.md, 5.
 *
 * @param oil oils and butters, 0 or more
 * @param surfactant foaming powders and liquids without their water, 0 or more
 * @param starch starches and flours, 0 or more
 */
public record Additives(double oil, double surfactant, double starch) implements Serializable {
    /** None of them, or nothing known of the recipe. */
    public static final Additives NONE = new Additives(0, 0, 0);

    /**
     * Checks the shares.
     *
     * @param oil oils and butters, 0 or more
     * @param surfactant foaming powders and liquids without their water, 0 or more
     * @param starch starches and flours, 0 or more
     * @throws IllegalArgumentException for a negative share or NaN
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
     * {@return the additives of the blend; {@link #NONE} where the recipe is unknown}
     *
     * @param blend the blend; empty for a piece that was only weighed
     */
    public static Additives of(Optional<Blend> blend) {
        return blend.isPresent() ? of(blend.get()) : NONE;
    }

    /**
     * {@return the additives of a blend, kg per kg of its dry powder}
     *
     * @param blend the mix
     */
    public static Additives of(Blend blend) {
        // a foaming liquid counts without its water
        double active = 0;
        for (Recipe.Part part : blend.recipe().wet()) {
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
