package org.fizzhull.forecast.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.forecast.limit.PieceLimits;
import org.fizzhull.forecast.prepared.PreparedQuestion;
import org.fizzhull.forecast.prior.Input;
import org.fizzhull.forecast.question.Factors;
import org.fizzhull.forecast.question.Question;
import org.fizzhull.forecast.question.Question.IntoBath;
import org.fizzhull.forecast.result.CriticalWeights.Met;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.load.Inset;
import org.fizzhull.shape.load.Loaded;
import org.fizzhull.voyage.QuickVoyage;
import org.junit.jupiter.api.Test;

/**
 * BY DEFINITION: a critical weight is one below which the voyage of the same draw floats and above which it does not, to the
 * 3 parts in 10^4 that the search states; each is tried by a voyage of its own.
 */
class CriticalSearchTest {
    private static final Shape BALL = Sphere.ofDiameter(0.065);

    private final QuickVoyage[] last = new QuickVoyage[1];

    private DropModel drop(Question question, double[] inputs) {
        PreparedQuestion prepared = PreparedQuestion.of(question, Factors.standard());
        DropModel drop = new DropModel(prepared);
        drop.at(inputs);
        last[0] = new QuickVoyage(prepared.form(), question.bath());
        return drop;
    }

    private static double[] inputs(Question question) {
        return Factors.standard().asked(question).medians();
    }

    private static double[] inputs(Question question, Input moved, double score) {
        Factors asked = Factors.standard().asked(question);
        double[] inputs = asked.medians();
        int at = asked.column(moved);
        inputs[at] = asked.priors().get(at).atScore(score);
        return inputs;
    }

    private CriticalSearch search(Question question, double[] inputs, int row) {
        DropModel drop = drop(question, inputs);
        QuickVoyage voyage = last[0];
        CriticalSearch search = new CriticalSearch(question, drop, voyage);
        voyage.run(drop.launch());
        search.search(row, voyage.staysToTheEnd());
        return search;
    }

    private boolean floats(Question question, double[] inputs, double mass, boolean toTheEnd) {
        DropModel drop = drop(question, inputs);
        drop.weigh(mass);
        return toTheEnd ? last[0].floatsToTheEnd(drop.launch()) : last[0].floatsAtOnce(drop.launch());
    }

    private void checked(Question question, double[] inputs) {
        CriticalSearch found = search(question, inputs, 0);
        String what = question.shape().text();
        assertThat(found.met).as(what).isEqualTo(Met.MONOTONE);
        assertThat(found.end).as(what).isLessThanOrEqualTo(found.once);
        double close = CriticalSearch.CLOSE;
        assertThat(floats(question, inputs, found.once * (1 - close), false))
                .as(what)
                .isTrue();
        assertThat(floats(question, inputs, found.once * (1 + close), false))
                .as(what)
                .isFalse();
        assertThat(floats(question, inputs, found.end * (1 - close), true))
                .as(what)
                .isTrue();
        assertThat(floats(question, inputs, found.end * (1 + close), true))
                .as(what)
                .isFalse();
    }

    @Test
    void bordersOfSeveralShapes() {
        Question ball = Question.weighed(BALL, 0.13);
        Question dome = Question.weighed(Dome.ofDiameter(0.08), 0.13);
        Question puck = Question.weighed(Puck.ofDiameterAndHeight(0.07, 0.03), 0.11);
        Question bowl = Question.weighed(Bowl.ofDiameterAndWall(0.08, 0.012), 0.06);
        for (Question question : List.of(ball, dome, puck, bowl, bowl.into(IntoBath.DROPPED))) {
            checked(question, inputs(question));
        }
        for (double score : new double[] {-1.5, 1.5}) {
            checked(ball, inputs(ball, Input.RECESSION, score));
            checked(dome, inputs(dome, Input.GAS_LAYER, score));
        }
    }

    /** The border is that of the ball and the draw, not of the weight that was asked about. */
    @Test
    void theWeightThatIsAskedAbout() {
        Question light = Question.weighed(BALL, 0.1);
        CriticalSearch first = search(light, inputs(light), 1);
        for (double mass : new double[] {0.08, 0.15, 0.2}) {
            Question other = light.weighing(mass);
            CriticalSearch second = search(other, inputs(other), 1);
            assertThat(second.end).isCloseTo(first.end, within(2 * CriticalSearch.CLOSE * first.end));
            assertThat(second.once).isCloseTo(first.once, within(2 * CriticalSearch.CLOSE * first.once));
        }
    }

    /** A piece of the draw on the wrong side of the border tells that it is none, unless it is near it. */
    @Test
    void aPieceOnTheWrongSide() {
        Question light = Question.weighed(BALL, 0.1);
        for (double mass : new double[] {0.1, 0.2}) {
            Question question = light.weighing(mass);
            DropModel drop = drop(question, inputs(question));
            CriticalSearch search = new CriticalSearch(question, drop, last[0]);
            search.search(1, mass > 0.15);
            assertThat(search.met).isEqualTo(Met.NOT_MONOTONE);
            search.search(1, mass < 0.15);
            assertThat(search.met).isEqualTo(Met.MONOTONE);
            Question near = light.weighing(search.end);
            drop = drop(near, inputs(near));
            CriticalSearch close = new CriticalSearch(near, drop, last[0]);
            for (boolean floats : new boolean[] {true, false}) {
                close.search(1, floats);
                assertThat(close.met).isEqualTo(Met.MONOTONE);
            }
        }
    }

    /** A ball half of cork floats as heavy as it can be pressed; one with a stone of 120 g sinks as light as it holds. */
    @Test
    void noBorder() {
        Question cork = Question.weighed(Loaded.with(BALL, new Inset(0.005, 70e-6)), 0.1);
        CriticalSearch above = search(cork, inputs(cork), 1);
        assertThat(above.met).isEqualTo(Met.ABOVE_RANGE);
        assertThat(above.end).isCloseTo(PieceLimits.heaviest(cork.shape(), cork.stillWater()), within(1e-12));
        assertThat(above.once).isCloseTo(PieceLimits.heaviest(cork.shape(), cork.stillWater()), within(1e-12));
        Question stone = Question.weighed(Loaded.with(BALL, new Inset(0.12, 6e-6)), 0.2);
        CriticalSearch below = search(stone, inputs(stone), 1);
        assertThat(below.met).isEqualTo(Met.BELOW_RANGE);
        assertThat(below.end).isCloseTo(PieceLimits.lightest(stone.shape(), stone.stillWater()), within(1e-12));
        assertThat(below.once).isCloseTo(PieceLimits.lightest(stone.shape(), stone.stillWater()), within(1e-12));
    }

    /** What rises later comes up after what floats at once, and what stays down or is denser than its grains never does. */
    @Test
    void timesToRise() {
        Question question = Question.weighed(BALL, 0.13);
        DropModel drop = drop(question, inputs(question));
        QuickVoyage voyage = last[0];
        CriticalSearch search = new CriticalSearch(question, drop, voyage);
        search.search(1, true);
        assertThat(drop.rise(voyage, 0.9 * search.once)).isZero();
        double later = drop.rise(voyage, search.once * 1.01);
        assertThat(later).isGreaterThan(20);
        assertThat(drop.rise(voyage, 1.001 * drop.solidMass())).isInfinite();
        assertThat(drop.rise(voyage, drop.solidMass())).isInfinite();
        drop.weigh(search.once * 1.01);
        voyage.runUntilRise(drop.launch());
        assertThat(voyage.riseTime()).isEqualTo(later);
    }
}
