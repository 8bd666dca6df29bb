package org.fizzhull.validation.speed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Setup;

/** Calls every benchmark of this package once with its first parameters, so that none of them rots. Times nothing. */
class SpeedTest {
    @TestFactory
    List<DynamicTest> everyBenchmarkRuns() throws Exception {
        List<DynamicTest> calls = new ArrayList<>();
        for (Class<?> speed : classes()) {
            int before = calls.size();
            for (Method method : speed.getMethods()) {
                if (method.isAnnotationPresent(Benchmark.class)) {
                    String name = speed.getSimpleName() + "." + method.getName();
                    calls.add(dynamicTest(name, () -> meaningful(method.invoke(prepared(speed)))));
                }
            }
            assertThat(calls.size()).as("benchmarks of " + speed).isGreaterThan(before);
        }
        return calls;
    }

    /** Every class of this package that is called a speed. */
    private static List<Class<?>> classes() throws Exception {
        List<Class<?>> found = new ArrayList<>();
        Path folder =
                Path.of(SpeedTest.class.getResource("SpeedTest.class").toURI()).getParent();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith("Speed.class")) {
                    found.add(Class.forName(
                            SpeedTest.class.getPackageName() + "." + name.substring(0, name.length() - 6)));
                }
            }
        }
        assertThat(found).isNotEmpty();
        return found;
    }

    private static Object prepared(Class<?> speed) throws Exception {
        Object state = speed.getConstructor().newInstance();
        for (Field field : speed.getFields()) {
            Param param = field.getAnnotation(Param.class);
            if (param != null) {
                field.set(state, read(param.value()[0], field.getType()));
            }
        }
        for (Method method : speed.getMethods()) {
            if (method.isAnnotationPresent(Setup.class)) {
                method.invoke(state);
            }
        }
        return state;
    }

    private static Object read(String text, Class<?> type) {
        return switch (type.getSimpleName().toLowerCase(Locale.ROOT)) {
            case "int" -> Integer.valueOf(text);
            case "double" -> Double.valueOf(text);
            default -> text;
        };
    }

    /** A benchmark returns what it computed, or the machine would be free to leave the work out. */
    private static void meaningful(Object answer) {
        assertThat(answer).isNotNull();
        if (answer instanceof Double number) {
            assertThat(number).isFinite();
        } else if (answer instanceof double[] numbers) {
            assertThat(numbers).isNotEmpty().doesNotContain(Double.NaN);
        } else if (answer instanceof List<?> list) {
            assertThat(list).isNotEmpty();
        }
    }
}
