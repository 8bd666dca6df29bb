package org.fizzhull.doors;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.WildcardType;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.fizzhull.quantity.Refusal;

/**
 * The doors of the library: constructors, factories and methods with arguments of the public types of its exported packages.
 * A record that no method takes, on its own or inside another, is an answer or a part of one: nobody hands it in, so its
 * constructor is no door.
 */
final class LibraryDoors {
    private final List<Class<?>> types = new ArrayList<>();
    private final Set<Class<?>> taken = new LinkedHashSet<>();

    LibraryDoors() throws IOException, URISyntaxException, ClassNotFoundException {
        Path classes = Path.of(Refusal.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        Set<String> exported = exported();
        List<String> names;
        try (Stream<Path> files = Files.walk(classes)) {
            names = files.filter(file -> file.toString().endsWith(".class"))
                    .map(file -> classes.relativize(file).toString().replace('/', '.'))
                    .map(name -> name.substring(0, name.length() - ".class".length()))
                    .filter(name -> !name.endsWith("-info"))
                    .sorted()
                    .toList();
        }
        for (String name : names) {
            Class<?> type = Class.forName(name);
            if (exported.contains(type.getPackageName()) && isOpen(type)) {
                types.add(type);
            }
        }
        taken();
    }

    /** Packages that the module exports, from its declaration. */
    private static Set<String> exported() throws IOException {
        Set<String> exported = new LinkedHashSet<>();
        for (String line : Files.readAllLines(Path.of("src/main/java/module-info.java"))) {
            if (line.strip().startsWith("exports ")) {
                exported.add(line.strip().substring("exports ".length()).replace(";", ""));
            }
        }
        return exported;
    }

    /** Public types, in the order of their names. */
    List<Class<?>> types() {
        return types;
    }

    /** Doors with at least one argument, in the order of their types. */
    List<Executable> doors() {
        List<Executable> doors = new ArrayList<>();
        for (Class<?> type : types) {
            if (!type.isRecord() || taken.contains(type)) {
                doors.addAll(List.of(type.getConstructors()));
            }
            for (Method method : type.getDeclaredMethods()) {
                boolean ownWord = method.getName().equals("equals")
                        || (type.isEnum() && method.getName().equals("valueOf"));
                if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic() && !ownWord) {
                    doors.add(method);
                }
            }
        }
        doors.removeIf(door -> door.getParameterCount() == 0);
        doors.sort((a, b) -> a.toGenericString().compareTo(b.toGenericString()));
        return doors;
    }

    /** Whether it and what it stands in are public. */
    private static boolean isOpen(Class<?> type) {
        for (Class<?> outer = type; outer != null; outer = outer.getEnclosingClass()) {
            if (!Modifier.isPublic(outer.getModifiers())) {
                return false;
            }
        }
        return true;
    }

    /** What methods take, and what the constructors of that take, and so on. */
    private void taken() {
        for (Class<?> type : types) {
            // the package of answers takes what the library made
            boolean answers = type.getPackageName().startsWith("org.fizzhull.answer");
            for (Method method : type.getDeclaredMethods()) {
                if (Modifier.isPublic(method.getModifiers()) && !method.isSynthetic() && !answers) {
                    Stream.of(method.getGenericParameterTypes()).forEach(this::take);
                }
            }
        }
        int before = 0;
        while (taken.size() > before) {
            before = taken.size();
            for (Class<?> type : types) {
                if (taken.contains(type) || Stream.of(type.getInterfaces()).anyMatch(taken::contains)) {
                    taken.add(type);
                    for (Constructor<?> made : type.getConstructors()) {
                        Stream.of(made.getGenericParameterTypes()).forEach(this::take);
                    }
                }
            }
        }
    }

    private void take(Type type) {
        if (type instanceof ParameterizedType generic) {
            take(generic.getRawType());
            Stream.of(generic.getActualTypeArguments()).forEach(this::take);
        } else if (type instanceof WildcardType any) {
            Stream.of(any.getUpperBounds()).forEach(this::take);
            Stream.of(any.getLowerBounds()).forEach(this::take);
        } else if (type instanceof Class<?> plain) {
            taken.add(plain.isArray() ? plain.getComponentType() : plain);
        }
    }
}
