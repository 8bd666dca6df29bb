package org.fizzhull.answer.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import org.fizzhull.evidence.Interval;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.check.Given;
import org.fizzhull.text.NearName;
import org.jspecify.annotations.Nullable;

/**
 * An answer as a value: an object of ordered keys, below which stand objects, arrays, texts ({@code String}), booleans
 * ({@code Boolean}), counts ({@code Long}), numbers ({@code Double}) and null. Keys and units are those of the JSON of
 * the command line. Numbers have all digits of the double; {@link org.fizzhull.quantity.Decimals#json} writes the six of
 * the command line.
 *
 * <p>A place in the tree is named by a JSON pointer (RFC 6901): {@code /probability/floats_at_once}, {@code
 * /attitudes/0/draft_mm}. A pointer to a place that is not there, or whose value is of another kind than was asked for, is
 * refused with what stands there. Two trees are equal where keys and values are; the order of the keys does not count
 * (RFC 8259). Immutable.
 */
public final class AnswerTree {
    /** Unmodifiable maps and lists all the way down, in the order of the keys. */
    private final Map<String, @Nullable Object> object;

    private AnswerTree(Map<String, @Nullable Object> object) {
        this.object = object;
    }

    /**
     * {@return the whole object of an answer}
     *
     * @param answer writes the whole object to a sink, first token to last
     * @throws IllegalStateException where the object has not ended
     */
    public static AnswerTree of(Consumer<AnswerSink> answer) {
        Given.all("answer", answer);
        TreeBuilder builder = new TreeBuilder();
        answer.accept(builder);
        return new AnswerTree(builder.root());
    }

    /**
     * {@return the tree as maps and lists, in the order of the keys} Nothing in it can be changed. What a JSON, YAML or
     * template library takes; each object is a map of texts, each array a list.
     */
    public Map<String, @Nullable Object> toMap() {
        return object;
    }

    /** {@return the keys of this object, in their order} */
    public List<String> keys() {
        return List.copyOf(object.keySet());
    }

    /**
     * {@return the number or count at a place, in the unit of its key; empty where it is null}
     *
     * @param pointer JSON pointer to a number
     * @throws Refusal {@code unknown-key} for a place that is not there or holds another kind of value
     */
    public OptionalDouble number(String pointer) {
        Object value = value(pointer, "a number", Number.class);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(((Number) value).doubleValue());
    }

    /**
     * {@return the text at a place; empty where it is null}
     *
     * @param pointer JSON pointer to a text
     * @throws Refusal {@code unknown-key} for a place that is not there or holds another kind of value
     */
    public Optional<String> text(String pointer) {
        return Optional.ofNullable((String) value(pointer, "a text", String.class));
    }

    /**
     * {@return the boolean at a place; empty where it is null}
     *
     * @param pointer JSON pointer to a boolean
     * @throws Refusal {@code unknown-key} for a place that is not there or holds another kind of value
     */
    public Optional<Boolean> flag(String pointer) {
        return Optional.ofNullable((Boolean) value(pointer, "true or false", Boolean.class));
    }

    /**
     * {@return the uncertain number at a place, in the unit of its key; empty where it is null}
     *
     * @param pointer JSON pointer to an object with {@code median}, {@code low} and {@code high}
     * @throws Refusal {@code unknown-key} for a place that is not there or holds another kind of value
     */
    public Optional<Interval> interval(String pointer) {
        Optional<AnswerTree> points = object(pointer);
        return points.map(point -> new Interval(point.point("/median"), point.point("/low"), point.point("/high")));
    }

    /**
     * {@return the object at a place; empty where it is null}
     *
     * @param pointer JSON pointer to an object
     * @throws Refusal {@code unknown-key} for a place that is not there or holds another kind of value
     */
    public Optional<AnswerTree> object(String pointer) {
        return Optional.ofNullable(value(pointer, "an object", Map.class)).map(AnswerTree::ofObject);
    }

    /**
     * {@return the objects of an array, in their order; empty where it is null}
     *
     * @param pointer JSON pointer to an array of objects
     * @throws Refusal {@code unknown-key} for a place that is not there or holds another kind of value
     */
    public List<AnswerTree> rows(String pointer) {
        List<AnswerTree> rows = new ArrayList<>();
        Object array = value(pointer, "an array of objects", List.class);
        for (Object row : array == null ? List.of() : (List<?>) array) {
            if (!(row instanceof Map<?, ?>)) {
                throw refusal(pointer, "an array of " + kind(row), "an array of objects", "");
            }
            rows.add(ofObject(row));
        }
        return rows;
    }

