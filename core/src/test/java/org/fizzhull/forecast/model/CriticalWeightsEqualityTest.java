package org.fizzhull.forecast.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.util.Set;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prepared.Scatter;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.result.CriticalWeights;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.uncertainty.Priors;
import org.junit.jupiter.api.Test;

/** Critical weights are a value: equal where every number that an answer reads is equal (definition). */
class CriticalWeightsEqualityTest {
    private static final Question ONE = Question.weighed(Sphere.ofDiameter(millimetres(65)), grams(140));
    private static final Set<Integer> READ = Set.of(
            VoyageModel.END,
            VoyageModel.ONCE,
            VoyageModel.MEAN,
            VoyageModel.GAIN,
            VoyageModel.MET,
            VoyageModel.OWN,
            VoyageModel.AT_ONCE);

    @Test
    void everyColumnThatIsReadCounts() {
        Scatter scatter = scatter(ONE);
        CriticalWeights zeros = new DrawnWeights(columns(), scatter);
        assertThat(new DrawnWeights(columns(), scatter)).isEqualTo(zeros).hasSameHashCodeAs(zeros);
        for (int column = 0; column < VoyageModel.CRITICAL_WIDTH; column++) {
            double[][] others = columns();
            others[column][2] = 1;
            boolean differs = !new DrawnWeights(others, scatter).equals(zeros);
            assertThat(differs).as("column %d", column).isEqualTo(READ.contains(column));
        }
    }

    @Test
    void theSpreadOfTheBatchCounts() {
        CriticalWeights one = new DrawnWeights(columns(), scatter(ONE));
        for (double spread : new double[] {1, 2}) {
            Question batch = ONE.spread(Priors.normal(0, grams(spread)));
            CriticalWeights many = new DrawnWeights(columns(), scatter(batch));
            assertThat(many).isNotEqualTo(one);
            assertThat(new DrawnWeights(columns(), scatter(batch))).isEqualTo(many);
            one = many;
        }
    }

    private static Scatter scatter(Question question) {
        return Scatter.of(PreparedQuestion.of(question, Factors.standard()));
    }

    private static double[][] columns() {
        return new double[VoyageModel.CRITICAL_WIDTH][4];
    }
}
