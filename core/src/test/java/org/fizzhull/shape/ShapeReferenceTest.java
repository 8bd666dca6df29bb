package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import org.fizzhull.numeric.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms against numbers computed apart from this code. */
class ShapeReferenceTest {
    /** OTHER PROGRAM: validation/reference/shapes.py, in part also a CAD kernel; mm3 and mm2. */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "sphere(diameter=70 mm); 179594.380030; 15393.804003",
                "dome(diameter=67.08203932499369 mm, height=25 mm); 52359.877560; 9032.078879",
                "dome(diameter=69.28203230275509 mm, height=20 mm); 41887.902048; 8796.459430",
                "dome(diameter=70 mm); 89797.190015108; 11545.353002",
                "bowl(diameter=70 mm, wall=15 mm); 73042.029196; 12801.990063",
                "puck(diameter=70 mm, height=25 mm, edge=5 mm); 93926.900968; 12228.579648",
                "block(length=50 mm, width=50 mm, height=50 mm, edge=6 mm); 120653.874935; 13414.088092",
                "block(length=80 mm, width=50 mm, height=30 mm, edge=8 mm); 111895.596726; 13529.981755",
                "cone(diameter=60 mm, height=40 mm, top=40 mm); 79587.013891; 10560.629621",
                "cone(diameter=60 mm, height=60 mm); 56548.667765; 9149.766646",
                "ring(diameter=70 mm, tube=25 mm); 69395.655945160; 11103.304951",
                "egg(length=90 mm, diameter=60 mm); 169646.003294; 15226.396347",
                "capsule(length=80 mm, diameter=40 mm); 83775.804096; 10053.096491",
                "star(points=5, diameter=80 mm, inner=40 mm, height=25 mm); 58778.525229; 11342.937149",
                "heart(width=68.2842712474619 mm, height=25 mm); 71415.926536; 10854.866776"
            })
    void volumeAndSurface(String text, double volume, double surface) {
        Shape shape = ShapeText.read(text);
        assertThat(shape.volume() * 1e9).isCloseTo(volume, within(1e-9 * volume));
        assertThat(shape.surface() * 1e6).isCloseTo(surface, within(1e-9 * surface));
    }

    /** Origin: the same section; heights in mm above the lowest point (the bowl's is printed below its rim). */
    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "dome(diameter=67.08203932499369 mm, height=25 mm); 8.984375",
                "dome(diameter=69.28203230275509 mm, height=20 mm); 7.000000",
                "dome(diameter=70 mm); 13.125",
                "bowl(diameter=70 mm, wall=15 mm); 20.584677419",
                "cone(diameter=60 mm, height=40 mm, top=40 mm); 17.368421"
            })
    void centroid(String text, double height) {
        Vec3 centroid = ShapeText.read(text).centroid();
        // The shortest number is printed to 1e-6 mm.
        assertThat(centroid.z() * 1e3).isCloseTo(height, within(5e-7));
        assertThat(centroid.x()).isZero();
        assertThat(centroid.y()).isZero();
    }

    /** Sizes of moulds: common practice, no source; volumes computed apart from this code to 0.1 cm3. */
    @Test
    void mouldVolumesToTheirPrintedDigit() throws IOException {
        int rows = 0;
        try (InputStream in = ShapeReferenceTest.class.getResourceAsStream("moulds.csv")) {
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            for (String line : text.lines().toList()) {
                if (line.startsWith("#")) {
                    continue;
                }
                String[] columns = line.split(";", -1);
                double volume = ShapeText.read(columns[0]).volume() * 1e6;
                assertThat(volume).as(line).isCloseTo(Double.parseDouble(columns[1]), within(0.05 + 1e-9));
                rows++;
            }
        }
        assertThat(rows).isEqualTo(63);
    }

    /** Analytic: 998.2 kg of water fill a cubic metre. */
    @Test
    void filledMouldHoldsItsWater() {
        assertThat(Filled.ofWater(0.9982, Filled.Family.FIGURE).volume()).isCloseTo(1e-3, within(1e-15));
        for (Filled.Family family : Filled.Family.values()) {
            Filled mould = Filled.ofWater(0.1234, family);
            assertThat(mould.body().volume()).isCloseTo(mould.volume(), within(1e-14 * mould.volume()));
            assertThat(Filled.ofWater(0.001, family).surface()).isPositive();
            assertThat(Filled.ofWater(20, family).surface()).isPositive();
            assertThat(mould.surfaceSpread()).isBetween(0.02, 0.25);
        }
    }

    /** Analytic: half a ball of water under the rim, and the crystals of salt, 2.165 g/cm3. */
    @Test
    void geodeIsABowlWithAnInset() {
        Geode geode = Geode.ofDiameterWallAndCrystals(0.08, 0.014, 0.020);
        Bowl bowl = Bowl.ofDiameterAndWall(0.08, 0.014);
        assertThat(geode.volume()).isEqualTo(bowl.volume());
        assertThat(geode.hullVolume()).isCloseTo(2 * Math.PI * Math.pow(0.04, 3) / 3, within(1e-18));
        assertThat(geode.insetMass()).isEqualTo(0.020);
        assertThat(geode.insetVolume()).isCloseTo(0.020 / 2165, within(1e-20));
    }
}
