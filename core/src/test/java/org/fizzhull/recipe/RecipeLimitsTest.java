package org.fizzhull.recipe;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.Missing;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend.Moles;
import org.fizzhull.recipe.Recipe.Part;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** BY DEFINITION: the limits of recipes, prices, totals and changes, each met and missed by a little; sums by hand. */
class RecipeLimitsTest {
    private final IngredientTable table = IngredientTable.standard();

    private RecipeBuilder builder() {
        return new RecipeBuilder(table, Measures.US_LEGAL);
    }

    private Ingredient get(String name) {
        return table.require(name).ingredient();
    }

    private Recipe recipe(List<Part> dry, List<Part> wet) {
        return new Recipe("buoy", dry, wet, false, Map.of(), Map.of(), List.of());
    }

    private static Refusal refusal(ThrowingCallable call) {
        Refusal[] got = new Refusal[1];
        assertThatThrownBy(call).isInstanceOfSatisfying(Refusal.class, r -> got[0] = r);
        return got[0];
    }

    @Test
    void linesOfARecipe() {
        Part soda = new Part(get("sodium bicarbonate"), 0.2, 0);
        Part water = new Part(get("water"), 0.002, 0);
        assertThat(refusal(() -> recipe(List.of(soda, soda), List.of())).code()).isEqualTo("repeated");
        assertThat(refusal(() -> recipe(List.of(soda), List.of(water, water))).code())
                .isEqualTo("repeated");
        Part none = new Part(soda.ingredient(), 0, 0);
        assertThat(refusal(() -> recipe(List.of(none), List.of())).read()).isEqualTo("0.0 g in all");
        Recipe exact = recipe(List.of(soda), List.of(water));
        assertThat(exact.spread()).isFalse();
        assertThat(recipe(List.of(soda), List.of(new Part(get("water"), 0.002, 1e-4)))
                        .spread())
                .isTrue();
        assertThatThrownBy(() -> exact.shifted(new double[1])).hasMessage("1 scores for 2 lines");
        assertThatNullPointerException()
                .isThrownBy(() -> exact.part(Missing.value()))
                .withMessage("ingredientName is null");
        assertThatNullPointerException()
                .isThrownBy(() -> recipe(Missing.value(), List.of()))
                .withMessage("dry is null");
    }

    /** Six standard deviations of 10 g below 20 g leave a hundredth of the mass; one leaves 10 g. */
    @Test
    void aRareDrawKeepsEveryIngredient() {
        Recipe spread = recipe(List.of(new Part(get("sodium bicarbonate"), 0.02, 0.01)), List.of());
        assertThat(spread.shifted(new double[] {-6}).dryMass()).isCloseTo(0.0002, within(1e-15));
        assertThat(spread.shifted(new double[] {-1}).dryMass()).isCloseTo(0.01, within(1e-15));
        assertThat(spread.shifted(new double[] {1}).dryMass()).isCloseTo(0.03, within(1e-15));
    }

    @ParameterizedTest
    @CsvSource({
        "0,1,true",
        "1e9,1,true",
        "1,1e-4,true",
        "1,1e4,true",
        "-1e-9,1,false",
        "1.1e9,1,false",
        "1,0.99e-4,false",
        "1,10001,false",
        "NaN,1,false",
        "1,NaN,false"
    })
    void prices(double money, double pack, boolean taken) {
        if (taken) {
            assertThat(new Price(money, pack).perKilogram()).isEqualTo(money / pack);
        } else {
            assertThat(refusal(() -> new Price(money, pack)).read()).isEqualTo(money + " for " + pack * 1e3 + " g");
        }
    }

