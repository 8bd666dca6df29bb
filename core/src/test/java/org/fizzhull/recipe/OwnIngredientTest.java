package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Ingredients of a maker's own, as little known as they are in a kitchen. */
class OwnIngredientTest {
    private final IngredientTable table = IngredientTable.standard();

    private Ingredient own(String name, Map<String, String> said) {
        return new RecipeBuilder(table, Measures.US_LEGAL).own(name, said).own().get(0);
    }

    /** By hand: 95 g in the 240 mL of a US legal cup are 395.83 kg/m3; the rest is kaolin's. */
    @Test
    void likeAnotherWithACupOnTop() {
        Ingredient kaolin = table.require("kaolin").ingredient();
        Ingredient nettle = own("nettle powder", Map.of("like", "kaolin", "loose cup", "95 g"));
        assertThat(nettle.value(Property.LOOSE_DENSITY)).isCloseTo(0.095 / 240e-6, within(1e-9));
        assertThat(nettle.value(Property.TRUE_DENSITY)).isEqualTo(kaolin.value(Property.TRUE_DENSITY));
        assertThat(nettle.relativeSigma(Property.TRUE_DENSITY, 0))
                .isGreaterThan(kaolin.relativeSigma(Property.TRUE_DENSITY, 0));
        assertThat(nettle.role()).isEqualTo(Role.CLAY);
        assertThat(nettle.packsByOil()).isFalse();
        assertThat(table.with(nettle).require("kaolin").ingredient()).isEqualTo(kaolin);
    }

    /**
     * By definition of "like": densities are uncertain by their own error and 15 % between two of a kind, as the root of the sum
     * of squares; a loose density of one's own is tapped down in the proportion of the other; a cup decides how it packs.
     */
    @Test
    void whatIsTakenFromTheOther() {
        Ingredient kaolin = table.require("kaolin").ingredient();
        for (String cup : List.of("loose cup", "cup")) {
            Ingredient nettle = own("nettle powder", Map.of("like", "kaolin", cup, "95 g"));
            assertThat(nettle.packsByOil()).as(cup).isFalse();
            assertThat(nettle.value(Property.TAPPED_DENSITY) / nettle.value(Property.LOOSE_DENSITY))
                    .isCloseTo(
                            kaolin.value(Property.TAPPED_DENSITY) / kaolin.value(Property.LOOSE_DENSITY),
                            within(1e-12));
            assertThat(nettle.relativeSigma(Property.TRUE_DENSITY, 0))
                    .isCloseTo(Math.hypot(kaolin.relativeSigma(Property.TRUE_DENSITY, 0), 0.15), within(1e-12));
            assertThat(nettle.remark()).isEqualTo("Taken to be like kaolin.");
        }
        assertThat(own("nettle powder", Map.of("like", "kaolin")).packsByOil()).isTrue();
    }

    /** By definition: the source of a value is the place where its line stands, that of a cup for its loose density. */
    @Test
    void aCupIsTheSourceOfTheLooseDensity() {
        Ingredient beet = new RecipeBuilder(table, Measures.US_LEGAL)
                .own("beet powder", Map.of("cup", "90 g"), Map.of("cup", "your recipe, line 5"))
                .own()
                .get(0);
        assertThat(beet.datum(Property.LOOSE_DENSITY).orElseThrow().source().citation())
                .isEqualTo("your recipe, line 5");
    }

    /** By definition: what was said is not told as assumed; what evaporates beside water is named where nobody said what it is. */
    @Test
    void onlyWhatWasAssumedIsTold() {
        Map<String, String> dense = Map.of("true density", "1.4 g/cm3", "loose cup", "95 g");
        assertThat(OwnIngredient.assumed(own("oat dust", dense), dense)).isEmpty();
        Map<String, String> spirit = Map.of("liquid density", "0.9 g/cm3", "volatile share", "20 %");
        assertThat(OwnIngredient.assumed(own("rose spirit", spirit), spirit))
                .extracting("code")
                .containsExactly("assumed-alcohol");
        Map<String, String> known = Map.of("like", "isopropyl alcohol 91%");
        assertThat(OwnIngredient.assumed(own("harbour spirit", known), known)).isEmpty();
    }

