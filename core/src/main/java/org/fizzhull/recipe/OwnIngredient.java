package org.fizzhull.recipe;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fizzhull.evidence.Notice;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.BareNumber;
import org.jspecify.annotations.Nullable;

/**
 * An ingredient as a user describes it in words: {@code true density: 1.42 g/cm3}, {@code like: kaolin}, {@code loose
 * cup: 95 g}, {@code sheet: "bulk density 0.55 g/cm3; D50 5 um"}.
 *
 * <p>Each value is the user's own where there is one; else that of the ingredient it is said to be like, or, where none is
 * named, of the table's ingredient of this name; else a plain assumption. Assumed are grains of 1.5 g/cm3, as starch, milk and
 * plant powders have (1.3 to 1.6), 80 um wide, and a tapped density 1.25 times the loose one. Every value carries its
 * source, so that the user's own numbers can be told from assumed ones. Entered through {@link RecipeBuilder#own}.
 */
final class OwnIngredient {
    /** Citation of a value where no file and line are known. */
    private static final String OWN = "The user's own value";
    /** Source of what nobody said. */
    private static final Source ASSUMED =
            new Source("own-assumed", "Assumed for want of the user's own value", Source.Seen.ASSUMED);
    /** Relative standard deviation of a value that the user gives, 5 % (assumed). */
    private static final double OWN_SIGMA = 0.05;
    /** Tapped over loose density where only the loose cup was weighed and nothing like the powder is known (assumed). */
    private static final double TAPPED_OVER_LOOSE = 1.25;
    /** Grain size of a powder of which none is said, m (assumed; a factor 1.5 either way). */
    private static final double USUAL_GRAIN = 80e-6;

    /**
     * True density of a powder of which none is said, kg/m3: starch 1480, milk powder 1450, oat 1420, cellulose 1540 (the
     * table), organic powders lie close together.
     */
    private static final double USUAL_SOLID = 1500;

    /** Relative standard deviation of that density (assumed). */
    private static final double USUAL_SOLID_SIGMA = 0.08;

    /** What is said to be like another has its densities and grains to within this share, one sigma (assumed). */
    private static final double LIKE_SIGMA = 0.15;

    /** Key of the ingredient that this one is like. */
    private static final String LIKE = "like";
    /** Key of a line of a supplier's data sheet. */
    private static final String SHEET = "sheet";

    private OwnIngredient() {}

    /**
     * {@return the ingredient that the words describe, with a source for each value}
     *
     * @param name what the user calls it
     * @param said values by the names of {@link Property}, and {@code role}, {@code grain}, {@code caution}, {@code
     *     allergen}; the cup test as {@code loose cup}, {@code tapped cup} and {@code cup}
     * @param table what is known already; a name it has, by any of its other names, is that ingredient described anew
     * @param measures what a cup holds
     * @param places where each value stands, by its key: {@code your recipe, line 12}; may be empty
     * @throws Refusal for a key that is none, a value out of range or without its unit, a name that must not go in, and a
     *     powder or liquid that lacks what it needs
     */
    public static Ingredient read(
            String name,
            Map<String, String> said,
            IngredientTable table,
            Measures measures,
            Map<String, String> places) {
        // what was said, and the source of each of its values
        Map<String, String> all = spread(name, said);
        String cup = places.getOrDefault(OwnCup.CUP, OWN);
        Sources sources = key ->
                new Source("own", places.getOrDefault(key, key.equals(OwnCup.LOOSE) ? cup : OWN), Source.Seen.SEEN);
        EnumMap<Property, Property.Datum> values = new EnumMap<>(Property.class);
        // what is known of it already: a name of two meanings is asked back, unless the words alone are enough
        Lookup met = table.find(name);
        String like = all.get(LIKE);
        boolean whole = like != null
                || all.containsKey(Property.TRUE_DENSITY.key())
                || all.containsKey(Property.LIQUID_DENSITY.key());
        if (met instanceof Lookup.Forbidden || (met instanceof Lookup.Ambiguous && !whole)) {
            table.require(name); // says why it must not go in, whoever describes it, or asks which is meant
        }
        Ingredient known = met instanceof Lookup.Found found ? found.ingredient() : null;
        if (like != null) {
            boolean weighed = all.containsKey(OwnCup.LOOSE) || all.containsKey(OwnCup.CUP);
            known = resembling(name, like, table, weighed);
        }
        // the user's own values, on top of what is known
        Role role = known == null ? null : known.role();
        String caution = known == null ? "" : known.caution();
        String allergen = known == null ? "" : known.allergen();
        for (Map.Entry<String, String> entry : all.entrySet()) {
            String key = entry.getKey();
            switch (key) {
                case "role" -> role = role(entry.getValue());
                case "caution" -> caution = entry.getValue();
                case "allergen" -> allergen = entry.getValue();
                // a word is known to a factor of 1.5
                case "grain" ->
                    values.put(
                            Property.GRAIN_SIZE,
                            datum(GrainWord.named(entry.getValue()).size(), 0.4, ASSUMED));
                case OwnCup.LOOSE, OwnCup.TAPPED, OwnCup.CUP, LIKE -> {}
                default -> {
                    Property property = Property.named(key);
                    if (property == null) {
                        refuseDensity(name, all, role);
                        throw unknownKey(name, key);
                    }
                    values.put(property, datum(number(name, property, entry.getValue()), OWN_SIGMA, sources.of(key)));
                }
            }
        }
        // the cup, then the role and the values nobody gave
        new OwnCup(name, all, measures).read(values, known, sources);
        if (role == null) {
            role = values.containsKey(Property.LIQUID_DENSITY) ? Role.OIL : Role.FOOD_POWDER;
        }
        complete(values, known, role);
        Substance substance = known == null ? Substance.UNSPECIFIED : known.substance();
        if (known != null && known.role() == role) {
            return new Ingredient(
                    Names.plain(name),
                    like == null && table.holds(known.name()) ? otherNames(known, name) : List.of(),
                    role,
                    substance,
                    known.with(values).values(),
                    caution,
                    allergen,
                    like == null ? known.remark() : "Taken to be like " + known.name() + ".");
        }
        return new Ingredient(Names.plain(name), List.of(), role, Substance.UNSPECIFIED, values, caution, allergen, "");
    }

