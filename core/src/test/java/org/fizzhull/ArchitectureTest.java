package org.fizzhull;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/**
 * What may know what. The table is the design's own: each package and the packages it may import. A line names only
 * lines above it ({@code all}: whichever of them), so there is no circle; every package may also use {@code text}, {@code quantity}
 * and {@code quantity.check}.
 */
class ArchitectureTest {
    private static final String ROOT = "org.fizzhull.";

    private static final String TABLE = """
            text                  ->
            quantity              ->
            quantity.check        ->
            numeric               ->
            evidence              ->
            answer.tree           -> evidence
            uncertainty           -> numeric
            geometry              ->
            mesh                  ->
            mesh.measure          -> geometry mesh
            mesh.distance         -> uncertainty geometry mesh mesh.measure
            mesh.cutting          -> geometry mesh mesh.measure mesh.distance
            mesh.hollow           -> uncertainty geometry mesh mesh.measure mesh.distance
            mesh.uniting          -> mesh mesh.measure mesh.distance
            mesh.repair           -> evidence geometry mesh mesh.measure mesh.distance mesh.uniting
            mesh.reading          -> evidence geometry mesh mesh.measure mesh.repair
            evidence.published    -> evidence
            medium.relation       -> evidence.published
            medium                -> evidence evidence.published medium.relation
            shape                 -> evidence geometry
            shape.body            -> evidence geometry mesh mesh.measure mesh.distance mesh.cutting mesh.hollow
            shape.size            ->
            shape.meshed          -> evidence uncertainty geometry mesh mesh.measure mesh.distance mesh.cutting mesh.hollow mesh.repair shape shape.body shape.size
            shape.revolved        -> numeric evidence geometry shape shape.body shape.size
            shape.kind            -> geometry mesh shape shape.body shape.size shape.revolved
            shape.factory         -> shape shape.kind
            shape.load            -> evidence geometry shape shape.size
            shape.listing         ->
            shape.text            -> shape shape.size shape.meshed shape.kind shape.listing
            recipe                -> evidence evidence.published
            recipe.change         -> recipe
            batch                 -> evidence recipe recipe.change
            piece                 -> shape recipe
            hydrostatics          -> numeric geometry shape
            pressing              -> evidence geometry shape
            pressing.powder       -> evidence evidence.published recipe pressing
            drying.mix            -> evidence.published recipe pressing.powder
            drying.factor         -> geometry shape
            drying.place          -> geometry evidence.published medium shape drying.factor
            drying.solver         -> numeric geometry recipe pressing.powder drying.mix drying.place
            drying                -> evidence evidence.published shape piece
            fizz.gas              -> evidence evidence.published recipe
            fizz                  -> evidence evidence.published medium.relation medium recipe fizz.gas
            voyage.result         -> evidence evidence.published
            voyage                -> numeric evidence geometry evidence.published medium.relation medium shape shape.kind shape.load recipe piece hydrostatics fizz.gas fizz voyage.result
            uncertainty.sampling  -> numeric uncertainty
            forecast.prior        -> all
            forecast.making       -> all
            drying.run            -> evidence evidence.published medium shape recipe piece pressing.powder drying.mix drying.place drying.solver drying
            forecast.limit        -> all
            forecast.draw         -> all
            forecast.maker        -> all
            forecast.question     -> all
            forecast.result       -> all
            forecast.attitude     -> all
            forecast.prepared     -> all
            forecast.model        -> all
            forecast.measured     -> all
            forecast.conditioning -> all
            forecast.notice       -> all
            forecast              -> all
            forecast.joint        -> all
            chain                 -> all
            decide                -> all
            decide.compare        -> all
            decide.advise         -> all
            decide.why            -> all
            learn.fit             ->
            learn                 -> all
            decide.effect         -> all
            answer.body           -> all
            answer                -> all
            """;

    private static final Map<String, Set<String>> MAY_IMPORT = table();
    private static final Set<String> IN_EVERY_HAND = Set.of("text", "quantity", "quantity.check");

    private static final JavaClasses CORE = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.fizzhull");

    @Test
    void eachLineOfTheTableNamesOnlyLinesAboveIt() {
        List<String> above = new ArrayList<>();
        MAY_IMPORT.forEach((name, allowed) -> {
            assertThat(above).as("what %s may import", name).containsAll(allowed);
            above.add(name);
        });
    }

    @Test
    void everyPackageStandsInTheTable() {
        Set<String> strangers = new TreeSet<>();
        for (JavaClass type : CORE) {
            if (!MAY_IMPORT.containsKey(packageOf(type))) {
                strangers.add(type.getName());
            }
        }
        assertThat(strangers).isEmpty();
        assertThat(CORE.size()).as("classes of core seen").isGreaterThan(10);
    }

