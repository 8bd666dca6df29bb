package org.fizzhull.cli.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.regex.Pattern;
import org.fizzhull.cli.AnswerJson;

/** What holds of every answer, whatever the command. */
final class EveryAnswer {
    private static final Pattern NO_NUMBER =
            Pattern.compile("(?<![A-Za-z0-9.])(-?Infinity|NaN|-0(\\.0+)?)(?![A-Za-z0-9.])|\\bnull\\b");
    private static final Pattern NO_UNIT =
            Pattern.compile("(from|\\() ?-?[0-9.]+ g to -?[0-9.]+[^0-9. g]|[0-9] ?\\.\\.|  ,");
    private static final Pattern BARE_RANGE = Pattern.compile("\\([0-9.]+ to [0-9.]+\\)");
    private static final Pattern TORN = Pattern.compile("[a-z0-9] ,|\\( | \\)|,,|;;|: \\.|\\.\\. |; \\.");

    static final List<Rule> RULES = List.of(
            Rule.each("no NaN, Infinity, minus zero or null reaches a reader", EveryAnswer::numbers),
            Rule.each("no unit is lost and no sentence torn", EveryAnswer::units),
            Rule.each("every object follows its schema", EveryAnswer::schema),
            Rule.each("low, median and high stand in this order", (reply, breach) -> ordered("", reply.json(), breach)),
            Rule.each(
                    "shares and chances lie between 0 and 1, per cents between 0 and 100",
                    (reply, breach) -> bounded("", reply.json(), breach)),
            Rule.each("every null has a notice that names it", EveryAnswer::nulls),
            Rule.each("an answer begins with a sentence that ends", EveryAnswer::sentence),
            Rule.each("a notice is told once", EveryAnswer::once),
            Rule.each("a range stands with its unit", (reply, breach) -> {
                var found = BARE_RANGE.matcher(reply.text());
                if (found.find()) {
                    breach.accept(around(reply.text(), found.start()));
                }
            }),
            Rule.each("jars are warned of once", (reply, breach) -> {
                if (reply.text().split("jar, bottle or glass", -1).length > 2) {
                    breach.accept(reply.text());
                }
            }),
            Rule.each(
                    "no line is wider than a window, but for what is typed",
                    (reply, breach) -> reply.said()
                            .lines()
                            .filter(line -> line.length() > 80 && line.indexOf('"') < 0)
                            .forEach(breach)),
            Rule.each("what is unknown for a batch is not told as a share of its pieces", EveryAnswer::shares));

    private EveryAnswer() {}

    private static void numbers(Reply reply, Consumer<String> breach) {
        for (String form : List.of(reply.text(), reply.picture())) {
            var found = NO_NUMBER.matcher(form);
            if (found.find()) {
                breach.accept(around(form, found.start()));
            }
        }
        if (Pattern.compile("NaN|Infinity|: -0(\\.0)?\\b[^.]")
                .matcher(reply.raw())
                .find()) {
            breach.accept("in the object");
        }
    }

    private static void units(Reply reply, Consumer<String> breach) {
        for (String form : List.of(reply.text(), reply.picture())) {
            for (Pattern pattern : List.of(NO_UNIT, TORN)) {
                var found = pattern.matcher(form);
                if (found.find()) {
                    breach.accept(around(form, found.start()));
                }
            }
        }
    }

    private static String around(String text, int at) {
        return "... " + text.substring(Math.max(0, at - 30), Math.min(text.length(), at + 40)) + " ...";
    }

    private static void schema(Reply reply, Consumer<String> breach) {
        AnswerJson.faults(reply.command(), reply.raw()).forEach(breach);
    }

    private static void ordered(String at, JsonNode node, Consumer<String> breach) {
        if (node.has("median") && node.path("median").isNumber()) {
            double low = node.path("low").asDouble();
            double high = node.path("high").asDouble();
            double median = node.path("median").asDouble();
            if (!(low <= median && median <= high)) {
                breach.accept(at + ' ' + node);
            }
        }
        children(at, node, (path, child) -> ordered(path, child, breach));
    }

    private static void bounded(String at, JsonNode node, Consumer<String> breach) {
        if (node.isNumber()) {
            boolean percent = at.endsWith("_percent") && !at.contains("heavier") && !at.contains("water_percent");
            boolean share = at.startsWith("/probability/")
                    || at.startsWith("/share_of_batch/")
                    || at.startsWith("/feel_share/")
                    || at.endsWith("/share")
                    || at.endsWith("fraction")
                    || at.endsWith("floats_to_the_end")
                    || at.endsWith("blows_up")
                    || at.startsWith("/drivers/");
            double value = node.asDouble();
            if ((percent && !(value >= 0 && value <= 100)) || (share && !(value >= 0 && value <= 1 + 1e-9))) {
                boolean index = at.startsWith("/drivers/") && value >= 0; // a total may exceed 1 within its error
                if (!index) {
                    breach.accept(at + " = " + value);
                }
            }
        }
        children(at, node, (path, child) -> bounded(path, child, breach));
    }

    private interface Child {
        void accept(String path, JsonNode node);
    }

    private static void children(String at, JsonNode node, Child child) {
        if (node.isObject()) {
            node.properties().forEach(field -> child.accept(at + '/' + field.getKey(), field.getValue()));
        } else if (node.isArray()) {
            node.forEach(item -> child.accept(at + "/*", item));
        }
    }

    private static void nulls(Reply reply, Consumer<String> breach) {
        StringBuilder told = new StringBuilder();
        reply.json()
                .path("notices")
                .forEach(notice -> told.append(notice.path("text").asText()).append(' '));
        reply.json().properties().forEach(field -> {
            if (field.getValue().isNull() && !told.toString().contains(field.getKey())) {
                breach.accept(field.getKey());
            }
        });
    }

    private static void sentence(Reply reply, Consumer<String> breach) {
        String opening = reply.opening();
        if (opening.isEmpty() || !Character.isUpperCase(opening.charAt(0)) || !opening.contains(".")) {
            breach.accept(opening);
        }
    }

    private static void once(Reply reply, Consumer<String> breach) {
        List<String> told = new ArrayList<>();
        for (JsonNode notice : reply.json().path("notices")) {
            String text = notice.path("text").asText();
            if (told.contains(text)) {
                breach.accept(text);
            }
            told.add(text);
        }
    }

    private static void shares(Reply reply, Consumer<String> breach) {
        for (String form : List.of(reply.text(), reply.picture())) {
            int at = form.indexOf("95 of 100 pieces");
            if (at >= 0) {
                breach.accept(around(form, at));
            }
        }
    }
}
