package org.fizzhull.shape.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.fizzhull.quantity.Refusal;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Bowl;
import org.fizzhull.shape.kind.Capsule;
import org.fizzhull.shape.kind.Cone;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Egg;
import org.fizzhull.shape.kind.Filled;
import org.fizzhull.shape.kind.Geode;
import org.fizzhull.shape.kind.Heart;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Ring;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.kind.Star;
import org.fizzhull.shape.listing.ShapeKind;
import org.fizzhull.shape.listing.ShapeKinds;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shape text of the command line contract, and what is said of text that is none. */
class ShapeTextTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "ball(diameter=65mm); sphere(diameter=65 mm)",
                "half( diameter = 6.5 cm ); dome(diameter=65 mm)",
                "dome(diameter=80 mm, height=40 mm); dome(diameter=80 mm)",
                "cube(side=50 mm); block(length=50 mm, width=50 mm, height=50 mm)",
                "cube(length=2 in, edge=4 mm); block(length=50.8 mm, width=50.8 mm, height=50.8 mm, edge=4 mm)",
                "doughnut(tube=30 mm, diameter=90 mm); ring(diameter=90 mm, tube=30 mm)",
                "tablet(diameter=70 mm, height=30 mm, edge=0 mm); puck(diameter=70 mm, height=30 mm)",
                "Sphere(Diameter=2 1/2 in); sphere(diameter=63.5 mm)",
                "filled(water=143 g, like=\"Sphere\"); filled(water=143 g, like=sphere)",
                "cone(diameter=60 mm, height=70 mm, top=0 mm); cone(diameter=60 mm, height=70 mm)"
            })
    void readsWhatPeopleWrite(String text, String canonical) {
        assertThat(ShapeText.read(text).text()).isEqualTo(canonical);
    }

    @Test
    void readsTheExampleOfEveryKind() {
        for (ShapeKind kind : ShapeKinds.all()) {
            assertThat(ShapeText.read(kind.example()).kind()).isEqualTo(kind.name());
            assertThat(ShapeText.read(kind.usage().replace("[", "").replace("]", ""))
                            .kind())
                    .isEqualTo(kind.name());
            assertThat(kind.sentence()).endsWith(".");
        }
        assertThat(ShapeKinds.all().get(0).usage()).isEqualTo("sphere(diameter=65 mm[, seam=2 mm])");
        assertThat(ShapeKinds.all()).hasSize(13);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "''; missing-value; shape; Name a shape.",
                "sphere; not-a-shape; shape; Put its sizes in parentheses: sphere(diameter=65 mm).",
                "puck 70 mm; not-a-shape; shape; puck(diameter=70 mm, height=30 mm)",
                "shpere(diameter=65 mm); unknown-shape; shape; Did you mean sphere?",
                "pyramid(side=65 mm); unknown-shape; shape; one of sphere, dome, bowl",
                "(diameter=65 mm); unknown-shape; shape; one of sphere",
                "sphere(diameter=65 mm; unbalanced; shape; Close the parenthesis",
                "sphere(diameter=(65 mm)); unbalanced; shape; A second (",
                "filled(water=3 g, like=\"dome); unbalanced; shape; A double quote is opened",
                "sphere(diameter=65 mm) x; extra-text; shape; Nothing may follow",
                "sphere(); missing-key; shape: diameter; Add diameter, as in sphere(diameter=65 mm).",
                "bowl(diameter=90 mm); missing-key; shape: wall; wall, wall thickness",
                "sphere(65 mm); missing-key; shape; Say what 65 mm measures: sphere(diameter=65 mm).",
                "sphere(diameter: 65 mm); missing-key; shape; Write diameter=65 mm.",
                "sphere(diameter=6,5 cm); comma-decimal; shape: diameter; Write 6.5 cm, with a point.",
                "puck(diameter=772.1,50 mm,height=30 mm); comma-decimal; shape: diameter; one decimal sign, a point.",
                "sphere(65); missing-key; shape; Say what 65 measures: sphere(diameter=65 mm).",
                "sphere(diameter=65 mm,); not-a-shape; shape; nothing is written",
                "sphere(diameter=65 mm, diameter=66 mm); repeated-key; shape: diameter; each parameter once",
                "sphere(diametre=65 mm); unknown-key; shape: diametre; Did you mean diameter?",
                "sphere(radius=65 mm); unknown-key; shape: radius; diameter and seam of a sphere",
                "cube(side=50 mm, width=40 mm); unknown-key; shape: width; With unequal sides it is a block(",
                "cube(length=50 mm, side=40 mm); unknown-key; shape: length; side and edge of a cube",
                "sphere(diameter=65); missing-unit; shape: diameter; 65 mm",
                "sphere(diameter=65 g); wrong-dimension; shape: diameter; a length",
                "sphere(diameter=); missing-value; shape: diameter; Write a number and a unit",
                "sphere(diameter=60 to 65 mm); spread-not-allowed; shape: diameter; Write one value",
                "star(points=5.5, diameter=80 mm, inner=45 mm, height=30 mm); not-a-number; shape: points; whole number",
                "star(points=2, diameter=80 mm, inner=45 mm, height=30 mm); out-of-range; shape: points; 3 to 24",
                "filled(water=143 g, like=spehre); unknown-family; shape: like; Did you mean sphere?",
                "mesh(file=\"a (thin), thing.stl\", unit=mm); no-files; shape: file; ShapeFiles",
                "revolved(file=profile.csv); no-files; shape: file; ShapeFiles"
            })
    void refusesWithAMend(String text, String code, String field, String says) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> ShapeText.read(text));
        assertThat(refusal).as(text).isNotNull();
        assertThat(refusal.code()).isEqualTo(code);
        assertThat(refusal.field()).isEqualTo(field);
        assertThat(refusal.getMessage()).contains(says).doesNotContain("null");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "sphere(diameter=0.065 mm); diameter; Did you mean 65 mm?",
                "cube(side=5 m); side; Did you mean",
                "filled(water=0 g, like=dome); water; 1 g to 20000 g",
                "sphere(diameter=65 m); diameter; Did you mean 65 mm?",
                "sphere(diameter=-65 mm); diameter; Did you mean 65 mm?",
                "sphere(diameter=65 mm, seam=70 mm); seam; Did you mean 7 mm? A longer body is a capsule",
                "dome(diameter=80 mm, height=45 mm); height; A taller body is an egg",
                "bowl(diameter=90 mm, wall=48 mm); wall; between 0 mm and 45 mm for a bowl of diameter 90 mm. Did you mean 4.8 mm?",
                "bowl(diameter=90 mm, wall=45 mm); wall; Without a hollow it is a dome",
                "bowl(diameter=90 mm, wall=0 mm); wall; between 0 mm and 45 mm",
                "geode(diameter=80 mm, wall=14 mm, crystals=400 g); crystals; Did you mean 40 g?",
                "geode(diameter=80 mm, wall=14 mm, crystals=0 g); crystals; bowl(diameter=..., wall=...)",
                "puck(diameter=70 mm, height=30 mm, edge=16 mm); edge; 0 mm to 15 mm for a smallest side of 30 mm",
                "egg(length=50 mm, diameter=70 mm); diameter; An egg is at least as long as it is wide.",
                "ring(diameter=90 mm, tube=50 mm); tube; 1 mm to 45 mm",
                "block(length=60 mm, width=40 mm, height=30 mm, edge=15.1 mm); edge; 0 mm to 15 mm",
                "cone(diameter=60 mm, height=70 mm, top=61 mm); top; Turn it over",
                "capsule(length=30 mm, diameter=80 mm); diameter; counts its round ends",
                "star(points=5, diameter=80 mm, inner=90 mm, height=30 mm); inner; circle through the notches",
                "heart(width=70 mm, height=2800 mm); height; Did you mean 280 mm?",
                "filled(water=143 kg, like=dome); water; Did you mean 143 g?"
            })
    void refusesSizesWithAMend(String text, String key, String says) {
        Refusal refusal = catchThrowableOfType(Refusal.class, () -> ShapeText.read(text));
        assertThat(refusal).as(text).isNotNull();
        assertThat(refusal.code()).isEqualTo("out-of-range");
        assertThat(refusal.field()).isEqualTo("shape: " + key);
        assertThat(refusal.getMessage()).contains(says);
    }

    /** Embedders hand in doubles: not-a-number must not slip through any factory. */
    @Test
    void notANumberIsRefused() {
        double nan = Double.NaN;
        Runnable[] makers = {
            () -> Sphere.ofDiameter(nan),
            () -> Sphere.ofDiameterAndSeam(0.06, nan),
            () -> Dome.ofDiameter(nan),
            () -> Dome.ofDiameterAndHeight(0.06, nan),
            () -> Bowl.ofDiameterAndWall(0.06, nan),
            () -> Geode.ofDiameterWallAndCrystals(0.06, 0.01, nan),
            () -> Puck.ofDiameterAndHeight(0.06, nan),
            () -> Puck.ofDiameterHeightAndEdge(0.06, 0.03, nan),
            () -> Egg.ofLengthAndDiameter(0.06, nan),
            () -> Ring.ofDiameterAndTube(0.06, nan),
            () -> Block.ofSides(0.06, nan, 0.03),
            () -> Block.ofSidesAndEdge(0.06, 0.05, 0.03, nan),
            () -> Cone.ofDiameterHeightAndTop(0.06, 0.05, nan),
            () -> Capsule.ofLengthAndDiameter(nan, 0.03),
            () -> Heart.ofWidthAndHeight(0.06, nan),
            () -> Star.ofPointsDiameterInnerAndHeight(5, 0.06, nan, 0.03),
            () -> Filled.ofWater(nan, Filled.Family.DOME),
            () -> Sphere.ofDiameter(Double.POSITIVE_INFINITY)
        };
        for (Runnable maker : makers) {
            assertThat(catchThrowableOfType(Refusal.class, maker::run)).isNotNull();
        }
    }
}