    /** "/" may come first or stand before nothing; an empty amount costs nothing that could be told. */
    @Test
    void pricesAsWritten() {
        Ingredient soda = get("sodium bicarbonate");
        assertThat(Price.read(soda, "3/kg", Measures.METRIC).perKilogram()).isEqualTo(3);
        assertThat(refusal(() -> Price.read(soda, "3 /", Measures.METRIC)).code())
                .isEqualTo("missing-unit");
        assertThat(refusal(() -> Price.read(soda, "/ kg", Measures.METRIC)).code())
                .isNotEqualTo("missing-unit");
        assertThat(refusal(() -> Price.read(soda, "3 / 0 kg", Measures.METRIC)).read())
                .isEqualTo("3 / 0 kg");
        assertThat(refusal(() -> Price.read(soda, "3 / 0 kg", Measures.METRIC)).allowed())
                .isEqualTo("0 or more for more than 0 g");
    }

    @Test
    void namesAndTotals() {
        assertThat(builder().name("x".repeat(80)).dry("soda ash", "1 g").build().name())
                .hasSize(80);
        for (String bad : new String[] {"x".repeat(81), "\u200blemon"}) {
            assertThat(refusal(() -> builder().name(bad)).code()).isEqualTo("bad-name");
        }
        assertThat(builder().total("10000 kg").dry("soda ash", "1 part").build().mass())
                .isCloseTo(1e4, within(1e-9));
        assertThat(refusal(() -> builder().total("10001 kg")).code()).isEqualTo("out-of-range");
        assertThat(refusal(() -> builder().total("0 g")).code()).isEqualTo("out-of-range");
        assertThatNullPointerException()
                .isThrownBy(() -> new RecipeBuilder(table, Missing.value()))
                .withMessage("measures is null");
    }

    /** The first line beyond the hundredth is refused under the section where it stands; so is a repeated one. */
    @Test
    void refusalsNameTheLine() {
        RecipeBuilder full = builder();
        for (int i = 0; i < RecipeBuilder.MOST_LINES; i++) {
            full.own("sand " + i, Map.of("true density", "2.6 g/cm3", "loose density", "1.5 g/cm3"))
                    .dry("sand " + i, "1 g");
        }
        assertThat(refusal(() -> full.dry("soda ash", "1 g")).field()).isEqualTo("dry");
        assertThat(refusal(() -> full.wet("water", "1 g")).field()).isEqualTo("wet");
        assertThat(refusal(() -> builder().dry("soda ash", "much")).field()).isEqualTo("dry, soda ash");
        assertThat(refusal(() -> builder().wet("water", "much")).field()).isEqualTo("wet, water");
        assertThat(refusal(() -> RecipeBuilder.amount("x", "-1 g", Measures.METRIC))
                        .allowed())
                .isEqualTo("0 g or more");
    }

    /** 0.1 mg of a change are nothing, and what is nearly all of a line takes it out. */
    @Test
    void changes() {
        Recipe base = builder()
                .dry("sodium bicarbonate", "200 g")
                .dry("kaolin", "20 g")
                .wet("water", "2 g")
                .build();
        assertThat(change('-', 0.0199999991).applyTo(base, table).part("kaolin"))
                .isEmpty();
        assertThat(change('-', 0.0200000009).applyTo(base, table).part("kaolin"))
                .isEmpty();
        assertThat(change('-', 0.019)
                        .applyTo(base, table)
                        .part("kaolin")
                        .orElseThrow()
                        .mass())
                .isCloseTo(0.001, within(1e-12));
        assertThat(refusal(() -> change('-', 0.021).applyTo(base, table)).read())
                .isEqualTo("kaolin -21.0 g");
        assertThat(refusal(() -> change('-', 0.021).applyTo(base, table)).allowed())
                .isEqualTo("up to 20.0 g less");
        assertThat(change('+', 0.01)
                        .applyTo(base, table)
                        .part("kaolin")
                        .orElseThrow()
                        .mass())
                .isCloseTo(0.03, within(1e-12));
        assertThat(change('=', 0.01)
                        .applyTo(base, table)
                        .part("kaolin")
                        .orElseThrow()
                        .mass())
                .isEqualTo(0.01);
        // spreads of a sum add as squares, what is set has its own
        RecipeChange more = new RecipeChange("kaolin", '+', Amount.normal(Dimension.MASS, 0.01, 0.003));
        Recipe spread = more.applyTo(base, table);
        assertThat(spread.part("kaolin").orElseThrow().sigma()).isCloseTo(0.003, within(1e-15));
        RecipeChange other = new RecipeChange("kaolin", '-', Amount.normal(Dimension.MASS, 0.01, 0.004));
        assertThat(other.applyTo(spread, table).part("kaolin").orElseThrow().sigma())
                .isCloseTo(0.005, within(1e-15));
        RecipeChange set = new RecipeChange("kaolin", '=', Amount.normal(Dimension.MASS, 0.01, 0.004));
        assertThat(set.applyTo(spread, table).part("kaolin").orElseThrow().sigma())
                .isEqualTo(0.004);
    }

