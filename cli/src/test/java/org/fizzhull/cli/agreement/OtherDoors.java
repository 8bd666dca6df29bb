package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.function.Consumer;

/** The same question in still water, without draws and in other units. */
final class OtherDoors {
    static final List<Rule> RULES = List.of(
            Rule.of("still", "still water neither fizzes nor lifts", OtherDoors::still),
            Rule.both("float", "still", "one limit in still water and in a fizzing bath", (f, s, breach) -> {
                for (String key : List.of("limit_mass_g", "boat_limit_mass_g")) {
                    if (!Told.equal(f.number(key), s.number(key))) {
                        breach.accept(key + ' ' + f.number(key) + " and " + s.number(key));
                    }
                }
            }),
            Rule.of("central", "without draws no chance is told", OtherDoors::central),
            Rule.both("float", "ounces", "other units change words, never the object", OtherDoors::ounces));

    private OtherDoors() {}

    private static void still(Reply reply, Consumer<String> breach) {
        if (reply.number("/probability/rises_later") != 0 || reply.given("fizz_time_s") || reply.given("rise_time_s")) {
            breach.accept(reply.raw());
        }
        if (reply.text().matches(".*(clinging gas (and|decide|lift)|lifts it|soak|fizzes about).*")
                && !reply.text().contains("no clinging gas")) {
            breach.accept(reply.text());
        }
    }

    private static void central(Reply reply, Consumer<String> breach) {
        if (!FloatAnswer.answer(reply).startsWith("By the central values: ")
                || reply.given("likelihood")
                || reply.text().contains("chance")) {
            breach.accept(reply.text());
        }
        boolean floats = reply.word("/verdict/answer").equals("floats");
        if (FloatAnswer.answer(reply).contains("does not float") == floats) {
            breach.accept(FloatAnswer.answer(reply));
        }
    }

    private static void ounces(Reply grams, Reply ounces, Consumer<String> breach) {
        // what to type next repeats the options that were typed
        if (!grams.raw().equals(ounces.raw().replace(" --units \\\"us\\\"", ""))) {
            breach.accept("the objects differ");
        }
        String answer = FloatAnswer.answer(ounces).replaceFirst(" To know better: .*", "");
        if (!answer.contains(" oz") || answer.matches(".*[0-9] (g|mm)\\b.*")) {
            breach.accept(answer);
        }
        if (answer.matches(".*(\\ban [0-79]|\\ba 8).*") && !answer.matches(".*\\ban 1[18] .*")) {
            breach.accept(answer);
        }
        double told = Told.after(answer.replaceFirst("^[^:]*: ", "= "), "=") * 28.349523;
        if (Math.abs(told - grams.number("mass_g")) > 0.5) {
            breach.accept(told + " g in: " + ounces.opening());
        }
    }
}
