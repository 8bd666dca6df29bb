package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * Facets of shells that share no corner: where two did, the second gets a copy of it at the same place.
 *
 * @param xyz coordinates of the corners, m, three each
 * @param corners three corners a facet
 */
record ShellCorners(double[] xyz, int[] corners) {
    static ShellCorners of(double[] xyz, int[] corners, int[] shell) {
        int count = xyz.length / 3;
        int[] owner = new int[count];
        Arrays.fill(owner, -1);
        // by corner and shell
        Map<Long, Integer> copies = new HashMap<>();
        DoubleStream.Builder added = DoubleStream.builder();
        int[] apart = corners.clone();
        for (int h = 0; h < corners.length; h++) {
            int v = corners[h];
            int own = shell[h / 3];
            owner[v] = owner[v] < 0 ? own : owner[v];
            if (owner[v] != own) {
                apart[h] = copies.computeIfAbsent((long) v << 32 | own, key -> {
                    added.add(xyz[3 * v]).add(xyz[3 * v + 1]).add(xyz[3 * v + 2]);
                    return count + copies.size();
                });
            }
        }
        double[] all = DoubleStream.concat(Arrays.stream(xyz), added.build()).toArray();
        return new ShellCorners(all, apart);
    }
}
