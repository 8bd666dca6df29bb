package org.fizzhull.drying.mix;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.recipe.Recipe;

/**
 * Water held by the sorbents of a dry mix at a water activity, as the sum of their isotherms ({@link Gab}),
 *
 * <pre>  X(a) = sum f_i X_i(a)</pre>
 *
 * <p>X kg of water per kg of dry mix, f_i share of the sorbent (kg per kg of dry mix), X_i what it holds (kg/kg), a water
 * activity. That the sum of the parts is the sorption of a powder blend below mutual deliquescence: Dalton and Hancock
 * (1997), Int. J. Pharm. 156, 143 [abstract seen]. Valid for activities from 0 to the film activity, at most 0.95. Glycerin
 * as an ideal solution is the case C = K = 1, Xm = M_water / M_glycerin.
 *
 * <p>Constants and their errors of 15 to 50 %: docs/physics/drying.md, 2. Used by
 * {@link org.fizzhull.drying.solver.WaterActivity}, which tabulates it. Immutable; each method returns a changed copy.
 *
 * @param sorbents what holds water, in the order of the recipe
 */
public record SorptionMixture(List<Sorbent> sorbents) {
    /** Mass of water per mass of glycerin (92.09 g/mol), mole by mole, kg/kg. */
    public static final double GLYCERIN_MONOLAYER = PhysicalConstants.WATER_MOLAR_MASS / 0.09209;

    /**
     * Water activity that powders as bought have come to in air (assumed; docs/physics/drying.md, 2). Their moisture is weighed
     * with them, so that the water-free mass is less than the weighed one.
     */
    private static final double AS_BOUGHT = 0.50;

    /** No sorbents. */
    private static final SorptionMixture NONE = new SorptionMixture(List.of());

    /**
     * Keeps a copy.
     *
     * @param sorbents what holds water, in the order of the recipe
     */
    public SorptionMixture {
        sorbents = List.copyOf(sorbents);
    }

    /** {@return a mix without sorbents: all its water is liquid films} */
    public static SorptionMixture none() {
        return NONE;
    }

    /**
     * {@return one powder; see {@link #and}}
     *
     * @param share mass of the powder over that of the dry mix
     * @param xm monolayer Xm, kg of water per kg of powder
     * @param c GAB constant C
     * @param k GAB constant K
     */
    public static SorptionMixture of(double share, double xm, double c, double k) {
        return NONE.and(share, xm, c, k);
    }

    /**
     * {@return the ingredients of a recipe that have an isotherm}
     *
     * @param recipe recipe with a dry mass above 0
     * @param liquid amount of its liquids over that of the recipe
     */
    static SorptionMixture of(Recipe recipe, double liquid) {
        double dry = recipe.dryMass();
        List<Sorbent> found = new ArrayList<>();
        for (Recipe.Part part : recipe.dry()) {
            Gab.of(part.ingredient())
                    .map(gab -> new Sorbent(part.mass() / dry / (1 + gab.waterAt(AS_BOUGHT)), gab, true))
                    .ifPresent(found::add);
        }
        for (Recipe.Part part : recipe.wet()) {
            Gab.of(part.ingredient())
                    .map(gab -> new Sorbent(liquid * (part.mass() / dry), gab, false))
                    .ifPresent(found::add);
        }
        return new SorptionMixture(found);
    }

    /**
     * {@return this mixture with one more powder, which brings along the water it held in the air where it was bought}
     *
     * @param share kg of it, free of water, per kg of dry mix
     * @param xm monolayer, kg/kg
     * @param c C, no unit
     * @param k K, no unit, at most 1
     * @throws org.fizzhull.quantity.Refusal {@code out-of-range} for a share above 1
     * @throws IllegalArgumentException for constants out of range
     */
    public SorptionMixture and(double share, double xm, double c, double k) {
        return with(new Sorbent(share, new Gab(xm, c, k), true));
    }

    /**
     * {@return this mixture with a humectant that comes without water, glycerin for example; constants as in {@link
     * #and}}
     *
     * @param share mass of the humectant over that of the dry mix
     * @param xm monolayer Xm, kg of water per kg of humectant
     * @param c GAB constant C
     * @param k GAB constant K
     */
    public SorptionMixture andLiquid(double share, double xm, double c, double k) {
        return with(new Sorbent(share, new Gab(xm, c, k), false));
    }

    private SorptionMixture with(Sorbent more) {
        List<Sorbent> all = new ArrayList<>(sorbents);
        all.add(more);
        return new SorptionMixture(all);
    }

    /**
     * {@return the water held at activity a (0 to 0.95), kg per kg of dry mix}
     *
     * @param a water activity, 0 to 0.95
     */
    public double water(double a) {
        return held(sorbents, a);
    }

    /**
     * {@return the water the powders brought along from air of humidity a, kg per kg of dry mix}
     *
     * @param a relative humidity of the air where the powders were kept, 0 to 0.95
     */
    public double waterAsBought(double a) {
        return held(sorbents.stream().filter(Sorbent::powder).toList(), a);
    }

    private static double held(List<Sorbent> some, double a) {
        double sum = 0;
        for (Sorbent sorbent : some) {
            sum += sorbent.isotherm().waterIn(sorbent.share(), a);
        }
        return sum;
    }
}
