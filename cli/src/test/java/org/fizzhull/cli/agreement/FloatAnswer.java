package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;

/** The answer of {@code float} for itself: sentence, rows, object and picture. */
final class FloatAnswer {
    static final List<Rule> RULES = List.of(
            Rule.of("float", "the likelihood words are those of their chances", FloatAnswer::words),
            Rule.of("float", "the sentence opens with the word of the chance, or cannot tell", FloatAnswer::opening),
            Rule.of("float", "the sentence tells the weight and the limit of the object", FloatAnswer::limit),
            Rule.of("float", "the chances of the ways add up", FloatAnswer::chances),
            Rule.of(
                    "float",
                    "the governing limit is one of the two, and what is to spare its difference",
                    FloatAnswer::spare),
            Rule.of("float", "the picture says what the sentence says", FloatAnswer::picture),
            Rule.of("float", "the rows tell the numbers of the object", FloatAnswer::rows),
            Rule.of("float", "nothing floats over a sinker's number", FloatAnswer::sinkers),
            Rule.of("float", "where a piece floats as it is, a way to lie is told", FloatAnswer::rests),
            Rule.of("float", "one weight in one answer", FloatAnswer::oneWeight));

    private FloatAnswer() {}

    /** The calibrated scale of the IPCC (Mastrandrea et al. 2010, guidance note on uncertainties, table 1). */
    private static String word(double p) {
        if (p > 0.99) {
            return "virtually certain";
        } else if (p > 0.9) {
            return "very likely";
        } else if (p > 0.66) {
            return "likely";
        } else if (p >= 0.33) {
            return "about as likely as not";
        } else if (p >= 0.1) {
            return "unlikely";
        }
        return p >= 0.01 ? "very unlikely" : "exceptionally unlikely";
    }

    private static void words(Reply reply, Consumer<String> breach) {
        double end = reply.number("/probability/floats_to_the_end");
        double once = reply.number("/probability/floats_at_once");
        if (!word(end).equals(reply.word("likelihood_to_the_end"))) {
            breach.accept(end + " is " + reply.word("likelihood_to_the_end"));
        }
        if (!word(once).equals(reply.word("likelihood"))) {
            breach.accept(once + " is " + reply.word("likelihood"));
        }
    }

    /** The opening without what is said before of a mix that does not fizz. */
    static String answer(Reply reply) {
        return reply.opening().replaceFirst("^It (hardly fizzes|does not fizz): [^.]*[.] ", "");
    }

