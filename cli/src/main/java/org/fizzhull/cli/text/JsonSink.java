package org.fizzhull.cli.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import org.fizzhull.answer.body.AnswerBody;
import org.fizzhull.answer.tree.AnswerSink;
import org.fizzhull.quantity.Decimals;
import org.jspecify.annotations.Nullable;

/** Writes an answer as JSON while it is walked: numbers with six significant digits. The stream stays open. */
public final class JsonSink implements AnswerSink, AutoCloseable {
    private final JsonGenerator generator;

    private JsonSink(OutputStream out) throws IOException {
        generator = new JsonFactory().createGenerator(out);
        generator.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
    }

    /** One object, indented, for a command. */
    public static JsonSink pretty(OutputStream out) {
        JsonSink sink = line(out);
        sink.generator.useDefaultPrettyPrinter();
        return sink;
    }

    /** One object on one line, for a stream. */
    public static JsonSink line(OutputStream out) {
        try {
            return new JsonSink(out);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes a whole answer. */
    public static void write(OutputStream out, AnswerBody body) {
        try (JsonSink sink = pretty(out)) {
            body.write(sink);
        }
    }

    /** A value that is JSON already. */
    public void raw(String key, String value) {
        key(key);
        try {
            generator.writeRawValue(value);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void startObject() {
        put(JsonToken.START_OBJECT, null);
    }

    @Override
    public void endObject() {
        put(JsonToken.END_OBJECT, null);
    }

    @Override
    public void startArray() {
        put(JsonToken.START_ARRAY, null);
    }

    @Override
    public void endArray() {
        put(JsonToken.END_ARRAY, null);
    }

    @Override
    public void key(String key) {
        put(JsonToken.FIELD_NAME, key);
    }

    @Override
    public void text(String value) {
        put(JsonToken.VALUE_STRING, value);
    }

    @Override
    public void whole(long value) {
        put(JsonToken.VALUE_NUMBER_INT, Long.toString(value));
    }

    @Override
    public void number(double value) {
        put(JsonToken.VALUE_NUMBER_FLOAT, Decimals.json(value));
    }

    @Override
    public void flag(boolean value) {
        put(value ? JsonToken.VALUE_TRUE : JsonToken.VALUE_FALSE, null);
    }

    @Override
    public void nothing() {
        put(JsonToken.VALUE_NULL, null);
    }

    /** Ends with a line end. */
    @Override
    public void close() {
        try {
            generator.writeRaw('\n');
            generator.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Writes one token; its text where it has one. No lambda for each, since a short command comes this way. */
    private void put(JsonToken token, @Nullable String text) {
        try {
            switch (token) {
                case START_OBJECT -> generator.writeStartObject();
                case END_OBJECT -> generator.writeEndObject();
                case START_ARRAY -> generator.writeStartArray();
                case END_ARRAY -> generator.writeEndArray();
                case FIELD_NAME -> generator.writeFieldName(text);
                case VALUE_STRING -> generator.writeString(text);
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> generator.writeNumber(text);
                case VALUE_TRUE -> generator.writeBoolean(true);
                case VALUE_FALSE -> generator.writeBoolean(false);
                case VALUE_NULL -> generator.writeNull();
                default -> throw new IllegalArgumentException(token.toString());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
