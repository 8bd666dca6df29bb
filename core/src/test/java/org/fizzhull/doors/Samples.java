package org.fizzhull.doors;

import java.lang.reflect.Array;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.Executor;
import org.jspecify.annotations.Nullable;

/**
 * Valid arguments: values of the library gathered from a few answers by calling every method without arguments, a handful of
 * each type, and common numbers and texts.
 */
final class Samples {
    private static final int OF_EACH = 4;
    private static final double[] NUMBERS = {
        0.5, 0.05, 1, 0.01, 0.001, 300, 20, 2, 1000, 1e-4, 0.9, 0.1, 1e4, 3600, 0, 1e-7, -1, 30e3, 60, 1e5
    };
    private static final int[] WHOLES = {1, 2, 3, 0, 5, 16, 128, 10, 100};
    private static final String[] TEXTS = {
        "x", "sphere(diameter=65 mm)", "20 g", "mass", "65 mm", "kaolin", "sodium bicarbonate", "2 cups", "1 h"
    };

    private final Map<Class<?>, List<Object>> pool = new LinkedHashMap<>();
    private final Set<Object> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    /** Gathers what can be reached from a value. */
    void gather(Object root) {
        Deque<Object> next = new ArrayDeque<>(List.of(root));
        while (!next.isEmpty()) {
            Object value = next.poll();
            if (value instanceof Optional<?> some) {
                some.ifPresent(next::add);
            } else if (value instanceof Map<?, ?> map) {
                map.entrySet().stream().limit(3).forEach(entry -> {
                    next.add(entry.getKey());
                    next.add(entry.getValue());
                });
            } else if (value instanceof Collection<?> many) {
                many.stream().limit(OF_EACH).forEach(next::add);
            } else if (isOurs(value.getClass()) && seen.add(value) && keep(value)) {
                parts(value, next);
            }
        }
    }

    private static boolean isOurs(Class<?> type) {
        return type.getName().startsWith("org.fizzhull.") && !type.isSynthetic();
    }

    /** Keeps a value under each of its types; false where there are enough of its class. */
    private boolean keep(Object value) {
        if (pool.getOrDefault(value.getClass(), List.of()).size() >= OF_EACH) {
            return false;
        }
        Deque<Class<?>> types = new ArrayDeque<>(List.of(value.getClass()));
        while (!types.isEmpty()) {
            Class<?> type = types.poll();
            List<Object> held = pool.computeIfAbsent(type, none -> new ArrayList<>());
            if (held.size() < OF_EACH && held.stream().noneMatch(other -> other == value)) {
                held.add(value);
            }
            types.addAll(List.of(type.getInterfaces()));
            if (type.getSuperclass() != null && isOurs(type.getSuperclass())) {
                types.add(type.getSuperclass());
            }
        }
        return true;
    }

    /** What the methods without arguments give. */
    private static void parts(Object value, Deque<Object> next) {
        for (Method method : value.getClass().getMethods()) {
            boolean plain = method.getParameterCount() == 0
                    && !Modifier.isStatic(method.getModifiers())
                    && !method.getReturnType().isPrimitive()
                    && method.getDeclaringClass() != Object.class
                    && !Set.of("toString", "iterator", "stream").contains(method.getName());
            if (plain) {
                try {
                    method.setAccessible(true);
                    Object part = method.invoke(value);
                    if (part != null) {
                        next.add(part);
                    }
                } catch (IllegalAccessException | InvocationTargetException | RuntimeException none) {
                    // nothing to gather here, such as the form of a question of still water
                }
            }
        }
    }

    /** The values of a type. */
    List<Object> of(Class<?> type) {
        return type.isEnum() ? List.of(type.getEnumConstants()) : pool.getOrDefault(type, List.of());
    }

    /** A valid argument, as far as its type tells; null where there is none. */
    @Nullable
    Object argument(Type type, Random random) {
        if (type instanceof ParameterizedType generic) {
            return generic(generic, random);
        }
        if (type == double.class || type == Double.class) {
            return NUMBERS[random.nextInt(NUMBERS.length)];
        } else if (type == int.class) {
            return WHOLES[random.nextInt(WHOLES.length)];
        } else if (type == long.class) {
            return (long) WHOLES[random.nextInt(WHOLES.length)];
        } else if (type == boolean.class) {
            return random.nextBoolean();
        } else if (type == String.class) {
            return TEXTS[random.nextInt(TEXTS.length)];
        } else if (type == OptionalDouble.class) {
            return OptionalDouble.of(NUMBERS[random.nextInt(NUMBERS.length)]);
        } else if (type == double[].class) {
            return new double[] {1, 2, 3};
        } else if (type == int[].class) {
            return new int[] {0, 1, 2};
        } else if (type == Executor.class) {
            return (Executor) Runnable::run;
        } else if (type instanceof Class<?> plain
                && plain.isArray()
                && plain.getComponentType().isEnum()) {
            Object one = Array.newInstance(plain.getComponentType(), 1);
            Array.set(one, 0, plain.getComponentType().getEnumConstants()[0]);
            return one;
        }
        return type instanceof Class<?> plain ? any(of(plain), random) : null;
    }

    private @Nullable Object generic(ParameterizedType type, Random random) {
        Type first = type.getActualTypeArguments()[0];
        if (first instanceof WildcardType wild) {
            first = wild.getLowerBounds().length > 0 ? wild.getLowerBounds()[0] : wild.getUpperBounds()[0];
        }
        Object one = argument(first, random);
        Object raw = type.getRawType();
        if (raw == List.class || raw == Collection.class) {
            return one == null ? List.of() : List.of(one);
        } else if (raw == Set.class) {
            return one == null ? Set.of() : Set.of(one);
        } else if (raw == Optional.class) {
            return Optional.ofNullable(one);
        } else if (raw == Map.class) {
            Object value = argument(type.getActualTypeArguments()[1], random);
            return one == null || value == null ? Map.of() : Map.of(one, value);
        }
        return null;
    }

    /** One of them; null where there is none. */
    static @Nullable Object any(List<?> values, Random random) {
        return values.isEmpty() ? null : values.get(random.nextInt(values.size()));
    }
}
