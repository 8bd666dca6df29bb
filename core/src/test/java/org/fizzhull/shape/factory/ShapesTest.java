package org.fizzhull.shape.factory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.fizzhull.quantity.Units.grams;
import static org.fizzhull.quantity.Units.millimetres;

import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;

/** The factories give what the same sizes as text give, size by size, and every kind that needs no file has one. */
class ShapesTest {
    /** Every factory beside its text, whose sizes stand under their names (cli/docs/contract.md); all sizes differ. */
    private static final Map<String, Shape> BY_TEXT = Map.ofEntries(
            Map.entry("sphere(diameter=65 mm)", Shapes.sphere(millimetres(65))),
            Map.entry("sphere(diameter=65 mm, seam=2 mm)", Shapes.sphere(millimetres(65), millimetres(2))),
            Map.entry("dome(diameter=80 mm)", Shapes.dome(millimetres(80))),
            Map.entry("dome(diameter=80 mm, height=35 mm)", Shapes.dome(millimetres(80), millimetres(35))),
            Map.entry("bowl(diameter=90 mm, wall=15 mm)", Shapes.bowl(millimetres(90), millimetres(15))),
            Map.entry(
                    "geode(diameter=80 mm, wall=14 mm, crystals=20 g)",
                    Shapes.geode(millimetres(80), millimetres(14), grams(20))),
            Map.entry("puck(diameter=70 mm, height=30 mm)", Shapes.puck(millimetres(70), millimetres(30))),
            Map.entry(
                    "puck(diameter=70 mm, height=30 mm, edge=4 mm)",
                    Shapes.puck(millimetres(70), millimetres(30), millimetres(4))),
            Map.entry("egg(length=70 mm, diameter=50 mm)", Shapes.egg(millimetres(70), millimetres(50))),
            Map.entry("ring(diameter=90 mm, tube=30 mm)", Shapes.ring(millimetres(90), millimetres(30))),
            Map.entry(
                    "block(length=60 mm, width=40 mm, height=30 mm)",
                    Shapes.block(millimetres(60), millimetres(40), millimetres(30))),
            Map.entry(
                    "block(length=60 mm, width=40 mm, height=30 mm, edge=4 mm)",
                    Shapes.block(millimetres(60), millimetres(40), millimetres(30), millimetres(4))),
            Map.entry("cone(diameter=60 mm, height=70 mm)", Shapes.cone(millimetres(60), millimetres(70))),
            Map.entry(
                    "cone(diameter=60 mm, height=70 mm, top=20 mm)",
                    Shapes.cone(millimetres(60), millimetres(70), millimetres(20))),
            Map.entry("capsule(length=80 mm, diameter=40 mm)", Shapes.capsule(millimetres(80), millimetres(40))),
            Map.entry(
                    "star(points=5, diameter=80 mm, inner=45 mm, height=30 mm)",
                    Shapes.star(5, millimetres(80), millimetres(45), millimetres(30))),
            Map.entry("heart(width=70 mm, height=28 mm)", Shapes.heart(millimetres(70), millimetres(28))),
            Map.entry("filled(water=143 g, like=shell)", Shapes.filled(grams(143), "shell")));

    @Test
    void eachGivesWhatItsTextSays() {
        BY_TEXT.forEach((text, shape) -> assertThat(shape).as(text).isEqualTo(ShapeText.read(text)));
    }

    /** The list of kinds is what {@code shapes} prints; those that need a file have no factory here. */
    @Test
    void everyKindHasOne() {
        List<String> factories = Stream.of(Shapes.class.getDeclaredMethods())
                .filter(method -> Modifier.isPublic(method.getModifiers()))
                .map(Method::getName)
                .toList();
        Set<String> kinds = new TreeSet<>();
        ShapeKinds.all().stream().map(ShapeKind::name).forEach(kinds::add);
        assertThat(new TreeSet<>(factories)).isEqualTo(kinds);
        assertThat(BY_TEXT).as("texts beside factories").hasSameSizeAs(factories);
    }

    /** 4/3 pi r^3, and half of it: any table of solids. */
    @Test
    void lengthsAreMetres() {
        assertThat(Shapes.sphere(0.065).volume()).isCloseTo(Math.PI * Math.pow(0.065, 3) / 6, within(1e-15));
        assertThat(Shapes.dome(0.08).volume()).isCloseTo(Math.PI * Math.pow(0.08, 3) / 12, within(1e-15));
    }

    @Test
    void whatIsOutOfRangeIsRefused() {
        assertThatThrownBy(() -> Shapes.sphere(65)).isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> Shapes.filled(grams(143), "shel"))
                .isInstanceOf(Refusal.class)
                .hasMessageContaining("shell");
    }
}
