package org.fizzhull.cli.agreement;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.fizzhull.cli.AnswerJson;
import org.fizzhull.cli.CommandRun;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * What one command answers, in its three forms.
 *
 * @param command its name
 * @param status exit status
 * @param said standard output as it stands, or the refusal
 * @param text the same without line breaks, so that what is looked for may run over a line
 * @param json the object; missing where refused
 * @param raw the object as written
 * @param picture the words of the picture, joined by blanks
 */
record Reply(String command, int status, String said, String text, JsonNode json, String raw, String picture) {
    static Reply of(List<String> words, Path folder) {
        Path chart = folder.resolve("picture.svg");
        List<String> drawn = new ArrayList<>(words);
        drawn.addAll(List.of("--json", "--chart", chart.toString()));
        CommandRun plain = CommandRun.of(words.toArray(new String[0]));
        CommandRun data = CommandRun.of(drawn.toArray(new String[0]));
        try {
            if (plain.status() != 0 || data.status() != 0) {
                int status = Math.max(plain.status(), data.status());
                String both = plain.status() == data.status() ? plain.err() : "only one of both forms: " + data.err();
                return new Reply(words.get(0), status, both, both, AnswerJson.read("{}"), "", "");
            }
            String words1 = words(chart);
            Files.delete(chart);
            return new Reply(
                    words.get(0), 0, plain.out(), flat(plain.out()), AnswerJson.read(data.out()), data.out(), words1);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** All words of an SVG file, element by element. */
    private static String words(Path chart) throws IOException {
        try {
            NodeList texts = DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new ByteArrayInputStream(Files.readString(chart).getBytes(StandardCharsets.UTF_8)))
                    .getElementsByTagName("text");
            List<String> words = new ArrayList<>();
            for (int i = 0; i < texts.getLength(); i++) {
                words.add(texts.item(i).getTextContent());
            }
            return flat(String.join(" ", words));
        } catch (ParserConfigurationException | SAXException e) {
            throw new IOException(chart.toString(), e);
        }
    }

    private static String flat(String text) {
        return text.replace('\u00a0', ' ').replaceAll("\\s+", " ").strip();
    }

    boolean answered() {
        return status == 0;
    }

    /** What stands before the first empty line, without line breaks. */
    String opening() {
        return flat(said.split("\n\n", 2)[0]);
    }

    /** The row of that label without its label; empty where there is none. */
    String row(String label) {
        StringBuilder row = new StringBuilder();
        boolean in = false;
        for (String line : said.split("\n", -1)) {
            if (line.startsWith("  " + label + "  ")) {
                in = true;
                row.append(line.substring(2 + label.length()));
            } else if (in && line.startsWith("      ")) {
                row.append(' ').append(line);
            } else {
                in = false;
            }
        }
        return flat(row.toString());
    }

    /** A number of the object, by a path such as {@code /probability/error}; NaN where it is null or missing. */
    double number(String path) {
        JsonNode node = json.at(path.startsWith("/") ? path : '/' + path);
        return node.isNumber() ? node.asDouble() : Double.NaN;
    }

    /** A text of the object; empty where it is null or missing. */
    String word(String path) {
        JsonNode node = json.at(path.startsWith("/") ? path : '/' + path);
        return node.isTextual() ? node.asText() : "";
    }

    boolean given(String path) {
        JsonNode node = json.at(path.startsWith("/") ? path : '/' + path);
        return !node.isNull() && !node.isMissingNode();
    }

    boolean noticed(String code) {
        for (JsonNode notice : json.path("notices")) {
            if (notice.path("code").asText().equals(code)) {
                return true;
            }
        }
        return false;
    }
}
