package org.fizzhull.pressing.powder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PowderClassTest {
    private final IngredientTable table = IngredientTable.standard();
    private final DeLarrard1999 model = new DeLarrard1999();

    private Powders powders(String... lines) {
        RecipeBuilder recipe = new RecipeBuilder(table, Measures.US_LEGAL);
        for (int i = 0; i < lines.length; i += 2) {
            recipe.dry(lines[i], lines[i + 1]);
        }
        return Powders.of(Blend.of(recipe.build()));
    }

    /** FROM MEMORY: loss of volume at 15 kPa in compressibility tests: crystals 2 to 6 %, starch 15 to 25, clay 20 to 40. */
    @ParameterizedTest
    @CsvSource({"table salt,0.5,6", "citric acid,0.5,6", "corn starch,15,25", "potato starch,3,25", "kaolin,20,40"})
    void lossOfVolumeAt15Kilopascal(String name, double low, double high) {
        Powders one = powders(name, "100 g");
        double loose = model.solidFraction(one, 0);
        double pressed =
                model.solidFraction(one, 15e3 / PressingParameters.standard().pressScale());
        assertThat(100 * (1 - loose / pressed)).isBetween(low, high);
    }

    /** ANALYTIC: for one powder K = K0 (1 + x/s), whatever the class. */
    @ParameterizedTest
    @ValueSource(strings = {"table salt", "corn starch", "kaolin"})
    void oneClassIsKawakita(String name) {
        Powders one = powders(name, "100 g");
        double s = PowderClass.of(table.require(name).ingredient()).pressScaleShare();
        assertThat(one.indexAt(0.4)).isCloseTo(one.looseIndex() * (1 + 0.4 / s), within(1e-12));
        assertThat(one.withOnePressScale().indexAt(0.4)).isCloseTo(one.looseIndex() * 1.4, within(1e-12));
    }

    /** ANALYTIC: the squeeze of an index is its inverse, and a mix lies between its parts. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.3, 1, 10, 200})
    void squeezeUndoesIndex(double squeeze) {
        Powders mix = powders("sodium bicarbonate", "300 g", "corn starch", "60 g", "kaolin", "30 g");
        assertThat(mix.squeezeAt(mix.indexAt(squeeze))).isCloseTo(squeeze, within(1e-9 * (1 + squeeze)));
        assertThat(mix.indexAt(squeeze))
                .isGreaterThanOrEqualTo(mix.withOnePressScale().indexAt(squeeze));
    }

    /** A looser packing than poured has a negative squeeze. */
    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.9})
    void looserThanPoured(double share) {
        Powders mix = powders("sodium bicarbonate", "300 g", "corn starch", "60 g");
        assertThat(mix.squeezeAt(share * mix.looseIndex())).isCloseTo(share - 1, within(1e-12));
    }
}
