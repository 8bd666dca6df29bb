package org.fizzhull.mesh.distance;

import java.util.Arrays;
import java.util.BitSet;
import java.util.stream.IntStream;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;

/**
 * Lattice points inside a mesh, and from each along the six ways of the axes the next point or the face in between. The
 * lowest points lie half a step above the lowest plane, so that a closed resting face is a mirror between points.
 */
final class PoissonLattice {
    /** In place of a neighbour: an open face, a closed face. */
    static final int OPEN = -1;

    static final int CLOSED = -2;

    private static final double OFF = 0.4873;

    private final double step;
    private final double[] origin = new double[3];
    private final int[] size = new int[3];
    private final RayTable[] rays = new RayTable[3];
    private final BitSet closed;

    /** Cell of each point, row after row and layer after layer, and the point of each cell, or -1. */
    private final int[] cell;

    private final int[] number;

    PoissonLattice(TriangleMesh mesh, boolean shutResting, boolean shutHollows, double step) {
        this.step = step;
        double[] box = mesh.box();
        closed = FaceSets.shut(mesh, shutResting, shutHollows);
        for (int k = 0; k < 3; k++) {
            size[k] = (int) Math.ceil((box[k + 3] - box[k]) / step) + 1;
            origin[k] =
                    k == 2 ? box[2] + step / 2 : (box[k] + box[k + 3] - (size[k] - 1) * step) / 2 + (OFF - 0.5) * step;
        }
        for (int axis = 0; axis < 3; axis++) {
            int a = (axis + 1) % 3;
            int b = (axis + 2) % 3;
            rays[axis] = RayTable.lattice(mesh, axis, origin[a], origin[b], step, step, size[a], size[b]);
        }
        int layer = size[0] * size[1];
        cell = IntStream.range(0, layer * size[2])
                .filter(c -> rays[2].inside(c % layer, origin[2] + Math.floorDiv(c, layer) * step))
                .toArray();
        number = new int[layer * size[2]];
        Arrays.fill(number, -1);
        for (int p = 0; p < cell.length; p++) {
            number[cell[p]] = p;
        }
    }

    double step() {
        return step;
    }

    int points() {
        return cell.length;
    }

    /** Next point in a way (0 and 1 down and up x, 2 and 3 y, 4 and 5 z), or the kind of face in between. */
    int next(int p, int way) {
        int axis = way / 2;
        int here = index(cell[p], axis) + ((way & 1) == 0 ? -1 : 1);
        int stride = axis == 0 ? 1 : axis == 1 ? size[0] : size[0] * size[1];
        if (here >= 0 && here < size[axis]) {
            int other = number[cell[p] + ((way & 1) == 0 ? -stride : stride)];
            if (other >= 0) {
                return other;
            }
        }
        int met = crossing(p, way);
        return met >= 0 && closed.get(rays[axis].facet(met)) ? CLOSED : OPEN;
    }

    /** Distance to the first face in a way, m; a step where rounding hides it. */
    double distance(int p, int way) {
        int met = crossing(p, way);
        int axis = way / 2;
        double here = origin[axis] + index(cell[p], axis) * step;
        return met < 0 ? step : Math.abs(rays[axis].height(met) - here);
    }

    private int crossing(int p, int way) {
        int axis = way / 2;
        int a = (axis + 1) % 3;
        int ray = index(cell[p], (axis + 2) % 3) * size[a] + index(cell[p], a);
        double here = origin[axis] + index(cell[p], axis) * step;
        return (way & 1) == 0 ? rays[axis].below(ray, here) : rays[axis].above(ray, here);
    }

    private int index(int at, int axis) {
        return axis == 0 ? at % size[0] : axis == 1 ? at / size[0] % size[1] : at / (size[0] * size[1]);
    }
}
