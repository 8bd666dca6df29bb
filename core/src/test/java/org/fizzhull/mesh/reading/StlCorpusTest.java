package org.fizzhull.mesh.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.fail;

import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.List;
import org.fizzhull.evidence.Notice;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every odd file gives the right volume or a refusal that says what is wrong and where; none hangs. */
class StlCorpusTest {
    static List<StlCorpus.Case> cases() {
        return StlCorpus.cases();
    }

    @Test
    void theCorpusHoldsAtLeastSixtyBrokenFiles() {
        assertThat(cases()).hasSizeGreaterThan(100);
        assertThat(cases().stream().filter(c -> Double.isNaN(c.volume()))).hasSizeGreaterThan(50);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void givesTheRightVolumeOrARefusal(StlCorpus.Case odd) {
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            if (Double.isNaN(odd.volume())) {
                isRefused(odd);
            } else {
                isRead(odd);
            }
        });
    }

    private static void isRead(StlCorpus.Case odd) {
        MeshReader.Reading reading = MeshReader.read(ByteBuffer.wrap(odd.bytes()), "odd.stl", Unit.MILLIMETRE);
        // float32 rounding of coordinates: 6e-8 each, three to a volume; 1e-5 joined cracks
        double expected = odd.volume() * 1e-9;
        assertThat(MassProperties.of(reading.mesh()).volume()).isCloseTo(expected, within(3e-6 * expected));
        assertThat(closedVolume(reading.mesh())).isCloseTo(expected, within(3e-6 * expected));
        assertThat(reading.notices()).extracting(Notice::code).containsExactlyInAnyOrderElementsOf(odd.codes());
        String text = reading.notices().toString();
        for (String words : odd.says()) {
            assertThat(text).contains(words);
        }
    }

    private static void isRefused(StlCorpus.Case odd) {
        try {
            MeshReader.Reading reading = MeshReader.read(ByteBuffer.wrap(odd.bytes()), "odd.stl", Unit.MILLIMETRE);
            fail("read with volume " + MassProperties.of(reading.mesh()).volume() + " and " + reading.notices());
        } catch (Refusal refusal) {
            assertThat(odd.codes().get(0).split("\\|")).contains(refusal.code());
            assertThat(refusal).hasMessageStartingWith("odd.stl");
            assertThat(refusal.hint()).isNotEmpty();
            for (String words : odd.says()) {
                assertThat(words.split("\\|"))
                        .anySatisfy(one -> assertThat(refusal).hasMessageContaining(one));
            }
        }
    }

    /** Volume of a mesh by its z flux alone: an own sum, not the reader's. */
    private static double closedVolume(TriangleMesh mesh) {
        double sum = 0;
        double base = mesh.at(0, 2);
        for (int f = 0; f < mesh.facetCount(); f++) {
            int a = mesh.corner(f, 0);
            int b = mesh.corner(f, 1);
            int c = mesh.corner(f, 2);
            double shadow = (mesh.at(b, 0) - mesh.at(a, 0)) * (mesh.at(c, 1) - mesh.at(a, 1))
                    - (mesh.at(b, 1) - mesh.at(a, 1)) * (mesh.at(c, 0) - mesh.at(a, 0));
            sum += shadow / 2 * ((mesh.at(a, 2) + mesh.at(b, 2) + mesh.at(c, 2)) / 3 - base);
        }
        return sum;
    }
}
