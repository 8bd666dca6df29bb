package org.fizzhull.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.fizzhull.evidence.Source;
import org.fizzhull.fizz.FizzParameters;
import org.fizzhull.forecast.draw.Draw;
import org.fizzhull.forecast.making.Making;
import org.fizzhull.forecast.prior.Factor;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.piece.Piece;
import org.fizzhull.quantity.Measures;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.recipe.Blend;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.RecipeBuilder;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Prior;
import org.fizzhull.uncertainty.Priors;
import org.fizzhull.uncertainty.Workers;
import org.fizzhull.voyage.VoyageParameters;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class FactorsTest {
    private static final Question BATCH =
            Question.weighed(Sphere.ofDiameter(millimetres(65)), grams(138)).spread(Priors.normal(0, grams(4)));

    private static final Question OF_EVERYTHING = Question.of(
            Sphere.ofDiameter(millimetres(65)),
            new Making.Weighed(
                    grams(138),
                    Optional.of(Priors.normal(0, grams(4))),
                    Optional.of(Blend.of(new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                            .dry("sodium bicarbonate", "300 g")
                            .dry("citric acid", "150 g")
                            .dry("corn starch", "40 g")
                            .dry("slsa", "20 g")
                            .wet("sweet almond oil", "10 g")
                            .build()))));

    @Test
    void mediansGiveTheStandardParameters() {
        Factors asked = Factors.standard().asked(BATCH);
        Draw draw = Draw.of(asked.rows(), asked.medians());
        assertThat(draw.makeup()).isEqualTo(Piece.Makeup.usual());
        assertThat(draw.fizz()).isEqualTo(FizzParameters.standard());
        assertThat(draw.voyage().plumeFactor())
                .isCloseTo(VoyageParameters.standard().plumeFactor(), within(1e-15));
        assertThat(draw.voyage().wetSkinDepth())
                .isCloseTo(VoyageParameters.standard().wetSkinDepth(), within(1e-15));
        assertThat(new double[] {draw.massError(), draw.sizeError(), draw.surfaceRatio(), draw.temperatureError()})
                .containsExactly(0, 0, 1, 0);
    }

    /** Each input moves one component of one record; each component is moved by an input (the mass by three). */
    @Test
    void everyParameterIsFedByExactlyOneInput() throws ReflectiveOperationException {
        Factors asked = Factors.standard().asked(OF_EVERYTHING);
        List<Object> standard = components(Draw.of(asked.rows(), asked.medians()));
        Set<Integer> fed = new HashSet<>();
        for (int i = 0; i < asked.rows().size(); i++) {
            double[] values = asked.medians();
            values[i] = asked.rows().get(i).prior().quantile(0.9);
            List<Object> moved = components(Draw.of(asked.rows(), values));
            List<Integer> changed = new ArrayList<>();
            for (int k = 0; k < moved.size(); k++) {
                if (!moved.get(k).equals(standard.get(k))) {
                    changed.add(k);
                }
            }
            assertThat(changed).as(asked.rows().get(i).input().label()).hasSize(1);
            boolean first = fed.add(changed.get(0));
            Input input = asked.rows().get(i).input();
            assertThat(first || input == Input.HAND || input == Input.SCALE_OFFSET)
                    .isTrue();
        }
        // The surface ratio is certain for a shape whose surface is computed; so are the shares of oil, foam and
        // starch. Of a weighed piece the share of the fizz left is not drawn.
        assertThat(fed).hasSize(standard.size() - 1 - 3 - 1);
    }

    /** What is not in a mix, or not known to be, is no input. */
    @Test
    void onlyWhatIsInTheMixIsDrawn() {
        assertThat(inputs(BATCH)).doesNotContain(Input.OIL, Input.SURFACTANT, Input.STARCH);
        assertThat(inputs(OF_EVERYTHING)).contains(Input.OIL, Input.SURFACTANT, Input.STARCH);
        Factor own = new Factor(
                Input.OIL,
                Priors.lognormal(0.8, 1.1),
                Factors.standard().rows().get(0).source());
        assertThat(Factors.standard().with(own).asked(OF_EVERYTHING).rows())
                .contains(own)
                .hasSize(inputs(OF_EVERYTHING).size());
    }

    private static List<Input> inputs(Question question) {
        return Factors.standard().asked(question).rows().stream()
                .map(Factor::input)
                .toList();
    }

    @Test
    void aRowIsReplacedOrAddedInPlace() {
        Factor narrow = new Factor(
                Input.RECESSION,
                Priors.lognormal(1e-4, 1.1),
                Factors.standard().rows().get(0).source());
        Factors changed = Factors.standard().with(narrow);
        assertThat(changed.row(Input.RECESSION)).contains(narrow);
        assertThat(changed.rows()).hasSameSizeAs(Factors.standard().rows());
        assertThat(changed.without(Input.RECESSION).row(Input.RECESSION)).isEmpty();
        assertThat(changed.without(Input.RECESSION).with(narrow).rows()).endsWith(narrow);
    }

    /** What a caller says holds for the rows a question brings, too: no second row, none that comes back. */
    @ParameterizedTest
    @EnumSource(
            value = Input.class,
            names = {"SCALE", "HAND", "MOULD_SIZE", "BATH_TEMPERATURE", "RECESSION", "OIL"})
    void withWithoutAndFixHoldForEveryInput(Input input) {
        Factors fixed = Factors.standard()
                .fix(
                        input,
                        Factors.standard()
                                .asked(OF_EVERYTHING)
                                .row(input)
                                .orElseThrow()
                                .prior()
                                .median());
        assertThat(fixed.asked(OF_EVERYTHING).rows())
                .filteredOn(row -> row.input() == input)
                .hasSize(1);
        assertThat(fixed.asked(OF_EVERYTHING).row(input).orElseThrow().prior().quantile(0.1))
                .isEqualTo(fixed.asked(OF_EVERYTHING)
                        .row(input)
                        .orElseThrow()
                        .prior()
                        .quantile(0.9));
        assertThat(Factors.standard().without(input).asked(OF_EVERYTHING).row(input))
                .isEmpty();
        assertThat(Factors.standard().without(input).fix(input, 1e-3).row(input))
                .isPresent();
    }

    /** A prior that is no number, in the wrong unit or impossible is refused by the name of its input. */
    @Test
    void anImpossiblePriorIsRefusedByName() {
        Source why = Factors.standard().rows().get(0).source();
        assertThatThrownBy(() -> new Factor(Input.RECESSION, Priors.lognormal(5, 1.8), why))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("recession")
                .hasMessageContaining("SI");
        assertThatThrownBy(() -> new Factor(Input.BUBBLE_SIZE, Priors.normal(-1, 0.1), why))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("bubble size");
        assertThatThrownBy(() -> new Factor(Input.BUBBLE_SIZE, notANumber(0.5), why))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("bubble size");
        // NaN where the table does not look: met at the draw
        Factors hidden = Factors.standard().with(new Factor(Input.BUBBLE_SIZE, notANumber(0.3), why));
        assertThatThrownBy(() -> FloatPredictor.standard().with(hidden).forecast(BATCH))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("NaN");
    }

    private static Prior notANumber(double below) {
        return new Prior() {
            @Override
            public double quantile(double u) {
                return (u < below && u > 1e-3) || u == below ? Double.NaN : 1e-3;
            }

            @Override
            public double logDensity(double value) {
                return 0;
            }
        };
    }

    /** Workers that come back early would leave zeros, read as pieces that sink. */
    @ParameterizedTest
    @ValueSource(ints = {0, 2, 4, 7})
    void workersThatReturnEarlyAreMet(int ran) {
        Workers lazy = (count, task) -> {
            for (int i = 0; i < Math.min(ran, count); i++) {
                task.run(i);
            }
        };
        assertThatThrownBy(() -> FloatPredictor.standard().with(lazy).forecast(BATCH))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(ran + " of 8");
    }

    @Test
    void everyPriorHasASource() {
        for (Factor row : Factors.standard().asked(BATCH).rows()) {
            assertThat(row.source().citation()).isNotBlank();
        }
    }

    private static List<Object> components(Record record) throws ReflectiveOperationException {
        List<Object> values = new ArrayList<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            component.getAccessor().setAccessible(true);
            Object value = component.getAccessor().invoke(record);
            if (value instanceof Record inner) {
                values.addAll(components(inner));
            } else if (!(value instanceof double[])) {
                values.add(value);
            }
        }
        return values;
    }
}
