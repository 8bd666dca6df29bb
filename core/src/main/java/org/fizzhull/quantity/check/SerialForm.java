package org.fizzhull.quantity.check;

import java.io.InvalidObjectException;
import java.io.ObjectStreamException;
import java.io.Serializable;
import java.lang.reflect.Constructor;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What a record with optional components is written as, by engines that ship values from one machine to another: its
 * class and its components, the optional ones opened, since {@link Optional} itself is not serializable. Reading goes
 * through the record's own constructor and so through its checks: a stream that was altered cannot make a record that
 * the constructor would refuse.
 * <pre>{@code
 * public record Weighed(double mass, Optional<Interval> spread) implements Serializable {
 *     private Object writeReplace() {
 *         return SerialForm.of(this);
 *     }
 * }
 * }</pre>
 *
 * <p>Range: records of this library, public or not; {@link Optional} and {@link OptionalDouble} components. Cost: reflection once each way.
 * Immutable.
 */
public final class SerialForm implements Serializable {
    private static final long serialVersionUID = 1;

    /** Class of the record. */
    private final Class<?> type;
    /** Its components in order, an empty optional as null. */
    private final @Nullable Object[] values;

    private SerialForm(Class<?> type, @Nullable Object[] values) {
        this.type = type;
        this.values = values;
    }

    /**
     * {@return what a record is written as}
     *
     * @param value a record whose components are serializable, or optional and hold what is
     * @throws IllegalStateException for a record whose components cannot be read
     */
    public static Object of(Record value) {
        RecordComponent[] components = value.getClass().getRecordComponents();
        @Nullable Object[] values = new @Nullable Object[components.length];
        try {
            for (int i = 0; i < components.length; i++) {
                Method accessor = components[i].getAccessor();
                accessor.setAccessible(true);
                Object held = accessor.invoke(value);
                values[i] = held instanceof Optional<?> some
                        ? some.orElse(null)
                        : held instanceof OptionalDouble some ? (some.isPresent() ? some.getAsDouble() : null) : held;
            }
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException("a record that cannot be read: " + value.getClass(), e);
        }
        return new SerialForm(value.getClass(), values);
    }

    /** The record again, through its constructor; refuses what the constructor refuses. */
    private Object readResolve() throws ObjectStreamException {
        RecordComponent[] components = type.getRecordComponents();
        if (components == null || components.length != values.length) {
            throw new InvalidObjectException("no record of " + values.length + " components: " + type);
        }
        // components as the constructor takes them, the optional ones closed again
        Class<?>[] types = new Class<?>[components.length];
        @Nullable Object[] held = new @Nullable Object[components.length];
        for (int i = 0; i < components.length; i++) {
            types[i] = components[i].getType();
            Object value = values[i];
            held[i] = types[i] == Optional.class
                    ? Optional.ofNullable(value)
                    : types[i] == OptionalDouble.class
                            ? (value == null ? OptionalDouble.empty() : OptionalDouble.of((Double) value))
                            : value;
        }
        try {
            Constructor<?> canonical = type.getDeclaredConstructor(types);
            canonical.setAccessible(true);
            return canonical.newInstance(held);
        } catch (ReflectiveOperationException | RuntimeException e) {
            InvalidObjectException refused = new InvalidObjectException("refused by " + type);
            refused.initCause(e);
            throw refused;
        }
    }
}
