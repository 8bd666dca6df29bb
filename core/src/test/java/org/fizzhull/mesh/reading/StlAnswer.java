package org.fizzhull.mesh.reading;

import java.nio.ByteBuffer;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.quantity.Refusal;
import org.fizzhull.quantity.Unit;

/** Holds whatever the reader makes of any bytes against what must be true of every answer. */
final class StlAnswer {
    private StlAnswer() {}

    /** Returns whether the bytes were read; throws where the answer is neither a refusal nor a closed body. */
    static boolean judge(byte[] bytes) {
        MeshReader.Reading reading;
        try {
            reading = MeshReader.read(ByteBuffer.wrap(bytes), "any.stl", Unit.MILLIMETRE);
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

    private static void judge(MeshReader.Reading reading) {
        TriangleMesh mesh = reading.mesh();
        boolean[] used = new boolean[mesh.vertexCount()];
        Map<Long, Integer> balance = new HashMap<>();
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 3; k++) {
                int a = mesh.corner(f, k);
                int b = mesh.corner(f, (k + 1) % 3);
                used[a] = true;
                balance.merge((long) Math.min(a, b) << 32 | Math.max(a, b), a < b ? 1 : -1, Integer::sum);
            }
        }
        for (boolean one : used) {
            require(one, "a vertex without a facet");
        }
        require(
                balance.values().stream().allMatch(sum -> sum == 0),
                "a mesh was handed on whose edges are not run as often one way as the other");
        double volume = MassProperties.of(reading.mesh()).volume();
        require(volume > 0 && volume < Double.POSITIVE_INFINITY, "volume " + volume);
        require(
                MassProperties.of(reading.mesh()).area() > 0,
                "area " + MassProperties.of(reading.mesh()).area());
        require(reading.bodies() >= 1, "bodies " + reading.bodies());
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
