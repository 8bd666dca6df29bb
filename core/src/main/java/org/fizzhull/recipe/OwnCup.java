package org.fizzhull.recipe;

import java.util.HashMap;
import java.util.Map;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * The cup test of a powder in a user's words: {@code loose cup: 118 g} and {@code tapped cup: 150 g}, of one cup of the
 * chosen measures or of {@code cup: 200 mL}; without the powder's container. Both together or the loose one alone; {@code
 * cup: 90 g}, a weight, is a loose cup too.
 *
 * <p>Turns them into loose and tapped density of this very bag, mass over volume, which replace those of the table, known to
 * 12 to 20 % only (docs/physics/packing.md, 1), after checks that a powder can be so: 10 mL to 5 L, tapped heavier than loose,
 * and no denser than grains can lie. The spread is 3 %, or the table's where cups mislead.
 */
final class OwnCup {
    /** Repeatability of a density measured so, one relative standard deviation (3 %, assumed: filling and striking level). */
    static final double SIGMA = 0.03;

    /** Key of the mass of a cup as poured and struck level. */
    static final String LOOSE = "loose cup";
    /** Key of the mass of a cup tapped full. */
    static final String TAPPED = "tapped cup";
    /** Key of the cup's volume; with a mass behind it, of a loose cup of the usual volume. */
    static final String CUP = "cup";

    /** The user's name of the powder, for messages. */
    private final String name;
    /** Values by key, as written. */
    private final Map<String, String> said;
    /** What a cup holds where no volume is given. */
    private final Measures measures;

    /** Takes what was said of one powder; nothing is checked before {@link #read}. */
    OwnCup(String name, Map<String, String> said, Measures measures) {
        this.name = name;
        this.said = weighed(name, said, measures);
        this.measures = measures;
    }

    /** The same values with {@code cup} turned into {@code loose cup} where a mass stands behind it. */
    private static Map<String, String> weighed(String name, Map<String, String> said, Measures measures) {
        String cup = said.get(CUP);
        if (cup == null || said.containsKey(LOOSE) || said.containsKey(TAPPED)) {
            return said;
        }
        Amount amount = QuantityText.parseAny(name + ", " + CUP, cup, measures, Dimension.VOLUME, Dimension.MASS);
        if (amount.dimension() != Dimension.MASS) {
            return said;
        }
        Map<String, String> loose = new HashMap<>(said);
        loose.remove(CUP);
        loose.put(LOOSE, cup);
        return loose;
    }

    /**
     * Adds the densities of this bag; nothing where no cup was weighed.
     *
     * @param values takes loose and, where weighed, tapped density, kg/m3
     * @param known the table's own ingredient, or the one it is like, or null
     * @param source source of the value of a key
     * @throws Refusal for a tapped cup or a volume without a loose cup, a cup beside a density in words, and weights that
     *     no powder has
     */
    void read(Map<Property, Property.Datum> values, @Nullable Ingredient known, OwnIngredient.Sources source) {
        // a tapped cup, or a cup's volume, means nothing without the loose one
        String looseText = said.get(LOOSE);
        String tappedText = said.get(TAPPED);
        if (looseText == null) {
            if (tappedText == null && !said.containsKey(CUP)) {
                return;
            }
            throw new Refusal(
                    "missing",
                    field(tappedText == null ? CUP : TAPPED),
                    tappedText == null ? said.getOrDefault(CUP, "") : tappedText,
                    "a loose cup beside it, such as   loose cup: 118 g",
                    "Weigh the cup as poured and struck level first, then tapped, filled up and struck level again.");
        }
        for (Property density : new Property[] {Property.LOOSE_DENSITY, Property.TAPPED_DENSITY}) {
            if (said.containsKey(density.key())) {
                throw new Refusal(
                        "conflict",
                        field(LOOSE),
                        looseText,
                        "either cups or densities",
                        "Leave out " + density.key() + ": the cup says it.");
            }
        }
        // densities of this bag
        double cup = volume();
        double loose = mass(LOOSE, looseText);
        // a powder that packs by its oil absorption keeps the table's wider spread: its cup holds air
        double sigma = known != null && known.packsByOil() ? known.relativeSigma(Property.LOOSE_DENSITY, 0) : 0;
        put(values, Property.LOOSE_DENSITY, loose / cup, sigma, source.of(LOOSE));
        if (tappedText != null) {
            double tapped = mass(TAPPED, tappedText);
            checkTapped(loose, tapped, tappedText);
            put(values, Property.TAPPED_DENSITY, tapped / cup, sigma, source.of(TAPPED));
        }
        checkSolid(values, known, tappedText == null ? LOOSE : TAPPED);
    }

