package org.fizzhull.decide.advise;

import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change.Step.Setting;
import org.fizzhull.forecast.question.Question;

/**
 * A hollow shape set down open side up in place of dropped: it then floats like a boat while its rim is dry. One level, the
 * least effort of all.
 */
record IntoBathAdjustment() implements Adjustment {
    @Override
    public Change.Step.Kind kind() {
        return Change.Step.Kind.INTO_BATH;
    }

    @Override
    public int levels() {
        return 1;
    }

    @Override
    public double effort(int level) {
        return 1;
    }

    @Override
    public Changed at(Design design, int level) {
        Change.Step step = new Change.Step(
                kind(), "", new Setting.Word(design.into().word()), new Setting.Word(Question.IntoBath.PLACED.word()));
        return new Changed(design.put(Question.IntoBath.PLACED), step);
    }
}
