package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.fizzhull.evidence.published.PhysicalConstants;
import org.fizzhull.quantity.check.Given;
import org.jspecify.annotations.Nullable;

/**
 * What a recipe amounts to, per kilogram of dry powder: the composition that pressing, drying and fizz start from.
 * Equations and sources: docs/physics/packing.md, 1.
 *
 * <pre>
 * w_i = m_i/sum m         share of the dry mass
 * 1/rho_s = sum w_i/rho_i true density of the mix, kg/m3
 * y_i = rho_s w_i/rho_i   share of the solid volume
 * </pre>
 *
 * m_i mass of powder i (kg), rho_i its true density (kg/m3). Powders with a mass of 0 are left out. Beside these stand the
 * moles that can react ({@link Moles}), the liquid split into water, other vapour and what stays ({@link Liquid}). Everything is SI and follows from the recipe alone; no pressure, shape
 * or room enters.
 *
 * <pre>{@code
 * Recipe recipe = new RecipeBuilder(IngredientTable.standard(), Measures.METRIC)
 *         .dry("sodium bicarbonate", "300 g")
 *         .dry("citric acid", "150 g")
 *         .wet("water", "4 g")
 *         .build();
 * double gas = Blend.of(recipe).moles().gas(); // mol of CO2 per kg of powder
 * }</pre>
 *
 * <p>Immutable. Two blends are equal where their recipes are. Next: {@code pressing.Press}, {@code drying.mix.BlendDrying}.
 */
public final class Blend implements Serializable {
    private static final long serialVersionUID = 1;

    /** Share of the dry mass above which a dissolved salt, sugar or acid lowers the activity of the films, 0.5 % (assumed). */
    private static final double NOTICEABLE_SALT = 0.005;

    /** Acids that dissolve in less than their own mass of water, so that films are saturated with each of them. */
    private static final Set<Substance> SOLUBLE_ACIDS =
            EnumSet.of(Substance.CITRIC_ACID, Substance.TARTARIC_ACID, Substance.MALIC_ACID);

    /**
     * What each further soluble acid leaves of the water activity of the films: 0.82 to 0.86 by UNIFAC for two of the three,
     * 0.75 for all three ({@code validation/reference/deliquescence.py}); any of them alone is within 0.05 of citric acid.
     */
    private static final double FURTHER_ACID = 0.85;

    /** Powders with a mass above 0, in the order of the recipe; index i of {@link #massFraction}. */
    private final List<Ingredient> powders;
    /** w_i, share of the dry mass of powder i; sums to 1. */
    private final double[] massFraction;
    /** Mass of the powders in one mix, kg. */
    private final double dryMass;
    /** rho_s, true density of the powders together, kg/m3. */
    private final double trueDensity;
    /** Acid, bicarbonate and carbonate, mol per kg of dry powder. */
    private final Moles moles;
    /** The liquid, kg per kg of dry powder. */
    private final Liquid liquid;

    private final Recipe recipe;

