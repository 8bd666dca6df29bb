package org.fizzhull.cli.text;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import org.fizzhull.evidence.Interval;
import org.fizzhull.evidence.Notice;
import org.fizzhull.quantity.Decimals;
import org.jspecify.annotations.Nullable;

/**
 * Writes one JSON object as the contract has it: six significant digits, null for what is not known, never NaN. A key a
 * line, indented by two blanks; arrays run on.
 */
public final class Json implements AutoCloseable {
    /** Version of the contract. */
    public static final int SCHEMA = 1;

    private static final String HEX = "0123456789ABCDEF";

    private final PrintStream out;
    private final StringBuilder text = new StringBuilder(4096);
    private int depth;

    /** Whether nothing stands yet in the innermost object or array. */
    private boolean empty;

    private Json(PrintStream out) {
        this.out = out;
    }

    /** Opens the object of a command on a stream, which gets the whole text at {@link #close} and stays open. */
    public static Json open(PrintStream out, String command) {
        Json json = new Json(out);
        json.start('{');
        json.depth++;
        return json.whole("schema", SCHEMA).text("fizzhull", Version.TEXT).text("command", command);
    }

    /** Opens a nested object. */
    public Json object(String key) {
        key(key).start('{');
        depth++;
        return this;
    }

    /** Opens an object as an element of an array. */
    public Json object() {
        element().start('{');
        depth++;
        return this;
    }

    /** Ends the innermost object. */
    public Json end() {
        depth--;
        if (empty) {
            text.append(' ');
        } else {
            line();
        }
        text.append('}');
        empty = false;
        return this;
    }

    /** Opens an array. */
    public Json array(String key) {
        key(key).start('[');
        return this;
    }

    /** Ends the innermost array. */
    public Json endArray() {
        text.append(" ]");
        empty = false;
        return this;
    }

    /** A text, or null. */
    public Json text(String key, @Nullable String value) {
        key(key);
        if (value == null) {
            text.append("null");
        } else {
            quote(value);
        }
        return this;
    }

    /** Texts in a row. */
    public Json texts(String key, List<String> values) {
        array(key);
        for (String value : values) {
            element().quote(value);
        }
        return endArray();
    }

    /** A truth. */
    public Json flag(String key, boolean value) {
        key(key).text.append(value);
        return this;
    }

    /** A count. */
    public Json whole(String key, long value) {
        key(key).text.append(value);
        return this;
    }

    /** A number. */
    public Json number(String key, double value) {
        Decimals.append(key(key).text, value, Decimals.JSON_DIGITS);
        return this;
    }

    /** A number, or null where it is empty. */
    public Json number(String key, OptionalDouble value) {
        return value.isPresent() ? number(key, value.getAsDouble()) : nothing(key);
    }

    /** Numbers in a row. */
    public Json numbers(String key, double... values) {
        array(key);
        for (double value : values) {
            Decimals.append(element().text, value, Decimals.JSON_DIGITS);
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
        end();
        byte[] bytes = text.append('\n').toString().getBytes(StandardCharsets.UTF_8);
        out.write(bytes, 0, bytes.length);
    }

    private void start(char bracket) {
        text.append(bracket);
        empty = true;
    }

    private Json key(String key) {
        if (!empty) {
            text.append(',');
        }
        line();
        quote(key);
        text.append(" : ");
        empty = false;
        return this;
    }

    private Json element() {
        text.append(empty ? " " : ", ");
        empty = false;
        return this;
    }

    private void line() {
        text.append('\n');
        for (int i = 0; i < depth; i++) {
            text.append("  ");
        }
    }

    private void quote(String value) {
        text.append('"');
        for (int i = 0; i < value.length(); i++) {
            char c = value.charAt(i);
            switch (c) {
                case '"', '\\' -> text.append('\\').append(c);
                case '\n' -> text.append("\\n");
                case '\r' -> text.append("\\r");
                case '\t' -> text.append("\\t");
                case '\b' -> text.append("\\b");
                case '\f' -> text.append("\\f");
                default -> {
                    if (c < ' ') {
                        text.append("\\u00").append(HEX.charAt(c >> 4)).append(HEX.charAt(c & 15));
                    } else {
                        text.append(c);
                    }
                }
            }
        }
        text.append('"');
    }
}
