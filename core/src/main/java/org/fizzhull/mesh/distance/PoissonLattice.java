package org.fizzhull.mesh.distance;

import java.util.Arrays;
import java.util.BitSet;
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

    /** For each point and way the next point, or {@link #OPEN} or {@link #CLOSED} for a face in between. */
    final int[] next;

    /** For each point and way the distance to the first face, in steps, up to 1; 1 where rounding hides it. */
    final double[] wall;

    private final double step;
    private final double[] origin = new double[3];
    private final int[] size = new int[3];
    private final RayTable[] rays = new RayTable[3];
    private final BitSet closed;
    private final int[] cell;
    private final int[] number;
    private int points;

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
            rays[axis] = RayTable.lattice(mesh, axis, origin[a], origin[b], step, size[a], size[b]);
        }
        number = new int[size[0] * size[1] * size[2]];
        int[] found = new int[number.length];
        for (int k = 0; k < size[2]; k++) {
            for (int j = 0; j < size[1]; j++) {
                for (int i = 0; i < size[0]; i++) {
                    int here = (k * size[1] + j) * size[0] + i;
                    boolean in = rays[2].inside(j * size[0] + i, origin[2] + k * step);
                    number[here] = in ? points : -1;
                    if (in) {
                        found[points++] = here;
                    }
                }
            }
        }
        cell = Arrays.copyOf(found, points);
        next = new int[6 * points];
        wall = new double[6 * points];
        for (int at = 0; at < next.length; at++) {
            link(at);
        }
    }

    /** Looks from a point in one way: 0 and 1 down and up x, 2 and 3 y, 4 and 5 z. */
    private void link(int at) {
        int here = cell[at / 6];
        int[] index = {here % size[0], here / size[0] % size[1], here / (size[0] * size[1])};
        int axis = at % 6 / 2;
        boolean down = at % 2 == 0;
        int a = (axis + 1) % 3;
        int ray = index[(axis + 2) % 3] * size[a] + index[a];
        double height = origin[axis] + index[axis] * step;
        int met = down ? rays[axis].below(ray, height) : rays[axis].above(ray, height);
        wall[at] = met < 0 ? 1 : Math.min(1, Math.abs(rays[axis].height(met) - height) / step);
        int stride = axis == 0 ? 1 : axis == 1 ? size[0] : size[0] * size[1];
        boolean last = index[axis] == (down ? 0 : size[axis] - 1);
        int other = last ? -1 : number[here + (down ? -stride : stride)];
        boolean shut = met >= 0 && closed.get(rays[axis].facet(met));
        next[at] = other >= 0 ? other : shut ? CLOSED : OPEN;
    }

    int points() {
        return points;
    }
}
