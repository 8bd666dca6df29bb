package org.fizzhull.mesh.hollow;

import java.util.Arrays;
import org.fizzhull.mesh.FaceSets;
import org.fizzhull.mesh.TriangleMesh;

/** The facet straight below a point: what something that falls from there meets. Facets lie in columns of a grid. */
final class FloorBelow {
    private static final int MOST_ACROSS = 256;

    /** Beside an edge by this share of a facet is still on it. */
    private static final double ON_EDGE = 1e-9;

    private final TriangleMesh mesh;
    private final double x0;
    private final double y0;
    private final double cell;
    private final int across;
    private final int[] start;
    private final int[] facets;

    FloorBelow(TriangleMesh mesh) {
        this.mesh = mesh;
        double[] box = mesh.box();
        across = (int) Math.max(1, Math.min(MOST_ACROSS, Math.sqrt(mesh.facetCount()) / 4));
        cell = Math.max(box[3] - box[0], box[4] - box[1]) / across * (1 + 1e-9);
        x0 = box[0];
        y0 = box[1];
        start = new int[across * across + 1];
        int[] none = {};
        for (int f = 0; f < mesh.facetCount(); f++) {
            enter(f, none, start);
        }
        for (int i = 0; i + 1 < start.length; i++) {
            start[i + 1] += start[i];
        }
        facets = new int[start[start.length - 1]];
        int[] used = Arrays.copyOf(start, start.length);
        for (int f = 0; f < mesh.facetCount(); f++) {
            enter(f, facets, used);
        }
    }

    /** Counts a facet in the columns it touches, or enters it there. */
    private void enter(int f, int[] into, int[] at) {
        int fromX = column(low(f, 0) - x0);
        int toX = column(high(f, 0) - x0);
        int fromY = column(low(f, 1) - y0);
        int toY = column(high(f, 1) - y0);
        for (int j = fromY; j <= toY; j++) {
            for (int i = fromX; i <= toX; i++) {
                if (into.length == 0) {
                    at[j * across + i + 1]++;
                } else {
                    into[at[j * across + i]++] = f;
                }
            }
        }
    }

    private double low(int f, int axis) {
        return Math.min(at(f, 0, axis), Math.min(at(f, 1, axis), at(f, 2, axis)));
    }

    private double high(int f, int axis) {
        return Math.max(at(f, 0, axis), Math.max(at(f, 1, axis), at(f, 2, axis)));
    }

    private double at(int f, int k, int axis) {
        return mesh.at(mesh.corner(f, k), axis);
    }

    private int column(double from) {
        return Math.max(0, Math.min(across - 1, (int) Math.floor(from / cell)));
    }

    /** The highest facet below a vertex that is none of its own, and looks up; -1 where there is none. */
    int under(int v) {
        double x = mesh.at(v, 0);
        double y = mesh.at(v, 1);
        double z = mesh.at(v, 2);
        int column = column(y - y0) * across + column(x - x0);
        int found = -1;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = start[column]; i < start[column + 1]; i++) {
            int f = facets[i];
            boolean own = mesh.corner(f, 0) == v || mesh.corner(f, 1) == v || mesh.corner(f, 2) == v;
            double height = own || low(f, 2) >= z ? Double.NaN : height(f, x, y);
            if (height < z && height > highest) {
                highest = height;
                found = f;
            }
        }
        return found >= 0 && FaceSets.shadow(mesh, found) > 0 ? found : -1;
    }

    /** Height of a facet over a place; NaN beside it or where it stands upright. */
    private double height(int f, double x, double y) {
        double area = 2 * FaceSets.shadow(mesh, f);
        double px = x - at(f, 0, 0);
        double py = y - at(f, 0, 1);
        double ux = at(f, 1, 0) - at(f, 0, 0);
        double uy = at(f, 1, 1) - at(f, 0, 1);
        double wx = at(f, 2, 0) - at(f, 0, 0);
        double wy = at(f, 2, 1) - at(f, 0, 1);
        double b = (px * wy - wx * py) / area;
        double c = (ux * py - px * uy) / area;
        boolean on = b >= -ON_EDGE && c >= -ON_EDGE && b + c <= 1 + ON_EDGE;
        return on ? at(f, 0, 2) + b * (at(f, 1, 2) - at(f, 0, 2)) + c * (at(f, 2, 2) - at(f, 0, 2)) : Double.NaN;
    }
}
