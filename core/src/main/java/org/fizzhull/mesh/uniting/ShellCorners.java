package org.fizzhull.mesh.uniting;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Facets of shells that have no corner in common: where two shared one, the second has its own at the same place.
 *
 * @param xyz coordinates of the corners, m, three each
 * @param corners three corners a facet
 */
record ShellCorners(double[] xyz, int[] corners) {
    static ShellCorners of(double[] xyz, int[] corners, int[] shell) {
        int[] owner = new int[xyz.length / 3];
        Arrays.fill(owner, -1);
        Map<Long, Integer> copies = new HashMap<>();
        int[] apart = corners.clone();
        int count = owner.length;
        double[] all = xyz;
        for (int h = 0; h < corners.length; h++) {
            int v = corners[h];
            int own = shell[h / 3];
            owner[v] = owner[v] < 0 ? own : owner[v];
            if (owner[v] != own) {
                Integer copy = copies.get((long) v << 32 | own);
                if (copy == null) {
                    all = 3 * count == all.length ? Arrays.copyOf(all, all.length + all.length / 2 + 3) : all;
                    System.arraycopy(xyz, 3 * v, all, 3 * count, 3);
                    copy = count++;
                    copies.put((long) v << 32 | own, copy);
                }
                apart[h] = copy;
            }
        }
        return new ShellCorners(Arrays.copyOf(all, 3 * count), apart);
    }
}
