package org.fizzhull.mesh;

import java.util.Arrays;
import java.util.PriorityQueue;

/**
 * How much water would stand in the hollows on top of a mesh as it lies: the heights of its topmost facets on a grid of
 * 96 cells across, flooded from the rim inwards (priority flood, Barnes, Lehman and Mulla 2014, from memory). Good to
 * some hundredths of the hollow. Hollows under an overhang count only as far as they are seen from above, and walls
 * thinner than a cell are not seen, so that their hollow runs dry.
 */
public final class TopPits {
    private static final int ACROSS = 96;

    private final double[] top;
    private final double x0;
    private final double y0;
    private final double cell;
    private final int nx;
    private final int ny;

    private TopPits(TriangleMesh mesh) {
        double[] box = mesh.box();
        cell = Math.max(box[3] - box[0], box[4] - box[1]) / ACROSS;
        // a ring of empty cells all round
        x0 = box[0] - cell;
        y0 = box[1] - cell;
        nx = (int) Math.ceil((box[3] - box[0]) / cell) + 2;
        ny = (int) Math.ceil((box[4] - box[1]) / cell) + 2;
        top = new double[nx * ny];
        Arrays.fill(top, Double.NEGATIVE_INFINITY);
        double[] v = new double[9];
        for (int f = 0; f < mesh.facetCount(); f++) {
            for (int k = 0; k < 9; k++) {
                v[k] = mesh.at(mesh.corner(f, k / 3), k % 3);
            }
            lay(v);
        }
    }

    /** Volume of the hollows on top of a closed mesh, m3. */
    public static double volume(TriangleMesh mesh) {
        return new TopPits(mesh).flooded();
    }

    /** Raises the cells whose middles lie under a facet that looks up. */
    private void lay(double[] v) {
        double area = (v[3] - v[0]) * (v[7] - v[1]) - (v[6] - v[0]) * (v[4] - v[1]);
        if (!(area > 0)) {
            return;
        }
        int fromX = index(Math.min(v[0], Math.min(v[3], v[6])) - x0);
        int toX = index(Math.max(v[0], Math.max(v[3], v[6])) - x0);
        int fromY = index(Math.min(v[1], Math.min(v[4], v[7])) - y0);
        int toY = index(Math.max(v[1], Math.max(v[4], v[7])) - y0);
        for (int j = fromY; j <= toY; j++) {
            for (int i = fromX; i <= toX; i++) {
                double x = x0 + (i + 0.5) * cell;
                double y = y0 + (j + 0.5) * cell;
                double b = ((x - v[0]) * (v[7] - v[1]) - (v[6] - v[0]) * (y - v[1])) / area;
                double c = ((v[3] - v[0]) * (y - v[1]) - (x - v[0]) * (v[4] - v[1])) / area;
                if (b >= 0 && c >= 0 && b + c <= 1) {
                    double z = v[2] + b * (v[5] - v[2]) + c * (v[8] - v[2]);
                    top[j * nx + i] = Math.max(top[j * nx + i], z);
                }
            }
        }
    }

    private int index(double from) {
        return (int) Math.floor(from / cell);
    }

    private double flooded() {
        double[] water = new double[top.length];
        Arrays.fill(water, Double.POSITIVE_INFINITY);
        PriorityQueue<Spot> shore = new PriorityQueue<>();
        for (int at = 0; at < top.length; at++) {
            // beside the body, or through it
            if (top[at] == Double.NEGATIVE_INFINITY) {
                water[at] = top[at];
                shore.add(new Spot(top[at], at));
            }
        }
        double sum = 0;
        while (!shore.isEmpty()) {
            Spot spot = shore.remove();
            int x = spot.at % nx;
            int y = spot.at / nx;
            for (int j = Math.max(0, y - 1); j <= Math.min(ny - 1, y + 1); j++) {
                for (int i = Math.max(0, x - 1); i <= Math.min(nx - 1, x + 1); i++) {
                    int next = j * nx + i;
                    if (water[next] == Double.POSITIVE_INFINITY) {
                        water[next] = Math.max(top[next], spot.level);
                        sum += water[next] - top[next];
                        shore.add(new Spot(water[next], next));
                    }
                }
            }
        }
        return sum * cell * cell;
    }

    private record Spot(double level, int at) implements Comparable<Spot> {
        @Override
        public int compareTo(Spot other) {
            int order = Double.compare(level, other.level);
            return order != 0 ? order : Integer.compare(at, other.at);
        }
    }
}
