package org.fizzhull.cli.stream;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.text.PrintableText;

/**
 * One line of the stream: an object with {@code command}, perhaps {@code id}, and the options of the command.
 *
 * @param id what the answer repeats, as JSON text: a number as it was written, a text, or {@code null}
 * @param command name of the command; empty where none can be read
 * @param fields the other keys in their order; none where the line cannot be read
 * @param refusal why it cannot be read; empty where it can
 */
public record Request(String id, String command, List<Field> fields, Optional<Refusal> refusal) {
    static final int LONGEST = 1 << 20;

    private static final String EXAMPLE =
            "{\"id\": 1, \"command\": \"float\", \"shape\": \"sphere(diameter=65 mm)\", \"mass\": \"138 g\"}";

    private static final JsonFactory JSON = JsonFactory.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    /** Keeps its lists from change. */
    public Request {
        fields = List.copyOf(fields);
    }

    /**
     * A key of the object.
     *
     * @param key as written
     * @param values its texts, numbers as they were written; none for {@code true}, which is a flag
     */
    public record Field(String key, List<String> values) {
        /** Keeps its list from change. */
        public Field {
            values = List.copyOf(values);
        }
    }

    static Request of(RequestLines.Line line) {
        Reader reader = new Reader();
        try {
            if (line.tooLong()) {
                throw new Refusal(
                        "too-long",
                        "line",
                        "more than " + LONGEST + " bytes",
                        "a line of at most 1 MiB (1048576 bytes)",
                        "One question a line; what is large stands in a file, and --files allows it.");
            }
            reader.read(line.bytes());
            return new Request(reader.id, reader.command, reader.fields, Optional.empty());
        } catch (Refusal refusal) {
            return new Request(reader.id, reader.command, List.of(), Optional.of(refusal));
        }
    }

    /** Holds what was read so far, so that a line with a fault behind its id is answered under that id. */
    private static final class Reader {
        private String id = "null";
        private String command = "";
        private final List<Field> fields = new ArrayList<>();

        void read(byte[] bytes) {
            String text;
            try {
                text = StandardCharsets.UTF_8
                        .newDecoder()
                        .decode(ByteBuffer.wrap(bytes))
                        .toString();
            } catch (CharacterCodingException e) {
                throw refusal("not-text", "line", "bytes that are no UTF-8", "Write the questions as UTF-8.");
            }
            if (text.isBlank()) {
                throw refusal("empty", "line", "", "Each line is a question and has an answer, an empty one too.");
            }
            try (JsonParser parser = JSON.createParser(text)) {
                if (parser.nextToken() != JsonToken.START_OBJECT) {
                    throw refusal("not-an-object", "line", text, "Put the question between { and }, on one line.");
                }
                for (String key = parser.nextFieldName(); key != null; key = parser.nextFieldName()) {
                    parser.nextToken();
                    take(parser, key);
                }
                if (parser.nextToken() != null) {
                    throw refusal("not-json", "line", text, "Behind the object stands something else.");
                }
            } catch (JsonProcessingException e) {
                String where = e.getLocation() == null
                        ? ""
                        : " (column " + e.getLocation().getColumnNr() + ")";
                throw refusal("not-json", "line", text, e.getOriginalMessage() + where + ".");
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            if (command.isEmpty()) {
                throw refusal("missing", "command", "", "Say which command is to answer.");
            }
        }

        private void take(JsonParser parser, String key) throws IOException {
            JsonToken token = parser.currentToken();
            boolean text = token == JsonToken.VALUE_STRING;
            if (key.equals("id")) {
                if (!text && !token.isNumeric() && token != JsonToken.VALUE_NULL) {
                    throw refusal("not-an-id", key, parser.getText(), "An id is a number or a text.");
                }
                id = text ? quoted(parser.getText()) : parser.getText();
            } else if (key.equals("command")) {
                if (!text) {
                    throw refusal("not-a-text", key, parser.getText(), "Put the name of the command in double quotes.");
                }
                command = parser.getText();
            } else if (token == JsonToken.START_ARRAY) {
                List<String> values = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    values.add(value(parser, key));
                }
                if (!values.isEmpty()) {
                    fields.add(new Field(key, values));
                }
            } else if (token == JsonToken.VALUE_TRUE) {
                fields.add(new Field(key, List.of()));
            } else if (token != JsonToken.VALUE_FALSE && token != JsonToken.VALUE_NULL) {
                fields.add(new Field(key, List.of(value(parser, key))));
            }
        }

        /**
         * The text as JSON; what cannot be seen, and half of a pair, which is no UTF-8, is written as an escape, which
         * means the same.
         */
        private static String quoted(String text) {
            StringBuilder json = new StringBuilder("\"");
            new String(JsonStringEncoder.getInstance().quoteAsString(text))
                    .codePoints()
                    .forEach(c -> {
                        String shown = Character.toString(c);
                        if (PrintableText.hiddenAt(shown) == 0) {
                            shown.chars().forEach(half -> json.append(String.format(Locale.ROOT, "\\u%04X", half)));
                        } else {
                            json.append(shown);
                        }
                    });
            return json.append('"').toString();
        }

        private static String value(JsonParser parser, String key) throws IOException {
            JsonToken token = parser.currentToken();
            if (token != JsonToken.VALUE_STRING && !token.isNumeric()) {
                throw refusal(
                        "not-a-value",
                        key,
                        parser.getText(),
                        "A value is a text, a number, true or false; a repeated option is a list of texts.");
            }
            return parser.getText();
        }

        private static Refusal refusal(String code, String field, String read, String hint) {
            return new Refusal(code, field, read, "one JSON object a line, such as " + EXAMPLE, hint);
        }
    }
}
