package org.fizzhull.mesh.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Seeded damage to the corpus: whatever comes out is read as a closed body or refused. A short form of the fuzz run. */
class StlMutationTest {
    private static final int ROUNDS = 3000;

    @Test
    void damagedFilesAreReadOrRefused() {
        List<byte[]> seeds = StlCorpus.cases().stream()
                .map(StlCorpus.Case::bytes)
                .filter(bytes -> bytes.length > 0 && bytes.length < 8192)
                .toList();
        Random random = new Random(20261125);
        int read = assertTimeoutPreemptively(Duration.ofSeconds(60), () -> {
            int count = 0;
            for (int i = 0; i < ROUNDS; i++) {
                count += judge(damaged(seeds, random), i) ? 1 : 0;
            }
            return count;
        });
        // both answers must be met often, or the test looks at one side only
        assertThat(read).isBetween(ROUNDS / 20, ROUNDS * 19 / 20);
    }

    private static boolean judge(byte[] bytes, int round) {
        try {
            return StlAnswer.judge(bytes);
        } catch (RuntimeException | AssertionError fault) {
            throw new AssertionError("round " + round, fault);
        }
    }

    private static byte[] damaged(List<byte[]> seeds, Random random) {
        byte[] bytes = seeds.get(random.nextInt(seeds.size())).clone();
        int changes = 1 + random.nextInt(3);
        for (int i = 0; i < changes; i++) {
            int at = random.nextInt(bytes.length);
            switch (random.nextInt(6)) {
                case 0 -> bytes[at] = (byte) random.nextInt(256);
                case 1 -> bytes[at] ^= (byte) (1 << random.nextInt(8));
                case 2 -> bytes = Arrays.copyOf(bytes, Math.max(1, at));
                case 3 -> bytes = Arrays.copyOf(bytes, bytes.length + random.nextInt(60));
                case 4 -> copyPiece(bytes, at, random);
                default -> swapFacets(bytes, random);
            }
        }
        return bytes;
    }

    private static void copyPiece(byte[] bytes, int at, Random random) {
        int length = Math.min(bytes.length - at, 1 + random.nextInt(50));
        System.arraycopy(bytes, random.nextInt(bytes.length - length + 1), bytes, at, length);
    }

    /** Copies one binary facet, or one of its corners, over another. */
    private static void swapFacets(byte[] bytes, Random random) {
        int facets = (bytes.length - 84) / 50;
        if (facets > 0) {
            int from = 84 + 50 * random.nextInt(facets) + 12 + 12 * random.nextInt(3);
            int to = 84 + 50 * random.nextInt(facets) + 12 + 12 * random.nextInt(3);
            System.arraycopy(bytes, from, bytes, to, 12);
        }
    }
}
