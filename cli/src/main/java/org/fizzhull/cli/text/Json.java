package org.fizzhull.cli.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.jspecify.annotations.Nullable;

/** Writes one JSON object as docs/contract.md has it: six significant digits, null for what is not known, never NaN. */
public final class Json implements AutoCloseable {
    /** Version of docs/contract.md. */
    public static final int SCHEMA = 1;

    private final JsonGenerator generator;

    private Json(JsonGenerator generator) {
        this.generator = generator;
    }

    /** Opens the object of a command on a stream, which stays open after {@link #close}. */
    public static Json open(OutputStream out, String command) {
        try {
            JsonGenerator generator = new JsonFactory().createGenerator(out);
            generator.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            generator.useDefaultPrettyPrinter();
            generator.writeStartObject();
            Json json = new Json(generator);
            json.whole("schema", SCHEMA).text("fizzhull", Version.TEXT).text("command", command);
            return json;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens an object on one line that says nothing of itself, for a line of a stream. */
    public static Json line(OutputStream out) {
        try {
            JsonGenerator generator = new JsonFactory().createGenerator(out);
            generator.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            generator.writeStartObject();
            return new Json(generator);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A value that is JSON already. */
    public Json raw(String key, String value) {
        try {
            key(key).generator.writeRawValue(value);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Opens a nested object. */
    public Json object(String key) {
        return key(key).put(JsonToken.START_OBJECT, null);
    }

    /** Opens an object as an element of an array. */
    public Json object() {
        return put(JsonToken.START_OBJECT, null);
    }

    /** Ends the innermost object. */
    public Json end() {
        return put(JsonToken.END_OBJECT, null);
    }

    /** Opens an array. */
    public Json array(String key) {
        return key(key).put(JsonToken.START_ARRAY, null);
    }

    /** Ends the innermost array. */
    public Json endArray() {
        return put(JsonToken.END_ARRAY, null);
    }

    /** A text, or null. */
    public Json text(String key, @Nullable String value) {
        return key(key).put(JsonToken.VALUE_STRING, value);
    }

    /** Texts in a row. */
    public Json texts(String key, List<String> values) {
        array(key);
        for (String value : values) {
            put(JsonToken.VALUE_STRING, value);
        }
        return endArray();
    }

    /** A truth. */
    public Json flag(String key, boolean value) {
        return key(key).put(value ? JsonToken.VALUE_TRUE : JsonToken.VALUE_FALSE, null);
    }

    /** A count. */
    public Json whole(String key, long value) {
        return key(key).put(JsonToken.VALUE_NUMBER_INT, Long.toString(value));
    }

    /** A number. */
    public Json number(String key, double value) {
        return key(key).put(JsonToken.VALUE_NUMBER_FLOAT, Decimals.json(value));
    }

    /** A number, or null where it is empty. */
    public Json number(String key, OptionalDouble value) {
        return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
    }

    /** Numbers in a row. */
    public Json numbers(String key, double... values) {
        array(key);
        for (double value : values) {
            put(JsonToken.VALUE_NUMBER_FLOAT, Decimals.json(value));
        }
        return endArray();
    }

    /** An uncertain number. */
    public Json interval(String key, Interval value) {
        return object(key)
                .number("median", value.median())
                .number("low", value.low())
                .number("high", value.high())
                .end();
    }

    /** Null: not known, or without meaning. */
    public Json nothing(String key) {
        return text(key, null);
    }

    /** The notices, last of the object. */
    public Json notices(List<Notice> notices) {
        array("notices");
        for (Notice notice : notices) {
            object().text("code", notice.code()).text("text", notice.text()).end();
        }
        return endArray();
    }

    /** Ends the object with a line end. */
    @Override
    public void close() {
        try {
            generator.writeEndObject();
            generator.writeRaw('\n');
            generator.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Json key(String key) {
        return put(JsonToken.FIELD_NAME, key);
    }

    /** Writes one token; its text where it has one. No lambda for each, since a short command comes this way. */
    private Json put(JsonToken token, @Nullable String text) {
        try {
            switch (token) {
                case START_OBJECT -> generator.writeStartObject();
                case END_OBJECT -> generator.writeEndObject();
                case START_ARRAY -> generator.writeStartArray();
                case END_ARRAY -> generator.writeEndArray();
                case FIELD_NAME -> generator.writeFieldName(text);
                case VALUE_STRING -> generator.writeString(text);
                case VALUE_TRUE -> generator.writeBoolean(true);
                case VALUE_FALSE -> generator.writeBoolean(false);
                case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> generator.writeNumber(text);
                default -> throw new IllegalArgumentException(token.toString());
            }
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
