package org.fizzhull.cli.attack;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Standard input of {@code stream}: command lines as requests, whole and spoilt. */
final class Requests {
    private static final ObjectMapper JSON = new ObjectMapper();

    private static final String[] BROKEN = {
        "",
        " ",
        "{",
        "}",
        "[]",
        "null",
        "7",
        "{}",
        "{\"id\": 7}",
        "{\"id\": {}, \"command\": \"float\"}",
        "{\"id\": 1e999, \"command\": \"shapes\"}",
        "{\"id\": \"\\u0000\\u202e\", \"command\": \"shapes\"}",
        "{\"command\": \"stream\"}",
        "{\"command\": 5}",
        "{\"command\": \"float\", \"mass\": null}",
        "{\"command\": \"float\", \"mass\": [[]]}",
        "{\"command\": \"float\", \"mass\": {\"g\": 138}}",
        "{\"command\": \"float\", \"mass\": NaN}",
        "{\"command\": \"float\", \"help\": true}",
        "{\"command\": \"float\", \"command\": \"dry\"}",
        "{\"command\": \"shapes\", \"shape\": \"--json\"}",
        "{\"command\": \"shapes\", \"SHAPE\": \"ball\"}",
        "{\"id\": 1, \"command\": \"shapes\"} {\"id\": 2}",
        "[".repeat(3000),
        "{\"a\":".repeat(3000)
    };

    private Requests() {}

    /** The request that asks what a line asks. */
    static String of(List<String> words, int id) {
        ObjectNode request = JSON.createObjectNode().put("id", id).put("command", words.isEmpty() ? "" : words.get(0));
        for (int i = 1; i < words.size(); i++) {
            String word = words.get(i);
            if (!word.startsWith("--")) {
                request.put(words.get(0).equals("shapes") ? "shape" : "name", word);
                continue;
            }
            int equals = word.indexOf('=');
            String key = word.substring(2, equals < 0 ? word.length() : equals).replace('-', '_');
            if (equals < 0 && (i + 1 == words.size() || words.get(i + 1).startsWith("--"))) {
                request.put(key, true);
                continue;
            }
            JsonNode before = request.get(key);
            String value = equals < 0 ? words.get(++i) : word.substring(equals + 1);
            if (before == null) {
                request.put(key, value);
            } else {
                ArrayNode both = before.isArray()
                        ? (ArrayNode) before
                        : JSON.createArrayNode().add(before);
                request.set(key, both.add(value));
            }
        }
        return request.toString();
    }

    /** Lines of input, some of them broken. */
    static byte[] input(Dice dice, List<String> requests) {
        List<String> lines = new ArrayList<>();
        for (String request : requests) {
            lines.add(dice.once(4) ? spoilt(dice, request) : request);
        }
        return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
    }

    private static String spoilt(Dice dice, String request) {
        if (dice.once(2)) {
            return dice.of(BROKEN);
        }
        // a line feed ends a request: what is put in must not make two of one
        return Mutation.text(dice, request).replace('\n', ' ').replace('\r', ' ');
    }

    /** How many answers an input has: one of each line, an empty last one apart. */
    static int answers(byte[] in) {
        String text = new String(in, StandardCharsets.UTF_8);
        if (text.isEmpty()) {
            return 0;
        }
        long feeds = text.chars().filter(c -> c == '\n').count();
        return (int) feeds + (text.endsWith("\n") ? 0 : 1);
    }
}
