package org.fizzhull.cli.deciding;

import java.util.Optional;
import org.fizzhull.cli.option.MeasuredOptions;
import org.fizzhull.cli.option.WeighedText;
import org.fizzhull.cli.text.TypedLine;
import org.fizzhull.decide.Design;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.forecast.making.DryingConditions;
import org.fizzhull.forecast.prior.Scale;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.pressing.PressWord;
import org.fizzhull.quantity.Amount;
import org.fizzhull.quantity.Decimals;
import org.fizzhull.quantity.Dimension;
import org.fizzhull.quantity.QuantityText;
import org.fizzhull.quantity.Unit;
import org.fizzhull.quantity.Units;

/**
 * The {@code float} command for a changed design: the line that asked for the advice, with the options that differ. Typed in,
 * it asks the very question whose chance the advice gives.
 */
final class ChangedLine {
    private static final String FILL = "--fill";
    private static final String MASS = "--mass";
    private static final String PRESS = "--press";
    private static final String DRY_FOR = "--dry-for";
    private static final String WRAP_AFTER = "--wrap-after";
    private static final String INTO_BATH = "--into-bath";
    private static final String STORED_AIR = "--stored-air";
    private static final int DIGITS = 8;

    private ChangedLine() {}

    /** The line of a change, from the line as it was typed for {@code float}. */
    static TypedLine of(TypedLine typed, Design before, Change change) {
        TypedLine line = typed;
        for (Change.Step step : change.steps()) {
            line = mixed(line, step);
        }
        return between(line, before, change.design());
    }

    /** The line of a design that differs in its mould, its filling, its drying or how it goes into the bath, not in its mix. */
    static TypedLine between(TypedLine typed, Design before, Design after) {
        TypedLine line = weighed(typed, before, after);
        if (!after.shape().text().equals(before.shape().text())) {
            line = line.with("--shape", after.shape().text());
        }
        if (after.into() != before.into() || line.value(INTO_BATH).isPresent()) {
            line = line.with(INTO_BATH, after.into().word());
        }
        line = filled(line, before, after);
        return dried(line, before, after);
    }

    /** Another press or mould is not that of the pieces that were weighed: they then say their own. */
    private static TypedLine weighed(TypedLine line, Design before, Design after) {
        String mould = before.shape().text();
        boolean elsewhere = !after.shape().text().equals(mould);
        Optional<String> press = line.value(PRESS);
        if (press.isEmpty() || (!elsewhere && after.filling().equals(before.filling()))) {
            return line;
        }
        String how = press.get().replaceFirst(",.*", "").strip();
        return line.with(
                MeasuredOptions.WEIGHED,
                text -> WeighedText.told(text, how, elsewhere ? Optional.of(mould) : Optional.empty()));
    }

    private static TypedLine mixed(TypedLine line, Change.Step step) {
        boolean mix = step.kind() == Change.Step.Kind.LIQUID
                || step.kind() == Change.Step.Kind.POWDER
                || step.kind() == Change.Step.Kind.SWAP;
        if (!mix) {
            return line;
        }
        double grams = Units.inGrams(StepWords.to(step) - StepWords.from(step));
        TypedLine changed = line.adding("--change", step.subject() + signed(grams));
        return step.replacement().isEmpty() ? changed : changed.adding("--change", step.replacement() + signed(-grams));
    }

    private static String signed(double grams) {
        return (grams < 0 ? " -" : " +") + Decimals.text(Math.abs(grams), DIGITS) + " g";
    }

    private static TypedLine filled(TypedLine line, Design before, Design after) {
        if (after.filling() instanceof Design.Filling.Press press
                && before.filling() instanceof Design.Filling.Press was) {
            return press.equals(was) ? line : line.with(PRESS, pressed(press.pressure()));
        }
        double mass = mass(after.filling());
        if (mass == mass(before.filling())) {
            return line;
        }
        boolean fill = after.filling() instanceof Design.Filling.Fill;
        String name = fill ? FILL : MASS;
        String weight = weight(line.value(name), mass);
        TypedLine changed = line.without("--density").with(name, weight);
        double step = QuantityText.parse(name, weight, Dimension.MASS).step();
        boolean same = Math.abs(Scale.written(mass, step).step() - after.scale().step()) < 1e-9;
        return same || line.value("--scale").isPresent()
                ? changed
                : changed.with("--scale", QuantityText.format(after.scale().step(), Unit.GRAM));
    }

    private static double mass(Design.Filling filling) {
        return filling instanceof Design.Filling.Fill fill
                ? fill.mass()
                : filling instanceof Design.Filling.Finished finished ? finished.mass() : 0;
    }

    /** Another weight with the spread and the digits that were typed. */
    private static String weight(Optional<String> typed, double mass) {
        Amount was = typed.isPresent()
                ? QuantityText.parse(FILL, typed.get(), Dimension.MASS)
                : Amount.exact(Dimension.MASS, mass);
        double grams = Units.inGrams(mass);
        double half = Units.inGrams(was.high() - was.low()) / 2;
        int places = was.step() > 0 ? Math.max(0, (int) Math.round(-Math.log10(Units.inGrams(was.step())))) : 0;
        return switch (was.spread()) {
            case NONE -> digits(grams, places) + " g";
            case NORMAL ->
                digits(grams, places) + " g +- " + Decimals.text(Units.inGrams(was.standardDeviation()), DIGITS) + " g";
            case RECTANGULAR -> digits(grams - half, places) + " to " + digits(grams + half, places) + " g";
        };
    }

    private static String digits(double grams, int places) {
        String plain = Decimals.text(grams, DIGITS);
        return plain.indexOf('.') < 0 && places > 0 ? plain + '.' + "0".repeat(places) : plain;
    }

    private static String pressed(double pressure) {
        for (PressWord word : PressWord.values()) {
            if (Math.abs(word.pressure() / pressure - 1) < 1e-9) {
                return word.word();
            }
        }
        return QuantityText.format(pressure, Unit.KILOPASCAL);
    }

    private static TypedLine dried(TypedLine line, Design before, Design after) {
        if (after.drying().isEmpty() || before.drying().isEmpty()) {
            return line;
        }
        DryingConditions now = after.drying().get();
        DryingConditions was = before.drying().get();
        TypedLine changed = line;
        if (now.open() != was.open()) {
            boolean wrapped = line.value(WRAP_AFTER).isPresent();
            changed = wrapped ? changed.with(WRAP_AFTER, days(now.open())) : changed;
            changed = !wrapped || line.value(DRY_FOR).isPresent()
                    ? changed.with(DRY_FOR, days(now.open() + now.wrapped()))
                    : changed;
        }
        if (now.air().humidity() != was.air().humidity()) {
            changed = changed.with("--air", air(now.air()));
            if (line.value("--stored").isPresent() && line.value(STORED_AIR).isEmpty()) {
                changed = changed.with(STORED_AIR, air(was.air()));
            }
        }
        return changed;
    }

    private static String days(double seconds) {
        return Decimals.text(Unit.DAY.fromSi(seconds), DIGITS) + " d";
    }

    private static String air(RoomAir air) {
        return Decimals.text(Units.inCelsius(air.temperature()), DIGITS) + " C, "
                + Decimals.text(100 * air.humidity(), DIGITS) + " %";
    }
}
