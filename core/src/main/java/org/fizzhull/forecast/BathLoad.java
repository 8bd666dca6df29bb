package org.fizzhull.forecast;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.Part;
import org.fizzhull.recipe.Role;
import org.fizzhull.recipe.change.LimitedShare;

/**
 * What one piece brings into one bath, kg, as weighed into the mix, for the reader who keeps to limits of his own
 * (skin, drain, label). Beside each stands the limit that the user entered; the library knows and computes none, since
 * what is safe on skin is for local rules and a qualified assessor to say. Part of {@link FizzForecast.FizzedBath}.
 *
 * @param oil oils and butters, kg
 * @param surfactant foaming powders and liquids, kg
 * @param emulsifier emulsifiers, kg
 * @param fragrance fragrance and essential oils, kg
 * @param salt salts that dissolve without gas, kg
 * @param colour dyes, micas and pigments, kg
 * @param limits the user's own, in the order of the recipe
 */
public record BathLoad(
        double oil,
        double surfactant,
        double emulsifier,
        double fragrance,
        double salt,
        double colour,
        List<OwnLimit> limits) {

    /**
     * Copies the list.
     *
     * @param oil oils and butters
     * @param surfactant foaming powders and liquids
     * @param emulsifier emulsifiers
     * @param fragrance fragrance and essential oils
     * @param salt salts that dissolve without gas
     * @param colour dyes, micas and pigments
     * @param limits the user's own, in the order of the recipe
     */
    public BathLoad {
        limits = List.copyOf(limits);
    }

    /**
     * An ingredient for which the user gave a limit.
     *
     * @param ingredient its name in the recipe
     * @param mass in one piece, kg
     * @param share of the dried piece, 0 to 1 ({@link LimitedShare})
     * @param limit largest share the user allows, 0 to 1
     * @param kept whether the piece keeps to it
     */
    public record OwnLimit(String ingredient, double mass, double share, double limit, boolean kept) {}

    /**
     * What a piece brings.
     *
     * @param blend powders and liquid by the recipe's middle amounts
     * @param dryMass dry powder in the piece, kg
     */
    static BathLoad of(Blend blend, double dryMass) {
        double scale = dryMass / blend.dryMass();
        List<OwnLimit> limits = new ArrayList<>();
        for (LimitedShare limited : LimitedShare.of(blend.recipe())) {
            Part part = limited.part();
            limits.add(new OwnLimit(
                    part.ingredient().name(), scale * part.mass(), limited.share(), limited.limit(), limited.kept()));
        }
        return new BathLoad(
                dryMass * (blend.share(Role.OIL) + blend.share(Role.BUTTER)),
                dryMass * (blend.share(Role.SURFACTANT) + blend.share(Role.LIQUID_SURFACTANT)),
                dryMass * blend.share(Role.EMULSIFIER),
                dryMass * blend.share(Role.FRAGRANCE),
                dryMass * blend.share(Role.SALT),
                dryMass * blend.share(Role.COLOUR),
                limits);
    }
}
