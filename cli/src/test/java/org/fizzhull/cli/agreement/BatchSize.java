package org.fizzhull.cli.agreement;

import java.util.List;
import java.util.function.Consumer;

/** What a batch is told: its share, its aims, and what is bought for it. */
final class BatchSize {
    static final List<Rule> RULES = List.of(
            new Rule("a single weighed piece has no share, every batch has one", BatchSize::share),
            Rule.of("float", "the mean share is the chance of a piece", BatchSize::mean),
            new Rule("aims name damp or dry rightly and never push a batch up", BatchSize::aims),
            Rule.of("float", "no aim where a tenth of the draws are not monotone", BatchSize::monotone),
            Rule.of("batch", "the mixes hold all pieces and spares, and the parts make the whole", BatchSize::amounts),
            Rule.of("batch", "the page to pin up says what the answer says", BatchSize::page));

    private BatchSize() {}

    private static void share(Replies replies, Consumer<String> breach) {
        replies.answer("float").ifPresent(reply -> {
            boolean single = replies.asked().weighed() && !replies.asked().spread();
            if (single == reply.given("share_of_batch")) {
                breach.accept(reply.json().path("share_of_batch").toString());
            }
            boolean told = FloatAnswer.answer(reply).contains("9 of 10 of the batch");
            if (told == single) {
                breach.accept(FloatAnswer.answer(reply));
            }
        });
    }

    private static void mean(Reply reply, Consumer<String> breach) {
        double mean = reply.number("/share_of_batch/mean");
        double chance = reply.number("/probability/floats_to_the_end");
        // the mean is smooth, the chance is counted among the draws: three standard errors and what one draw weighs
        double error = 3 * reply.number("/probability/error") + 2.0 / 256;
        if (Math.abs(mean - chance) > error) {
            breach.accept("mean " + mean + ", chance " + chance);
        }
        double nine = reply.number("/share_of_batch/nine_of_ten");
        String told = "float to the end is " + Told.chance(nine);
        if (!Double.isNaN(nine) && !FloatAnswer.answer(reply).contains(told)) {
            breach.accept(told + " in: " + FloatAnswer.answer(reply));
        }
    }

    private static void aims(Replies replies, Consumer<String> breach) {
        replies.answer("float").ifPresent(reply -> {
            double aim = reply.number("aim_for_g");
            double never = reply.number("never_above_g");
            String damp =
                    replies.asked().weighed() || replies.asked().making().get(0).equals("--press")
                            ? "on the scale"
                            : "damp mix";
            if (Double.isNaN(aim) != Double.isNaN(never)) {
                breach.accept("aim " + aim + ", never above " + never);
            }
            if (Double.isNaN(aim)) {
                if (!reply.row("aim for").isEmpty()) {
                    breach.accept(reply.row("aim for"));
                }
                return;
            }
            if (aim > never + 1e-3) {
                breach.accept("aim " + aim + " above never above " + never);
            }
            for (String label : List.of("aim for", "never above")) {
                double value = label.equals("aim for") ? aim : never;
                if (!Told.same(Told.grams(reply.row(label)), value)) {
                    breach.accept(label + ' ' + value + ": " + reply.row(label));
                }
                if (!reply.row(label).contains(damp)) {
                    breach.accept(label + " does not say " + damp + ": " + reply.row(label));
                }
            }
            if (!reply.row("aim for").startsWith("at most")) {
                breach.accept(reply.row("aim for"));
            }
        });
    }

    private static void monotone(Reply reply, Consumer<String> breach) {
        double bent = reply.number("/critical_draws/not_monotone");
        if (bent >= 0.1 * reply.number("samples")
                && (reply.given("aim_for_g") || !reply.row("aim for").isEmpty())) {
            breach.accept(bent + " draws are not monotone: " + reply.row("aim for"));
        }
    }

    private static void amounts(Reply reply, Consumer<String> breach) {
        double places = reply.number("mixes") * reply.number("pieces_per_mix");
        double needed = reply.number("pieces") + reply.number("spare_pieces");
        if (places < needed) {
            breach.accept(places + " places for " + needed);
        }
        double sum = 0;
        for (var line : reply.json().path("ingredients")) {
            sum += line.path("all_mixes_g").asDouble();
        }
        if (Math.abs(sum - reply.number("total_g")) > 1e-3 * sum) {
            breach.accept("parts " + sum + ", whole " + reply.number("total_g"));
        }
    }

    private static void page(Reply reply, Consumer<String> breach) {
        String sentence = reply.opening().replaceFirst("(?<=[.]) (Whether|Pressed so|This mix is more).*", "");
        if (!reply.picture().contains(sentence.replaceFirst("\\. .*", ""))) {
            breach.accept(sentence + " not in: " + reply.picture());
        }
        String bath = reply.row("in the bath");
        if (!reply.picture().contains(bath)) {
            breach.accept(bath + " not in: " + reply.picture());
        }
    }
}