    /** Volume of the cup, m3. */
    private double volume() {
        String text = said.getOrDefault(CUP, "1 cup");
        double volume = QuantityText.parseExact(field(CUP), text, Dimension.VOLUME, measures);
        if (!(volume >= 10e-6 && volume <= 5e-3)) {
            throw new Refusal(
                    "out-of-range",
                    field(CUP),
                    text,
                    "10 mL to 5 L",
                    "A cup holds 240 mL or so; weigh its water: 1 g is 1 mL.");
        }
        return volume;
    }

    /** Mass of the powder in a cup, kg. */
    private double mass(String key, String text) {
        double mass = QuantityText.parseExact(field(key), text, Dimension.MASS);
        if (!(mass > 0)) {
            throw new Refusal("out-of-range", field(key), text, "more than 0 g", "Weigh the powder without the cup.");
        }
        return mass;
    }

    /** Refuses a tapped cup lighter than the loose one, in the words of the recipe. */
    private void checkTapped(double loose, double tapped, String text) {
        if (!(tapped > loose)) {
            throw new Refusal(
                    "out-of-range",
                    field(TAPPED),
                    text + " tapped, " + said.get(LOOSE) + " loose",
                    "more tapped than loose",
                    "Fill the cup up again while tapping, strike it level, weigh it: it must be heavier then.");
        }
    }

    /**
     * Refuses a cup that was misread: loose powder above 0.72 of the density of its grains, where equal spheres tap to 0.64,
     * or tapped powder above 0.9 of it (both assumed). Nothing is checked where the density of the grains is not known.
     */
    private void checkSolid(Map<Property, Property.Datum> values, @Nullable Ingredient known, String key) {
        Property.Datum solid = values.get(Property.TRUE_DENSITY);
        if (solid == null && known != null) {
            solid = known.datum(Property.TRUE_DENSITY).orElse(null);
        }
        Property.Datum cup = values.get(key.equals(LOOSE) ? Property.LOOSE_DENSITY : Property.TAPPED_DENSITY);
        double most = (key.equals(LOOSE) ? 0.72 : 0.9);
        if (solid == null || cup == null || cup.value() < most * solid.value()) {
            return;
        }
        throw new Refusal(
                "out-of-range",
                field(key),
                said.get(key) + ", that is " + density(cup.value()),
                "less than " + density(most * solid.value()) + ": the grains themselves have " + density(solid.value()),
                "Weigh the powder without the cup, and check what the cup holds: weigh it full of water, 1 g is 1 mL.");
    }

    /** Field of a refusal: powder and key. */
    private String field(String key) {
        return name + ", " + key;
    }

    /** Stores a density, kg/m3, with a relative standard deviation of 3 % or {@code least}, whichever is larger. */
    private static void put(
            Map<Property, Property.Datum> values, Property property, double density, double least, Source source) {
        values.put(property, new Property.Datum(density, Math.max(SIGMA, least) * density, source));
    }

    /** For messages: a density in g/cm3 to three digits. */
    private static String density(double kilogramsPerCubicMetre) {
        return Decimals.text(kilogramsPerCubicMetre / 1e3, 3) + " g/cm3";
    }
}