    /** By definition of the ranges of the table, their ends included; a length of a grain in any unit of length. */
    @Test
    void valuesOfOnesOwn() {
        Property density = Property.LIQUID_DENSITY;
        for (double end : new double[] {density.low(), density.high()}) {
            assertThat(own("brine", Map.of("liquid density", end + " " + density.unit()))
                            .value(density))
                    .isCloseTo(end * density.toSi(), within(1e-9));
        }
        for (double beyond : new double[] {0.999 * density.low(), 1.001 * density.high()}) {
            assertThatThrownBy(() -> own("brine", Map.of("liquid density", beyond + " " + density.unit())))
                    .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code())
                            .isEqualTo("out-of-range"));
        }
        Ingredient sand = own(
                "sand", Map.of("true density", "2.6 g/cm3", "loose density", "1.5 g/cm3", "grain size", "0.3 mm"));
        assertThat(sand.value(Property.GRAIN_SIZE)).isCloseTo(300e-6, within(1e-15));
    }

    /** The mend names the densities that the kind of ingredient has, and every role that there is. */
    @Test
    void mendsNameWhatIsAllowed() {
        assertThatThrownBy(() -> own("kaolin", Map.of("density", "2.6 g/cm3")))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.allowed())
                        .isEqualTo("true density, loose density or tapped density"));
        assertThatThrownBy(() -> own("sunflower oil", Map.of("density", "0.9 g/cm3")))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.allowed())
                        .isEqualTo("liquid density"));
        assertThatThrownBy(() -> own("sand", Map.of("role", "ballast", "true density", "2.6 g/cm3")))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.allowed().split(", "))
                        .hasSize(Role.values().length)
                        .contains("acid", "food powder")
                        .doesNotContain(""));
    }

    /** A weight behind cup is that of a loose cup; 90 g in 240 mL are 375 kg/m3. */
    @Test
    void aCupAloneIsEnough() {
        Ingredient beet = own("beet powder", Map.of("cup", "90 g"));
        assertThat(beet.value(Property.LOOSE_DENSITY)).isCloseTo(375, within(1e-9));
        assertThat(beet.value(Property.TRUE_DENSITY)).isEqualTo(1500);
        assertThat(own("beet powder", Map.of("loose cup", "90 g")).values().keySet())
                .isEqualTo(beet.values().keySet());
        var notices = new RecipeBuilder(table, Measures.US_LEGAL)
                .own("beet powder", Map.of("cup", "90 g"))
                .dry("beet powder", "10 g")
                .build()
                .notices();
        assertThat(notices).extracting("code").contains("assumed-density");
    }

    /** By hand: 35 lb/ft3 are 35 x 16.018463 = 560.646 kg/m3; the middle of 30 to 40; a gravity of 2.6 is 2600 kg/m3. */
    @Test
    void aSheetLine() {
        Ingredient clay = own(
                "harbour clay",
                Map.of("like", "kaolin", "sheet", "Bulk density 30-40 lb/ft3; Specific gravity: 2.6; D50 5 um"));
        assertThat(clay.value(Property.LOOSE_DENSITY)).isCloseTo(560.646, within(1e-3));
        assertThat(clay.value(Property.TRUE_DENSITY)).isCloseTo(2600, within(1e-9));
        assertThat(clay.value(Property.GRAIN_SIZE)).isCloseTo(5e-6, within(1e-15));
        Ingredient same = own(
                "harbour clay",
                Map.of(
                        "like",
                        "kaolin",
                        "bulk density",
                        "560.646 kg/m3",
                        "particle density",
                        "2.6 g/cm3",
                        "d50",
                        "5 um"));
        assertThat(same.value(Property.LOOSE_DENSITY)).isCloseTo(560.646, within(1e-6));
        assertThatThrownBy(() -> own("harbour clay", Map.of("sheet", "whiteness 85")))
                .isInstanceOfSatisfying(Refusal.class, r -> assertThat(r.code()).isEqualTo("unknown-key"));
    }

    /** The word that is wanted stands in the message. */
    @Test
    void theWordForALiquid() {
        assertThatThrownBy(() -> table.require("neem essence")).hasMessageContaining("liquid density");
        assertThatThrownBy(() -> own("neem", Map.of("density", "0.9 g/cm3"))).hasMessageContaining("liquid density");
        assertThat(own("neem", Map.of("liquid density", "0.9 g/cm3")).role()).isEqualTo(Role.OIL);
        assertThat(own("neem", Map.of("like", "sunflower oil")).role()).isEqualTo(Role.OIL);
    }

    /** Common spellings, common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "epsom salts,epsom salt",
        "himalayan salt,coarse sea salt",
        "rose clay,illite clay",
        "polysorbate,polysorbate 80",
        "tap water,water",
        "lavender oil,lavender oil",
        "Tea Tree Oil,tea tree oil"
    })
    void spellings(String written, String name) {
        assertThat(table.require(written).ingredient().name()).isEqualTo(name);
    }

    /** Several essential oils stand side by side, each under its own name. */
    @Test
    void essentialOilsSideBySide() {
        Recipe recipe = new RecipeBuilder(table, Measures.US_LEGAL)
                .dry("bicarb", "100 g")
                .wet("lavender oil", "1 g")
                .wet("tea tree oil", "1 g")
                .wet("lemon essential oil", "1 g")
                .build();
        assertThat(recipe.wet())
                .extracting(part -> part.ingredient().name())
                .containsExactly("lavender oil", "tea tree oil", "lemon essential oil");
        assertThat(table.find("lavender")).isInstanceOf(Lookup.Ambiguous.class);
    }

    /** What it is chemically is said, not guessed: by the table, or by like. */
    @Test
    void substances() {
        assertThat(table.require("citric acid monohydrate").ingredient().substance())
                .isEqualTo(Substance.CITRIC_ACID);
        assertThat(table.require("kaolin").ingredient().substance()).isEqualTo(Substance.UNSPECIFIED);
        assertThat(own("fine citric", Map.of("like", "citric acid", "cup", "200 g"))
                        .substance())
                .isEqualTo(Substance.CITRIC_ACID);
        for (Ingredient ingredient : table.all()) {
            boolean acid = ingredient.role() == Role.ACID;
            boolean spirit = ingredient.role() == Role.ALCOHOL;
            if (acid || spirit) {
                assertThat(ingredient.substance()).as(ingredient.name()).isNotEqualTo(Substance.UNSPECIFIED);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"'kaolin +20 g, water -1 g',2", "'kaolin +20 g',1", "'corn starch = 5 g, water = 0 g, kaolin +1 g',3"})
    void changesBehindOneAnother(String text, int count) {
        assertThat(RecipeChange.readAll(text, Measures.US_LEGAL)).hasSize(count);
    }
}
