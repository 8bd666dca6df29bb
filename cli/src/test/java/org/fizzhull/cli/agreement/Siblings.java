package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.function.Consumer;

/** Commands that answer the same question say the same. */
final class Siblings {
    private static final String END = "/probability/floats_to_the_end";

    static final List<Rule> RULES = List.of(
            Rule.both(
                    "float",
                    "fizz",
                    "one weight in float and fizz",
                    (f, z, breach) -> equal("mass_g", f.number("mass_g"), z.number("mass_g"), breach)),
            Rule.both("float", "fizz", "one fizz time in float and fizz", Siblings::fizzTime),
            Rule.both("float", "compare", "one answer in float and compare", Siblings::compared),
            Rule.both(
                    "dry",
                    "float",
                    "one weight into the bath in dry and float",
                    (d, f, breach) -> equal(
                            "weight", d.number("/final_mass_g/median"), f.number("/mass_interval_g/median"), breach)),
            Rule.both("dry", "fizz", "one loss of fizz in dry and fizz", Siblings::lost),
            Rule.both("dry", "float", "float tells the loss of fizz that dry tells", Siblings::lostInFloat),
            Rule.both("dry", "press", "one drying in dry and press", Siblings::dried),
            Rule.both("dry", "batch", "one drying in dry and batch", Siblings::dried),
            Rule.both(
                    "dry",
                    "compare",
                    "one drying in dry and compare",
                    (d, c, breach) -> equal(
                            "ready",
                            d.number("/ready_after_h/median"),
                            c.number("/rows/0/ready_after_h/median"),
                            breach)),
            Rule.both("press", "batch", "one piece in press and batch", Siblings::pressed),
            new Rule("batch says of the bath what float says", Siblings::bathed),
            new Rule("a damp piece weighs the same in all commands", Siblings::damp),
            new Rule("one float limit in shapes and float", Siblings::limits),
            Rule.both(
                    "batch",
                    "compare",
                    "a piece of a batch costs what goes into it and what is lost besides",
                    Siblings::cost));

    private Siblings() {}

    private static void equal(String what, double one, double other, Consumer<String> breach) {
        if (!Told.equal(one, other)) {
            breach.accept(what + ' ' + one + " and " + other);
        }
    }

    private static void fizzTime(Reply f, Reply z, Consumer<String> breach) {
        for (String end : List.of("median", "low", "high")) {
            equal(end, f.number("/fizz_time_s/" + end), z.number("/fizz_time_s/" + end), breach);
        }
    }

    private static void compared(Reply f, Reply c, Consumer<String> breach) {
        for (String key : List.of("floats_to_the_end", "floats_at_once", "rises_later", "stays_down", "sinks_later")) {
            equal(key, f.number("/probability/" + key), c.number("/rows/0/probability/" + key), breach);
        }
        equal("weight", f.number("mass_g"), c.number("/rows/0/mass_g"), breach);
        equal("fizz", f.number("/fizz_time_s/median"), c.number("/rows/0/fizz_time_s/median"), breach);
        equal("critical", f.number("/critical_weight_g/median"), c.number("/rows/0/critical_weight_g/median"), breach);
        if (f.given("aim_for_g") && c.given("/rows/0/aim_for_g")) {
            equal("aim", f.number("aim_for_g"), c.number("/rows/0/aim_for_g"), breach);
        }
        if (!f.word("likelihood_to_the_end").equals(c.word("/rows/0/likelihood_to_the_end"))) {
            breach.accept(f.word("likelihood_to_the_end") + " and " + c.word("/rows/0/likelihood_to_the_end"));
        }
        String told = Told.chance(f.number(END));
        if (!c.text().contains(told)) {
            breach.accept(told + " not in: " + c.text());
        }
    }

    private static void lost(Reply d, Reply z, Consumer<String> breach) {
        equal("median", d.number("/fizz_lost_percent/median"), z.number("/fizz_lost_band_percent/median"), breach);
        if (!z.row("fizz lost").isEmpty() && !z.row("fizz lost").startsWith(d.row("fizz lost"))) {
            breach.accept(d.row("fizz lost") + " and " + z.row("fizz lost"));
        }
    }