    private static RecipeChange change(char sign, double kilograms) {
        return new RecipeChange("kaolin", sign, Amount.exact(Dimension.MASS, kilograms));
    }

    /** A hyphen in a name is no sign; a sign at the start has no name before it; a comma may stand in a name. */
    @Test
    void changesAsWritten() {
        RecipeChange minus = RecipeChange.read("water-soluble dye \u22121 g", Measures.METRIC);
        assertThat(minus.ingredient()).isEqualTo("water-soluble dye");
        assertThat(minus.sign()).isEqualTo('-');
        assertThat(refusal(() -> RecipeChange.read("=1 g", Measures.METRIC)).code())
                .isEqualTo("unreadable");
        assertThat(refusal(() -> RecipeChange.read(" +1 g", Measures.METRIC)).code())
                .isEqualTo("unreadable");
        assertThat(RecipeChange.readAll("citric acid, anhydrous +5 g,kaolin +1 g", Measures.METRIC))
                .extracting(RecipeChange::ingredient)
                .containsExactly("citric acid, anhydrous", "kaolin");
    }

    /** A powder of two densities, 2 and 1 g/cm3 to 2.5 %, half and half by mass: shares of the volume 1/3 and 2/3. */
    @Test
    void blends() {
        Map<String, String> heavy = Map.of("true density", "2 g/cm3", "loose density", "1 g/cm3");
        Map<String, String> light = Map.of("true density", "1 g/cm3", "loose density", "0.5 g/cm3");
        Recipe recipe = builder()
                .name("two")
                .own("flint", heavy)
                .own("cork", light)
                .dry("flint", "100 g")
                .dry("cork", "100 g")
                .build();
        Blend blend = Blend.of(recipe);
        assertThat(blend.trueDensitySigma(0)).isCloseTo(0.05 * Math.sqrt(5) / 3, within(1e-12));
        assertThat(blend).hasToString("blend of two");
        assertThat(blend.hashCode()).isEqualTo(recipe.hashCode());
        assertThatNullPointerException()
                .isThrownBy(() -> blend.share(Missing.value()))
                .withMessage("role is null");
    }

    /** Half a percent of salt is still nothing: 1 g in 200 g; the double of it counts. */
    @ParameterizedTest
    @CsvSource({"1,true", "2,false"})
    void aLittleSalt(double grams, boolean nothing) {
        Map<String, String> salt =
                Map.of("role", "salt", "true density", "2 g/cm3", "loose density", "1 g/cm3", "deliquescence", "75 %");
        Recipe recipe = builder()
                .own("spray salt", salt)
                .dry("sodium bicarbonate", 200 - grams + " g")
                .dry("spray salt", grams + " g")
                .build();
        assertThat(Blend.of(recipe).saltActivity()).isEqualTo(nothing ? 1 : 0.75);
    }

