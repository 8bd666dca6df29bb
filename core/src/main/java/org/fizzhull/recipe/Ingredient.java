package org.fizzhull.recipe;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;

/**
 * One ingredient: its names, what it does in a piece, and every number known of it with spread and source.
 *
 * <p>A powder has at least true, loose and tapped density and grain size; a liquid has at least its density; a butter, which may be either, has all of them. All other
 * values may be missing: what reads them then takes a stated default ({@link #value(Property, double)}) or refuses
 * ({@link #value(Property)}). Values are SI inside; {@link Property} has the units that people write. Ingredients come from
 * {@link IngredientTable} or, in a user's own words, from {@link RecipeBuilder#own}. Immutable. Nothing here says whether
 * a share is safe on skin; {@code caution} and {@code allergen} are reminders, and local rules decide.
 *
 * @param name generic name
 * @param aliases other names of the same thing; {@code * x} stands for any word before x, {@code ~ x} keeps the name x
 *     that a recipe writes, so that several of a kind can stand side by side
 * @param role what it does in a piece, which also decides whether it is a powder or a liquid
 * @param substance what it is chemically, for the equilibria of a bath; mostly unspecified
 * @param values what is known, SI; what is missing is not known
 * @param caution one line for the page where it is handled (dust, skin, stains), or empty
 * @param allergen what a label must name, or empty
 * @param remark anything else worth a line, or empty
 */
