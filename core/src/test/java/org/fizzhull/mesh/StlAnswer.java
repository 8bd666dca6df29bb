package org.fizzhull.mesh;

import java.nio.ByteBuffer;
import java.util.Objects;
import org.fizzhull.quantity.Refusal;

/** Holds whatever the reader makes of any bytes against what must be true of every answer. */
final class StlAnswer {
    private StlAnswer() {}

    /** Returns whether the bytes were read; throws where the answer is neither a refusal nor a closed body. */
    static boolean judge(byte[] bytes) {
        StlReading reading;
        try {
            reading = StlReader.read(ByteBuffer.wrap(bytes), "any.stl", 1e-3);
        } catch (Refusal refusal) {
            String sentence = Objects.requireNonNull(refusal.getMessage());
            if (refusal.code().isEmpty() || sentence.length() > 1000) {
                throw new AssertionError("a refusal without a use: " + sentence);
            }
            return false;
        }
        judge(reading);
        return true;
    }

    private static void judge(StlReading reading) {
        TriangleMesh mesh = reading.mesh();
        int[] corners = new int[3 * mesh.facetCount()];
        boolean[] used = new boolean[mesh.vertexCount()];
        for (int h = 0; h < corners.length; h++) {
            corners[h] = mesh.corner(h / 3, h % 3);
            used[corners[h]] = true;
        }
        for (boolean one : used) {
            require(one, "a vertex without a facet");
        }
        EdgePairing pairing = EdgePairing.of(corners, mesh.vertexCount());
        require(pairing.closed() && pairing.sameWay() == 0, "an open mesh was handed on");
        double volume = reading.properties().volume();
        require(volume > 0 && volume < Double.POSITIVE_INFINITY, "volume " + volume);
        require(reading.properties().area() > 0, "area " + reading.properties().area());
        double sum = 0;
        for (MeshBody body : reading.bodies()) {
            sum += body.volume();
        }
        require(Math.abs(sum - volume) <= 1e-6 * volume, "bodies sum to " + sum + ", not " + volume);
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
