package org.fizzhull.answer.tree;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;

/** Builds the maps and lists of a tree from its tokens; what has ended can no longer be changed. */
final class TreeBuilder implements AnswerSink {
    /** An object or array that has begun and not ended. */
    private static final class Open {
        /** Null for an array. */
        final @Nullable Map<String, @Nullable Object> object;

        /** Elements so far; unused in an object. */
        final List<@Nullable Object> array = new ArrayList<>();

        /** Key of the next value of an object, null where none is announced. */
        @Nullable
        String key;

        Open(@Nullable Map<String, @Nullable Object> object) {
            this.object = object;
        }
    }

    /** Open objects and arrays, the innermost first. */
    private final Deque<Open> open = new ArrayDeque<>();
    /** The outermost value once it has ended. */
    private @Nullable Object root;

    /**
     * {@return the object that was written}
     *
     * @throws IllegalStateException where it has not ended
     */
    @SuppressWarnings("unchecked") // every object is put together below
    Map<String, @Nullable Object> root() {
        if (!open.isEmpty() || !(root instanceof Map<?, ?> object)) {
            throw new IllegalStateException("the object has not ended: " + open.size() + " levels are open");
        }
        return (Map<String, @Nullable Object>) object;
    }

    @Override
    public void startObject() {
        open.push(new Open(new LinkedHashMap<>()));
    }

    @Override
    public void endObject() {
        put(Collections.unmodifiableMap(Objects.requireNonNull(open.pop().object, "an array is open")));
    }

    @Override
    public void startArray() {
        open.push(new Open(null));
    }

    @Override
    public void endArray() {
        put(Collections.unmodifiableList(open.pop().array));
    }

    @Override
    public void key(String key) {
        Open innermost = open.element();
        Map<String, @Nullable Object> object = Objects.requireNonNull(innermost.object, "an array has no keys");
        if (object.containsKey(key)) {
            throw new IllegalStateException("the key " + key + " stands twice");
        }
        innermost.key = key;
    }

    @Override
    public void text(String value) {
        put(Objects.requireNonNull(value, "text"));
    }

    @Override
    public void whole(long value) {
        put(value);
    }

    @Override
    public void number(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a number of an answer is finite: " + value);
        }
        put(value);
    }

    @Override
    public void flag(boolean value) {
        put(value);
    }

    @Override
    public void nothing() {
        put(null);
    }

    /** Adds a value to the innermost object or array. */
    private void put(@Nullable Object value) {
        if (open.isEmpty()) {
            root = value;
            return;
        }
        Open innermost = open.element();
        if (innermost.object == null) {
            innermost.array.add(value);
        } else {
            innermost.object.put(Objects.requireNonNull(innermost.key, "a value without a key"), value);
            innermost.key = null;
        }
    }
}
