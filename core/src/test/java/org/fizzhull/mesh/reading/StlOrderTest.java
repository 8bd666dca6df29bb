package org.fizzhull.mesh.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The order of the facets changes nothing: the body stays the same. */
class StlOrderTest {
    /** ANALYTIC: a torus of n by m places has n m vertices and 2 n m facets. */
    @ParameterizedTest
    @CsvSource({"91, 90", "128, 64", "2731, 3", "241, 102", "23, 11"})
    void everyOrderHasTheSameVerticesAndVolume(int around, int across) {
        byte[] file = Soup.torus(22.5, 12.5, around, across).binary();
        MeshReader.Reading plain = read(file);
        MeshReader.Reading shuffled =
                read(Soup.torus(22.5, 12.5, around, across).shuffled(5).binary());
        for (MeshReader.Reading reading : new MeshReader.Reading[] {plain, shuffled}) {
            assertThat(reading.mesh().vertexCount()).isEqualTo(around * across);
            assertThat(reading.mesh().facetCount()).isEqualTo(2 * around * across);
            assertThat(reading.bodies()).isEqualTo(1);
            assertThat(reading.notices()).isEmpty();
        }
        double volume = MassProperties.of(plain.mesh()).volume();
        // sums of at most 5e4 terms in another order
        assertThat(MassProperties.of(shuffled.mesh()).volume()).isCloseTo(volume, within(1e-12 * volume));
    }

    /** Every zero of every second facet made -0, so that neighbours write one corner in two ways. */
    @Test
    void minusZeroIsZeroForNeighboursToo() {
        byte[] file = Soup.cube(40).binary();
        ByteBuffer bytes = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
        for (int at = 84; at < file.length; at += 100) {
            for (int i = at + 12; i < at + 48; i += 4) {
                bytes.putFloat(i, bytes.getFloat(i) == 0 ? -0f : bytes.getFloat(i));
            }
        }
        MeshReader.Reading reading = read(file);
        assertThat(reading.mesh().vertexCount()).isEqualTo(8);
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(64e-6, within(1e-18));
        assertThat(reading.notices()).isEmpty();
    }

    private static MeshReader.Reading read(byte[] bytes) {
        return MeshReader.read(ByteBuffer.wrap(bytes), "t.stl", Unit.MILLIMETRE);
    }
}
