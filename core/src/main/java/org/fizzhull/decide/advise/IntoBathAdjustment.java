package org.fizzhull.decide.advise;

import java.util.Optional;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Step.Setting;
import org.fizzhull.forecast.question.IntoBath;

/**
 * A hollow shape set down open side up in place of dropped: it then floats like a boat while its rim is dry. One level, the
 * least effort of all.
 */
record IntoBathAdjustment() implements Adjustment {
    @Override
    public Step.Kind kind() {
        return Step.Kind.INTO_BATH;
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
    public Optional<Changed> at(Design design, int level) {
        Step step =
                new Step(kind(), "", new Setting.Word(design.into().word()), new Setting.Word(IntoBath.PLACED.word()));
        return Optional.of(new Changed(design.put(IntoBath.PLACED), step));
    }
}
