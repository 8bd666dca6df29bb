package org.fizzhull.mesh.hollow;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.mesh.measure.FaceSets;
import org.fizzhull.mesh.measure.MassProperties;
import org.fizzhull.mesh.measure.Shells;
import org.fizzhull.uncertainty.Workers;

/**
 * The open hollows of a closed mesh as it lies: what would hold water poured in from above, each up to the level at
 * which it spills. Exact for the mesh, also under overhangs. A floating piece is judged by the largest hollow: those
 * with a rim at least as high are dry as long as it is (called dry hollows here), those with a lower rim are full of
 * water by then.
 */
public final class OpenHollows {
    /** Least depth of a basin, as a share of the height of the body; shallower ones are left out. */
    private static final double MIN_DEPTH_SHARE = 0.01;

    /** Most basins that are measured: the deepest are taken. */
    private static final int MAX_BASINS = 64;

    /** Difference up to which two heights count as equal, as a share of the diagonal of the bounding box. */
    static final double LEVEL_TOLERANCE = 1e-6;

    final TriangleMesh mesh;
    final Neighbours near;
    private final double tolerance;

    /** For each vertex the hollow in which it lies, below the rim; -1 for all others. */
    private final int[] owner;

    /** Height of the rim of each hollow, m. */
    private final double[] level;

    /** Height of the lowest point of each hollow, m. */
    private final double[] bottom;

    /** Volume of air in each hollow up to its rim, m3. */
    private final double[] air;

    /** The vertex over which each hollow spills. */
    private final int[] spillPoint;

    /** The hollow that holds the most air; -1 where there is none. */
    private int largest = -1;

    private OpenHollows(TriangleMesh mesh, Neighbours near, List<BasinSweep.Basin> basins) {
        this.mesh = mesh;
        this.near = near;
        tolerance = LEVEL_TOLERANCE * FaceSets.diagonal(mesh.box());
        owner = new int[mesh.vertexCount()];
        Arrays.fill(owner, -1);
        spillPoint = basins.stream().mapToInt(BasinSweep.Basin::spillPoint).toArray();
        level = IntStream.of(spillPoint).mapToDouble(v -> mesh.at(v, 2)).toArray();
        bottom = level.clone();
        air = new double[level.length];
        for (int h = 0; h < level.length; h++) {
            for (int v : basins.get(h).minima()) {
                flood(v, h);
            }
        }
    }

    /**
     * {@return the hollows of a closed mesh that faces outward}
     *
     * @param mesh the mesh
     */
    public static OpenHollows of(TriangleMesh mesh) {
        Neighbours near = new Neighbours(mesh);
        LocalMinima minima = LocalMinima.of(mesh, near);
        if (minima.pits().isEmpty()) {
            return new OpenHollows(mesh, near, List.of());
        }
        double[] box = mesh.box();
        double least = MIN_DEPTH_SHARE * (box[5] - box[2]);
        FacetBelow floor = new FacetBelow(mesh, minima.undersides());
        List<BasinSweep.Basin> deep = BasinSweep.of(mesh, near, minima, floor).stream()
                .filter(basin -> basin.depth(mesh) > least)
                .sorted(Comparator.comparingDouble(basin -> -basin.depth(mesh)))
                .limit(MAX_BASINS)
                .toList();
        OpenHollows found = new OpenHollows(mesh, near, deep);
        found.addOverhangs(minima.undersides(), floor);
        found.measure();
        return found;
    }

    /** Adds to each hollow the overhanging surface that is not connected to it below its rim. */
    private void addOverhangs(BitSet undersides, FacetBelow floor) {
        double lowest = FaceSets.floor(mesh.box());
        int[] above = undersides.stream().filter(v -> mesh.at(v, 2) > lowest).toArray();
        boolean grown = true;
        while (grown) {
            grown = false;
            for (int v : above) {
                int facet = owner[v] < 0 ? floor.of(v) : -1;
                int h = facet < 0 ? -1 : owner(facet);
                if (h >= 0 && below(v, h)) {
                    flood(v, h);
                    grown = true;
                }
            }
        }
    }

    /** Measures the air in each hollow and finds the largest. */
    private void measure() {
        for (int f = 0; f < mesh.facetCount(); f++) {
            int h = owner(f);
            if (h >= 0) {
                air[h] += airAbove(f, level[h]);
            }
        }
        for (int h = 0; h < air.length; h++) {
            largest = largest < 0 || air[h] > air[largest] ? h : largest;
        }
    }

    private boolean below(int v, int hollow) {
        return mesh.at(v, 2) < level[hollow] - tolerance;
    }

    /** Adds to a hollow the surface below its rim that is connected to a vertex. */
    private void flood(int begin, int hollow) {
        ArrayDeque<Integer> front = new ArrayDeque<>();
        addVertex(begin, hollow, front);
        while (!front.isEmpty()) {
            for (int next : near.of(front.remove())) {
                addVertex(next, hollow, front);
            }
        }
    }

