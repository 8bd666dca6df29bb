package org.fizzhull;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.GenericArrayType;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.lang.reflect.TypeVariable;
import java.lang.reflect.WildcardType;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.fizzhull.quantity.Refusal;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * What a stranger may use is what the module exports, and no more: the number of offered types is held, and no signature of
 * one of them leads to a type that is not offered. Nested types count with the type that they stand in.
 */
class OfferedTypesTest {
    private static final String ROOT = "org.fizzhull.";

    /** Offered types of each exported package. More is a decision: it makes the library harder to learn and to change. */
    private static final String OFFERED = """
            answer 1
            answer.tree 2
            chain 3
            decide 3
            decide.advise 3
            decide.compare 3
            decide.why 5
            drying 1
            drying.place 4
            evidence 3
            fizz.gas 2
            forecast 11
            forecast.making 5
            forecast.measured 7
            forecast.prior 5
            forecast.question 2
            forecast.result 6
            geometry 7
            learn 5
            medium 2
            mesh 1
            mesh.reading 2
            piece 1
            pressing 3
            quantity 9
            recipe 13
            shape 1
            shape.factory 1
            shape.load 3
            shape.meshed 1
            shape.text 2
            uncertainty 3
            voyage.result 1
            """;

    private static final Pattern EXAMPLE = Pattern.compile("<pre>\\{@code\n(.*?)}</pre>", Pattern.DOTALL);
    private static final Pattern NAMED = Pattern.compile("(?<![\\w.])([A-Z]\\w*)(?:\\.(\\w+))?");
    private static final Set<String> JDK =
            Set.of("List", "Map", "Optional", "Math", "String", "Path", "Files", "System", "Locale", "Duration");

    private static final Set<String> EXPORTED = new HashSet<>();
    private static final List<Class<?>> TYPES = new ArrayList<>();

    @BeforeAll
    static void readTheModule() throws IOException, ClassNotFoundException, URISyntaxException {
        Matcher exports = Pattern.compile("exports ([\\w.]+);")
                .matcher(Files.readString(Path.of("src/main/java/module-info.java")));
        while (exports.find()) {
            EXPORTED.add(exports.group(1));
        }
        Path classes = Path.of(Refusal.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI());
        for (JavaClass type : new ClassFileImporter().importPath(classes)) {
            if (EXPORTED.contains(type.getPackageName())
                    && !type.getSimpleName().endsWith("-info")) {
                Class<?> reflected = Class.forName(type.getName(), false, OfferedTypesTest.class.getClassLoader());
                if (isOffered(reflected)) {
                    TYPES.add(reflected);
                }
            }
        }
        assertThat(TYPES).as("offered types seen").hasSizeGreaterThan(100);
    }

    @Test
    void asManyAsTheTableSays() {
        Map<String, Integer> counted = new TreeMap<>();
        for (Class<?> type : TYPES) {
            if (type.getEnclosingClass() == null) {
                counted.merge(type.getPackageName().substring(ROOT.length()), 1, Integer::sum);
            }
        }
        String table = counted.entrySet().stream()
                .map(entry -> entry.getKey() + " " + entry.getValue() + "\n")
                .collect(Collectors.joining());
        assertThat(table).isEqualTo(OFFERED);
        assertThat(counted.keySet().stream().map(ROOT::concat)).containsExactlyInAnyOrderElementsOf(EXPORTED);
    }

    /** DEVELOPERS.md tells the number as a rule. */
    @Test
    void fewerThanTheRuleSays() throws IOException {
        Matcher rule = Pattern.compile("fewer than (\\d+) offered types")
                .matcher(Files.readString(Path.of("../DEVELOPERS.md")));
        assertThat(rule.find()).isTrue();
        assertThat(TYPES.stream()
                        .filter(type -> type.getEnclosingClass() == null)
                        .count())
                .isLessThan(Long.parseLong(rule.group(1)));
    }

    @Test
    void noOfferedSignatureLeadsToAHiddenType() {
        Set<String> breaches = new TreeSet<>();
        for (Class<?> type : TYPES) {
            look(type, "extends", type.getGenericSuperclass(), breaches);
            for (Class<?> base : type.getInterfaces()) {
                // one that its package keeps to itself cannot be named by anybody
                if (Modifier.isPublic(base.getModifiers())) {
                    look(type, "implements", base, breaches);
                }
            }
            for (Constructor<?> made : type.getDeclaredConstructors()) {
                if (isSeen(made.getModifiers()) && !made.isSynthetic()) {
                    Stream.of(made.getGenericParameterTypes()).forEach(taken -> look(type, "new", taken, breaches));
                }
            }
            for (Method method : type.getDeclaredMethods()) {
                if (isSeen(method.getModifiers()) && !method.isSynthetic() && !isOfHiddenInterface(type, method)) {
                    look(type, method.getName(), method.getGenericReturnType(), breaches);
                    Stream.of(method.getGenericParameterTypes())
                            .forEach(taken -> look(type, method.getName(), taken, breaches));
                }
            }
            for (Field field : type.getDeclaredFields()) {
                if (isSeen(field.getModifiers()) && !field.isSynthetic()) {
                    look(type, field.getName(), field.getGenericType(), breaches);
                }
            }
        }
        assertThat(breaches).isEmpty();
    }

