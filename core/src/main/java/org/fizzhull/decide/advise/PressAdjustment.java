package org.fizzhull.decide.advise;

import java.util.List;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change.Step.Setting;
import org.fizzhull.forecast.making.WeighedPiece;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Unit;

/**
 * Pressing less hard: by the next lighter words, hard, firm, light.
 *
 * @param pressure as it is pressed now, at the top of the mould, Pa
 */
record PressAdjustment(double pressure) implements Adjustment {
    /** Relative difference up to which a pressure is that of a word. */
    private static final double SAME = 1e-6;

    @Override
    public Change.Step.Kind kind() {
        return Change.Step.Kind.PRESS;
    }

    @Override
    public int levels() {
        int lighter = 0;
        for (PressWord word : PressWord.values()) {
            lighter += word.pressure() < pressure * (1 - SAME) ? 1 : 0;
        }
        return lighter;
    }

    @Override
    public double effort(int level) {
        // assumed: a word lighter is as much trouble as three grams in a hundred of the fill
        return 3.0 * level;
    }

    @Override
    public Changed at(Design design, int level) {
        // the words from hard to light; the spread of a hand goes with a word
        Design.Filling.Press press = (Design.Filling.Press) design.filling();
        PressWord word = List.of(PressWord.values()).get(levels() - level);
        Design changed = design.filled(new Design.Filling.Press(word.pressure(), WeighedPiece.HAND, press.halves()));
        return new Changed(changed, new Change.Step(kind(), "", setting(pressure), setting(word.pressure())));
    }

    /** The word for a pressure, Pa, else the pressure itself. */
    private static Setting setting(double pressure) {
        for (PressWord word : PressWord.values()) {
            if (Math.abs(word.pressure() / pressure - 1) < SAME) {
                return new Setting.Word(word.word());
            }
        }
        return new Setting.Amount(pressure, Unit.KILOPASCAL);
    }
}
