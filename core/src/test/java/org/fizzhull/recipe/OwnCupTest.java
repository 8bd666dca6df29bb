package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.evidence.Source;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Property.Datum;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY HAND: mass over volume of a weighed cup; BY DEFINITION: the limits that {@link OwnCup} states. A cup holds 250 mL. */
class OwnCupTest {
    private static final Source BAG = new Source("bag", "invented for this test", Source.Seen.ASSUMED);

    /** What a cup says of an invented powder, of which {@code known} is known. */
    private static Map<Property, Datum> read(@Nullable Ingredient known, Map<String, String> said) {
        Map<Property, Datum> values = new EnumMap<>(Property.class);
        new OwnCup("reef sand", said, Measures.METRIC).read(values, known, key -> BAG);
        return values;
    }

    private static double value(Map<Property, Datum> values, Property property) {
        Datum datum = values.get(property);
        assertThat(datum).isNotNull();
        return datum == null ? Double.NaN : datum.value();
    }

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    @Test
    void densitiesOfACup() {
        Map<Property, Datum> values = read(null, Map.of("loose cup", "125 g", "tapped cup", "150 g", "cup", "250 mL"));
        assertThat(value(values, Property.LOOSE_DENSITY)).isCloseTo(500, within(1e-9));
        assertThat(value(values, Property.TAPPED_DENSITY)).isCloseTo(600, within(1e-9));
        assertThat(read(null, Map.of("role", "salt"))).isEmpty();
    }

    /** A mass behind "cup" is that of a loose cup of the usual volume; a volume stays the cup's volume. */
    @Test
    void aCupOfItsMass() {
        Map<Property, Datum> values = read(null, Map.of("cup", "125 g"));
        assertThat(value(values, Property.LOOSE_DENSITY)).isCloseTo(500, within(1e-9));
        assertThat(values).hasSize(1);
        Refusal volumeAlone = refusal(() -> read(null, Map.of("cup", "250 mL")));
        assertThat(volumeAlone.field()).isEqualTo("reef sand, cup");
        assertThat(volumeAlone.read()).isEqualTo("250 mL");
        Refusal tappedAlone = refusal(() -> read(null, Map.of("tapped cup", "150 g")));
        assertThat(tappedAlone.field()).isEqualTo("reef sand, tapped cup");
        assertThat(tappedAlone.read()).isEqualTo("150 g");
    }

    @Test
    void eitherCupsOrDensities() {
        for (String key : new String[] {"loose density", "tapped density"}) {
            Refusal refusal = refusal(() -> read(null, Map.of("loose cup", "125 g", key, "0.5 g/cm3")));
            assertThat(refusal.code()).isEqualTo("conflict");
            assertThat(refusal.hint()).isEqualTo("Leave out " + key + ": the cup says it.");
        }
    }

    /** 10 mL to 5 L, both ends included. */
    @ParameterizedTest
    @CsvSource({"10 mL,5 g,true", "5 L,2500 g,true", "9.9 mL,5 g,false", "5.1 L,2500 g,false", "250 mL,0 g,false"})
    void limitsOfACup(String cup, String mass, boolean taken) {
        Map<String, String> said = Map.of("loose cup", mass, "cup", cup);
        if (taken) {
            assertThat(value(read(null, said), Property.LOOSE_DENSITY)).isCloseTo(500, within(1e-6));
        } else {
            assertThat(refusal(() -> read(null, said)).code()).isEqualTo("out-of-range");
        }
    }

    @Test
    void tappingMakesItHeavier() {
        Refusal same = refusal(() -> read(null, Map.of("loose cup", "125 g", "tapped cup", "125 g")));
        assertThat(same.read()).isEqualTo("125 g tapped, 125 g loose");
        assertThat(same.field()).isEqualTo("reef sand, tapped cup");
    }

    /**
     * Of grains of 1 g/cm3, 250 mL hold less than 180 g loose (0.72) and less than 225 g tapped (0.9). The grains' density is
     * the user's own, or that of the ingredient it is like.
     */
    @ParameterizedTest
    @CsvSource({"179,,true", "180,,false", "181,,false", "170,224,true", "170,225,false", "170,226,false"})
    void noCupIsAsDenseAsItsGrains(double loose, @Nullable Double tapped, boolean taken) {
        String cup = "250 mL";
        Map<String, String> said = tapped == null
                ? Map.of("loose cup", loose + " g", "cup", cup)
                : Map.of("loose cup", loose + " g", "tapped cup", tapped + " g", "cup", cup);
        Ingredient table = IngredientTable.standard().require("corn starch").ingredient();
        Ingredient like = table.with(Map.of(Property.TRUE_DENSITY, new Datum(1000, 10, BAG)));
        Map<Property, Datum> own = new EnumMap<>(Property.class);
        own.put(Property.TRUE_DENSITY, new Datum(1000, 10, BAG));
        OwnCup alone = new OwnCup("reef sand", said, Measures.METRIC);
        if (taken) {
            assertThat(read(like, said)).containsKey(Property.LOOSE_DENSITY);
            alone.read(own, null, key -> BAG);
            assertThat(own).containsKey(Property.LOOSE_DENSITY);
        } else {
            Refusal refusal = refusal(() -> read(like, said));
            assertThat(refusal.allowed())
                    .isEqualTo("less than " + (tapped == null ? "0.72" : "0.9")
                            + " g/cm3: the grains themselves have 1 g/cm3");
            assertThat(refusal(() -> alone.read(own, null, key -> BAG)).code()).isEqualTo("out-of-range");
        }
        // of grains of an unknown density nothing is checked
        assertThat(read(null, said)).containsKey(Property.LOOSE_DENSITY);
    }
}
