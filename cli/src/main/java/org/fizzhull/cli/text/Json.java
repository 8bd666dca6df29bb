package org.fizzhull.cli.text;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.jspecify.annotations.Nullable;

/** Writes one JSON object as the contract has it: six significant digits, null for what is not known, never NaN. */
public final class Json implements AutoCloseable {
    /** Version of the contract. */
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

    /** Opens a nested object. */
    public Json object(String key) {
        return did(() -> generator.writeObjectFieldStart(key));
    }

    /** Opens an object as an element of an array. */
    public Json object() {
        return did(generator::writeStartObject);
    }

    /** Ends the innermost object. */
    public Json end() {
        return did(generator::writeEndObject);
    }

    /** Opens an array. */
    public Json array(String key) {
        return did(() -> generator.writeArrayFieldStart(key));
    }

    /** Ends the innermost array. */
    public Json endArray() {
        return did(generator::writeEndArray);
    }

    /** A text, or null. */
    public Json text(String key, @Nullable String value) {
        return did(() -> generator.writeStringField(key, value));
    }

    /** Texts in a row. */
    public Json texts(String key, List<String> values) {
        return did(() -> {
            generator.writeArrayFieldStart(key);
            for (String value : values) {
                generator.writeString(value);
            }
            generator.writeEndArray();
        });
    }

    /** A truth. */
    public Json flag(String key, boolean value) {
        return did(() -> generator.writeBooleanField(key, value));
    }

    /** A count. */
    public Json whole(String key, long value) {
        return did(() -> generator.writeNumberField(key, value));
    }

    /** A number. */
    public Json number(String key, double value) {
        return did(() -> {
            generator.writeFieldName(key);
            generator.writeNumber(Decimals.json(value));
        });
    }

    /** A number, or null where it is empty. */
    public Json number(String key, OptionalDouble value) {
        return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
    }

    /** Numbers in a row. */
    public Json numbers(String key, double... values) {
        return did(() -> {
            generator.writeArrayFieldStart(key);
            for (double value : values) {
                generator.writeNumber(Decimals.json(value));
            }
            generator.writeEndArray();
        });
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
        return did(() -> generator.writeNullField(key));
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
        did(() -> {
            generator.writeEndObject();
            generator.writeRaw('\n');
            generator.close();
        });
    }

    private Json did(Write write) {
        try {
            write.run();
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A write that may fail. */
    private interface Write {
        void run() throws IOException;
    }
}
