package org.fizzhull.cli.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.function.Consumer;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;

/** What {@code advise} and {@code why} say is what {@code float} says, and what they tell to type does what they promise. */
final class Decisions {
    private static final String END = "/probability/floats_to_the_end";
    private static final String PLAN = "the plan itself, or something else";

    static final List<Rule> RULES = List.of(
            Rule.both(
                    "float", "advise", "advise starts from the chance and the weight that float tells", Decisions::now),
            Rule.of("advise", "advice opens with what it comes to", Decisions::need),
            Rule.of("advise", "each proposal, typed into float, has the chance it promises", Decisions::proposals),
            Rule.of("advise", "the picture shows the chances that are told", Decisions::drawn),
            Rule.of(
                    "advise",
                    "what is to be measured can be typed",
                    (reply, breach) -> typed(reply.word("/measure_next/type"), breach)),
            Rule.of("why", "the chances of the causes sum to 1, likeliest first", Decisions::sum),
            Rule.of("why", "the sentence and the picture name the likeliest cause", Decisions::likeliest),
            Rule.both("float", "why", "the plan weighs and does in why what it does in float", Decisions::planned),
            Rule.of("why", "a piece that went down was heavier than what floats", Decisions::story),
            Rule.of("why", "the check can be typed", (reply, breach) -> typed(reply.word("/best_check/type"), breach)),
            new Rule("what why says to type next is a line that answers", Decisions::next),
            page("advise"),
            page("why"),
            page("compare"));

    private Decisions() {}

    private static Rule page(String command) {
        return Rule.of(command, "a decision fits 25 lines of 80", (reply, breach) -> {
            long lines = reply.said().lines().count();
            if (lines > 25) {
                breach.accept(lines + " lines");
            }
            reply.said().lines().filter(line -> line.length() > 80).forEach(breach);
        });
    }

    private static void now(Reply f, Reply a, Consumer<String> breach) {
        if (!Told.equal(f.number(END), a.number("/now/probability"))) {
            breach.accept("float " + f.number(END) + ", advise " + a.number("/now/probability"));
        }
        if (!Told.equal(f.number("mass_g"), a.number("/now/mass_g"))) {
            breach.accept("float " + f.number("mass_g") + " g, advise " + a.number("/now/mass_g"));
        }
        double nine = f.number("/share_of_batch/nine_of_ten");
        if (!Double.isNaN(nine) && !Told.equal(nine, a.number("/now/nine_of_ten"))) {
            breach.accept("nine of ten " + nine + " and " + a.number("/now/nine_of_ten"));
        }
        if (!a.opening().contains(Told.chance(f.number(END)))) {
            breach.accept(Told.chance(f.number(END)) + " not in: " + a.opening());
        }
    }

    private static void need(Reply a, Consumer<String> breach) {
        boolean fine = a.number("/now/probability") >= a.number("goal");
        if (fine != a.text().contains("Nothing needs changing") || fine != a.noticed("goal-reached")) {
            breach.accept(a.number("/now/probability") + ": " + a.opening());
        }
        boolean reached = false;
        boolean before = true;
        for (JsonNode change : a.json().path("changes")) {
            boolean reaches = change.path("reaches_goal").asBoolean();
            if (reaches != change.path("probability").asDouble() >= a.number("goal")) {
                breach.accept(change.path("note").asText() + " reaches " + reaches);
            }
            if (reaches && !before) {
                breach.accept("a change that reaches the goal behind one that does not");
            }
            before = reaches;
            reached |= reaches;
        }
        if (a.noticed("nothing-helps") && reached) {
            breach.accept("nothing helps, and a change reaches the goal");
        }
    }

    private static void proposals(Reply a, Consumer<String> breach) {
        for (JsonNode change : a.json().path("changes")) {
            String line = change.path("type").asText();
            JsonNode typed = typed(line, breach);
            double promised = change.path("probability").asDouble();
            double kept = typed.at(END).asDouble(Double.NaN);
            if (!Told.equal(promised, kept)) {
                breach.accept("promised " + promised + ", typed " + kept + ": " + line);
            }
        }
    }

    private static void drawn(Reply a, Consumer<String> breach) {
        String told = Told.chance(a.number("/now/probability"));
        if (!a.picture().contains(told)) {
            breach.accept(told + " not in: " + a.picture());
        }
    }

    private static void sum(Reply w, Consumer<String> breach) {
        double sum = 0;
        double last = 1;
        for (JsonNode cause : w.json().path("causes")) {
            double chance = cause.path("probability").asDouble();
            sum += chance;
            if (chance > last + 1e-9) {
                breach.accept(cause.path("cause").asText() + " is likelier than the one before");
            }
            last = chance;
        }
        if (Math.abs(sum - 1) > 1e-4) {
            breach.accept("they sum to " + sum);
        }
    }

    private static void likeliest(Reply w, Consumer<String> breach) {
        JsonNode first = w.json().path("causes").path(0);
        String told = "Most likely (" + Told.chance(first.path("probability").asDouble()) + ")";
        if (!w.opening().contains(told)) {
            breach.accept(told + " not in: " + w.opening());
        }
        String cause = first.path("cause").asText();
        boolean plan = cause.equals(PLAN);
        if (!plan && !w.opening().contains(cause)) {
            breach.accept(cause + " not in: " + w.opening());
        }
        if (!w.picture().contains(cause)) {
            breach.accept(cause + " not in: " + w.picture());
        }
    }

    private static void planned(Reply f, Reply w, Consumer<String> breach) {
        double once = f.number("/probability/floats_at_once");
        double expected = switch (w.word("saw")) {
            case "sank" -> 1 - once;
            case "sank-later" -> once - f.number(END);
            case "rose-late" -> f.number("/probability/rises_later");
            default -> Double.NaN;
        };
        if (!Double.isNaN(expected) && Math.abs(expected - w.number("as_planned")) > 1e-5) {
            breach.accept("float " + expected + ", why " + w.number("as_planned"));
        }
        for (JsonNode cause : w.json().path("causes")) {
            double mass = cause.at("/most_likely/mass_g").asDouble();
            if (cause.path("cause").asText().equals(PLAN) && !Told.equal(f.number("mass_g"), mass)) {
                breach.accept("float " + f.number("mass_g") + " g, why " + mass);
            }
        }
    }

    private static void story(Reply w, Consumer<String> breach) {
        String told = w.text().replaceFirst(".*It then most likely went so: ", "");
        int most = told.indexOf(" is the most that floats");
        if (!told.equals(w.text()) && most > 0) {
            String[] weights = told.substring(0, most).split(", where ", 2);
            if (!(Told.grams(weights[0]) >= Told.grams(weights[1]))) {
                breach.accept(told);
            }
        }
    }

    /** The next line may be an advise, which is dear: one in five is typed. */
    private static void next(Replies replies, Consumer<String> breach) {
        replies.answer("why").ifPresent(w -> {
            String line = w.word("/advice/type");
            boolean dear =
                    line.startsWith("fizzhull advise ") && replies.asked().number() % 5 != 0;
            typed(dear ? "" : line, breach);
        });
    }

    /** The object that a line answers with; nothing for no line. */
    private static JsonNode typed(String line, Consumer<String> breach) {
        try {
            if (line.isEmpty()) {
                return AnswerJson.read("{}");
            }
            CommandRun run = Typed.run(line);
            if (run.status() != 0) {
                breach.accept(line + " ends with " + run.err());
            }
            return AnswerJson.read(run.out());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
