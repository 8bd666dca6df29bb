package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.jspecify.annotations.Nullable;

/**
 * An ingredient as a user describes it in words: {@code true density: 1.42 g/cm3}. What is not said comes from the table
 * where it knows the name, and from a plain assumption where it does not.
 */
public final class OwnIngredient {
    private static final String OWN = "The user's own value";
    private static final Source ASSUMED =
            new Source("own-assumed", "Assumed for want of the user's own value", Source.Seen.ASSUMED);
    private static final double OWN_SIGMA = 0.05;
    private static final double TAPPED_OVER_LOOSE = 1.25;
    private static final double USUAL_GRAIN = 80e-6;

    private OwnIngredient() {}

    /**
     * Reads one.
     *
     * @param name what the user calls it
     * @param said values by the names of {@link Property}, and {@code role}, {@code grain}, {@code caution}, {@code
     *     allergen}; the powder test as {@code loose cup}, {@code tapped cup} and {@code cup}
     * @param table what is known already; a name it has, by any of its other names, is that ingredient described anew
     * @param measures what a cup holds
     * @param places where each value stands, by its key: {@code your recipe, line 12}; may be empty
     */
    public static Ingredient read(
            String name,
            Map<String, String> said,
            IngredientTable table,
            Measures measures,
            Map<String, String> places) {
        Sources sources = key -> new Source("own", places.getOrDefault(key, OWN), Source.Seen.SEEN);
        EnumMap<Property, Datum> values = new EnumMap<>(Property.class);
        Lookup met = table.find(name);
        boolean whole =
                said.containsKey(Property.TRUE_DENSITY.key()) || said.containsKey(Property.LIQUID_DENSITY.key());
        if (met instanceof Lookup.Forbidden || (met instanceof Lookup.Ambiguous && !whole)) {
            table.require(name); // says why it must not go in, whoever describes it, or asks which is meant
        }
        Ingredient known = met instanceof Lookup.Found found ? found.ingredient() : null;
        Role role = known == null ? null : known.role();
        String caution = known == null ? "" : known.caution();
        String allergen = known == null ? "" : known.allergen();
        for (Map.Entry<String, String> entry : said.entrySet()) {
            String key = entry.getKey();
            switch (key) {
                case "role" -> role = role(entry.getValue());
                case "caution" -> caution = entry.getValue();
                case "allergen" -> allergen = entry.getValue();
                case "grain" ->
                    values.put(
                            Property.GRAIN_SIZE,
                            datum(GrainWord.named(entry.getValue()).size(), 0.4, ASSUMED));
                case OwnCup.LOOSE, OwnCup.TAPPED, OwnCup.CUP -> {}
                default -> {
                    Property property = Property.named(key);
                    if (property == null) {
                        throw unknownKey(name, key);
                    }
                    values.put(property, datum(number(name, property, entry.getValue()), OWN_SIGMA, sources.of(key)));
                }
            }
        }
        new OwnCup(name, said, measures).read(values, known, sources);
        if (role == null) {
            role = values.containsKey(Property.LIQUID_DENSITY) ? Role.OIL : Role.FOOD_POWDER;
        }
        complete(values, known, role);
        if (known != null && known.role() == role) {
            return new Ingredient(
                    Names.plain(name),
                    table.holds(known.name()) ? otherNames(known, name) : List.of(),
                    role,
                    known.with(values).values(),
                    caution,
                    allergen,
                    known.remark());
        }
        return new Ingredient(Names.plain(name), List.of(), role, values, caution, allergen, "");
    }

    /** Every name of it but the one the user gave it, so that each leads to the user's values. */
    private static List<String> otherNames(Ingredient known, String name) {
        List<String> names = new ArrayList<>();
        names.add(known.name());
        names.addAll(known.aliases());
        names.removeIf(other -> Names.plain(other).equals(Names.plain(name)));
        return names;
    }

    /** Where the value of a key is from. */
    interface Sources {
        Source of(String key);
    }

    private static void complete(EnumMap<Property, Datum> values, @Nullable Ingredient known, Role role) {
        if (!role.mayBeDry()) {
            return;
        }
        Datum loose = values.get(Property.LOOSE_DENSITY);
        if (loose != null && !values.containsKey(Property.TAPPED_DENSITY)) {
            double ratio = known == null || !known.role().mayBeDry()
                    ? TAPPED_OVER_LOOSE
                    : known.value(Property.TAPPED_DENSITY) / known.value(Property.LOOSE_DENSITY);
            values.put(Property.TAPPED_DENSITY, datum(loose.value() * ratio, 0.1, ASSUMED));
        }
        if (known == null && !values.containsKey(Property.GRAIN_SIZE)) {
            values.put(Property.GRAIN_SIZE, datum(USUAL_GRAIN, 0.5, ASSUMED));
        }
    }

    private static Datum datum(double value, double relative, Source source) {
        return new Datum(value, Math.abs(value) * relative, source);
    }

    private static double number(String name, Property property, String text) {
        String field = name + ", " + property.key();
        double si = switch (property) {
            case TRUE_DENSITY, LOOSE_DENSITY, TAPPED_DENSITY, LIQUID_DENSITY ->
                QuantityText.parseExact(field, text, Dimension.DENSITY);
            case GRAIN_SIZE -> micrometres(field, text);
            case WATER_SHARE, VOLATILE_SHARE, BOUND_WATER, HYDRATE_RELEASE, DELIQUESCENCE ->
                QuantityText.parseExact(field, text, Dimension.FRACTION);
            default -> plain(field, property, text);
        };
        double shown = si / property.toSi();
        if (!(shown >= property.low() * (1 - 1e-12) && shown <= property.high() * (1 + 1e-12))) {
            throw new Refusal(
                    "out-of-range",
                    field,
                    text,
                    property.low() + " to " + property.high() + " " + property.unit(),
                    "Check the unit.");
        }
        return si;
    }

    private static double micrometres(String field, String text) {
        String trimmed = text.strip();
        return trimmed.endsWith("um")
                ? QuantityText.parseExact(field, trimmed.substring(0, trimmed.length() - 2) + "mm", Dimension.LENGTH)
                        / 1e3
                : QuantityText.parseExact(field, trimmed, Dimension.LENGTH);
    }

    private static double plain(String field, Property property, String text) {
        String number = text.strip();
        if (!property.unit().isEmpty()) {
            if (!number.endsWith(property.unit())) {
                throw new Refusal("missing-unit", field, text, "a number and " + property.unit(), "");
            }
            number = number.substring(0, number.length() - property.unit().length());
        }
        return PlainNumber.read(field, number) * property.toSi();
    }

    private static Role role(String text) {
        String name = text.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
        StringBuilder all = new StringBuilder();
        for (Role r : Role.values()) {
            if (r.name().equals(name)) {
                return r;
            }
            all.append(all.length() > 0 ? ", " : "")
                    .append(r.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        }
        throw new Refusal("unknown-word", "role", text, all.toString(), "");
    }

    private static Refusal unknownKey(String name, String key) {
        StringBuilder all = new StringBuilder("role, grain, caution, allergen, loose cup, tapped cup, cup");
        for (Property p : Property.values()) {
            all.append(", ").append(p.key());
        }
        return new Refusal("unknown-key", name, key, all.toString(), "");
    }
}
