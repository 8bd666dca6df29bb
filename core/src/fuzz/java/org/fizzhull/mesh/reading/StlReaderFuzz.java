package org.fizzhull.mesh.reading;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Coverage-guided search for a file that the reader neither reads nor refuses. Off the default build:
 * {@code JAZZER_FUZZ=1 mvn -Pproof -pl core test -Dtest=StlReaderFuzz}; without the variable it runs its seeds once.
 */
class StlReaderFuzz {
    static Stream<byte[]> seeds() {
        return StlCorpus.cases().stream().map(StlCorpus.Case::bytes).filter(bytes -> bytes.length < 8192);
    }

    @MethodSource("seeds")
    @FuzzTest(maxDuration = "10m")
    void readsOrRefuses(byte[] bytes) {
        StlAnswer.judge(bytes);
    }
}