public record Ingredient(
        String name,
        List<String> aliases,
        Role role,
        Substance substance,
        Map<Property, Property.Datum> values,
        String caution,
        String allergen,
        String remark)
        implements Serializable {

    /** Grains below this pack by their oil absorption where that is known, m (docs/physics/packing.md, 2). */
    private static final double FINE = 10e-6;

    /**
     * Checks that the ingredient can be used in a mix, and copies lists and values.
     *
     * @param name generic name, at most 80 characters, all of them visible
     * @param aliases other names of the same thing; {@code * x} stands for any word before x, {@code ~ x} keeps the
     *     name x that a recipe writes, so that several of a kind can stand side by side
     * @param role what it does in a piece
     * @param substance what it is chemically
     * @param values what is known, SI; what is missing is not known
     * @param caution one line for the page where it is handled, or empty
     * @param allergen what a label must name, or empty
     * @param remark anything else worth a line, or empty
     * @throws Refusal for no name or one that cannot be shown, for a powder without densities and grain size or with
     *     densities out of order (loose below tapped below nine tenths of true), for a liquid without density, and for
     *     shares of water and alcohol above 1 in all
     */
    public Ingredient {
        Given.all(
                "name, aliases, role, substance, values, caution, allergen, remark",
                name,
                aliases,
                role,
                substance,
                values,
                caution,
                allergen,
                remark);
        if (name.isBlank()) {
            throw new Refusal("missing", "ingredient", name, "a name", "Call it what its bag says.");
        }
        Names.visible("ingredient", name);
        aliases = List.copyOf(aliases);
        EnumMap<Property, Property.Datum> copy = new EnumMap<>(Property.class);
        copy.putAll(values);
        values = Collections.unmodifiableMap(copy);
        boolean powder = copy.containsKey(Property.TRUE_DENSITY);
        boolean liquid = copy.containsKey(Property.LIQUID_DENSITY);
        if ((role.mayBeDry() && !powder) || (role.mayBeWet() && !liquid)) {
            throw new Refusal(
                    "missing",
                    name,
                    "no " + (role.mayBeDry() && !powder ? "true density" : "liquid density"),
                    role.mayBeDry() ? "true density and loose density" : "liquid density",
                    "A powder needs at least its true and its loose density, a liquid its density.");
        }
        if (role.mayBeDry()) {
            checkPowder(name, copy);
        }
        shareBelowOne(name, copy);
    }

    /** {@return the other names as people read them: {@code any x} for a family name} */
    public List<String> otherNames() {
        List<String> names = new ArrayList<>(aliases.size());
        for (String alias : aliases) {
            names.add(
                    alias.startsWith("~ ")
                            ? alias.substring(2)
                            : alias.startsWith("* ") ? "any" + alias.substring(1) : alias);
        }
        return List.copyOf(names);
    }

    /**
     * {@return the value with spread and source, or empty where it is not known}
     *
     * @param property which value
     */
    public Optional<Property.Datum> datum(Property property) {
        Given.all("property", property);
        return Optional.ofNullable(values.get(property));
    }

    /**
     * {@return the value, SI}
     *
     * @param property which value
     * @throws Refusal {@code missing}, naming ingredient and property, where it is not known
     */
    public double value(Property property) {
        Given.all("property", property);
        return needed(name, values, property);
    }

    /**
     * {@return the value, SI, or {@code otherwise} where it is not known}
     *
     * @param property which value
     * @param otherwise value of an ingredient of which nothing is said, SI; 0 for what most do not have
     */
    public double value(Property property, double otherwise) {
        Given.all("property", property);
        Property.Datum d = values.get(property);
        return d == null ? otherwise : d.value();
    }

    /**
     * {@return one standard deviation as a share of the value, or {@code otherwise} where the value is not known}
     *
     * @param property which value
     * @param otherwise relative standard deviation of a value that is not known
     */
    public double relativeSigma(Property property, double otherwise) {
        Given.all("property", property);
        Property.Datum d = values.get(property);
        return d == null ? otherwise : d.relativeSigma();
    }

    /**
     * {@return the density, kg/m3, that turns a cup or a spoon of it into mass: the loose density of a powder, the density as
     * a liquid of what may be poured in (butters are scooped melted)}
     */
    public Property.Datum scoopDensity() {
        Property.Datum d = values.get(role.mayBeWet() ? Property.LIQUID_DENSITY : Property.LOOSE_DENSITY);
        if (d == null) {
            throw new IllegalStateException(name + " was built without a density"); // the constructor refuses that
        }
        return d;
    }

    /**
     * {@return whether its packing follows from its oil absorption: known, and grains below 10 um, whose cups hold so much
     * air that loose and tapped densities mislead (docs/physics/packing.md, 2)}
     */
    public boolean packsByOil() {
        return value(Property.OIL_ABSORPTION, 0) > 0 && value(Property.GRAIN_SIZE, 1) < FINE;
    }

    /**
     * {@return the moles of a group in a kilogram of the ingredient as weighed, mol/kg; 0 where it has none}
     *
     * @param groups property that counts the groups of one molecule: acid, bicarbonate, carbonate or magnesium
     * @throws Refusal {@code missing} where it has such groups and no molar mass
     */
    public double molesPerKilogram(Property groups) {
        double count = value(groups, 0);
        return count == 0 ? 0 : count / value(Property.MOLAR_MASS);
    }

    /**
     * {@return the same ingredient with other values; those not named stay}
     *
     * @param others values that are added or replaced, SI
     */
    public Ingredient with(Map<Property, Property.Datum> others) {
        EnumMap<Property, Property.Datum> merged = new EnumMap<>(Property.class);
        merged.putAll(values);
        merged.putAll(others);
        return new Ingredient(name, aliases, role, substance, merged, caution, allergen, remark);
    }

    /** The same ingredient with one value not known. */
    Ingredient without(Property property) {
        EnumMap<Property, Property.Datum> fewer = new EnumMap<>(Property.class);
        fewer.putAll(values);
        fewer.remove(property);
        return new Ingredient(name, aliases, role, substance, fewer, caution, allergen, remark);
    }

    /**
     * {@return the same thing under the name a person gave it}
     *
     * @param otherName the new name
     */
    public Ingredient named(String otherName) {
        return new Ingredient(otherName, aliases, role, substance, values, caution, allergen, remark);
    }

    /** Refuses a powder without densities or grain size, and densities that no tapping can give. */
    private static void checkPowder(String name, EnumMap<Property, Property.Datum> values) {
        double loose = needed(name, values, Property.LOOSE_DENSITY);
        double tapped = needed(name, values, Property.TAPPED_DENSITY);
        double solid = needed(name, values, Property.TRUE_DENSITY);
        needed(name, values, Property.GRAIN_SIZE);
        if (!(loose > 0 && loose < tapped && tapped < 0.9 * solid)) {
            throw new Refusal(
                    "out-of-range",
                    name,
                    "loose " + loose / 1e3 + ", tapped " + tapped / 1e3 + ", true " + solid / 1e3 + " g/cm3",
                    "loose below tapped below nine tenths of true density",
                    "Tapping can only make a powder denser; check which cup was which.");
        }
    }

    /** The value, SI; refuses where it is missing and says where a maker may find it. */
    private static double needed(String name, Map<Property, Property.Datum> values, Property property) {
        Property.Datum d = values.get(property);
        if (d == null) {
            throw new Refusal(
                    "missing",
                    name,
                    "no " + property.key(),
                    "a value in " + property.unit(),
                    "Add it from the supplier's sheet, or say like: and the name of a powder like it.");
        }
        return d.value();
    }

    /** Refuses a liquid whose water and alcohol come to more than the whole of it; 1e-9 is left for rounding. */
    private static void shareBelowOne(String name, EnumMap<Property, Property.Datum> values) {
        Property.Datum water = values.get(Property.WATER_SHARE);
        Property.Datum volatiles = values.get(Property.VOLATILE_SHARE);
        double sum = (water == null ? 0 : water.value()) + (volatiles == null ? 0 : volatiles.value());
        if (!(sum <= 1 + 1e-9)) {
            throw new Refusal(
                    "out-of-range",
                    name,
                    "water and alcohol share " + sum,
                    "1 or less in all",
                    "Lower one of the two.");
        }
    }
}