    /** An acid in a liquid counts with the powders' mass: 2 groups on 0.1 kg/mol in 10 g on 200 g are 1 mol/kg. */
    @Test
    void acidInALiquid() {
        Map<String, String> sour =
                Map.of("role", "water", "liquid density", "1 g/cm3", "molar mass", "100 g/mol", "acid groups", "2");
        Recipe recipe = builder()
                .own("sour brine", sour)
                .dry("sodium carbonate", "200 g")
                .wet("sour brine", "10 g")
                .build();
        Moles moles = Moles.of(recipe);
        assertThat(moles.acid()).isCloseTo(1, within(1e-12));
        assertThat(moles.carbonate()).isCloseTo(1 / 0.105988, within(1e-4));
    }

    /** As much isopropanol as ethanol counts as ethanol; a little more does not. */
    @ParameterizedTest
    @CsvSource({"10,ETHANOL", "10.1,ISOPROPANOL"})
    void theAlcoholOfWhichThereIsMore(double grams, Substance more) {
        Map<String, String> pure = Map.of("like", "isopropanol 99 %", "volatile share", "96 %", "water share", "4 %");
        Map<String, String> other = Map.of("like", "ethanol 96 %", "volatile share", "96 %", "water share", "4 %");
        Recipe recipe = builder()
                .own("blue spirit", pure)
                .own("clear spirit", other)
                .dry("sodium bicarbonate", "200 g")
                .wet("blue spirit", grams + " g")
                .wet("clear spirit", "10 g")
                .build();
        assertThat(Blend.of(recipe).liquid().alcohol()).isEqualTo(more);
    }

    /** What is taken for granted is told of the short name, not of a longer one; a line of a new name tells nothing. */
    @Test
    void whatATableTells() {
        Ingredient sand = get("kaolin").named("reef sand");
        Ingredient pearl = get("talc").named("reef pearl");
        IngredientTable reef = IngredientTable.of(
                List.of(alias(sand, "reef dust", "reef sands"), alias(pearl, "reef dust", "reef gem")),
                Map.of(),
                Map.of("reef sand", "Taken as the fine one."));
        assertThat(reef.require("reef sand").assumption()).isEqualTo("Taken as the fine one.");
        assertThat(reef.require("reef sands").assumption()).isEmpty();
        assertThat(reef.require("reef gem").assumption()).isEmpty();
        assertThat(reef.holds("Reef  Sand")).isTrue();
        assertThat(reef.holds("reef dust")).isFalse();
        assertThat(refusal(() -> reef.require("reef dust")).hint())
                .isEqualTo("This name means more than one thing; write which. reef sand: white; fine");
        assertThat(refusal(() -> reef.require("quartz gravel flour")).hint()).startsWith("Describe it under own");
        assertThat(refusal(() -> reef.require("reef pearls")).hint())
                .startsWith("Did you mean reef pearl")
                .contains("reef pearls: {like: kaolin");
        assertThat(refusal(() -> reef.require("reef: pearl?")).hint()).contains("its name: {like: kaolin");
        assertThatNullPointerException()
                .isThrownBy(() -> reef.search(Missing.value()))
                .withMessage("words is null");
    }

    /** The ingredient with other names; of the two only the sand has a remark. */
    private static Ingredient alias(Ingredient of, String... names) {
        return new Ingredient(
                of.name(),
                List.of(names),
                of.role(),
                of.substance(),
                of.values(),
                "",
                "",
                of.name().equals("reef sand") ? "white; fine" : "");
    }

    /** The notice of an own ingredient that no line uses stands only where no line uses it. */
    @Test
    void ownIngredientsThatNoLineUses() {
        Map<String, String> sand = Map.of("true density", "2.6 g/cm3", "loose density", "1.5 g/cm3");
        RecipeBuilder used = builder()
                .own("reef sand", sand)
                .dry("sodium bicarbonate", "20 g")
                .dry("reef sand", "1 g");
        assertThat(used.build().notices()).isEmpty();
        RecipeBuilder idle = builder().own("reef sand", sand).dry("sodium bicarbonate", "20 g");
        assertThat(idle.build().notices()).extracting(Notice::code).containsExactly("own-unused");
    }
}
