package org.fizzhull.mesh.repair;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.fizzhull.evidence.Notice;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.uniting.FacetEdges;

/**
 * Closes small holes. The sides without an opposite side form closed loops, since as many of them end at a corner as
 * begin there, also where holes meet at a corner and where three facets share an edge. Each loop is closed by a fan
 * of triangles around the mean of its corners, which lies nearer to the surface than a fan from one corner. Holes are
 * small when no rim is longer than a third of the diagonal of the box and all of them cover no more than a hundredth
 * of the surface: larger ones are taken as intended or as beyond repair. O(sides).
 */
final class SmallHoles {
    /** Longest rim, as a share of the diagonal of the box. */
    private static final double RIM = 0.33;

    /** Largest area of all fans, as a share of the surface. */
    private static final double COVER = 0.01;

    private final double[] xyz;
    private final DoubleStream.Builder middles = DoubleStream.builder();
    private final IntStream.Builder fans = IntStream.builder();
    private int holes;
    private double longest;
    private double area;

    private SmallHoles(double[] xyz) {
        this.xyz = xyz;
    }

    /** A facet list with holes closed. */
    record Closed(double[] xyz, int[] corners) {}

    /**
     * The facet list with its holes closed, and a notice of it; unchanged where a hole is too large or the rims are
     * not closed loops.
     *
     * @param sides what no other side runs against, as three times the facet plus the corner
     * @param size diagonal of the box, m
     */
    static Closed closed(double[] xyz, int[] corners, int[] sides, double size, List<Notice> notices) {
        // a fan runs along each side in the direction opposite to the facet there
        BoundaryLoops rims = new BoundaryLoops();
        for (int h : sides) {
            rims.add(corners[FacetEdges.next(h)], corners[h]);
        }
        List<int[]> loops = rims.closed();
        if (loops.isEmpty()) {
            return new Closed(xyz, corners);
        }
        SmallHoles small = new SmallHoles(xyz);
        for (int[] loop : loops) {
            small.close(loop);
        }
        TriangleMesh mesh = new TriangleMesh(xyz, corners);
        double surface = FaceSets.area(mesh, FaceSets.others(mesh, new BitSet()));
        if (small.longest > RIM * size || small.area > COVER * surface) {
            return new Closed(xyz, corners);
        }
        notices.add(small.notice());
        return new Closed(
                DoubleStream.concat(Arrays.stream(xyz), small.middles.build()).toArray(),
                IntStream.concat(Arrays.stream(corners), small.fans.build()).toArray());
    }

    /** Closes a boundary loop by a fan. */
    private void close(int[] loop) {
        int centre = xyz.length / 3 + holes;
        Vec3 middle = Vec3.ZERO;
        for (int v : loop) {
            middle = middle.plus(Vertices.at(xyz, v).times(1.0 / loop.length));
        }
        middles.add(middle.x()).add(middle.y()).add(middle.z());
        double rim = 0;
        for (int i = 0; i < loop.length; i++) {
            int from = loop[i];
            int to = loop[(i + 1) % loop.length];
            fans.add(from).add(to).add(centre);
            rim += Vertices.distance(xyz, from, to);
            area += Vertices.area(Vertices.at(xyz, from), Vertices.at(xyz, to), middle);
        }
        holes++;
        longest = Math.max(longest, rim);
    }

    private Notice notice() {
        return new Notice(
                "mesh-hole",
                (holes == 1 ? "1 hole was" : holes + " holes were") + " closed, with a rim of at most "
                        + PlaceWords.millimetres(longest) + " mm and an area of "
                        + PlaceWords.squareMillimetres(area) + " mm2 in all.");
    }
}
