package org.fizzhull.cli.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.Consumer;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.program.Program;

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
            new Rule("a program that asks for a line gets what a person gets", OtherDoors::streamed),
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

    /** One question in four. */
    private static void streamed(Replies replies, Consumer<String> breach) {
        Asked asked = replies.asked();
        if (asked.number() % 4 != 3) {
            return;
        }
        replies.answer("float").ifPresent(alone -> {
            Path recipe = Path.of(asked.mix().file());
            List<String> words = asked.words("float");
            ObjectNode request = JsonNodeFactory.instance.objectNode().put("command", "float");
            for (int i = 1; i + 1 < words.size(); i += 2) {
                request.put(words.get(i).substring(2).replace('-', '_'), words.get(i + 1));
            }
            request.put("recipe", recipe.getFileName().toString());
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            ByteArrayOutputStream err = new ByteArrayOutputStream();
            new Program(
                            new ByteArrayInputStream((request + "\n").getBytes(StandardCharsets.UTF_8)),
                            new PrintStream(out, false, StandardCharsets.UTF_8),
                            new PrintStream(err, false, StandardCharsets.UTF_8))
                    .run(
                            "stream",
                            "--files",
                            Objects.requireNonNull(recipe.getParent()).toString());
            try {
                JsonNode answer =
                        AnswerJson.read(out.toString(StandardCharsets.UTF_8)).path("result");
                if (!typeless(answer).equals(typeless(alone.json()))) {
                    breach.accept(answer.toString());
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }

    /** Without the line to type, which repeats what was asked in its own words. */
    private static JsonNode typeless(JsonNode answer) {
        JsonNode copy = answer.deepCopy();
        if (copy.path("measure_next") instanceof ObjectNode next) {
            next.remove("type");
        }
        return copy;
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
        // a text has tenths of a gram, and ounces stand for its whole grams to half of one
        if (Math.abs(told - grams.number("mass_g")) > 0.55) {
            breach.accept(told + " g in: " + ounces.opening());
        }
    }
}