    /**
     * {@return the value at a place: a text, boolean, count, number, map or list; null where it is null}
     *
     * @param pointer JSON pointer; the empty one is the whole tree
     * @throws Refusal {@code unknown-key} for a place that is not there
     */
    public @Nullable Object value(String pointer) {
        Objects.requireNonNull(pointer, "pointer");
        if (!pointer.isEmpty() && pointer.charAt(0) != '/') {
            throw refusal(pointer, pointer, "a JSON pointer, such as /probability/floats_at_once", "");
        }
        Object here = object;
        int from = 1;
        while (from <= pointer.length()) {
            int slash = pointer.indexOf('/', from);
            int to = slash < 0 ? pointer.length() : slash;
            here = below(here, pointer, from, to);
            from = to + 1;
        }
        return here;
    }

    /**
     * Writes the tree to a sink, in the order in which it was built.
     *
     * @param sink takes the tokens, first to last
     */
    public void write(AnswerSink sink) {
        walk(object, sink);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof AnswerTree tree && object.equals(tree.object);
    }

    @Override
    public int hashCode() {
        return object.hashCode();
    }

    @Override
    public String toString() {
        return object.toString();
    }

    /** Writes one value, and all below it. */
    private static void walk(@Nullable Object value, AnswerSink sink) {
        if (value instanceof Map<?, ?> map) {
            sink.startObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                sink.key((String) entry.getKey());
                walk(entry.getValue(), sink);
            }
            sink.endObject();
        } else if (value instanceof List<?> list) {
            sink.startArray();
            for (Object element : list) {
                walk(element, sink);
            }
            sink.endArray();
        } else if (value instanceof Long whole) {
            sink.whole(whole);
        } else if (value instanceof Double number) {
            sink.number(number);
        } else if (value instanceof Boolean flag) {
            sink.flag(flag);
        } else if (value == null) {
            sink.nothing();
        } else {
            sink.text((String) value);
        }
    }

    /** A map of this tree as a tree of its own. */
    @SuppressWarnings("unchecked") // every map below was put together by the builder
    private static AnswerTree ofObject(Object map) {
        return new AnswerTree((Map<String, @Nullable Object>) map);
    }

    /** A number that an interval always has. */
    private double point(String pointer) {
        return number(pointer).orElseThrow();
    }

    /** The value at a place, null or of one kind; refuses another kind in the words of {@code wanted}. */
    private @Nullable Object value(String pointer, String wanted, Class<?> kind) {
        Object value = value(pointer);
        if (value != null && !kind.isInstance(value)) {
            throw refusal(pointer, kind(value), wanted, "");
        }
        return value;
    }

    /** The value one level down; the token between the two places is the key, or the index in an array. */
    private static @Nullable Object below(@Nullable Object here, String pointer, int from, int to) {
        String token = pointer.substring(from, to).replace("~1", "/").replace("~0", "~");
        String whole = pointer.substring(0, to);
        if (here instanceof Map<?, ?> map) {
            if (!map.containsKey(token)) {
                List<String> keys = map.keySet().stream().map(String::valueOf).toList();
                throw refusal(whole, whole, NearName.list(keys, "or"), NearName.hint(token, keys));
            }
            return map.get(token);
        }
        if (here instanceof List<?> list) {
            boolean index = token.matches("0|[1-9][0-9]{0,8}");
            if (!index || Integer.parseInt(token) >= list.size()) {
                throw refusal(whole, whole, "an index below " + list.size(), "The first row is 0.");
            }
            return list.get(Integer.parseInt(token));
        }
        throw refusal(whole, kind(here) + " above it", "a place below an object or an array", "");
    }

    private static Refusal refusal(String pointer, String read, String allowed, String hint) {
        return new Refusal("unknown-key", pointer.isEmpty() ? "pointer" : pointer, read, allowed, hint);
    }

    /** The kind of a value, in words for a refusal. */
    private static String kind(@Nullable Object value) {
        return value == null
                ? "null"
                : value instanceof Map
                        ? "an object"
                        : value instanceof List
                                ? "an array"
                                : value instanceof String
                                        ? "a text"
                                        : value instanceof Boolean ? "true or false" : "a number";
    }
}