    private static void lostInFloat(Reply d, Reply f, Consumer<String> breach) {
        for (String end : List.of("median", "low", "high")) {
            equal(end, d.number("/fizz_lost_percent/" + end), f.number("/fizz_lost_percent/" + end), breach);
        }
        String told = d.row("fizz lost");
        boolean any = d.number("/fizz_lost_percent/high") > 0;
        if (any != f.row("fizz lost").startsWith(told.isEmpty() ? "none told" : told)) {
            breach.accept(f.row("fizz lost") + " and " + told);
        }
    }

    private static void dried(Reply d, Reply other, Consumer<String> breach) {
        equal("ready", d.number("/ready_after_h/median"), other.number("/ready_after_h/median"), breach);
        equal("weight", d.number("/final_mass_g/median"), other.number("/dried_mass_g/median"), breach);
    }

    private static void pressed(Reply p, Reply b, Consumer<String> breach) {
        equal("damp", p.number("/damp_mass_g/median"), b.number("damp_mass_g"), breach);
        equal("holds", p.number("/feel_share/holds"), b.number("/feel_share/holds"), breach);
        if (!p.word("feel").equals(b.word("feel"))) {
            breach.accept(p.word("feel") + " and " + b.word("feel"));
        }
        if (!p.row("holds").equals(b.row("holds"))) {
            breach.accept(p.row("holds") + " and " + b.row("holds"));
        }
        equal("time", p.number("working_time_min"), b.number("working_time_min"), breach);
    }

    private static void bathed(Replies replies, Consumer<String> breach) {
        if (!replies.asked().usualBath()) {
            return;
        }
        replies.answer("batch")
                .ifPresent(b -> replies.answer("float").ifPresent(f -> {
                    equal("chance", f.number(END), b.number("floats_to_the_end"), breach);
                    if (!b.row("in the bath").equals(f.opening().replaceFirst(" To know better: .*", ""))) {
                        breach.accept(b.row("in the bath") + " and " + f.opening());
                    }
                    String word = f.word("/verdict/answer").equals("cannot tell")
                            ? "cannot"
                            : f.word("likelihood_to_the_end");
                    String sentence = b.opening();
                    if (f.number(END) >= 0.33 && !sentence.contains(word)) {
                        breach.accept(word + " not in: " + sentence);
                    }
                }));
    }

    private static void damp(Replies replies, Consumer<String> breach) {
        replies.answer("press").ifPresent(p -> {
            for (String end : List.of("median", "low", "high")) {
                double press = p.number("/damp_mass_g/" + end) + carried(replies.asked());
                replies.answer("dry").ifPresent(d -> equal("dry", press, d.number("/damp_mass_g/" + end), breach));
                replies.answer("compare")
                        .ifPresent(c -> equal("compare", press, c.number("/rows/0/damp_mass_g/" + end), breach));
            }
        });
    }

    /** What is not mix in the weight of a piece, g; the weights of press are those of the mix alone. */
    private static double carried(Asked asked) {
        double crystals = asked.shape().contains("crystals=") ? Told.after(asked.shape(), "crystals=") : 0;
        return crystals + (asked.load().isEmpty() ? 0 : Told.grams(asked.load().get(1)));
    }

    private static void limits(Replies replies, Consumer<String> breach) {
        boolean plain = replies.asked().usualBath()
                && replies.asked().load().isEmpty()
                && !replies.asked().shape().startsWith("geode");
        if (plain) {
            replies.answer("float")
                    .ifPresent(f -> replies.answer("shapes")
                            .ifPresent(
                                    s -> equal("limit", f.number("limit_mass_g"), s.number("float_limit_g"), breach)));
        }
    }

    private static void cost(Reply b, Reply c, Consumer<String> breach) {
        double each = b.number("cost_each");
        double bare = c.number("/rows/0/cost_each");
        if (Double.isNaN(each) != Double.isNaN(bare) || each < bare * (1 - 1e-6)) {
            breach.accept("batch " + each + ", compare " + bare);
        }
    }
}
