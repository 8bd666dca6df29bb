package org.fizzhull.mesh.cutting;

import java.util.function.IntConsumer;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.mesh.distance.FacetTree;
import org.fizzhull.mesh.measure.MassProperties;

/**
 * Cuts the body of a closed triangle mesh by a plane without building caps. The reference point lies on the plane, so
 * that the cut face adds nothing to the volume and its moments; the cut face itself comes from the directed cut
 * segments by Green's theorem. No loops are chained and no face is triangulated, so holes, several loops and bodies
 * that are not convex need nothing special (docs/physics/hydrostatics.md, 4). Only the facets near the plane are looked
 * at one by one ({@link CutSums}, {@link FacetClip}). Immutable.
 */
public final class PlaneClip {
    private final Vec3 origin;
    private final FacetTree tree;
    private final CutSums sums;

    /**
     * Prepares the cuts of a closed mesh whose facets are anticlockwise seen from outside.
     *
     * @param tree tree of the facets
     */
    public PlaneClip(FacetTree tree) {
        this.tree = tree;
        this.origin = MassProperties.boxCentre(tree.mesh());
        this.sums = new CutSums(tree, origin.x(), origin.y(), origin.z());
    }

    /**
     * {@return largest {@code n . x} over the vertices that facets use, m}
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     */
    public double reach(double nx, double ny, double nz) {
        Vec3 at = tree.farthest(nx, ny, nz);
        return nx * at.x() + ny * at.y() + nz * at.z();
    }

    /**
     * Cuts by the plane {@code n . x = c}, n a unit vector, and fills {@code out}.
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     * @param c offset of the plane along its normal, m
     * @param out takes the cut
     */
    public void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        out.clear();
        out.frame(nx, ny, nz);
        double lift = c - (nx * origin.x() + ny * origin.y() + nz * origin.z());
        Vec3 n = new Vec3(nx, ny, nz);
        Vec3 p = origin.plus(n.times(lift));
        FacetClip near = new FacetClip(tree, n, p, out);
        walk(nx, ny, nz, c, node -> sums.add(node, lift * nx, lift * ny, lift * nz, out), near::facet);
        out.mx += out.volume * p.x();
        out.my += out.volume * p.y();
        out.mz += out.volume * p.z();
        face(p, out);
    }

    /**
     * {@return area of the surface below the plane {@code n . x = c}, n a unit vector, m2}
     *
     * @param nx first component of the unit normal
     * @param ny second component
     * @param nz third component
     * @param c offset of the plane along its normal, m
     */
    public double areaBelow(double nx, double ny, double nz, double c) {
        double[] sum = new double[1];
        double[] deep = new double[3];
        walk(nx, ny, nz, c, node -> sum[0] += sums.areaOf(node), f -> {
            for (int k = 0; k < 3; k++) {
                deep[k] = c - nx * tree.at(f, 3 * k) - ny * tree.at(f, 3 * k + 1) - nz * tree.at(f, 3 * k + 2);
            }
            sum[0] += sums.area(f) * shareBelow(deep);
        });
        return sum[0];
    }

    /** Hands on the nodes that lie wholly below a plane, and the facets near it, by their place in the tree. */
    private void walk(double nx, double ny, double nz, double c, IntConsumer below, IntConsumer near) {
        int node = 0;
        while (node < tree.nodes()) {
            int side = sums.side(node, nx, ny, nz, c);
            if (side < 0) {
                below.accept(node);
            }
            int end = side == 0 && tree.leaf(node) ? tree.end(node) : 0;
            for (int f = tree.first(node); f < end; f++) {
                near.accept(f);
            }
            node = side == 0 ? node + 1 : sums.after(node);
        }
    }

    /** Share of a facet below a plane, by how deep its corners lie: one alone on its side cuts off the share t u. */
    private static double shareBelow(double[] deep) {
        int wet = 0;
        for (double d : deep) {
            wet += d >= 0 ? 1 : 0;
        }
        if (wet == 0 || wet == 3) {
            return wet == 3 ? 1 : 0;
        }
        int alone = 0;
        while (deep[alone] >= 0 != (wet == 1)) {
            alone++;
        }
        double d = deep[alone];
        double cut = d / (d - deep[(alone + 1) % 3]) * d / (d - deep[(alone + 2) % 3]);
        return wet == 1 ? cut : 1 - cut;
    }

    /** Moves the second moments of the cut face to its centroid (Steiner), and that into the body frame. */
    private static void face(Vec3 p, PlaneCut out) {
        if (!(out.area > 0)) {
            out.area = out.juu = out.jww = out.juw = 0;
            out.ax = p.x();
            out.ay = p.y();
            out.az = p.z();
            return;
        }
        double u = out.ax / out.area;
        double w = out.ay / out.area;
        out.juu -= out.area * u * u;
        out.jww -= out.area * w * w;
        out.juw -= out.area * u * w;
        out.ax = p.x() + u * out.ux + w * out.wx;
        out.ay = p.y() + u * out.uy + w * out.wy;
        out.az = p.z() + u * out.uz + w * out.wz;
    }
}
