package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.Missing;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Property.Datum;
import org.fizzhull.recipe.Recipe.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** BY DEFINITION: the limits that {@link Ingredient}, {@link Part} and {@link Datum} state, each met and missed by a little. */
class IngredientTest {
    private static final Source INVENTED = new Source("invented", "invented for this test", Source.Seen.ASSUMED);

    /** An invented powder of 1 g/cm3 solid with the two densities, kg/m3. */
    private static Ingredient powder(double loose, double tapped, Map<Property, Double> more) {
        EnumMap<Property, Datum> values = new EnumMap<>(Property.class);
        values.put(Property.TRUE_DENSITY, datum(1000));
        values.put(Property.LOOSE_DENSITY, datum(loose));
        values.put(Property.TAPPED_DENSITY, datum(tapped));
        values.put(Property.GRAIN_SIZE, datum(80e-6));
        more.forEach((property, value) -> values.put(property, datum(value)));
        return new Ingredient("gull dust", List.of(), Role.STARCH, Substance.UNSPECIFIED, values, "", "", "");
    }

    private static Ingredient liquid(String name, Map<Property, Double> values) {
        EnumMap<Property, Datum> all = new EnumMap<>(Property.class);
        values.forEach((property, value) -> all.put(property, datum(value)));
        return new Ingredient(name, List.of(), Role.WATER, Substance.UNSPECIFIED, all, "", "", "");
    }

    private static Datum datum(double value) {
        return new Datum(value, 0.1 * value, INVENTED);
    }

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    /** The longest name has 80 characters; a blank of no width cannot be seen. */
    @Test
    void names() {
        Map<Property, Double> water = Map.of(Property.LIQUID_DENSITY, 1000.0);
        assertThat(liquid("x".repeat(80), water).name()).hasSize(80);
        for (String bad : new String[] {"x".repeat(81), "\u200bshell", "shell\u200b"}) {
            assertThat(refusal(() -> liquid(bad, water)).code()).isEqualTo("bad-name");
        }
        assertThat(refusal(() -> liquid(" ", water)).code()).isEqualTo("missing");
    }

    /** Loose below tapped below nine tenths of true: equality is refused, and the refusal shows g/cm3. */
    @Test
    void densitiesInOrder() {
        assertThat(powder(500, 899, Map.of()).scoopDensity().value()).isEqualTo(500);
        assertThat(refusal(() -> powder(500, 500, Map.of())).code()).isEqualTo("out-of-range");
        assertThat(refusal(() -> powder(500, 900, Map.of())).code()).isEqualTo("out-of-range");
        assertThat(refusal(() -> powder(0, 500, Map.of())).code()).isEqualTo("out-of-range");
        assertThat(refusal(() -> powder(600, 500, Map.of())).read()).isEqualTo("loose 0.6, tapped 0.5, true 1.0 g/cm3");
    }

    /** A powder needs its solid, a liquid its density; each is told by its own name. */
    @Test
    void densitiesThatAreMissing() {
        Refusal dry = refusal(
                () -> new Ingredient("gull dust", List.of(), Role.STARCH, Substance.UNSPECIFIED, Map.of(), "", "", ""));
        assertThat(dry.read()).isEqualTo("no true density");
        assertThat(dry.allowed()).isEqualTo("true density and loose density");
        Refusal wet = refusal(() -> liquid("brine", Map.of()));
        assertThat(wet.read()).isEqualTo("no liquid density");
        assertThat(wet.allowed()).isEqualTo("liquid density");
        // a butter, which may be either, with the solid alone
        EnumMap<Property, Datum> solid =
                new EnumMap<>(powder(500, 600, Map.of()).values());
        Refusal butter = refusal(
                () -> new Ingredient("tallow", List.of(), Role.BUTTER, Substance.UNSPECIFIED, solid, "", "", ""));
        assertThat(butter.read()).isEqualTo("no liquid density");
        for (Property property :
                new Property[] {Property.LOOSE_DENSITY, Property.TAPPED_DENSITY, Property.GRAIN_SIZE}) {
            assertThat(refusal(() -> powder(500, 600, Map.of()).without(property))
                            .read())
                    .isEqualTo("no " + property.key());
        }
    }

    /** Water and alcohol make the whole of a liquid at most: 60 % and 40 % do, 60 % and 41 % do not. */
    @Test
    void sharesOfALiquid() {
        Map<Property, Double> whole =
                Map.of(Property.LIQUID_DENSITY, 900.0, Property.WATER_SHARE, 0.6, Property.VOLATILE_SHARE, 0.4);
        assertThat(liquid("spirit", whole).value(Property.VOLATILE_SHARE)).isEqualTo(0.4);
        Map<Property, Double> more =
                Map.of(Property.LIQUID_DENSITY, 900.0, Property.WATER_SHARE, 0.6, Property.VOLATILE_SHARE, 0.41);
        assertThat(refusal(() -> liquid("spirit", more)).allowed()).isEqualTo("1 or less in all");
    }

