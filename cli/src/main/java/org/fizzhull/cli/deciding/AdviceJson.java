package org.fizzhull.cli.deciding;

import static org.fizzhull.quantity.Units.inGrams;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.fizzhull.cli.floating.NextText;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.Say;
import org.fizzhull.decide.advise.Advice;
import org.fizzhull.decide.advise.Appraisal;
import org.fizzhull.decide.advise.Change;
import org.fizzhull.decide.advise.Step;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.measured.MeasureNext;

/** Advice as JSON: {@code now}, {@code changes}, {@code measure_next}. */
final class AdviceJson {
    private static final double SECONDS_AN_HOUR = 3600;

    private AdviceJson() {}

    static List<Notice> write(OutputStream out, AdviceText text) {
        Advice advice = text.advice();
        List<Notice> notices = notices(advice);
        try (Json json = Json.open(out, "advise")) {
            json.whole("seed", advice.forecast().sampling().seed())
                    .whole("samples", advice.forecast().sampling().samples())
                    .text("shape", advice.design().shape().text())
                    .number("goal", advice.goal().chance())
                    .text("answer", Say.plain(AdviceSentence.of(advice)));
            json.object("now");
            standing(json, advice.now());
            json.end();
            json.array("changes");
            for (Change change : advice.changes()) {
                change(json, text, change);
            }
            json.endArray();
            json.array("forgone");
            for (Advice.Forgone forgone : advice.forgone()) {
                json.object();
                steps(json, forgone.change());
                json.text("because", AdviceSentence.because(forgone.limit())).end();
            }
            json.endArray();
            next(json, advice, text.line().text("float"));
            json.notices(notices);
        }
        return notices;
    }

    private static void standing(Json json, Appraisal now) {
        json.number("probability", now.chance())
                .number("nine_of_ten", now.nineOfTen())
                .number("mass_g", inGrams(now.mass()));
        interval(json, "fizz_time_s", now.fizzTime(), 1);
        interval(json, "ready_after_h", now.ready(), SECONDS_AN_HOUR);
        json.number("holds", now.holds()).number("cost_each", now.cost());
    }

    private static void interval(Json json, String key, Optional<Interval> value, double per) {
        if (value.isPresent()) {
            json.interval(key, value.get().times(1 / per));
        } else {
            json.nothing(key);
        }
    }

    private static void change(Json json, AdviceText text, Change change) {
        Appraisal then = change.appraisal();
        json.object();
        steps(json, change);
        json.number("probability", then.chance())
                .number("nine_of_ten", then.nineOfTen())
                .flag("reaches_goal", change.reachesGoal());
        json.array("effects");
        for (Effect effect : Effect.of(text.advice().now(), then)) {
            json.object()
                    .text("what", effect.what().label())
                    .number("before", effect.before())
                    .number("after", effect.after())
                    .text("unit", effect.unit())
                    .end();
        }
        json.endArray();
        interval(json, "fizz_time_s", then.fizzTime(), 1);
        interval(json, "ready_after_h", then.ready(), SECONDS_AN_HOUR);
        json.text("caution", change.caution().map(AdviceText::words).orElse(null))
                .text("note", Say.plain(AdviceText.steps(change)))
                .text("type", text.typed(change).text("float"))
                .end();
    }

    private static void steps(Json json, Change change) {
        json.array("steps");
        for (Step step : change.steps()) {
            json.object()
                    .text("change", StepWords.change(step))
                    .text("from", value(step.from()))
                    .text("to", value(step.to()))
                    .end();
        }
        json.endArray();
    }

    private static String value(Step.Setting setting) {
        return setting instanceof Step.Setting.Word word ? word.text() : Say.plain(StepWords.setting(setting));
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
        if (!advice.design().stillWater()) {
            advice.effervescence().flatMap(fizz -> fizz.notice()).ifPresent(notices::add);
        }
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
