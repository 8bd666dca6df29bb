package org.fizzhull.doors;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.Executable;
import java.lang.reflect.Method;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Hollow;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.quantity.Measures;
import org.fizzhull.recipe.IngredientTable;
import org.fizzhull.recipe.Recipe;
import org.fizzhull.recipe.RecipeBuilder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Doors that take arrays of numbers, tried with what is no number or too many in them. Expected by definition of a refusal. */
class ArrayDoorsTest {
    private static final double[] FALLING = {1, 0.5, 0};
    private static final int[] FACETS = {0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3};

    /** Corners of a tetrahedron, the number at one place replaced. */
    private static double[] corners(double x) {
        return new double[] {0, 0, 0, x, 0, 0, 0, 1, 0, 0, 0, 1};
    }

    static Stream<Arguments> doors() {
        TriangleMesh whole = new TriangleMesh(corners(1), FACETS);
        Recipe recipe = new RecipeBuilder(IngredientTable.standard(), Measures.US_LEGAL)
                .dry("sodium bicarbonate", "300 g +- 5 g")
                .wet("water", "4 g")
                .build();
        return Stream.of(Double.NaN, Double.POSITIVE_INFINITY)
                .flatMap(bad -> Stream.<ThrowingCallable>of(
                                () -> new TriangleMesh(corners(bad), FACETS),
                                () -> TriangleMesh.compact(corners(bad), FACETS),
                                () -> whole.moved(new double[][] {{1, 0, 0}, {0, bad, 0}, {0, 0, 1}}, new double[3]),
                                () -> whole.moved(
                                        new double[][] {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}}, new double[] {0, bad, 0}),
                                () -> recipe.shifted(new double[] {bad, 0}),
                                () -> new DepthProfile(new double[] {0, bad, 1}, FALLING, FALLING, 1),
                                () -> new DepthProfile(new double[] {0, 0.5, 1}, new double[] {1, bad, 0}, FALLING, 1),
                                () -> DepthProfile.falling(
                                        new double[] {0, 0.5, 1}, new double[] {1, bad, 0}, FALLING, 1),
                                () -> new Hollow.Rim.Corners(new double[] {0, 0, 1, 0, bad, 1}))
                        .map(door -> Arguments.of(door)));
    }

    @ParameterizedTest
    @MethodSource("doors")
    void refuseWhatIsNoNumber(ThrowingCallable door) {
        assertThatThrownBy(door).isInstanceOf(IllegalArgumentException.class);
    }

    /** A new door of the kind belongs into the cases above. */
    @Test
    void areThese() throws Exception {
        Set<String> taking = new TreeSet<>();
        for (Executable door : new LibraryDoors().doors()) {
            if (Stream.of(door.getParameterTypes()).anyMatch(type -> type == double[].class)) {
                String type = door.getDeclaringClass().getSimpleName();
                taking.add(door instanceof Method ? type + " " + door.getName() : type);
            }
        }
        assertThat(taking)
                .isEqualTo(new TreeSet<>(Set.of(
                        "Corners",
                        "DepthProfile",
                        "DepthProfile falling",
                        "TriangleMesh",
                        "TriangleMesh compact",
                        "TriangleMesh moved",
                        "Recipe shifted",
                        // of draws alone: an answer's own columns, and what a prior of the caller is asked with
                        "Fit deviation",
                        "Prior quantile")));
    }
}