    private static void opening(Reply reply, Consumer<String> breach) {
        String word = reply.word("likelihood_to_the_end");
        String opens = reply.word("/verdict/answer").equals("cannot tell")
                ? "Cannot tell yet: "
                : word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1) + ": ";
        if (!answer(reply).startsWith(opens)) {
            breach.accept(reply.opening());
        }
    }

    private static void limit(Reply reply, Consumer<String> breach) {
        String answer = answer(reply);
        if (!Told.same(Told.grams(answer), reply.number("mass_g"))) {
            breach.accept(reply.number("mass_g") + " in: " + answer);
        }
        boolean boat = reply.word("/governing_limit/kind").equals("boat");
        double told = Told.after(answer, boat ? "rim limit of" : "float limit of");
        if (!Told.same(told, reply.number("/governing_limit/mass_g"))) {
            breach.accept(reply.number("/governing_limit/mass_g") + " in: " + answer);
        }
        double spare = reply.number("/governing_limit/spare_g");
        String side = spare > 0 ? " g below its" : " g over its";
        if (Math.abs(spare) > 0.06 && !answer.contains(side)) {
            breach.accept(spare + " in: " + answer);
        }
    }

    private static void chances(Reply reply, Consumer<String> breach) {
        double once = reply.number("/probability/floats_at_once");
        double later = reply.number("/probability/rises_later");
        double down = reply.number("/probability/stays_down");
        double sinks = reply.number("/probability/sinks_later");
        double end = reply.number("/probability/floats_to_the_end");
        if (Math.abs(once + later + down - 1) > 2e-5) {
            breach.accept("at once, later and never come to " + (once + later + down));
        }
        if (end > once + 1e-6 || sinks > once + 1e-6 || end < once - sinks - 1e-5) {
            breach.accept("at once " + once + ", to the end " + end + ", goes under " + sinks);
        }
    }

    private static void spare(Reply reply, Consumer<String> breach) {
        double mass = reply.number("mass_g");
        double limit = reply.number("/governing_limit/mass_g");
        boolean boat = reply.word("/governing_limit/kind").equals("boat");
        if (!Told.equal(limit, reply.number(boat ? "boat_limit_mass_g" : "limit_mass_g"))) {
            breach.accept("governing " + limit);
        }
        if (!Told.difference(limit, mass, reply.number("/governing_limit/spare_g"))
                || !Told.difference(reply.number("limit_mass_g"), mass, reply.number("spare_g"))) {
            breach.accept("limit " + limit + " less " + mass + " is not " + reply.number("/governing_limit/spare_g"));
        }
    }

    private static void picture(Reply reply, Consumer<String> breach) {
        String picture = reply.picture();
        if (!Told.same(Told.grams(picture), reply.number("mass_g"))) {
            breach.accept("weight " + reply.number("mass_g") + " in: " + picture);
        }
        boolean open = reply.word("/verdict/answer").equals("cannot tell");
        String word = open ? "cannot tell yet" : reply.word("likelihood_to_the_end");
        if (!picture.contains("Floats to the end: " + word + ';')) {
            breach.accept(word + " in: " + picture);
        }
        double limit = reply.number("/governing_limit/mass_g");
        if (!Told.same(Told.after(picture, " limit"), limit)) {
            breach.accept("limit " + limit + " in: " + picture);
        }
        double dots = Told.after(picture, "In 100 cases like this about");
        if (!Double.isNaN(dots)
                && picture.contains("about " + (long) dots + ": floats to the end")
                && Math.abs(dots - 100 * reply.number("/probability/floats_to_the_end")) > 1) {
            breach.accept(dots + " dots in: " + picture);
        }
    }

    private static void rows(Reply reply, Consumer<String> breach) {
        boolean boat = reply.word("/governing_limit/kind").equals("boat");
        // of a boat, where a first answer has room for it
        boolean flooded = boat && !reply.row("float limit").isEmpty();
        row(reply, "float limit", flooded ? reply.number("limit_mass_g") : Double.NaN, breach);
        row(reply, "rim limit", reply.number("boat_limit_mass_g"), breach);
        row(reply, "critical weight", reply.number("/critical_weight_g/median"), breach);
        if (!Told.same(
                Told.after(reply.row("at once"), "chance above") + Told.after(reply.row("at once"), "chance below"),
                Double.NaN)) {
            breach.accept(reply.row("at once"));
        }
        String once = "chance " + Told.chance(reply.number("/probability/floats_at_once"));
        if (!reply.row("at once").startsWith(once)) {
            breach.accept(once + " in: " + reply.row("at once"));
        }
        double spare = reply.number("/spare_at_drop_g/median");
        String label = spare >= 0 ? "spare at the drop" : "over at the drop";
        row(reply, label, Math.abs(spare), breach);
    }

    private static void row(Reply reply, String label, double value, Consumer<String> breach) {
        if (!Told.same(Told.grams(reply.row(label)), value)) {
            breach.accept(label + " is " + value + ", told: " + reply.row(label));
        }
    }

    private static void sinkers(Reply reply, Consumer<String> breach) {
        double end = reply.number("/probability/floats_to_the_end");
        String answer = answer(reply);
        String verdict = reply.word("/verdict/answer");
        if (end < 0.33
                && (verdict.equals("floats") || answer.contains("lifts it.") || answer.contains("so it floats"))) {
            breach.accept(end + ": " + answer);
        }
        if (end > 0.66
                && (verdict.equals("sinks") || answer.contains("takes it down") || answer.contains("goes under"))) {
            breach.accept(end + ": " + answer);
        }
        boolean over = reply.number("/governing_limit/spare_g") < -0.06;
        if (end > 0.66 && over && !answer.contains("lifts it")) {
            breach.accept("floats over its limit without a reason: " + answer);
        }
        if (end < 0.33 && !over && !answer.matches(".*(takes it down|goes under|soak).*")) {
            breach.accept("sinks below its limit without a reason: " + answer);
        }
    }

    private static void rests(Reply reply, Consumer<String> breach) {
        boolean lies = !reply.json().path("attitudes").isEmpty();
        if (lies == reply.row("sits").startsWith("sinks")) {
            breach.accept(reply.json().path("attitudes") + " told: " + reply.row("sits"));
        }
        if (lies != (reply.number("/governing_limit/spare_g") >= -0.06)
                && Math.abs(reply.number("/governing_limit/spare_g")) > 0.1) {
            breach.accept(reply.json().path("attitudes").size() + " ways to lie with "
                    + reply.number("/governing_limit/spare_g") + " g to spare");
        }
    }

    private static void oneWeight(Reply reply, Consumer<String> breach) {
        if (!reply.row("weight").isEmpty() && !Told.same(Told.grams(reply.row("weight")), reply.number("mass_g"))) {
            breach.accept(reply.number("mass_g") + " and " + reply.row("weight"));
        }
    }
}