    @Test
    void otherNamesAsPeopleReadThem() {
        Ingredient water = liquid("water", Map.of(Property.LIQUID_DENSITY, 1000.0));
        Ingredient named = new Ingredient(
                "water",
                List.of("tap water", "* water", "~ sea water"),
                Role.WATER,
                Substance.UNSPECIFIED,
                water.values(),
                "",
                "",
                "");
        assertThat(named.otherNames()).containsExactly("tap water", "any water", "sea water");
        assertThat(water.otherNames()).isEmpty();
    }

    /** Grains of 10 um pack as they are, finer ones by their oil absorption where that is known. */
    @ParameterizedTest
    @CsvSource({"9.9e-6,30,true", "10e-6,30,false", "9.9e-6,0,false"})
    void finesPackByOil(double metres, double oil, boolean byOil) {
        Map<Property, Double> values = Map.of(Property.GRAIN_SIZE, metres, Property.OIL_ABSORPTION, oil / 100);
        assertThat(powder(500, 600, values).packsByOil()).isEqualTo(byOil);
        assertThat(powder(500, 600, Map.of()).packsByOil()).isFalse();
    }

    /** 2 groups on 0.1 kg/mol are 20 mol/kg; none of what it does not have. */
    @Test
    void moles() {
        Ingredient acid = powder(500, 600, Map.of(Property.MOLAR_MASS, 0.1, Property.ACID_GROUPS, 2.0));
        assertThat(acid.molesPerKilogram(Property.ACID_GROUPS)).isCloseTo(20, within(1e-12));
        assertThat(acid.molesPerKilogram(Property.CARBONATE_GROUPS)).isZero();
        Ingredient nameless = powder(500, 600, Map.of(Property.ACID_GROUPS, 2.0));
        assertThat(refusal(() -> nameless.molesPerKilogram(Property.ACID_GROUPS))
                        .read())
                .isEqualTo("no molar mass");
    }

    /** Nothing is assumed of a missing name, property, value or source. */
    @Test
    void nothingMayBeNull() {
        Ingredient dust = powder(500, 600, Map.of());
        assertThatNullPointerException()
                .isThrownBy(() -> dust.datum(Missing.value()))
                .withMessage("property is null");
        assertThatNullPointerException()
                .isThrownBy(() -> dust.value(Missing.value()))
                .withMessage("property is null");
        assertThatNullPointerException()
                .isThrownBy(() -> dust.value(Missing.value(), 1))
                .withMessage("property is null");
        assertThatNullPointerException()
                .isThrownBy(() -> dust.relativeSigma(Missing.value(), 1))
                .withMessage("property is null");
        assertThatNullPointerException()
                .isThrownBy(() -> Property.named(Missing.value()))
                .withMessage("key is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Datum(1, 0, Missing.value()))
                .withMessage("source is null");
        assertThatNullPointerException()
                .isThrownBy(() -> new Part(Missing.value(), 1, 0))
                .withMessage("ingredient is null");
        assertThatNullPointerException()
                .isThrownBy(() -> dust.named(Missing.value()))
                .withMessage("name is null");
    }

    /** A datum needs numbers; its relative spread is that of the absolute value, none of 0. */
    @Test
    void data() {
        assertThat(new Datum(-4, 1, INVENTED).relativeSigma()).isEqualTo(0.25);
        assertThat(new Datum(0, 1, INVENTED).relativeSigma()).isZero();
        assertThat(new Datum(4, 0, INVENTED).relativeSigma()).isZero();
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> new Datum(4, bad, INVENTED)).isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> new Datum(Double.NaN, 0, INVENTED)).isInstanceOf(IllegalArgumentException.class);
    }

    /** 2 L of 500 kg/m3 to 10 %, scooped to 0.1 L: 1 kg, 50 g of the scoop and 100 g of the powder, added as squares. */
    @Test
    void scooped() {
        Ingredient dust = powder(500, 600, Map.of());
        Part scooped = Part.of(dust, Amount.normal(Dimension.VOLUME, 2e-3, 0.1e-3));
        assertThat(scooped.mass()).isCloseTo(1, within(1e-12));
        assertThat(scooped.sigma()).isCloseTo(Math.sqrt(0.05 * 0.05 + 0.1 * 0.1), within(1e-12));
        assertThat(Part.of(dust, Amount.normal(Dimension.MASS, 2, 0.1)).sigma()).isCloseTo(0.1, within(1e-12));
        assertThatThrownBy(() -> Part.of(dust, Amount.exact(Dimension.LENGTH, 1)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.002, Double.NaN, Double.POSITIVE_INFINITY})
    void aPartHasAMass(double mass) {
        Ingredient dust = powder(500, 600, Map.of());
        assertThat(refusal(() -> new Part(dust, mass, 0)).read()).isEqualTo(mass * 1e3 + " g");
        assertThat(refusal(() -> new Part(dust, 1, mass)).code()).isEqualTo("out-of-range");
        assertThat(new Part(dust, 0, 0).mass()).isZero();
    }

    /** The words of the table lead to their properties and back. */
    @Test
    void properties() {
        assertThat(Property.named("true density")).isEqualTo(Property.TRUE_DENSITY);
        assertThat(Property.named("True Density")).isNull();
        assertThat(Property.TRUE_DENSITY.key()).isEqualTo("true density");
    }
}
