package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a recipe amounts to, per kilogram of dry powder: the powders' mass fractions and volume shares, the true density
 * 1/rho = sum w/rho, the moles of acid and gas, and the liquid split into water, other vapour and what stays. SI.
 */
public final class Blend implements Serializable {
    private static final long serialVersionUID = 1;

    private static final double NOTICEABLE_SALT = 0.005;

    private final List<Ingredient> powders;
    private final double[] massFraction;
    private final double dryMass;
    private final double trueDensity;
    private final Moles moles;
    private final Liquid liquid;
    private final List<Sorbent> sorbents;
    private final Recipe recipe;

    private Blend(Recipe recipe) {
        this.recipe = recipe;
        List<Ingredient> used = new ArrayList<>();
        List<Double> masses = new ArrayList<>();
        for (Part part : recipe.dry()) {
            if (part.mass() > 0) {
                used.add(part.ingredient());
                masses.add(part.mass());
            }
        }
        powders = List.copyOf(used);
        dryMass = recipe.dryMass();
        massFraction = new double[used.size()];
        double specificVolume = 0;
        for (int i = 0; i < massFraction.length; i++) {
            massFraction[i] = masses.get(i) / dryMass;
            specificVolume += massFraction[i] / powders.get(i).value(Property.TRUE_DENSITY);
        }
        trueDensity = 1 / specificVolume;
        moles = Moles.of(recipe);
        liquid = Liquid.of(recipe.wet(), dryMass);
        sorbents = Sorbents.of(recipe);
    }

    /**
     * {@return the blend of a recipe}
     *
     * @param recipe recipe with at least one powder
     */
    public static Blend of(Recipe recipe) {
        return new Blend(recipe);
    }

    /** {@return the recipe it came from} */
    public Recipe recipe() {
        return recipe;
    }

    /** {@return the powders, those without mass left out} */
    public List<Ingredient> powders() {
        return powders;
    }

    /** {@return the share of the dry mass of each of {@link #powders()}} */
    public double[] massFractions() {
        return massFraction.clone();
    }

    /** {@return the share of the solid volume of each of {@link #powders()}} */
    public double[] volumeShares() {
        double[] share = new double[massFraction.length];
        for (int i = 0; i < share.length; i++) {
            share[i] = massFraction[i] * trueDensity / powders.get(i).value(Property.TRUE_DENSITY);
        }
        return share;
    }

    /** {@return the mass of the powders in one mix, kg} */
    public double dryMass() {
        return dryMass;
    }

    /** {@return the true density of the dry powders, kg/m3} */
    public double trueDensity() {
        return trueDensity;
    }

    /**
     * {@return the relative standard deviation of the true density when every ingredient's error is {@code correlation}
     * shared: half of the variance counts as shared (docs/physics/packing.md, 1)}
     *
     * @param correlation share of an ingredient's error that all have in common, 0 to 1
     */
    public double trueDensitySigma(double correlation) {
        double sum = 0;
        double squares = 0;
        double[] y = volumeShares();
        for (int i = 0; i < y.length; i++) {
            double s = y[i] * powders.get(i).relativeSigma(Property.TRUE_DENSITY, 0);
            sum += s;
            squares += s * s;
        }
        return Math.sqrt(correlation * sum * sum + (1 - correlation) * squares);
    }

    /** {@return the acid, bicarbonate, carbonate and the carbon dioxide they can give, mol per kg of dry powder} */
    public Moles moles() {
        return moles;
    }

    /** {@return the liquid, per kilogram of dry powder} */
    public Liquid liquid() {
        return liquid;
    }

    /**
     * {@return everything in the mix that holds water from the air; their water adds up (docs/physics/drying.md,
     * 2)}
     */
    public List<Sorbent> sorbents() {
        return sorbents;
    }

    /**
     * {@return the product of the deliquescence humidities of further soluble salts and sugars above half a percent of
     * the powder (Ross product, a lower bound); 1 without} Acid and bicarbonate are not in it: drying's film activity
     * stands for them.
     */
    public double saltActivity() {
        double product = 1;
        for (int i = 0; i < massFraction.length; i++) {
            Role role = powders.get(i).role();
            if (massFraction[i] > NOTICEABLE_SALT && role != Role.ACID && role != Role.BICARBONATE) {
                product *= powders.get(i).value(Property.DELIQUESCENCE, 1);
            }
        }
        return product;
    }

    /** {@return the water that hydrated salts give back to the mix in dry air, kg per kg of dry powder} */
    public double hydrateWater() {
        double water = 0;
        for (int i = 0; i < massFraction.length; i++) {
            water += massFraction[i] * powders.get(i).value(Property.HYDRATE_RELEASE, 0);
        }
        return water;
    }

    /** {@return the water that anhydrous acid binds as its hydrate in damp air, kg per kg of dry powder} */
    public double hydrateUptake() {
        double water = 0;
        for (int i = 0; i < massFraction.length; i++) {
            water += massFraction[i] * powders.get(i).value(Property.HYDRATE_UPTAKE, 0);
        }
        return water;
    }

    /** {@return the water the grains drink before any is left to hold them together, kg per kg of dry powder} */
    public double uptake() {
        double water = 0;
        for (int i = 0; i < massFraction.length; i++) {
            water += massFraction[i] * powders.get(i).value(Property.UPTAKE, 0);
        }
        return water;
    }

    /**
     * {@return the mass of everything with that role, dry or wet, per kilogram of dry powder}
     *
     * @param role the role
     */
    public double share(Role role) {
        double mass = 0;
        for (Part part : recipe.dry()) {
            mass += part.ingredient().role() == role ? part.mass() : 0;
        }
        for (Part part : recipe.wet()) {
            mass += part.ingredient().role() == role ? part.mass() : 0;
        }
        return mass / dryMass;
    }

    /** Written is the recipe, of which all else follows. */
    private Object writeReplace() {
        return new Written(recipe);
    }

    private record Written(Recipe recipe) implements Serializable {
        private Object readResolve() {
            return of(recipe);
        }
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Blend that && recipe.equals(that.recipe);
    }

    @Override
    public int hashCode() {
        return recipe.hashCode();
    }

    @Override
    public String toString() {
        return "blend of " + recipe.name();
    }

    /** {@return the oils and butters, kg per kg of dry powder} */
    public double oil() {
        return share(Role.OIL) + share(Role.BUTTER);
    }
}
