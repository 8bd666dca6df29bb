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
 * The powder test in words: {@code loose cup: 118 g} and {@code tapped cup: 150 g}, of one cup of the chosen measures
 * or of {@code cup: 200 mL}; without the powder's container. Both together or the loose one alone; {@code cup: 90 g}, a
 * weight, is a loose cup too.
 */
final class OwnCup {
    static final String LOOSE = "loose cup";
    static final String TAPPED = "tapped cup";
    static final String CUP = "cup";

    private final String name;
    private final Map<String, String> said;
    private final Measures measures;

    OwnCup(String name, Map<String, String> said, Measures measures) {
        this.name = name;
        this.said = weighed(name, said, measures);
        this.measures = measures;
    }

    /** A cup that is given as a weight is a loose cup of the usual size. */
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

    /** Whether a key is one of these. */
    static boolean has(String key) {
        return key.equals(LOOSE) || key.equals(TAPPED) || key.equals(CUP);
    }

    /**
     * Adds the densities of this bag.
     *
     * @param values takes them
     * @param known the table's own, where it has the ingredient
     * @param source of a key
     */
    void read(Map<Property, Datum> values, @Nullable Ingredient known, OwnIngredient.Sources source) {
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
                        "Leave " + density.key() + " away: the cup says it.");
            }
        }
        double cup = volume();
        double loose = mass(LOOSE, looseText);
        double sigma = known != null && known.packsByOil() ? known.relativeSigma(Property.LOOSE_DENSITY, 0) : 0;
        put(values, Property.LOOSE_DENSITY, loose / cup, sigma, source.of(LOOSE));
        if (tappedText != null) {
            double tapped = mass(TAPPED, tappedText);
            checkTapped(cup, loose, tapped, tappedText);
            put(values, Property.TAPPED_DENSITY, tapped / cup, sigma, source.of(TAPPED));
        }
        checkSolid(values, known, tappedText == null ? LOOSE : TAPPED);
    }

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

    private double mass(String key, String text) {
        double mass = QuantityText.parseExact(field(key), text, Dimension.MASS);
        if (!(mass > 0)) {
            throw new Refusal("out-of-range", field(key), text, "more than 0 g", "Weigh the powder without the cup.");
        }
        return mass;
    }

    private void checkTapped(double cup, double loose, double tapped, String text) {
        try {
            new CupMeasurement(cup, loose, tapped);
        } catch (Refusal refusal) {
            throw new Refusal(
                    refusal.code(),
                    field(TAPPED),
                    text + " tapped, " + said.get(LOOSE) + " loose",
                    "more tapped than loose",
                    refusal.hint());
        }
    }

    /** A tapped powder denser than nine tenths of its grains is a cup misread; a loose one above 0.74 too. */
    private void checkSolid(Map<Property, Datum> values, @Nullable Ingredient known, String key) {
        Datum solid = values.get(Property.TRUE_DENSITY);
        if (solid == null && known != null) {
            solid = known.datum(Property.TRUE_DENSITY).orElse(null);
        }
        Datum cup = values.get(key.equals(LOOSE) ? Property.LOOSE_DENSITY : Property.TAPPED_DENSITY);
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

    private String field(String key) {
        return name + ", " + key;
    }

    private static void put(
            Map<Property, Datum> values, Property property, double density, double least, Source source) {
        values.put(property, new Datum(density, Math.max(CupMeasurement.SIGMA, least) * density, source));
    }

    private static String density(double kilogramsPerCubicMetre) {
        return Decimals.text(kilogramsPerCubicMetre / 1e3, 3) + " g/cm3";
    }
}
