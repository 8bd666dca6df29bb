package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.drying.mix.Gab;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.NearName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class IngredientTableTest {
    private final IngredientTable table = IngredientTable.standard();

    private Ingredient get(String name) {
        return table.require(name).ingredient();
    }

    /** OTHER PROGRAM, molar masses: Python's periodictable 1.6.0, older atomic weights, 1e-4 relative. */
    @ParameterizedTest
    @CsvSource({
        "sodium bicarbonate,84.00661",
        "sodium carbonate,105.98844",
        "citric acid,192.12352",
        "citric acid monohydrate,210.1388",
        "tartaric acid,150.08684",
        "malic acid,134.08744",
        "cream of tartar,188.1772",
        "ascorbic acid,176.12412"
    })
    void molarMasses(String name, double gramsPerMole) {
        assertThat(get(name).value(Property.MOLAR_MASS) * 1e3).isCloseTo(gramsPerMole, within(1e-4 * gramsPerMole));
    }

    /** FROM MEMORY: crystal densities of common handbooks. */
    @ParameterizedTest
    @CsvSource({
        "citric acid,1.66,1.67",
        "epsom salt,1.67,1.68",
        "table salt,2.16,2.17",
        "kaolin,2.60,2.63",
        "mica,2.77,2.88",
        "cream of tartar,1.954,1.984",
        "tartaric acid,1.75,1.77",
        "titanium dioxide,4.23,4.26"
    })
    void trueDensities(String name, double low, double high) {
        assertThat(get(name).value(Property.TRUE_DENSITY) / 1e3).isBetween(low, high);
    }

    /** OTHER PROGRAM (validation/reference/air.py): X at 0.3, 0.5, 0.7. */
    @ParameterizedTest
    @CsvSource({
        "corn starch,.0950,.1263,.1691",
        "potato starch,.1112,.1383,.1746",
        "skimmed milk powder,.0717,.0921,.1217",
        "kaolin,.0087,.0121,.0173",
        "bentonite,.0752,.1054,.1468",
        "glycerin,.084,.196,.456"
    })
    void sorption(String name, double low, double middle, double high) {
        Gab gab = Gab.of(get(name)).orElseThrow();
        assertThat(gab.waterAt(.3)).isCloseTo(low, within(6e-4));
        assertThat(gab.waterAt(.5)).isCloseTo(middle, within(6e-4));
        assertThat(gab.waterAt(.7)).isCloseTo(high, within(1e-3));
    }

    @Test
    void everyValueIsInRangeWithItsSourceAndSpread() {
        assertThat(table.all()).hasSizeGreaterThan(85);
        for (Ingredient i : table.all()) {
            i.values().forEach((property, datum) -> {
                double shown = datum.value() / property.toSi();
                assertThat(shown).as(i.name() + " " + property.key()).isBetween(property.low(), property.high());
                assertThat(datum.source().citation()).isNotBlank();
                boolean measured = property == Property.TRUE_DENSITY
                        || property == Property.LOOSE_DENSITY
                        || property == Property.LIQUID_DENSITY;
                assertThat(!measured || datum.sigma() > 0)
                        .as(i.name() + " " + property.key() + " has a spread")
                        .isTrue();
            });
            assertThat(i.role() != Role.ACID || i.molesPerKilogram(Property.ACID_GROUPS) > 0)
                    .isTrue();
        }
    }

    /**
     * COMMON PRACTICE, no source: each of sixty names of the trade is answered: found, asked back, or refused with a
     * reason.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "sodium bicarbonate",
                "citric acid, anhydrous",
                "citric acid monohydrate",
                "tartaric acid",
                "malic acid",
                "cream of tartar",
                "ascorbic acid",
                "lactic acid powder",
                "fumaric acid",
                "sodium carbonate",
                "corn starch",
                "potato starch",
                "tapioca starch",
                "arrowroot",
                "rice starch",
                "rice flour",
                "maltodextrin",
                "cellulose",
                "kaolin clay",
                "bentonite clay",
                "French green clay",
                "rhassoul",
                "zeolite",
                "silica",
                "talc",
                "Epsom salt",
                "table salt",
                "sea salt",
                "pink salt",
                "Dead Sea salt",
                "dendritic salt",
                "magnesium chloride flakes",
                "sodium sulphate",
                "milk powder",
                "goat milk powder",
                "buttermilk powder",
                "coconut milk powder",
                "colloidal oatmeal",
                "cocoa powder",
                "spice",
                "activated charcoal",
                "SLSA powder",
                "SCI",
                "sodium coco sulfate",
                "cocamidopropyl betaine",
                "decyl glucoside",
                "dye",
                "lake",
                "mica",
                "oxide",
                "biodegradable glitter",
                "polysorbate 80",
                "polysorbate 20",
                "lecithin",
                "sweet almond oil",
                "sunflower oil",
                "grapeseed oil",
                "canola",
                "olive oil",
                "jojoba",
                "fractionated coconut oil",
                "coconut oil",
                "castor oil",
                "shea butter",
                "mango butter",
                "cocoa butter",
                "lavender essential oil",
                "lemon fragrance",
                "water",
                "witch hazel",
                "isopropyl alcohol 91%",
                "rubbing alcohol",
                "surgical spirit",
                "glycerine",
                "castile soap",
                "rose water",
                "honey",
                "sugar",
                "syrup",
                "dried petals",
                "lavender buds",
                "calendula",
                "sprinkles",
                "menthol",
                "borax",
                "baking powder",
                "plaster",
                "plain flour",
                "bleach"
            })
    void theTradesSixtyAreAnswered(String name) {
        assertThat(table.find(name)).isNotInstanceOf(Lookup.Unknown.class);
    }

    @Test
    void asksWhereAnOceanLiesBetween() {
        assertThat(table.find("corn flour"))
                .isInstanceOfSatisfying(
                        Lookup.Ambiguous.class,
                        two -> assertThat(two.meanings())
                                .extracting(Ingredient::name)
                                .containsExactly("corn starch", "maize flour"));
        for (String name : List.of("salt", "clay", "oil", "milk powder", "washing soda", "rubbing alcohol", "soda")) {
            assertThatThrownBy(() -> table.require(name))
                    .as(name)
                    .isInstanceOfSatisfying(
                            Refusal.class, r -> assertThat(r.code()).isEqualTo("ambiguous-ingredient"));
        }
    }

    @Test
    void saysAnAssumptionAloudAndKeepsAFamilyName() {
        assertThat(table.require("Citric  acid").assumption()).contains("anhydrous");
        assertThat(table.require("citric").assumption()).contains("anhydrous");
        assertThat(table.require("citric acid anhydrous").assumption()).isEmpty();
        assertThat(get("Lemon-Fragrance").name()).isEqualTo("lemon fragrance");
        assertThat(get("Lemon-Fragrance").role()).isEqualTo(Role.FRAGRANCE);
        assertThat(get("magnesium sulphate").name()).isEqualTo("epsom salt");
    }

    @Test
    void refusesWithAReasonAndHelpsWithATypingSlip() {
        assertThatThrownBy(() -> table.require("baking powder")).hasMessageContaining("acid");
        assertThatThrownBy(() -> table.require("household bleach")).hasMessageContaining("chlorine");
        assertThatThrownBy(() -> table.require("koalin")).hasMessageContaining("Did you mean kaolin");
        assertThatThrownBy(() -> table.require("sodium bicarbonat")).hasMessageContaining("sodium bicarbonate");
        assertThatThrownBy(() -> table.require("xyzzy qwert")).hasMessageContaining("own ingredients");
    }

    /** Published examples of the restricted edit distance (Damerau, from memory): ca to abc is 3, a swap is 1. */
    @Test
    void editDistance() {
        assertThat(NearName.distance("ca", "abc")).isEqualTo(3);
        assertThat(NearName.distance("koalin", "kaolin")).isEqualTo(1);
        assertThat(NearName.distance("kitten", "sitting")).isEqualTo(3);
        assertThat(NearName.distance("", "abc")).isEqualTo(3);
    }
}
