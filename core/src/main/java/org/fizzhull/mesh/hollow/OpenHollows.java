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
 * The hollows of a closed mesh that are open to the top as it lies, each filled up to where it spills: exact for the
 * mesh, under overhangs too. The largest is the one that counts; those with a rim at least as high hold air as long as it
 * does, the others are full of water by then.
 */
public final class OpenHollows {
    /** Pits shallower than this share of the height of the body are not looked at. */
    private static final double SHALLOW = 0.01;

    /** Most pits that are measured, the deepest. */
    private static final int MOST = 64;

    /** Heights this close, in shares of the diagonal of the box, are the same. */
    static final double SAME = 1e-6;

    final TriangleMesh mesh;
    final Neighbours near;
    private final double same;

    /** Hollow of a vertex below its rim; -1 for all others. */
    private final int[] owner;

    private final double[] level;
    private final double[] air;
    private final int[] over;
    private final double[] bottom;
    private int main = -1;

    private OpenHollows(TriangleMesh mesh, Neighbours near, List<SpillSweep.Spill> spills) {
        this.mesh = mesh;
        this.near = near;
        same = SAME * FaceSets.diagonal(mesh.box());
        owner = new int[mesh.vertexCount()];
        Arrays.fill(owner, -1);
        int count = spills.size();
        level = new double[count];
        over = new int[count];
        bottom = new double[count];
        air = new double[count];
        for (int h = 0; h < count; h++) {
            SpillSweep.Spill spill = spills.get(h);
            over[h] = spill.over();
            level[h] = mesh.at(spill.over(), 2);
            bottom[h] = level[h];
            for (int begin : spill.begins()) {
                spread(begin, h);
            }
        }
    }

    /** Gives the hollows what hangs over their surface without being joined to it below the rim. */
    private void hang(int[] hanging, FloorBelow floor) {
        boolean more = true;
        while (more) {
            more = false;
            for (int v : hanging) {
                int under = owner[v] < 0 ? floor.under(v) : -1;
                for (int k = 0; under >= 0 && k < 3; k++) {
                    int h = owner[mesh.corner(under, k)];
                    if (h >= 0 && owner[v] < 0 && below(v, h)) {
                        spread(v, h);
                        more = true;
                    }
                }
            }
        }
    }

    /** Measures the air, and chooses the hollow that holds most. */
    private void measure() {
        for (int f = 0; f < mesh.facetCount(); f++) {
            int h = owner(f);
            if (h >= 0) {
                air[h] += under(f, level[h]);
            }
        }
        for (int h = 0; h < air.length; h++) {
            main = main < 0 || air[h] > air[main] ? h : main;
        }
    }

    /**
     * {@return the hollows of a closed mesh that faces outward}
     *
     * @param mesh the mesh
     */
    public static OpenHollows of(TriangleMesh mesh) {
        Neighbours near = new Neighbours(mesh);
        byte[] births = SpillSweep.births(mesh, near);
        if (IntStream.range(0, births.length).noneMatch(v -> births[v] > 0)) {
            return new OpenHollows(mesh, near, List.of());
        }
        double[] box = mesh.box();
        double floorLevel = FaceSets.floor(box);
        int[] hanging = IntStream.range(0, births.length)
                .filter(v -> births[v] < 0 && mesh.at(v, 2) > floorLevel)
                .toArray();
        FloorBelow floor = new FloorBelow(mesh, births);
        double least = SHALLOW * (box[5] - box[2]);
        List<SpillSweep.Spill> deep = SpillSweep.of(mesh, near, births, floor).stream()
                .filter(spill -> depth(mesh, spill) > least)
                .sorted(Comparator.comparingDouble(spill -> -depth(mesh, spill)))
                .limit(MOST)
                .toList();
        OpenHollows found = new OpenHollows(mesh, near, deep);
        found.hang(hanging, floor);
        found.measure();
        return found;
    }

    private static double depth(TriangleMesh mesh, SpillSweep.Spill spill) {
        double low =
                spill.begins().stream().mapToDouble(v -> mesh.at(v, 2)).min().orElseThrow();
        return mesh.at(spill.over(), 2) - low;
    }

    private boolean below(int v, int hollow) {
        return mesh.at(v, 2) < level[hollow] - same;
    }

