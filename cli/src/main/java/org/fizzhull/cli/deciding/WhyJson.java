package org.fizzhull.cli.deciding;

import static org.fizzhull.quantity.Units.inGrams;

import java.io.OutputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.cli.text.Json;
import org.fizzhull.cli.text.Say;
import org.fizzhull.decide.why.Why;
import org.fizzhull.evidence.Notice;

/** Causes as JSON: {@code causes}, {@code best_check}, {@code advice}. */
final class WhyJson {
    private WhyJson() {}

    static List<Notice> write(OutputStream out, WhyText text) {
        Why why = text.why();
        List<Notice> notices = new ArrayList<>();
        if (!why.computed()) {
            notices.add(new Notice("not-computed", WhyText.notComputed(why.symptom())));
        }
        if (why.best().isEmpty()) {
            notices.add(new Notice("no-check", "best_check is null: no check tells the two likeliest causes apart."));
        }
        try (Json json = Json.open(out, "why")) {
            json.whole("seed", text.sampling().seed())
                    .whole("samples", text.sampling().samples())
                    .text("saw", why.symptom().word())
                    .text("answer", Say.plain(WhyText.sentence(why)))
                    .number("as_planned", why.asPlanned());
            json.array("causes");
            for (Why.Chance chance : why.causes()) {
                cause(json, text, chance);
            }
            json.endArray();
            if (why.best().isPresent()) {
                check(json, text, why.best().get());
            } else {
                json.nothing("best_check");
            }
            json.object("advice")
                    .text("what", WhyWords.mend(why.causes().get(0).cause()))
                    .text("type", text.advise())
                    .end();
            json.notices(notices);
        }
        return notices;
    }

    private static void cause(Json json, WhyText text, Why.Chance chance) {
        Why.Way way = chance.way();
        json.object()
                .text("cause", WhyWords.of(chance.cause()))
                .number("probability", chance.probability())
                .text("because", Say.plain(text.because(chance)))
                .text("check", chance.check().map(WhyWords::of).orElse(null))
                .number(
                        "shows_it",
                        text.why().computed() ? OptionalDouble.of(chance.showsIt()) : OptionalDouble.empty());
        json.object("most_likely")
                .number("mass_g", inGrams(way.mass().median()))
                .number("limit_g", inGrams(way.limit().median()))
                .number(
                        "water_g",
                        way.water().isPresent()
                                ? OptionalDouble.of(inGrams(way.water().getAsDouble()))
                                : OptionalDouble.empty())
                .number("fizz_lost", way.fizzLost())
                .end();
        json.end();
    }

    private static void check(Json json, WhyText text, Why.BestCheck best) {
        List<Why.Chance> causes = text.why().causes();
        json.object("best_check")
                .text("what", WhyWords.of(best.check()))
                .text(
                        "splits",
                        WhyWords.of(causes.get(0).cause()) + " | "
                                + WhyWords.of(causes.get(1).cause()))
                .text("if_first", Say.plain(WhyWords.reading(best.check(), best.ifFirst())))
                .text("if_second", Say.plain(WhyWords.reading(best.check(), best.ifSecond())))
                .number("information_bit", best.information())
                .text("type", text.line().with(WhyText.SEEN, text.seen(best)).text("why"))
                .end();
    }
}