    /** What was said, with the words of data sheets translated into the table's and a {@code sheet} line split into its values. */
    private static Map<String, String> spread(String name, Map<String, String> said) {
        Map<String, String> all = new LinkedHashMap<>();
        for (Map.Entry<String, String> entry : said.entrySet()) {
            if (entry.getKey().equals(SHEET)) {
                all.putAll(SheetLine.read(name + ", " + SHEET, entry.getValue()));
            } else {
                all.put(SheetLine.key(entry.getKey()), entry.getValue());
            }
        }
        return all;
    }

    /**
     * The other ingredient, the spread of its densities and grain size widened by 15 %, as two of a kind differ. Where a cup of
     * the maker's own was weighed, that decides how it packs, and not the oil absorption of the other.
     */
    private static Ingredient resembling(String name, String like, IngredientTable table, boolean weighed) {
        Ingredient other;
        try {
            other = table.require(like).ingredient();
        } catch (Refusal refusal) {
            throw refusal.of(name + ", " + LIKE);
        }
        EnumMap<Property, Property.Datum> wider = new EnumMap<>(Property.class);
        for (Property property : new Property[] {
            Property.TRUE_DENSITY, Property.LOOSE_DENSITY, Property.TAPPED_DENSITY, Property.GRAIN_SIZE
        }) {
            other.datum(property)
                    .ifPresent(datum -> wider.put(
                            property,
                            new Property.Datum(
                                    datum.value(),
                                    Math.hypot(datum.sigma(), LIKE_SIGMA * datum.value()),
                                    new Source("own-like", "Taken from " + other.name(), Source.Seen.ASSUMED))));
        }
        return weighed ? other.with(wider).without(Property.OIL_ABSORPTION) : other.with(wider);
    }

    /** Refuses the key "density", which alone may be that of the grains or of the heap. */
    private static void refuseDensity(String name, Map<String, String> said, @Nullable Role role) {
        if (said.containsKey("density")) {
            throw new Refusal(
                    "unknown-key",
                    name,
                    "density",
                    role == null
                            ? "liquid density for a liquid; true density or loose density for a powder"
                            : role.mayBeDry() ? "true density, loose density or tapped density" : "liquid density",
                    "Write which density it is.");
        }
    }

    /** {@return what was assumed of an ingredient described by {@code said}, for its user to know} */
    static List<Notice> assumed(Ingredient described, Map<String, String> said) {
        List<Notice> notices = new ArrayList<>();
        boolean grains = described
                .datum(Property.TRUE_DENSITY)
                .filter(datum -> datum.source().equals(ASSUMED))
                .isPresent();
        if (grains) {
            notices.add(new Notice(
                    "assumed-density",
                    described.name()
                            + ": its grains are taken as 1.5 g/cm3, as those of most plant and food powders; say   like:"
                            + "   and an ingredient of the table where that is nearer."));
        }
        boolean cup = said.containsKey(OwnCup.LOOSE) || said.containsKey(OwnCup.CUP);
        if (cup && described.packsByOil()) {
            notices.add(new Notice(
                    "cup-of-fines",
                    described.name()
                            + ": so fine a powder packs by its oil absorption, since its cups hold air; the cup"
                            + " only turns spoons into grams."));
        }
        if (described.value(Property.VOLATILE_SHARE, 0) > 0 && described.substance() == Substance.UNSPECIFIED) {
            notices.add(new Notice(
                    "assumed-alcohol",
                    described.name()
                            + ": what evaporates of it beside water is taken as ethanol; say   like: isopropanol 70 %"
                            + "   where it is isopropanol."));
        }
        return notices;
    }

