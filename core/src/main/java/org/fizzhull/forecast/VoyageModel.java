package org.fizzhull.forecast;

import org.fizzhull.uncertainty.Outputs;
import org.fizzhull.voyage.DropBalance;
import org.fizzhull.voyage.Outcome;
import org.fizzhull.voyage.QuickVoyage;
import org.fizzhull.voyage.Release;
import org.fizzhull.voyage.VoyageForm;

/** What becomes of a piece, as a function of the uncertain inputs of one question. */
final class VoyageModel implements Outputs {
    /** 1 where it floats at once, else 0. */
    static final int AT_ONCE = 0;

    /** 1 where it rises later, else 0. */
    static final int LATER = 1;

    /** 1 where it floats at once and sinks later, else 0. */
    static final int SINKS = 2;

    /** 1 where its balance grazes zero, else 0. */
    static final int GRAZES = 3;

    /** Rise time, s; NaN where it does not rise later. */
    static final int RISE_TIME = 4;

    /** Fizz time, s. */
    static final int FIZZ_TIME = 5;

    /** Number of outputs. */
    static final int WIDTH = 6;

    private final Question question;
    private final Factors factors;
    private final DropBalance balance;
    private final QuickVoyage voyage;
    private final double temperature;

    VoyageModel(Question question, Factors factors, VoyageForm form) {
        this.question = question;
        this.factors = factors;
        balance = new DropBalance(question.shape(), question.bath());
        voyage = new QuickVoyage(form, question.bath());
        temperature = question.bath().temperature();
    }

    /** The form of the question's shape. */
    static VoyageForm form(Question question) {
        return VoyageForm.of(
                question.shape(), question.into() == IntoBath.PLACED ? Release.PLACED : Release.DROPPED);
    }

    @Override
    public void at(double[] inputs, double[] outputs) {
        Draw draw = factors.at(inputs);
        voyage.run(
                question.mass() + draw.massError(),
                temperature + draw.temperatureError(),
                balance.volumeRatio(draw.sizeError()),
                draw.surfaceRatio(),
                draw.makeup(),
                draw.fizz(),
                draw.voyage());
        outputs[AT_ONCE] = voyage.outcome() == Outcome.FLOATS_AT_ONCE ? 1 : 0;
        outputs[LATER] = voyage.outcome() == Outcome.RISES_LATER ? 1 : 0;
        outputs[SINKS] = voyage.sinksLater() ? 1 : 0;
        outputs[GRAZES] = voyage.grazes() ? 1 : 0;
        outputs[RISE_TIME] = voyage.riseTime();
        outputs[FIZZ_TIME] = voyage.fizzTime();
    }
}
