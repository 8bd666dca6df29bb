package org.fizzhull;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.File;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.module.ModuleFinder;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.apache.commons.math3.util.FastMath;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.fizzhull.shape.factory.Shapes;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The library as a module of an embedder: a consumer module is compiled against it and run in a layer of its own. */
class ModulePathTest {
    private static final List<Class<?>> LIBRARIES =
            List.of(Shapes.class, FastMath.class, DMatrixRMaj.class, CommonOps_DDRM.class);

    /** Asks for a draft, a forecast and an ingredient: hydrostatics, the libraries behind it, a resource of the module. */
    private static final String CONSUMER = """
            package consumer;

            import static org.fizzhull.quantity.Units.celsius;
            import static org.fizzhull.quantity.Units.grams;
            import static org.fizzhull.quantity.Units.millimetres;

            import org.fizzhull.answer.Answers;
            import org.fizzhull.forecast.FloatPredictor;
            import org.fizzhull.forecast.question.Question;
            import org.fizzhull.medium.Bath;
            import org.fizzhull.recipe.IngredientTable;
            import org.fizzhull.shape.Shape;
            import org.fizzhull.shape.factory.Shapes;

            public final class Consumer {
                public static double draft() {
                    Shape ball = Shapes.sphere(0.07);
                    Bath bath = Bath.at(celsius(38));
                    Question half = Question.still(ball, bath.density() * ball.volume() / 2).in(bath);
                    return FloatPredictor.standard().attitudes(half).get(0).draft();
                }

                public static double floats() {
                    Question ball = Question.still(Shapes.sphere(millimetres(65)), grams(100));
                    return Answers.of(FloatPredictor.standard().forecast(ball.in(Bath.at(celsius(38)))))
                            .number("/probability/floats_at_once")
                            .orElseThrow();
                }

                public static String ingredient() {
                    return IngredientTable.standard().require("kaolin").ingredient().name();
                }
            }
            """;

    @TempDir
    private Path folder;

    @BeforeEach
    void moduleOfTheConsumer() throws IOException {
        Files.createDirectories(folder.resolve("src/consumer"));
        Files.writeString(
                folder.resolve("src/module-info.java"),
                "module consumer { requires org.fizzhull.core; exports consumer; }");
    }

    @Test
    void anEmbeddersModuleCompilesAndRuns() throws Exception {
        assertThat(compiled(CONSUMER)).isEmpty();

        var finder = ModuleFinder.of(modules(folder.resolve("out")));
        ModuleLayer boot = ModuleLayer.boot();
        var resolved = boot.configuration().resolve(finder, ModuleFinder.of(), Set.of("consumer"));
        ClassLoader loader = boot.defineModulesWithOneLoader(resolved, ClassLoader.getPlatformClassLoader())
                .findLoader("consumer");
        Class<?> consumer = loader.loadClass("consumer.Consumer");

        // half the water's density: half the volume lies below the centre (analytic)
        assertThat((double) consumer.getMethod("draft").invoke(null)).isCloseTo(0.035, within(1e-12));
        // 100 g in a ball of 143.8 cm3: 0.70 of the water's density, far above every error of scale and mould
        assertThat((double) consumer.getMethod("floats").invoke(null)).isEqualTo(1);
        assertThat(consumer.getMethod("ingredient").invoke(null)).isEqualTo("kaolin");
    }

    @Test
    void whatIsInsideTheLibraryIsNotSeen() throws Exception {
        String peeping = "package consumer; final class Consumer { org.fizzhull.numeric.BracketedRoot root; }";

        assertThat(compiled(peeping)).contains("package org.fizzhull.numeric is not visible");
    }

    /** What the compiler says of a consumer; nothing where it compiles. */
    private String compiled(String consumer) throws Exception {
        Path source = Files.writeString(folder.resolve("src/consumer/Consumer.java"), consumer);
        String path = Arrays.stream(modules()).map(Path::toString).collect(Collectors.joining(File.pathSeparator));
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        StringWriter said = new StringWriter();
        List<String> options = List.of(
                "--module-path", path, "-proc:none", "-d", folder.resolve("out").toString());
        try (var files = compiler.getStandardFileManager(null, null, null)) {
            var units = files.getJavaFileObjects(source, folder.resolve("src/module-info.java"));
            boolean good =
                    compiler.getTask(said, files, null, options, null, units).call();
            return good ? "" : said.toString();
        }
    }

    private static Path[] modules(Path... more) throws URISyntaxException {
        Path[] all = new Path[LIBRARIES.size() + more.length];
        for (int i = 0; i < LIBRARIES.size(); i++) {
            all[i] = Path.of(LIBRARIES
                    .get(i)
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
        }
        System.arraycopy(more, 0, all, LIBRARIES.size(), more.length);
        return all;
    }
}
