package org.fizzhull.answer.tree;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.jspecify.annotations.Nullable;

/**
 * Writes an answer key by key: null for what is not known, an uncertain number as {@code {median, low, high}}, never NaN
 * nor infinity. Each call returns the writer itself. Adds nothing of its own to what the sink costs.
 */
public final class AnswerWriter {
    /** Grows when a key goes or changes its meaning. */
    public static final int SCHEMA = 1;

    private final AnswerSink sink;

    /**
     * A writer into whatever the sink has open.
     *
     * @param sink takes the tokens
     */
    public AnswerWriter(AnswerSink sink) {
        this.sink = Objects.requireNonNull(sink, "sink");
    }

    /**
     * {@return a writer whose object has begun with {@code schema}, {@code fizzhull} and {@code command}}
     *
     * @param sink takes the tokens
     * @param command the question that is answered
     */
    public static AnswerWriter open(AnswerSink sink, String command) {
        sink.startObject();
        return new AnswerWriter(sink)
                .whole("schema", SCHEMA)
                .text("fizzhull", Version.TEXT)
                .text("command", command);
    }

    /**
     * Opens a nested object.
     *
     * @param key its key
     */
    public AnswerWriter object(String key) {
        sink.key(key);
        return object();
    }

    /** Opens an object as an element of an array. */
    public AnswerWriter object() {
        sink.startObject();
        return this;
    }

    /** Ends the innermost object. */
    public AnswerWriter end() {
        sink.endObject();
        return this;
    }

    /**
     * Opens an array.
     *
     * @param key its key
     */
    public AnswerWriter array(String key) {
        sink.key(key);
        sink.startArray();
        return this;
    }

    /** Ends the innermost array. */
    public AnswerWriter endArray() {
        sink.endArray();
        return this;
    }

    /**
     * A text, or null.
     *
     * @param key its key
     * @param value the text
     */
    public AnswerWriter text(String key, @Nullable String value) {
        sink.key(key);
        if (value == null) {
            sink.nothing();
        } else {
            sink.text(value);
        }
        return this;
    }

    /**
     * A text, or null where there is none.
     *
     * @param key its key
     * @param value the text
     */
    public AnswerWriter text(String key, Optional<String> value) {
        return text(key, value.isPresent() ? value.get() : null);
    }

    /**
     * Texts in a row.
     *
     * @param key of the array
     * @param values in their order
     */
    public AnswerWriter texts(String key, List<String> values) {
        array(key);
        for (String value : values) {
            sink.text(value);
        }
        return endArray();
    }

    /**
     * A truth.
     *
     * @param key its key
     * @param value true or false
     */
    public AnswerWriter flag(String key, boolean value) {
        sink.key(key);
        sink.flag(value);
        return this;
    }

    /**
     * A count.
     *
     * @param key its key
     * @param value whole number
     */
    public AnswerWriter whole(String key, long value) {
        sink.key(key);
        sink.whole(value);
        return this;
    }

    /**
     * A number.
     *
     * @param key its key, which names the unit
     * @param value finite
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter number(String key, double value) {
        sink.key(key);
        sink.number(finite(key, value));
        return this;
    }

    /**
     * A number, or null where it is empty.
     *
     * @param key its key, which names the unit
     * @param value finite, or empty
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter number(String key, OptionalDouble value) {
        return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
    }

    /**
     * A number in another unit, or null where it is empty.
     *
     * @param key its key, which names the unit
     * @param value finite, or empty
     * @param factor units of the key in one of the value
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter number(String key, OptionalDouble value, double factor) {
        return value.isPresent() ? number(key, factor * value.getAsDouble()) : nothing(key);
    }

    /**
     * Numbers in a row.
     *
     * @param key of the array
     * @param values finite, in their order
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter numbers(String key, double... values) {
        array(key);
        for (double value : values) {
            sink.number(finite(key, value));
        }
        return endArray();
    }

    /**
     * An uncertain number.
     *
     * @param key its key, which names the unit
     * @param value in that unit
     */
    public AnswerWriter interval(String key, Interval value) {
        return object(key)
                .number("median", value.median())
                .number("low", value.low())
                .number("high", value.high())
                .end();
    }

    /**
     * An uncertain number in another unit, or null where it is empty.
     *
     * @param key its key, which names the unit
     * @param value or empty
     * @param factor units of the key in one of the value
     */
    public AnswerWriter interval(String key, Optional<Interval> value, double factor) {
        return value.isPresent() ? interval(key, value.get().times(factor)) : nothing(key);
    }

    /**
     * Null: not known, or without meaning.
     *
     * @param key its key
     */
    public AnswerWriter nothing(String key) {
        sink.key(key);
        sink.nothing();
        return this;
    }

    /**
     * The notices, last of their object.
     *
     * @param notices in their order
     */
    public AnswerWriter notices(List<Notice> notices) {
        array("notices");
        for (Notice notice : notices) {
            object().text("code", notice.code()).text("text", notice.text()).end();
        }
        return endArray();
    }

    private static double finite(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(key + " is " + value + ": what is not known is null, with a notice");
        }
        return value == 0 ? 0.0 : value; // never -0
    }
}