    /** The examples in the comments of offered packages name offered types, or those of the JDK, and methods that are there. */
    @Test
    void examplesNameWhatIsOffered() throws IOException {
        Map<String, Class<?>> known = new TreeMap<>();
        TYPES.forEach(type -> known.put(type.getSimpleName(), type));
        Set<String> breaches = new TreeSet<>();
        int examples = 0;
        for (String exported : EXPORTED) {
            try (Stream<Path> files = Files.list(Path.of("src/main/java", exported.split("\\.")))) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    Matcher example = EXAMPLE.matcher(Files.readString(file));
                    while (example.find()) {
                        examples++;
                        Matcher named = NAMED.matcher(example.group(1).replaceAll("\"[^\"]*\"|//[^\n]*", ""));
                        while (named.find()) {
                            if (!isThere(known.get(named.group(1)), named.group(1), named.group(2))) {
                                breaches.add(file.getFileName() + ": " + named.group());
                            }
                        }
                    }
                }
            }
        }
        assertThat(breaches).isEmpty();
        assertThat(examples).isGreaterThan(10);
    }

    /** Whether a type is known and has a static member of a name, where one is named. */
    private static boolean isThere(@Nullable Class<?> type, String name, @Nullable String member) {
        if (type == null) {
            return JDK.contains(name);
        }
        return member == null
                || Stream.of(type.getMethods())
                        .anyMatch(method -> method.getName().equals(member))
                || Stream.of(type.getFields()).anyMatch(field -> field.getName().equals(member))
                || Stream.of(type.getClasses())
                        .anyMatch(nested -> nested.getSimpleName().equals(member));
    }

    /** Adds what a type in a signature leads to and is not offered. */
    private static void look(Class<?> in, String member, Type type, Set<String> breaches) {
        Set<Class<?>> named = new HashSet<>();
        collect(type, named, new HashSet<>());
        for (Class<?> one : named) {
            boolean ours = one.getName().startsWith(ROOT);
            if (ours && !(EXPORTED.contains(one.getPackageName()) && isOffered(one))) {
                breaches.add(in.getName() + "#" + member + " -> " + one.getName());
            }
        }
    }

    private static void collect(Type type, Set<Class<?>> named, Set<Type> seen) {
        if (type == null || !seen.add(type)) {
            return;
        }
        if (type instanceof Class<?> plain) {
            named.add(plain.isArray() ? innermost(plain) : plain);
        } else if (type instanceof ParameterizedType generic) {
            collect(generic.getRawType(), named, seen);
            Stream.of(generic.getActualTypeArguments()).forEach(part -> collect(part, named, seen));
        } else if (type instanceof GenericArrayType array) {
            collect(array.getGenericComponentType(), named, seen);
        } else if (type instanceof WildcardType any) {
            Stream.of(any.getUpperBounds()).forEach(part -> collect(part, named, seen));
            Stream.of(any.getLowerBounds()).forEach(part -> collect(part, named, seen));
        } else if (type instanceof TypeVariable<?> variable) {
            Stream.of(variable.getBounds()).forEach(part -> collect(part, named, seen));
        }
    }

    private static Class<?> innermost(Class<?> array) {
        return array.isArray() ? innermost(array.getComponentType()) : array;
    }

    private static boolean isSeen(int modifiers) {
        return Modifier.isPublic(modifiers) || Modifier.isProtected(modifiers);
    }

    /** Whether a method is public only because an interface that the package keeps to itself asks for it. */
    private static boolean isOfHiddenInterface(Class<?> type, Method method) {
        return Stream.of(type.getInterfaces())
                .filter(base -> !Modifier.isPublic(base.getModifiers()))
                .flatMap(base -> Stream.of(base.getDeclaredMethods()))
                .anyMatch(asked -> asked.getName().equals(method.getName())
                        && List.of(asked.getParameterTypes()).equals(List.of(method.getParameterTypes())));
    }

    /** Whether it and what it stands in are public. */
    private static boolean isOffered(Class<?> type) {
        for (Class<?> outer = type; outer != null; outer = outer.getEnclosingClass()) {
            if (!Modifier.isPublic(outer.getModifiers())) {
                return false;
            }
        }
        return !type.isAnonymousClass() && !type.isLocalClass();
    }
}
