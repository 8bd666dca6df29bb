package org.fizzhull.cli.text;

import static org.fizzhull.quantity.Units.inGrams;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.decide.Advice;
import org.fizzhull.decide.Change;
import org.fizzhull.decide.Appraisal;
import org.fizzhull.decide.Step;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.MeasureNext;

/** Advice as the contract's {@code advise} object. */
final class AdviceJson {
    private static final double SECONDS_AN_HOUR = 3600;

    private AdviceJson() {}

    static List<Notice> write(OutputStream out, Advice advice, String asked) {
        List<Notice> notices = notices(advice);
        try (Json json = Json.open(out, "advise")) {
            json.whole("seed", advice.forecast().sampling().seed())
                    .whole("samples", advice.forecast().sampling().samples())
                    .text("shape", advice.design().shape().text())
                    .number("goal", advice.goal().chance());
            json.object("now");
            standing(json, advice.now());
            json.end();
            json.array("changes");
            for (Change change : advice.changes()) {
                change(json, advice.now(), change);
            }
            json.endArray();
            next(json, advice, asked);
            json.notices(notices);
        }
        return notices;
    }

    private static void standing(Json json, Appraisal standing) {
        json.number("probability", standing.chance())
                .number("nine_of_ten", standing.nineOfTen())
                .number("mass_g", inGrams(standing.mass()));
        interval(json, "fizz_time_s", standing.fizzTime(), 1);
        interval(json, "ready_after_h", standing.ready(), SECONDS_AN_HOUR);
        json.number("holds", standing.holds()).number("cost_each", standing.cost());
    }

    private static void interval(Json json, String key, Optional<Interval> value, double per) {
        if (value.isPresent()) {
            json.interval(key, value.get().times(1 / per));
        } else {
            json.nothing(key);
        }
    }

    private static void change(Json json, Appraisal before, Change change) {
        json.object().array("steps");
        for (Step step : change.steps()) {
            json.object()
                    .text("change", StepWords.change(step))
                    .text("from", value(step.from()))
                    .text("to", value(step.to()))
                    .end();
        }
        json.endArray().number("probability", change.appraisal().chance()).flag("reaches_goal", change.reachesGoal());
        json.array("effects");
        Appraisal after = change.appraisal();
        effect(json, "weight into the bath", inGrams(before.mass()), inGrams(after.mass()), "g");
        effect(json, "fizz time", median(before.fizzTime(), 1), median(after.fizzTime(), 1), "s");
        effect(
                json,
                "ready after",
                median(before.ready(), SECONDS_AN_HOUR),
                median(after.ready(), SECONDS_AN_HOUR),
                "h");
        effect(json, "holds", before.holds(), after.holds(), "");
        effect(json, "cost of a piece", before.cost(), after.cost(), "own money");
        json.endArray();
        interval(json, "fizz_time_s", after.fizzTime(), 1);
        interval(json, "ready_after_h", after.ready(), SECONDS_AN_HOUR);
        json.text("caution", change.caution().map(AdviceText::words).orElse(null))
                .text("note", Say.plain(AdviceText.steps(change)))
                .end();
    }

    private static String value(Step.Setting setting) {
        return setting instanceof Step.Setting.Word word ? word.text() : Say.plain(StepWords.setting(setting));
    }

    private static OptionalDouble median(Optional<Interval> interval, double per) {
        return interval.isPresent() ? OptionalDouble.of(interval.get().median() / per) : OptionalDouble.empty();
    }

    private static void effect(Json json, String what, double before, double after, String unit) {
        effect(json, what, OptionalDouble.of(before), OptionalDouble.of(after), unit);
    }

    /** Only what moves. */
    private static void effect(Json json, String what, OptionalDouble before, OptionalDouble after, String unit) {
        boolean same = before.isEmpty() && after.isEmpty()
                || (before.isPresent() && after.isPresent() && before.getAsDouble() == after.getAsDouble());
        if (!same) {
            json.object()
                    .text("what", what)
                    .number("before", before)
                    .number("after", after)
                    .text("unit", unit)
                    .end();
        }
    }

    private static void next(Json json, Advice advice, String asked) {
        if (advice.forecast().next().isEmpty()) {
            json.nothing("measure_next");
            return;
        }
        MeasureNext next = advice.forecast().next().get();
        json.object("measure_next")
                .text("what", Say.plain(NextText.what(next, advice.forecast())))
                .text("type", asked + ' ' + NextText.option(next))
                .object("narrows")
                .text("what", "width of the 95 % interval of the critical weight: low with, high without")
                .text("unit", "g")
                .number("low", inGrams(next.widthAfter()))
                .number("high", inGrams(next.widthBefore()))
                .end()
                .end();
    }

    private static List<Notice> notices(Advice advice) {
        List<Notice> notices = new ArrayList<>(advice.forecast().notices());
        switch (advice.need()) {
            case NOTHING -> notices.add(new Notice("goal-reached", "Nothing needs changing."));
            case A_MEASUREMENT_FIRST ->
                notices.add(new Notice("measure-first", "What decides is the same for the whole batch and not known."));
            case ANOTHER_DESIGN ->
                notices.add(new Notice("nothing-helps", "No reasonable change of this design reaches the goal."));
            case A_CHANGE -> {}
        }
        if (advice.forecast().next().isEmpty()) {
            notices.add(
                    new Notice("nothing-to-measure", "measure_next is null: no further measurement would tell much."));
        }
        return notices;
    }
}
