package org.fizzhull.mesh;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The order of the facets, the blocks they are read in and who helps are short cuts only: the body stays the same. */
class StlOrderTest {
    @TempDir
    Path folder;

    /** ANALYTIC: a torus of n by m places has n m vertices and 2 n m facets, wherever a block of 16384 facets ends. */
    @ParameterizedTest
    @CsvSource({"91, 90", "128, 64", "2731, 3", "241, 102", "23, 11"})
    void everyOrderHasTheSameVerticesAndVolume(int around, int across) throws IOException {
        byte[] file = Soup.torus(22.5, 12.5, around, across).binary();
        StlReading plain = read(file);
        StlReading shuffled =
                read(Soup.torus(22.5, 12.5, around, across).shuffled(5).binary());
        for (StlReading reading : new StlReading[] {plain, shuffled}) {
            assertThat(reading.mesh().vertexCount()).isEqualTo(around * across);
            assertThat(reading.mesh().facetCount()).isEqualTo(2 * around * across);
            assertThat(reading.bodies()).hasSize(1);
            assertThat(reading.notices()).isEmpty();
        }
        double volume = plain.properties().volume();
        // sums of at most 5e4 terms in another order
        assertThat(shuffled.properties().volume()).isCloseTo(volume, within(1e-12 * volume));
        assertThat(throughAChannel(file).properties()).isEqualTo(plain.properties());
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
        StlReading reading = read(file);
        assertThat(reading.mesh().vertexCount()).isEqualTo(8);
        assertThat(reading.properties().volume()).isCloseTo(64e-6, within(1e-18));
        assertThat(reading.notices()).isEmpty();
    }

    private StlReading throughAChannel(byte[] bytes) throws IOException {
        Path file = Files.write(folder.resolve("t.stl"), bytes);
        ExecutorService helper = Executors.newFixedThreadPool(1);
        try (SeekableByteChannel channel = Files.newByteChannel(file)) {
            return StlReader.read(ByteSource.of(channel), "t.stl", 1e-3, helper);
        } finally {
            helper.shutdown();
        }
    }

    private static StlReading read(byte[] bytes) {
        return StlReader.read(ByteBuffer.wrap(bytes), "t.stl", 1e-3);
    }
}
