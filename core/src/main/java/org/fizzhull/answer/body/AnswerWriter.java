package org.fizzhull.answer.body;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Consumer;
import org.fizzhull.answer.tree.AnswerSink;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.forecast.prior.Sampling;
import org.jspecify.annotations.Nullable;

/**
 * Writes an answer key by key: null for what is not known, an uncertain number as {@code {median, low, high}}, never NaN
 * nor infinity. Each call returns the writer itself, so that keys are written in a chain. Values go to an {@link AnswerSink}
 * as they come; nothing is kept.
 *
 * <pre>{@code
 * to.object("mould").number("volume_mL", 1e6 * volume).text("shape", shape.text()).end();
 * }</pre>
 */
public final class AnswerWriter {
    /** Grows when a key goes or changes its meaning. */
    public static final int SCHEMA = 1;

    /** Takes the tokens. */
    private final AnswerSink sink;

    /**
     * Continues in whatever object or array the sink has open.
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
     * @return this writer
     */
    public AnswerWriter object(String key) {
        sink.key(key);
        return object();
    }

    /**
     * Opens an object as an element of an array.
     *
     * @return this writer
     */
    public AnswerWriter object() {
        sink.startObject();
        return this;
    }

    /**
     * Writes a nested object, or null where there is nothing to tell.
     *
     * @param key its key
     * @param value what the object tells of, or empty
     * @param keys writes the keys of the value with this writer
     * @param <T> kind of the value
     * @return this writer
     */
    public <T> AnswerWriter object(String key, Optional<T> value, Consumer<? super T> keys) {
        if (value.isEmpty()) {
            return nothing(key);
        }
        object(key);
        keys.accept(value.get());
        return end();
    }

    /**
     * Writes an array of objects, one for each row.
     *
     * @param key key of the array
     * @param rows in their order
     * @param keys writes the keys of a row with this writer, whose innermost object is that of the row
     * @param <T> kind of the rows
     * @return this writer
     */
    public <T> AnswerWriter objects(String key, Iterable<T> rows, Consumer<? super T> keys) {
        array(key);
        for (T row : rows) {
            object();
            keys.accept(row);
            end();
        }
        return endArray();
    }

    /**
     * Ends the innermost object.
     *
     * @return this writer
     */
    public AnswerWriter end() {
        sink.endObject();
        return this;
    }

    /**
     * Opens an array.
     *
     * @param key its key
     * @return this writer
     */
    public AnswerWriter array(String key) {
        sink.key(key);
        sink.startArray();
        return this;
    }

    /**
     * Ends the innermost array.
     *
     * @return this writer
     */
    public AnswerWriter endArray() {
        sink.endArray();
        return this;
    }

    /**
     * Writes a text, or null.
     *
     * @param key its key
     * @param value the text, or null where there is none
     * @return this writer
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
     * Writes a text, or null where it is empty.
     *
     * @param key its key
     * @param value the text, or empty
     * @return this writer
     */
    public AnswerWriter text(String key, Optional<String> value) {
        return text(key, value.isPresent() ? value.get() : null);
    }

    /**
     * Writes a text, or null where it is blank: nothing is said.
     *
     * @param key its key
     * @param value the text, or blank
     * @return this writer
     */
    public AnswerWriter filled(String key, String value) {
        return text(key, value.isEmpty() ? null : value);
    }

    /**
     * Writes an array of texts.
     *
     * @param key key of the array
     * @param values in their order
     * @return this writer
     */
    public AnswerWriter texts(String key, List<String> values) {
        array(key);
        for (String value : values) {
            sink.text(value);
        }
        return endArray();
    }

    /**
     * Writes a boolean.
     *
     * @param key its key
     * @param value true or false
     * @return this writer
     */
    public AnswerWriter flag(String key, boolean value) {
        sink.key(key);
        sink.flag(value);
        return this;
    }

    /**
     * Writes a count.
     *
     * @param key its key
     * @param value whole number
     * @return this writer
     */
    public AnswerWriter whole(String key, long value) {
        sink.key(key);
        sink.whole(value);
        return this;
    }

    /**
     * Writes a count, or null where it is empty.
     *
     * @param key its key
     * @param value whole number, or empty
     * @return this writer
     */
    public AnswerWriter whole(String key, OptionalInt value) {
        return value.isPresent() ? whole(key, value.getAsInt()) : nothing(key);
    }

    /**
     * Writes the seed and the number of draws that an answer was computed with.
     *
     * @param sampling of the answer
     * @return this writer
     */
    public AnswerWriter draws(Sampling sampling) {
        return whole("seed", sampling.seed()).whole("samples", sampling.samples());
    }

    /**
     * Writes a number; minus zero becomes zero.
     *
     * @param key its key, which names the unit
     * @param value in the unit of the key, finite
     * @return this writer
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter number(String key, double value) {
        sink.key(key);
        sink.number(finite(key, value));
        return this;
    }

    /**
     * Writes a number, or null where it is empty.
     *
     * @param key its key, which names the unit
     * @param value in the unit of the key, finite, or empty
     * @return this writer
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter number(String key, OptionalDouble value) {
        return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
    }

    /**
     * Writes a number in another unit, or null where it is empty.
     *
     * @param key its key, which names the unit
     * @param value SI, finite, or empty
     * @param factor units of the key in one of the value: 1e3 for kg and a key in g
     * @return this writer
     * @throws IllegalArgumentException for NaN and infinities, by the name of the key
     */
    public AnswerWriter number(String key, OptionalDouble value, double factor) {
        return value.isPresent() ? number(key, factor * value.getAsDouble()) : nothing(key);
    }

    /**
     * Writes an array of numbers.
     *
     * @param key key of the array, which names the unit
     * @param values in the unit of the key, finite, in their order
     * @return this writer
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
     * Writes an uncertain number as an object of {@code median}, {@code low} and {@code high}.
     *
     * @param key its key, which names the unit
     * @param value in the unit of the key
     * @return this writer
     */
    public AnswerWriter interval(String key, Interval value) {
        return object(key).points(value).end();
    }

    /** The keys {@code median}, {@code low} and {@code high} of an uncertain number, in the unit of its object's key. */
    AnswerWriter points(Interval value) {
        return number("median", value.median()).number("low", value.low()).number("high", value.high());
    }

    /**
     * Writes an uncertain number in another unit, or null where it is empty.
     *
     * @param key its key, which names the unit
     * @param value SI, or empty
     * @param factor units of the key in one of the value
     * @return this writer
     */
    public AnswerWriter interval(String key, Optional<Interval> value, double factor) {
        return value.isPresent() ? interval(key, value.get().times(factor)) : nothing(key);
    }

    /**
     * Writes null: not known, or without meaning.
     *
     * @param key its key
     * @return this writer
     */
    public AnswerWriter nothing(String key) {
        sink.key(key);
        sink.nothing();
        return this;
    }

    /**
     * Writes the notices, last of their object, as an array of {@code code} and {@code text}.
     *
     * @param notices in their order
     * @return this writer
     */
    public AnswerWriter notices(List<Notice> notices) {
        return objects("notices", notices, notice -> text("code", notice.code()).text("text", notice.text()));
    }

    /** The number itself, never -0; refuses one that JSON cannot hold. */
    private static double finite(String key, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(key + " is " + value + ": what is not known is null, with a notice");
        }
        return value == 0 ? 0.0 : value; // never -0
    }
}
