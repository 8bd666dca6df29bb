package org.fizzhull.cli.attack;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.option.Arguments;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/** What every answer must be, whatever was asked; says what is wrong with one. */
final class Judge {
    private static final Pattern NO_NUMBER = Pattern.compile("(?<![A-Za-z0-9])(-?Infinity|NaN)(?![A-Za-z0-9])");
    private static final Pattern TRACE = Pattern.compile("(?m)^\\s+at [\\w.$]+\\(|Exception in thread|Caused by:");
    private static final Pattern HIDDEN = Pattern.compile("[\\p{Cc}\\p{Cf}&&[^\\n\\r\\t]]");
    private static final int LONGEST_ECHO = 210;
    private static final int LONGEST_LINE = 1000;

    /** Ten mistakes of one file, and how many more there are. */
    private static final int MOST_LINES = 11;

    private static final ObjectMapper JSON = new ObjectMapper(JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build());

    private Judge() {}

    /** What is wrong, in a few words that are the same for the same fault; empty where nothing is. */
    static Optional<String> fault(Line line, int status, String out, String err, List<Path> drawn) {
        List<String> words = Arguments.options(line.words().toArray(new String[0]));
        if (status == 1) {
            return Optional.of(
                    "internal failure: " + err.strip().replaceAll("\\d+\\.?\\d*([Ee]-?\\d+)?(?=[^:]*\\()", "#"));
        }
        if (status != 0 && status != 2) {
            return Optional.of("status " + status);
        }
        if (TRACE.matcher(out + err).find()) {
            return Optional.of("stack trace");
        }
        if (HIDDEN.matcher(out + err).find()) {
            return Optional.of("control or direction characters in the answer");
        }
        boolean json = words.contains("--json");
        if (status == 2) {
            return refusal(json && !line.command().startsWith("-") ? out : "", err);
        }
        boolean stream = line.command().equals("stream");
        if (!stream && NO_NUMBER.matcher(unechoed(line, out + err)).find()) {
            return Optional.of("NaN or Infinity in an answer");
        }
        boolean page = words.contains("--help") || words.contains("--version");
        if (json && !page) {
            Optional<String> wrong = object(line.command(), out);
            if (wrong.isPresent()) {
                return wrong;
            }
        } else if (stream && !page) {
            return answers(line, out);
        } else if (out.isBlank()) {
            return Optional.of("nothing on standard output");
        }
        for (Path file : drawn) {
            Optional<String> wrong = file.toString().endsWith(".html") ? page(file) : picture(file);
            if (wrong.isPresent()) {
                return wrong;
            }
        }
        return Optional.empty();
    }

    /** The answer without words that the line itself gave, such as the name of a folder. */
    private static String unechoed(Line line, String answer) {
        String told = answer;
        for (String word : line.words()) {
            told = NO_NUMBER.matcher(word).find() ? told.replace(word, "") : told;
        }
        return told;
    }

    private static Optional<String> refusal(String json, String err) {
        // what is wrong in one file is told at once, a line for each
        if (err.isBlank() || !err.lines().allMatch(line -> line.startsWith("fizzhull: "))) {
            return Optional.of(
                    "a refusal is not one line: " + err.lines().limit(3).toList());
        }
        if (err.lines().count() > MOST_LINES || err.lines().anyMatch(line -> line.length() > LONGEST_LINE)) {
            return Optional.of("a refusal of " + err.lines().count() + " lines and " + err.length() + " characters");
        }
        if (json.isEmpty()) {
            return Optional.empty();
        }
        Optional<String> wrong = object("error", json);
        if (wrong.isPresent()) {
            return wrong;
        }
        try {
            return error(JSON.readTree(json).path("error"));
        } catch (IOException e) {
            return Optional.of("unreadable error object");
        }
    }

    /** An answer for each line of the input, in order, each a result or an error with a mend. */
    private static Optional<String> answers(Line line, String out) {
        List<String> answers = out.lines().toList();
        if (answers.size() != Requests.answers(line.in())) {
            return Optional.of("stream: another number of answers than of requests");
        }
        for (String answer : answers) {
            try {
                JsonNode node = JSON.readTree(answer);
                if (!node.has("id") || node.has("result") == node.has("error")) {
                    return Optional.of("stream: neither result nor error");
                }
                if (node.path("error").path("code").asText().equals("internal-failure")) {
                    return Optional.of("stream: internal failure: "
                            + node.path("error")
                                    .path("read")
                                    .asText()
                                    .replaceAll("\\d+\\.?\\d*([Ee]-?\\d+)?(?=[^:]*\\()", "#"));
                }
                if (NO_NUMBER.matcher(node.path("result").toString()).find()) {
                    return Optional.of("stream: NaN or Infinity in a result");
                }
                Optional<String> wrong = node.has("error")
                        ? error(node.path("error"))
                        : schema(
                                node.path("result").path("command").asText(),
                                node.path("result").toString());
                if (wrong.isPresent()) {
                    return Optional.of("stream: " + wrong.get());
                }
            } catch (IOException e) {
                return Optional.of("stream: an answer that is no JSON");
            }
        }
        return Optional.empty();
    }

    private static Optional<String> page(Path file) {
        try {
            String text = Files.readString(file);
            return NO_NUMBER.matcher(text).find()
                    ? Optional.of("NaN or Infinity in a page")
                    : text.contains("</html>") ? Optional.empty() : Optional.of("a page without its end");
        } catch (IOException e) {
            return Optional.of("a page that cannot be read: " + e);
        }
    }

    private static Optional<String> error(JsonNode error) {
        {
            String code = error.path("code").asText();
            if (error.path("hint").asText().isBlank()) {
                return Optional.of(
                        "no mend: " + code + ", " + error.path("field").asText().replaceAll("\\d+", "#"));
            }
            if (error.path("read").asText().length() > LONGEST_ECHO) {
                return Optional.of("too long an echo: " + code);
            }
            if (error.path("allowed").asText().isBlank()) {
                return Optional.of(
                        "nothing allowed: " + code + ", " + error.path("field").asText());
            }
            return code.isBlank() ? Optional.of("a refusal without a code") : Optional.empty();
        }
    }

    private static Optional<String> object(String schema, String text) {
        try (JsonParser parser = JSON.createParser(text)) {
            JsonNode node = JSON.readTree(parser);
            if (node == null || !node.isObject() || node.path("schema").asInt() != 1) {
                return Optional.of("no JSON object of the schema");
            }
            return parser.nextToken() == null ? schema(schema, text) : Optional.of("more than one JSON object");
        } catch (IOException e) {
            return Optional.of("no JSON: " + e.getClass().getSimpleName());
        }
    }

    private static Optional<String> schema(String schema, String text) {
        List<String> faults = AnswerJson.faults(schema, text);
        return faults.isEmpty()
                ? Optional.empty()
                : Optional.of("not by the schema of " + schema + ": "
                        + faults.get(faults.size() - 1).replaceAll("\\d+", "#"));
    }

    private static Optional<String> picture(Path chart) {
        try {
            String text = Files.readString(chart);
            if (NO_NUMBER.matcher(text).find()) {
                return Optional.of("NaN or Infinity in a picture");
            }
            DocumentBuilder builder = DocumentBuilderFactory.newInstance().newDocumentBuilder();
            builder.setErrorHandler(new DefaultHandler());
            builder.parse(chart.toFile());
            return Optional.empty();
        } catch (SAXException e) {
            return Optional.of("a picture that is no XML");
        } catch (IOException | ParserConfigurationException e) {
            return Optional.of("a picture that cannot be read: " + e);
        }
    }
}
