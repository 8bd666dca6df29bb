package org.fizzhull.cli;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** What may know what in the command line: a package imports only those named before it. */
class RoomsTest {
    private static final String ROOT = "org.fizzhull.cli.";

    /** From the bottom up; the classes of {@code org.fizzhull.cli} itself, which start the program, stand above all. */
    private static final List<String> ORDER = List.of(
            "text",
            "file",
            "picture",
            "page",
            "shell",
            "option",
            "shapes",
            "floating",
            "drying",
            "fizzing",
            "making",
            "deciding",
            "learning",
            "start",
            "stream",
            "program");

    private static final JavaClasses CLI = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("org.fizzhull.cli");

    @Test
    void packagesImportOnlyThoseBelowThem() {
        Set<String> breaches = new TreeSet<>();
        for (JavaClass type : CLI) {
            for (Dependency use : type.getDirectDependenciesFromSelf()) {
                JavaClass target = use.getTargetClass().getBaseComponentType();
                if (target.getName().startsWith(ROOT) && level(target) > level(type)) {
                    breaches.add(use.getDescription());
                }
            }
        }
        assertThat(breaches).isEmpty();
    }

    @Test
    void everyPackageHasItsPlaceInTheOrder() {
        Set<String> strangers = new TreeSet<>();
        for (JavaClass type : CLI) {
            if (level(type) < 0) {
                strangers.add(type.getPackageName());
            }
        }
        assertThat(strangers).isEmpty();
        assertThat(CLI.size()).as("classes of the command line seen").isGreaterThan(100);
    }

    @Test
    void noCircles() {
        slices().matching("org.fizzhull.cli.(*)..").should().beFreeOfCycles().check(CLI);
    }

    private static int level(JavaClass type) {
        String name = type.getPackageName();
        return name.startsWith(ROOT) ? ORDER.indexOf(name.substring(ROOT.length())) : ORDER.size();
    }
}
