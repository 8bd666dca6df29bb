package org.fizzhull.mesh.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.util.Random;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Unit;
import org.junit.jupiter.api.Test;

/**
 * Closed needles beside a body, as programs leave them where two parts nearly touch: all but without volume, so that
 * rounding decides what is computed of it. ANALYTIC: a box, and needles of less than a millionth of its volume.
 */
class NeedlesTest {
    @Test
    void needlesBesideABox() {
        Random random = new Random(20261201);
        double box = 20 * 30 * 40;
        for (int i = 0; i < 300; i++) {
            Soup soup = Soup.box(0, 0, 0, 20, 30, 40);
            double[] from = {60 + random.nextDouble(), 30 + random.nextDouble(), 80 + random.nextDouble()};
            double[] to = {from[0] + 2, from[1] - 8, from[2] - 15};
            double[] third = between(from, to, random.nextDouble(), random);
            double[] fourth = between(from, to, random.nextDouble(), random);
            soup.add(from, to, third).add(to, from, fourth);
            soup.add(from, third, fourth).add(third, to, fourth);
            MeshReader.Reading reading = MeshReader.read(ByteBuffer.wrap(soup.binary()), "a.stl", Unit.MILLIMETRE);
            assertThat(1e9 * MassProperties.of(reading.mesh()).volume()).isCloseTo(box, within(1e-6 * box));
        }
    }

    /** A point on a line but for a hundred thousandth of a millimetre, which a float32 of such a place hardly holds. */
    private static double[] between(double[] a, double[] b, double t, Random random) {
        double[] p = new double[3];
        for (int k = 0; k < 3; k++) {
            p[k] = a[k] + t * (b[k] - a[k]) + 1e-5 * random.nextGaussian();
        }
        return p;
    }
}