    @Test
    void packagesImportOnlyWhatTheTableAllows() {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass type : CORE) {
            String from = packageOf(type);
            for (Dependency use : type.getDirectDependenciesFromSelf()) {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (target.getName().startsWith(ROOT) && !mayUse(from, target)) {
                    breaches.add(from + " -> " + packageOf(target) + ": " + use.getDescription());
                }
            }
        }
        assertThat(breaches).isEmpty();
    }

    @Test
    void noCircles() {
        slices().matching("org.fizzhull.(**)").should().beFreeOfCycles().check(CORE);
    }

    @Test
    void everyPackageIntroducesItselfAndIsNullMarked() {
        Set<String> silent = new TreeSet<>();
        for (JavaClass type : CORE) {
            boolean marked = type.getPackage()
                    .tryGetPackageInfo()
                    .map(info -> info.isAnnotatedWith(NullMarked.class))
                    .orElse(false);
            if (!marked) {
                silent.add(type.getPackageName());
            }
        }
        assertThat(silent).as("packages without a @NullMarked package-info").isEmpty();
    }

    @Test
    void filesScreensAndThreadsStayOutside() {
        noClasses()
                .should()
                .dependOnClassesThat(named(
                        "files, screens, threads, hidden chance or the world's clock",
                        name -> name.startsWith("java.io.File")
                                || name.equals("java.io.RandomAccessFile")
                                || name.equals("java.io.Console")
                                || name.startsWith("java.nio.file.")
                                // an open file may be handed in as a channel
                                || (name.startsWith("java.nio.channels.")
                                        && !name.equals("java.nio.channels.SeekableByteChannel"))
                                || name.startsWith("java.net.")
                                || name.startsWith("java.awt.")
                                // the streaming parser reads what is handed in
                                || (name.startsWith("javax.") && !name.startsWith("javax.xml.stream."))
                                || name.equals("java.lang.Thread")
                                || name.equals("java.lang.Process")
                                || name.equals("java.lang.ProcessBuilder")
                                || name.equals("java.lang.Runtime")
                                || name.equals("java.util.concurrent.Executors")
                                || name.equals("java.util.concurrent.ForkJoinPool")
                                || name.equals("java.util.concurrent.ThreadLocalRandom")
                                || name.equals("java.util.Timer")
                                || name.equals("java.util.Random")
                                || name.equals("java.util.Date")
                                || name.equals("java.util.Calendar")
                                || name.equals("java.time.Clock")))
                .check(CORE);
    }

    @Test
    void nothingReadsTheClockTheLocaleOrTheMachine() {
        noClasses()
                .should()
                .accessTargetWhere(
                        new DescribedPredicate<JavaAccess<?>>(
                                "it reads System, a clock, chance or the locale of the machine") {
                            @Override
                            public boolean test(JavaAccess<?> access) {
                                return reachesOut(access);
                            }
                        })
                .check(CORE);
    }

    @Test
    void differentialEquationsOfCommonsMathStayInNumeric() {
        noClasses()
                .that()
                .resideOutsideOfPackage("org.fizzhull.numeric..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("org.apache.commons.math3.ode..")
                .check(CORE);
    }

    /** Calls whose answer depends on the day or the machine; the forms that take a Locale.ROOT or a Charset may stay. */
    private static boolean reachesOut(JavaAccess<?> access) {
        String owner = access.getTargetOwner().getName();
        String name = access.getTarget().getName();
        String signature = access.getTarget() instanceof CodeUnitCallTarget call
                ? call.getRawParameterTypes().stream()
                        .map(JavaClass::getSimpleName)
                        .toList()
                        .toString()
                : "";
        return switch (owner) {
            case "java.lang.System" -> !name.equals("arraycopy") && !name.equals("identityHashCode");
            case "java.lang.Math", "java.lang.StrictMath" -> name.equals("random");
            case "java.util.Locale" -> name.equals("getDefault");
            case "java.lang.String" ->
                (name.equals("format") && !signature.startsWith("[Locale"))
                        || name.equals("formatted")
                        || ((name.equals("toLowerCase") || name.equals("toUpperCase") || name.equals("getBytes"))
                                && signature.equals("[]"));
            case "java.text.DecimalFormat", "java.text.NumberFormat" ->
                !signature.contains("Locale")
                        && !signature.contains("DecimalFormatSymbols")
                        && (name.equals("<init>") || (name.startsWith("get") && name.endsWith("Instance")));
            default -> owner.startsWith("java.time.") && name.equals("now");
        };
    }

    private static boolean mayUse(String from, JavaClass target) {
        String to = packageOf(target);
        return to.equals(from)
                || IN_EVERY_HAND.contains(to)
                || MAY_IMPORT.getOrDefault(from, Set.of()).contains(to);
    }

    /** Name below the root: {@code shape.kind}. */
    private static String packageOf(JavaClass type) {
        return type.getPackageName()
                .substring(Math.min(ROOT.length(), type.getPackageName().length()));
    }

    private static Map<String, Set<String>> table() {
        Map<String, Set<String>> table = new LinkedHashMap<>();
        TABLE.lines().forEach(line -> {
            String[] sides = line.split("->", -1);
            String allowed = sides[1].trim();
            Set<String> above = Set.copyOf(table.keySet());
            table.put(
                    sides[0].trim(),
                    allowed.equals("all") ? above : allowed.isEmpty() ? Set.of() : Set.of(allowed.split(" ")));
        });
        return table;
    }

    private static DescribedPredicate<JavaClass> named(String words, Predicate<String> test) {
        return DescribedPredicate.describe(
                words, type -> test.test(type.getBaseComponentType().getName()));
    }
}
