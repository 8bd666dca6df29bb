package org.fizzhull.quantity;

import java.util.List;
import java.util.Objects;
import org.fizzhull.text.PrintableText;
import org.jspecify.annotations.Nullable;

/**
 * What the library says instead of guessing: one value could not be used. It names the field, what was read, what is
 * allowed and how to correct it, and, where the value came from a file, the place. Its message is all of that in a
 * sentence: {@code diameter: read 65; allowed is a length with a unit: mm, cm, m, in, ft or um. 65 has no unit; write
 * 65 mm or 6.5 cm.}
 *
 * <p>A refusal is an answer to bad input, never a sign of a fault inside the library; it is the one exception that the
 * person who gave the value can act on. Codes are stable words in kebab case ({@code unknown-unit}, {@code
 * out-of-range}). What it repeats of an input is shown by {@link PrintableText}: at most 200 characters, all of them to be seen.
 * Immutable.
 */
public final class Refusal extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** Room for a list of units or names. */
    private static final int LONGEST_SENTENCE = 600;

    /** Room for the path of a file, which a program may want to open. */
    private static final int PATH = 4096;

    /** Kind of mistake, a stable word in kebab case. */
    private final String code;
    /** Option, key or parameter that was read. */
    private final String field;
    /** What was read. */
    private final String read;
    /** What is allowed, in words. */
    private final String allowed;
    /** How to correct it, a whole sentence. */
    private final String hint;
    /** File the value came from; null for none. */
    private final @Nullable String file;
    /** Line in that file from 1; 0 for none. */
    private final int line;
    /** What else is wrong in the same file. */
    private final List<Refusal> others;

    /**
     * A refusal of a value that came from no file. Texts that are too long are cut, what cannot be seen is escaped.
     *
     * @param code stable code of the kind of mistake
     * @param field the option, key or parameter that was read; one without letters is shown in quotation marks
     * @param read the text or value that was read, as the person wrote it
     * @param allowed what would be accepted
     * @param hint how to correct it, a whole sentence; empty for no more than to give what is allowed
     */
    public Refusal(String code, String field, String read, String allowed, String hint) {
        this(
                Objects.requireNonNull(code, "code"),
                named(field),
                PrintableText.of(Objects.requireNonNull(read, "read")),
                PrintableText.of(Objects.requireNonNull(allowed, "allowed"), LONGEST_SENTENCE),
                mend(allowed, Objects.requireNonNull(hint, "hint")),
                null,
                0,
                List.of());
    }

    private Refusal(
            String code,
            String field,
            String read,
            String allowed,
            String hint,
            @Nullable String file,
            int line,
            List<Refusal> others) {
        super(sentence(field, read, allowed, hint, file, line));
        this.code = code;
        this.field = field;
        this.read = read;
        this.allowed = allowed;
        this.hint = hint;
        this.file = file;
        this.line = line;
        this.others = List.copyOf(others);
    }

    /**
     * {@return the same refusal, with the file and the line (counted from 1; 0 when the file has no lines) it came
     * from}
     *
     * @param inFile name of the file
     * @param atLine number of the line, from 1; 0 where the file has no lines
     */
    public Refusal at(String inFile, int atLine) {
        return new Refusal(
                code,
                field,
                read,
                allowed,
                hint,
                PrintableText.of(Objects.requireNonNull(inFile, "file"), PATH),
                atLine,
                others);
    }

    /**
     * {@return the same refusal under the name by which the person gave the value}
     *
     * @param otherField option, key or parameter that the person knows
     */
    public Refusal of(String otherField) {
        return new Refusal(code, named(otherField), read, allowed, hint, file, line, others);
    }

    /**
     * {@return the same refusal, and what else is wrong in the same file, so that all can be corrected at once}
     *
     * @param more the other refusals, in the order of their lines
     */
    public Refusal and(List<Refusal> more) {
        return new Refusal(code, field, read, allowed, hint, file, line, more);
    }

    /**
     * {@return what else is wrong in the same file, in the order of its lines; empty where nothing is known to be}
     */
    public List<Refusal> others() {
        return others;
    }

    /** {@return the stable code of the kind of mistake} */
    public String code() {
        return code;
    }

    /** {@return the option, key or parameter that was read} */
    public String field() {
        return field;
    }

    /** {@return what was read} */
    public String read() {
        return read;
    }

    /** {@return what is allowed} */
    public String allowed() {
        return allowed;
    }

    /** {@return how to correct it, a whole sentence; empty only where nothing is allowed} */
    public String hint() {
        return hint;
    }

    /** {@return the file the value came from, or null} */
    public @Nullable String file() {
        return file;
    }

    /** {@return the line in that file from 1, or 0} */
    public int line() {
        return line;
    }

    /** What has no name that can be seen, as a key of no letters in a file, stands in quotation marks. */
    private static String named(String field) {
        String shown = PrintableText.of(Objects.requireNonNull(field, "field"));
        return shown.isBlank() ? '"' + shown + '"' : shown;
    }

    /** The hint, or for none the plain one to give what is allowed. */
    private static String mend(String allowed, String hint) {
        String mend = hint.isBlank() && !allowed.isBlank() ? "Give " + allowed + "." : hint;
        return PrintableText.of(mend, LONGEST_SENTENCE);
    }

    /** The message. */
    private static String sentence(
            String field, String read, String allowed, String hint, @Nullable String file, int line) {
        StringBuilder text = new StringBuilder();
        if (file != null) {
            text.append(PrintableText.of(file));
            if (line > 0) {
                text.append(", line ").append(line);
            }
            text.append(": ");
        }
        text.append(field).append(": read ").append(read.isEmpty() ? "nothing" : read);
        if (!allowed.isEmpty()) {
            text.append("; allowed is ").append(allowed);
        }
        text.append('.');
        if (!hint.isEmpty()) {
            text.append(' ').append(hint);
        }
        return text.toString();
    }
}