    private void addVertex(int v, int hollow, ArrayDeque<Integer> front) {
        if (owner[v] < 0 && below(v, hollow)) {
            owner[v] = hollow;
            bottom[hollow] = Math.min(bottom[hollow], mesh.at(v, 2));
            front.add(v);
        }
    }

    /** The air between a facet and a level above it, m3: negative for a facet that looks down. */
    private double airAbove(int f, double top) {
        double[] d = mesh.corners(f).mapToDouble(v -> top - mesh.at(v, 2)).toArray();
        long deep = DoubleStream.of(d).filter(depth -> depth > 0).count();
        double shadow = FaceSets.shadow(mesh, f);
        double whole = shadow * (d[0] + d[1] + d[2]) / 3;
        if (deep == 3 || deep == 0) {
            return deep == 3 ? whole : 0;
        }
        // one corner alone on its side cuts off the share (t u) of the facet
        int alone = 0;
        while (d[alone] > 0 != (deep == 1)) {
            alone++;
        }
        double t = d[alone] / (d[alone] - d[(alone + 1) % 3]);
        double u = d[alone] / (d[alone] - d[(alone + 2) % 3]);
        double corner = shadow * t * u * d[alone] / 3;
        return deep == 1 ? corner : whole - corner;
    }

    /** {@return whether the mesh has no open hollow, and so no rim} */
    public boolean none() {
        return largest < 0;
    }

    /** {@return height of the rim of the largest hollow: where it spills, m} */
    public double rim() {
        return level[largest];
    }

    /** {@return volume of air in the dry hollows, m3; 0 where there is none} */
    public double air() {
        return IntStream.range(0, air.length)
                .filter(this::dry)
                .mapToDouble(h -> air[h])
                .sum();
    }

    /** {@return volume of the hollows whose rim is lower than that of the largest, m3} */
    public double lowerAir() {
        return DoubleStream.of(air).sum() - air();
    }

    private boolean dry(int hollow) {
        return level[hollow] >= level[largest] - tolerance;
    }

    /** The dry hollow in which a facet lies at least in part; -1 where there is none. */
    int dryOwner(int f) {
        int h = owner(f);
        return h >= 0 && dry(h) ? h : -1;
    }

    private int owner(int f) {
        return mesh.corners(f)
                .map(v -> owner[v])
                .filter(h -> h >= 0)
                .findFirst()
                .orElse(-1);
    }

    /** Whether a vertex lies in a dry hollow below its rim. */
    boolean inDryHollow(int v) {
        return owner[v] >= 0 && dry(owner[v]);
    }

    /** Height of the rim of a hollow, m. */
    double level(int hollow) {
        return level[hollow];
    }

    /** Height half way between the lowest point and the rim of the hollow in which a vertex lies, m. */
    double midHeight(int v) {
        return (bottom[owner[v]] + level[owner[v]]) / 2;
    }

    /** The vertex over which the largest hollow spills. */
    int spillPoint() {
        return spillPoint[largest];
    }

    /** Difference up to which two heights count as equal, m. */
    double tolerance() {
        return tolerance;
    }

    /**
     * {@return the depth profile of the mesh with its dry hollows filled, as far as it lies below the rim of the
     * largest; depth is counted from the outer faces alone: the lid at the rim and closed hollows lose nothing, as a
     * face on a tray}
     */
    public DepthProfile depthFromOutside() {
        TriangleMesh below =
                RimLid.of(this, true, f -> dryOwner(f) < 0 ? largest : -1).upsideDown();
        BitSet shut = new Shells(below).hollows();
        shut.or(FaceSets.level(below, Vec3.UP.times(-1), tolerance));
        return new MeshDepth(new FacetTree(below), MassProperties.of(below), Workers.CALLER).from(shut);
    }

    /**
     * {@return the mesh with the dry hollows closed by their rim planes: what displaces water while they hold air}
     */
    public TriangleMesh closed() {
        return RimLid.of(this, false, this::dryOwner);
    }

    /**
     * {@return the body that fills the largest hollow up to its rim: the piece, where the mesh is its mould}
     */
    public TriangleMesh filling() {
        return RimLid.of(this, true, f -> dryOwner(f) == largest ? largest : -1).insideOut();
    }

    /**
     * {@return points along the crest of the rim, coordinates x, y, z of one after another, m: water enters when the
     * first of them is submerged}
     */
    public double[] crest() {
        return RimCrest.of(this);
    }

    /**
     * {@return the thinnest wall between the lower half of the dry hollows and the wet outer faces, m}
     *
     * @param tree tree of the facets
     */
    public double wall(FacetTree tree) {
        return HollowWall.least(this, tree);
    }
}