    /** Gives the surface that is reached from a vertex below the rim to a hollow. */
    private void spread(int begin, int hollow) {
        if (owner[begin] >= 0 || !below(begin, hollow)) {
            return;
        }
        ArrayDeque<Integer> edge = new ArrayDeque<>();
        owner[begin] = hollow;
        edge.add(begin);
        while (!edge.isEmpty()) {
            int v = edge.remove();
            bottom[hollow] = Math.min(bottom[hollow], mesh.at(v, 2));
            for (int i = 0; i < near.count(v); i++) {
                int next = near.at(v, i);
                if (owner[next] < 0 && below(next, hollow)) {
                    owner[next] = hollow;
                    edge.add(next);
                }
            }
        }
    }

    /** The air between a facet and a level above it, m3: negative for a facet that looks down. */
    private double under(int f, double top) {
        double[] d = new double[3];
        int deep = 0;
        for (int k = 0; k < 3; k++) {
            d[k] = top - mesh.at(mesh.corner(f, k), 2);
            deep += d[k] > 0 ? 1 : 0;
        }
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

    /** {@return whether there is none} */
    public boolean none() {
        return main < 0;
    }

    /** {@return height of the rim of the largest hollow: where it spills, m} */
    public double rim() {
        return level[main];
    }

    /** {@return air in the hollows that are dry as long as the water is below that rim, m3; 0 where there is none} */
    public double air() {
        return IntStream.range(0, air.length)
                .filter(this::dry)
                .mapToDouble(h -> air[h])
                .sum();
    }

    /** {@return air in the hollows with a lower rim, m3} */
    public double lowerAir() {
        return DoubleStream.of(air).sum() - air();
    }

    private boolean dry(int hollow) {
        return level[hollow] >= level[main] - same;
    }

    /** The hollow a facet belongs to, in part at least, where it is dry; else -1. */
    int dryOwner(int f) {
        int h = owner(f);
        return h >= 0 && dry(h) ? h : -1;
    }

    private int owner(int f) {
        for (int k = 0; k < 3; k++) {
            int h = owner[mesh.corner(f, k)];
            if (h >= 0) {
                return h;
            }
        }
        return -1;
    }

    /** Whether a vertex lies in a dry hollow, below its rim. */
    boolean in(int v) {
        return owner[v] >= 0 && dry(owner[v]);
    }

    /** Height of the rim of a hollow, m. */
    double level(int hollow) {
        return level[hollow];
    }

    /** Height half way between the bottom of the hollow of a vertex and its rim, m. */
    double middle(int v) {
        return (bottom[owner[v]] + level[owner[v]]) / 2;
    }

    /** The vertex over which the largest hollow spills. */
    int spillsOver() {
        return over[main];
    }

    /** Heights closer than this are the same, m. */
    double same() {
        return same;
    }

    /**
     * {@return what is left, at depths from what is wet outside, of the closed mesh below the rim, which stays dry
     * with its lid: the lid is taken for the face of a tray}
     */
    public DepthProfile depthFromOutside() {
        TriangleMesh below = RimLid.belowUpsideDown(this);
        BitSet shut = new Shells(below).hollows();
        shut.or(FaceSets.level(below, Vec3.UP.times(-1), same));
        return new MeshDepth(new FacetTree(below), MassProperties.of(below), Workers.CALLER).from(shut);
    }

    /**
     * {@return the mesh with the dry hollows closed by their rim planes: what displaces water while they hold air}
     */
    public TriangleMesh closed() {
        return RimLid.closed(this, level.length);
    }

    /**
     * {@return what fills the largest hollow up to its rim, as a body of its own: the piece of which this may be the
     * mould}
     */
    public TriangleMesh filling() {
        return RimLid.filling(this, main);
    }

    /**
     * {@return points along the crest of the rim, x, y, z one after another, m: the first of them under water lets
     * it in}
     */
    public double[] crest() {
        return RimCrest.of(this);
    }

    /**
     * {@return the thinnest wall between the lower half of the dry hollows and what is wet outside, m}
     *
     * @param tree tree of the facets
     */
    public double wall(FacetTree tree) {
        BitSet outside = new BitSet();
        for (int f = 0; f < mesh.facetCount(); f++) {
            boolean low = false;
            for (int k = 0; k < 3; k++) {
                low |= mesh.at(mesh.corner(f, k), 2) < rim() - same;
            }
            outside.set(f, low && dryOwner(f) < 0);
        }
        return HollowWall.least(this, tree, outside);
    }
}