    /** Every name of it but the one the user gave it, so that each leads to the user's values. */
    private static List<String> otherNames(Ingredient known, String name) {
        return Stream.concat(Stream.of(known.name()), known.aliases().stream())
                .filter(other -> !Names.plain(other).equals(Names.plain(name)))
                .toList();
    }

    /** Where the value of a key is from. */
    interface Sources {
        Source of(String key);
    }

    /**
     * Fills in the tapped density of a powder with a loose one, and true density and grain size of one that nothing else
     * describes.
     */
    private static void complete(EnumMap<Property, Property.Datum> values, @Nullable Ingredient known, Role role) {
        if (!role.mayBeDry()) {
            return;
        }
        Property.Datum loose = values.get(Property.LOOSE_DENSITY);
        if (loose != null && !values.containsKey(Property.TAPPED_DENSITY)) {
            // tapped from loose: by the ratio of what it is like, known to a tenth
            double ratio = known == null || !known.role().mayBeDry()
                    ? TAPPED_OVER_LOOSE
                    : known.value(Property.TAPPED_DENSITY) / known.value(Property.LOOSE_DENSITY);
            values.put(Property.TAPPED_DENSITY, datum(loose.value() * ratio, 0.1, ASSUMED));
        }
        if (known == null && loose != null && !values.containsKey(Property.TRUE_DENSITY)) {
            values.put(Property.TRUE_DENSITY, datum(USUAL_SOLID, USUAL_SOLID_SIGMA, ASSUMED));
        }
        if (known == null && !values.containsKey(Property.GRAIN_SIZE)) {
            values.put(Property.GRAIN_SIZE, datum(USUAL_GRAIN, 0.5, ASSUMED));
        }
    }

    /** A value with its standard deviation as a share of it. */
    private static Property.Datum datum(double value, double relative, Source source) {
        return new Property.Datum(value, Math.abs(value) * relative, source);
    }

    /** The value in SI; refuses one outside the range of {@link Property}, but for rounding. */
    private static double number(String name, Property property, String text) {
        String field = name + ", " + property.key();
        double si = switch (property) {
            case TRUE_DENSITY, LOOSE_DENSITY, TAPPED_DENSITY, LIQUID_DENSITY -> density(field, property, text);
            case GRAIN_SIZE -> micrometres(field, text);
            case WATER_SHARE, VOLATILE_SHARE, HYDRATE_RELEASE, HYDRATE_UPTAKE, DELIQUESCENCE ->
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

    /** A density, kg/m3. A bare number is a specific gravity, which only the grains of a powder have on a sheet. */
    private static double density(String field, Property property, String text) {
        if (property == Property.TRUE_DENSITY && text.strip().matches("[0-9.]+")) {
            return 1e3 * BareNumber.read(field, text);
        }
        return SheetLine.density(field, text);
    }

    /** A length, m, also in micrometres under any of their names; a range stands for its middle. */
    private static double micrometres(String field, String text) {
        String trimmed = SheetLine.range(text);
        for (String micron : new String[] {"um", "\u00b5m", "\u03bcm", "microns", "micron"}) {
            if (trimmed.endsWith(micron)) {
                String number = trimmed.substring(0, trimmed.length() - micron.length());
                return QuantityText.parse(field, number + "mm", Dimension.LENGTH)
                                .value()
                        / 1e3;
            }
        }
        return QuantityText.parse(field, trimmed, Dimension.LENGTH).value();
    }

    /** A number with the property's own unit behind it, in SI; without any for counts. */
    private static double plain(String field, Property property, String text) {
        String number = text.strip();
        if (!property.unit().isEmpty()) {
            if (!number.endsWith(property.unit())) {
                throw new Refusal(
                        "missing-unit",
                        field,
                        text,
                        "a number and " + property.unit(),
                        "Write the unit behind the number.");
            }
            number = number.substring(0, number.length() - property.unit().length());
        }
        return BareNumber.read(field, number) * property.toSi();
    }

    /** The role of that name, in words ("food powder") or as the enum writes it. */
    private static Role role(String text) {
        String name = text.strip().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
        Optional<Role> said = Stream.of(Role.values())
                .filter(role -> role.name().equals(name))
                .findFirst();
        String all = Stream.of(Role.values())
                .map(role -> role.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
        return said.orElseThrow(() ->
                new Refusal("unknown-word", "role", text, all, "Or say   like:   and an ingredient of the table."));
    }

    /** For a key that is none: all that there are; a number is what a comma in braces has parted from its whole part. */
    private static Refusal unknownKey(String name, String key) {
        if (!key.isEmpty() && Character.isDigit(key.charAt(0))) {
            return new Refusal(
                    "unknown-key",
                    name,
                    key,
                    "numbers with a point, such as 1.42 g/cm3",
                    "A comma between braces parts two entries.");
        }
        String properties = Stream.of(Property.values()).map(Property::key).collect(Collectors.joining(", "));
        return new Refusal(
                "unknown-key",
                name,
                key,
                "like, sheet, role, grain, caution, allergen, loose cup, tapped cup, cup, " + properties,
                "Often enough:   like: kaolin   with a weighed   loose cup: 95 g.");
    }
}