    private Blend(Recipe recipe) {
        this.recipe = recipe;
        List<Recipe.Part> used =
                recipe.dry().stream().filter(part -> part.mass() > 0).toList();
        powders = used.stream().map(Recipe.Part::ingredient).toList();
        dryMass = recipe.dryMass();
        massFraction = new double[used.size()];
        double specificVolume = 0;
        for (int i = 0; i < massFraction.length; i++) {
            massFraction[i] = used.get(i).mass() / dryMass;
            specificVolume += massFraction[i] / powders.get(i).value(Property.TRUE_DENSITY);
        }
        trueDensity = 1 / specificVolume;
        moles = Moles.of(recipe);
        liquid = Liquid.of(recipe.wet(), dryMass);
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

    /** {@return the powders with a mass above 0, in the order of the recipe} */
    public List<Ingredient> powders() {
        return powders;
    }

    /** {@return w_i, the share of the dry mass of each of {@link #powders()}; a copy, sums to 1} */
    public double[] massFractions() {
        return massFraction.clone();
    }

    /** {@return y_i = w_i rho_s/rho_i, the share of the solid volume of each of {@link #powders()}; sums to 1} */
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
     * {@return the relative standard deviation of the true density}
     *
     * <p>With s_i = y_i sigma_i/rho_i it is sqrt(c (sum s_i)^2 + (1 - c) sum s_i^2), where c is the share of each variance
     * that all powders have in common (grade of the bags, way of measuring). The forecast takes c = 0.5
     * (docs/physics/packing.md, 1).
     *
     * @param correlation c, 0 (independent errors) to 1 (one error for all)
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
     * {@return what further salts, sugars and acids leave of the water activity of the films, 0 to 1; 1 where there are none}
     *
     * <p>Salts and sugars that make up more than half a percent of the powder: the product of their deliquescence humidities,
     * which by Ross's rule is a lower bound. Of citric, tartaric and malic acid each one beyond the first: a factor of 0.85
     * (docs/physics/drying.md, 2). One acid and the bicarbonate are not in it, since the film activity of the drying
     * parameters, which is multiplied by this one, stands for those two.
     */
    public double saltActivity() {
        double product = 1;
        Set<Substance> acids = EnumSet.noneOf(Substance.class);
        for (int i = 0; i < massFraction.length; i++) {
            if (massFraction[i] > NOTICEABLE_SALT) {
                Ingredient powder = powders.get(i);
                switch (powder.role()) {
                    case ACID -> acids.add(powder.substance());
                    case BICARBONATE -> {} // in the film activity itself
                    default -> product *= powder.value(Property.DELIQUESCENCE, 1);
                }
            }
        }
        acids.retainAll(SOLUBLE_ACIDS);
        return product * Math.pow(FURTHER_ACID, Math.max(0, acids.size() - 1));
    }

    /**
     * {@return the water of crystallisation that hydrated salts (Epsom salt) can give up in dry air, kg per kg of dry powder;
     * how much of it comes within a drying course is an uncertain input (docs/physics/drying.md, 2)}
     */
    public double hydrateWater() {
        return perDryMass(Property.HYDRATE_RELEASE);
    }

    /** {@return the water that anhydrous acid binds as its hydrate in damp air, kg per kg of dry powder} */
    public double hydrateUptake() {
        return perDryMass(Property.HYDRATE_UPTAKE);
    }

    /**
     * {@return the water that the grains soak up before any is left for liquid bridges, kg per kg of dry powder
     * (docs/physics/packing.md, 7)}
     */
    public double uptake() {
        return perDryMass(Property.UPTAKE);
    }

    /** Sum of w_i x_i, where x_i is what powder i holds per kg of its own mass; a powder of which nothing is known holds 0. */
    private double perDryMass(Property held) {
        double sum = 0;
        for (int i = 0; i < massFraction.length; i++) {
            sum += massFraction[i] * powders.get(i).value(held, 0);
        }
        return sum;
    }

    /**
     * {@return the mass of all ingredients of a role, powders and liquids, kg per kg of dry powder}
     *
     * @param role which role
     */
    public double share(Role role) {
        Given.all("role", role);
        double mass = 0;
        for (Recipe.Part part : recipe.parts()) {
            mass += part.ingredient().role() == role ? part.mass() : 0;
        }
        return mass / dryMass;
    }

    /** Only the recipe is serialised; the rest is worked out again when it is read. */
    private Object writeReplace() {
        return new Written(recipe);
    }

    /** Serialised form. */
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

    /** {@return the oils and butters, powdered or melted, kg per kg of dry powder} */
    public double oil() {
        return share(Role.OIL) + share(Role.BUTTER);
    }

    /**
     * What can react in a mix, mol per kg of dry powder, and the carbon dioxide it can give (docs/physics/fizz.md, 1).
     *
     * <pre>
     * n_CO2 = max(0, min(n_HCO3 + n_CO3, n_acid - n_CO3))
     * </pre>
     *
     * Each carbonate first takes one acid group to become bicarbonate, before any gas is free. Stoichiometry only: what a
     * bath's equilibrium keeps dissolved is part of the gas share. Error 2e-5 from the molar masses; that of a recipe is in
     * the amounts and the purity of the powders.
     *
     * @param acid acid groups of powders and liquids, counted per proton that frees gas in a bath
     * @param bicarbonate bicarbonate
     * @param carbonate carbonate
     */
    public record Moles(double acid, double bicarbonate, double carbonate) {
        /** Molar mass of carbon dioxide, kg/mol. */
        public static final double CO2 = PhysicalConstants.CARBON_DIOXIDE_MOLAR_MASS;

        /**
         * {@return the moles of a recipe, per kg of its powders; of liquids only acid groups count}
         *
         * @param recipe recipe with a dry mass above 0
         */
        static Moles of(Recipe recipe) {
            double a = 0;
            double b = 0;
            double c = 0;
            for (Recipe.Part part : recipe.dry()) {
                a += part.mass() * part.ingredient().molesPerKilogram(Property.ACID_GROUPS);
                b += part.mass() * part.ingredient().molesPerKilogram(Property.BICARBONATE_GROUPS);
                c += part.mass() * part.ingredient().molesPerKilogram(Property.CARBONATE_GROUPS);
            }
            for (Recipe.Part part : recipe.wet()) {
                a += part.mass() * part.ingredient().molesPerKilogram(Property.ACID_GROUPS);
            }
            double m = recipe.dryMass();
            return new Moles(a / m, b / m, c / m);
        }

        /** {@return xi_max, the most carbon dioxide that can form, mol per kg of dry powder, 0 or more} */
        public double gas() {
            return Math.max(0, Math.min(bicarbonate + carbonate, acid - carbonate));
        }
    }
}
