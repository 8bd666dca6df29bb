package org.fizzhull.mesh.reading;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Coverage-guided search for a file, STL or 3MF, that the reader neither reads nor refuses. Off the default build:
 * {@code JAZZER_FUZZ=1 mvn -Pproof -pl core test -Dtest=StlReaderFuzz}; without the variable it runs its seeds once.
 */
class StlReaderFuzz {
    static Stream<byte[]> seeds() {
        Stream<byte[]> stl = StlCorpus.cases().stream().map(StlCorpus.Case::bytes);
        Stream<byte[]> packed = ThreeMfReaderTest.hostile().map(odd -> (byte[]) odd.get()[1]);
        return Stream.concat(stl, Stream.concat(packed, Stream.of(ThreeMfReaderTest.whole())))
                .filter(bytes -> bytes.length < 8192);
    }

    @MethodSource("seeds")
    @FuzzTest(maxDuration = "10m")
    void readsOrRefuses(byte[] bytes) {
        StlAnswer.judge(bytes);
    }
}
